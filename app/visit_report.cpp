// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/visit_report.h"

#include <QDateTime>
#include <algorithm>

#include "app/report_compare.h"
#include "app/report_finding.h"
#include "app/report_ink.h"
#include "app/report_instrument.h"
#include "app/report_text.h"
#include "app/report_verdict.h"
#include "app/version.h"
#include "app/visit_pictures.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

using Align = PageColumn::Align;
constexpr double kLabel = 30.0;  // mm: the column of labels

QString dateText(qint64 secondsUtc) {
    return QDateTime::fromSecsSinceEpoch(secondsUtc).toString(QStringLiteral("yyyy-MM-dd"));
}

QString name(const VisitStory& story) {
    return story.machine.name.isEmpty() ? Words::tr("Machine without a name") : story.machine.name;
}

// A short label, and its text hanging beside it.
void besideLabel(PageFlow& page, const QString& label, const QString& text, double points = 9.0) {
    if (text.trimmed().isEmpty()) return;
    page.beside(label, text, points, kLabel);
    page.space(0.6);
}

bool allSimulated(const VisitStory& story) {
    return !story.frames.empty() && std::all_of(story.frames.begin(), story.frames.end(),
                                                [](const VisitFrame& f) { return isSimulated(f.frame); });
}

void head(PageFlow& page, const VisitStory& story) {
    page.paragraph(
        allSimulated(story) ? Words::tr("Exercise on a simulated sender") : Words::tr("Repair of a start-stop sender"),
        PageFlow::font(9.0), kFaint);
    page.space(0.8);
    page.paragraph(name(story), PageFlow::font(20.0, QFont::DemiBold), kInk);
    page.space(0.4);
    QString line = Words::tr("Visit of ") + dateText(story.visit.opened);
    if (!story.machine.mark.trimmed().isEmpty()) line += Words::tr("  \u00b7  owner's mark ") + story.machine.mark;
    page.paragraph(line, PageFlow::font(9.0), kInk);
    if (!story.machine.card.trimmed().isEmpty()) page.paragraph(story.machine.card, PageFlow::font(9.0), kInk);
    page.space(2.0);
    page.rule();
    page.space(2.5);
}

QString verdictLine(const VisitFrame& frame) { return inOneLine(verdictText(*frame.frame.snapshot)); }

// One sentence for the reader in a hurry.
void summary(PageFlow& page, const VisitStory& story) {
    const VisitFrame *before = story.before(), *after = story.after();
    if (!before && !after) {
        page.paragraph(Words::tr("Nothing was measured on this visit"), PageFlow::font(13.0, QFont::Bold), kFaint);
        return;
    }
    const VisitFrame& last = after ? *after : *before;
    const VerdictText v = verdictText(*last.frame.snapshot);
    const bool open = story.visit.result.trimmed().isEmpty();
    const QString when = !after ? Words::tr(" as it came")
                         : open ? Words::tr(" at the moment after")
                                : Words::tr(" when it left");
    drawVerdict(page, v, when);
    page.space(0.8);
    if (before) besideLabel(page, Words::tr("Before"), verdictLine(*before));
    if (after) besideLabel(page, Words::tr("After"), verdictLine(*after));
}

void work(PageFlow& page, const Visit& visit) {
    if ((visit.complaint + visit.workDone + visit.parts + visit.oil + visit.result).trimmed().isEmpty()) return;
    page.heading(Words::tr("What was wrong and what was done"));
    besideLabel(page, Words::tr("Complaint"), visit.complaint);
    besideLabel(page, Words::tr("Work done"), visit.workDone);
    besideLabel(page, Words::tr("Parts"), visit.parts);
    besideLabel(page, Words::tr("Oil and grease"), visit.oil);
    besideLabel(page, Words::tr("Result"), visit.result);
}

const ReportRow* rowNamed(const std::vector<ReportRow>& rows, const QString& rowName) {
    for (const ReportRow& r : rows)
        if (r.name == rowName) return &r;
    return nullptr;
}

void readings(PageFlow& page, const VisitStory& story) {
    const VisitFrame *before = story.before(), *after = story.after();
    if (!before && !after) return;
    const Snapshot* was = before ? before->frame.snapshot.get() : nullptr;
    const Snapshot* is = after ? after->frame.snapshot.get() : nullptr;
    const auto left = was ? reportRows(*was, is) : std::vector<ReportRow>();
    const auto right = is ? reportRows(*is, was) : std::vector<ReportRow>();
    std::vector<PageRow> rows;
    const auto add = [&](const ReportRow& named, const ReportRow* b, const ReportRow* a) {
        const ReportRow none;
        const ReportRow &x = b ? *b : none, &y = a ? *a : none;
        const QString limit = y.limit.isEmpty() ? x.limit : y.limit;
        rows.push_back(
            {{named.name, x.value, x.uncertainty, x.judged, y.value, y.uncertainty, y.judged, named.unit, limit},
             a ? y.out : x.out});
    };
    for (const ReportRow& r : left) add(r, &r, rowNamed(right, r.name));
    for (const ReportRow& r : right)
        if (!rowNamed(left, r.name)) add(r, nullptr, &r);
    page.reserve(page.tableHeight(rows.size()) + 20.0);
    page.heading(left.empty() || right.empty() ? Words::tr("Readings") : Words::tr("Readings before and after"));
    page.table({{40.0, Align::left, Words::tr("quantity")},
                {21.0, Align::point, before ? Words::tr("before") : QString()},
                {20.0, Align::point, before ? Words::tr("uncertainty") : QString()},
                {13.0, Align::left, before ? Words::tr("judged") : QString()},
                {21.0, Align::point, after ? Words::tr("after") : QString()},
                {20.0, Align::point, after ? Words::tr("uncertainty") : QString()},
                {13.0, Align::left, after ? Words::tr("judged") : QString()},
                {14.0, Align::left, Words::tr("unit")},
                {16.0, Align::point, Words::tr("limit")}},
               rows);
    const Limits& limits = (after ? after : before)->frame.snapshot->limits;
    page.paragraph(Words::tr("Bias and end: marking positive. Speed error: fast positive. Uncertainty: covers 95 of "
                             "100. Judged by %1: %2")
                       .arg(told(limits.title), told(limits.origin)),
                   PageFlow::font(7.0), kFaint);
}

void change(PageFlow& page, const VisitStory& story) {
    const VisitFrame *before = story.before(), *after = story.after();
    if (before && after)
        drawComparison(page, {*before->frame.snapshot, *after->frame.snapshot, Words::tr("Change from before to after"),
                              Words::tr("after")});
}

// Sentences that stood under a finding before are not said again: most end with the same cautions.
QString unsaid(const std::string& text, QStringList& said) {
    QStringList fresh;
    for (const QString& sentence : told(text).split(QStringLiteral(". "), Qt::SkipEmptyParts)) {
        QString whole = sentence.trimmed();
        if (!whole.isEmpty() && !whole.endsWith(QLatin1Char('.'))) whole += QLatin1Char('.');
        if (whole.isEmpty() || said.contains(whole)) continue;
        said += whole;
        fresh += whole;
    }
    return fresh.join(QLatin1Char(' '));
}

// The first, and what is more likely than not; the rest stays in the logbook, to be tried if these are not it. Returns
// whether there is any.
bool findings(PageFlow& page, const VisitFrame* frame, QString heading, QStringList& said) {
    if (!frame) return false;
    const auto& found = frame->frame.snapshot->reading.findings;
    if (!found || found->empty()) return false;
    int left = 0;
    for (const Finding& f : *found) {
        if (&f != &found->front() && f.confidence < kLikely) {
            ++left;
            continue;
        }
        drawFinding(page, f, {unsaid(f.evidence, said), unsaid(f.lookAt, said), unsaid(f.confirm, said)}, heading);
        heading.clear();
    }
    if (left > 0)
        page.paragraph(left == 1 ? Words::tr("One that is less likely is in the logbook.")
                                 : Words::tr("%1 that are less likely are in the logbook.").arg(left),
                       PageFlow::font(8.5), kFaint);
    return true;
}

QString roleWords(const VisitStory& story, const VisitFrame& frame) {
    return &frame == story.before()  ? Words::tr(", before")
           : &frame == story.after() ? Words::tr(", after")
                                     : QString();
}

void frames(PageFlow& page, const VisitStory& story) {
    if (story.frames.empty()) return;
    page.heading(Words::tr("Frames kept on this visit"));
    for (const VisitFrame& f : story.frames) {
        const QDateTime taken = QDateTime::fromSecsSinceEpoch(f.row.taken);
        besideLabel(page, taken.toString(QStringLiteral("HH:mm:ss")) + roleWords(story, f), verdictLine(f), 8.5);
        const QString remarks = QString::fromStdString(f.frame.remarks).trimmed();
        if (!remarks.isEmpty())
            page.paragraph(remarks, PageFlow::font(8.5), kInk, kLabel, PageFlow::kTextWidth - kLabel);
        int count = 0;
        for (const Note& note : f.frame.notes)
            page.paragraph(Words::tr("Note %1, at %2 units: %3")
                               .arg(++count)
                               .arg(number(note.units, 2), QString::fromStdString(note.text).trimmed()),
                           PageFlow::font(8.5), kInk, kLabel, PageFlow::kTextWidth - kLabel);
        page.space(0.8);
    }
}

void instrument(PageFlow& page, const VisitStory& story) {
    page.reserve(62.0);  // settings, caution and signature stay together
    const VisitFrame* frame = story.after() ? story.after() : story.before();
    QStringList parts;
    if (frame) parts = instrumentParts(frame->frame);
    if (!story.visit.selfCheck.trimmed().isEmpty())
        parts += Words::tr("Checked:\u00a0") + told(story.visit.selfCheck.toStdString());
    drawInstrument(page, parts);
    drawCaution(page);
}

void signature(PageFlow& page) {
    page.space(13.0);
    QPainter& p = page.painter();
    const double y = page.dots(page.y());
    p.setPen(QPen(kInk, page.dots(0.2)));
    const auto field = [&](double left, double width, const QString& label) {
        const QRectF area = page.area(left, width, 5.0);
        p.setPen(QPen(kInk, page.dots(0.2)));
        p.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        p.setFont(PageFlow::font(7.5));
        p.setPen(kFaint);
        p.drawText(area.translated(0.0, page.dots(0.8)), Qt::AlignLeft | Qt::AlignTop, label);
    };
    field(0.0, 42.0, Words::tr("date"));
    field(52.0, 58.0, Words::tr("name"));
    field(120.0, 58.0, Words::tr("signature"));
    page.space(6.0);
}

void compose(PageFlow& page, const VisitStory& story) {
    head(page, story);
    summary(page, story);
    work(page, story.visit);
    readings(page, story);
    change(page, story);
    QStringList said;
    const bool before = findings(page, story.before(), Words::tr("Findings before, worst first"), said);
    const bool after = findings(page, story.after(), Words::tr("Findings after, worst first"), said);
    if (before || after) drawFindingNotes(page, allSimulated(story));
    drawPictures(page, story);
    frames(page, story);
    if (!story.machine.remarks.trimmed().isEmpty()) {
        page.heading(Words::tr("About the machine"));
        page.paragraph(story.machine.remarks, PageFlow::font(9.0), kInk);
    }
    if (page.boxes())
        page.paragraph(Words::tr("A box stands for a character that no font on this computer has. Install a font for "
                                 "its script and write the report again; the logbook has the text as it was typed."),
                       PageFlow::font(8.0), kFaint);
    instrument(page, story);
    signature(page);
}

ReportFacts factsOf(const VisitStory& story) {
    const VisitFrame* frame = story.after() ? story.after() : story.before();
    return {Words::tr("%1, repair report, visit of %2").arg(name(story), dateText(story.visit.opened)),
            frame ? verdictLine(*frame) : Words::tr("Nothing was measured on this visit."), story.visit.opened,
            Words::tr("%1 \u00b7 visit of %2 \u00b7 Trueunit %3")
                .arg(name(story), dateText(story.visit.opened), QLatin1String(kVersion))};
}

}  // namespace

std::vector<QImage> visitPages(const VisitStory& story, Paper paper) {
    return composedPages([&](PageFlow& page) { compose(page, story); }, factsOf(story), paper);
}

Result<QStringList> writeVisitReport(const VisitStory& story, Paper paper, const QString& path) {
    return writeReportFile([&](PageFlow& page) { compose(page, story); }, factsOf(story), paper, path);
}

}  // namespace trueunit
