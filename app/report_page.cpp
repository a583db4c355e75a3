// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_page.h"

#include <cassert>

#include "app/page_flow.h"
#include "app/report_compare.h"
#include "app/report_finding.h"
#include "app/report_grid.h"
#include "app/report_ink.h"
#include "app/report_instrument.h"
#include "app/report_output.h"
#include "app/report_received.h"
#include "app/report_text.h"
#include "app/report_trail.h"
#include "app/report_verdict.h"
#include "app/version.h"
#include "core/report/finding_words.h"
#include "core/report/shown_instants.h"
#include "core/report/shown_trace.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

using Align = PageColumn::Align;

QString machineName(const FrozenFrame& frame) {
    const QString name = QString::fromStdString(frame.machine).simplified();
    return name.isEmpty() ? Words::tr("Machine without a name") : name;
}

void head(PageFlow& page, const FrozenFrame& frame) {
    page.paragraph(
        isSimulated(frame) ? Words::tr("Timing of a simulated sender") : Words::tr("Timing of a start-stop sender"),
        PageFlow::font(9.0), kFaint);
    page.space(0.8);
    page.paragraph(machineName(frame), PageFlow::font(20.0, QFont::DemiBold), kInk);
    page.space(0.4);
    page.paragraph(whenText(frame), PageFlow::font(9.0), kInk);
    page.paragraph(fromText(frame), PageFlow::font(9.0), kInk);
    const QString remarks = QString::fromStdString(frame.remarks).trimmed();
    if (!remarks.isEmpty()) {
        page.space(1.2);
        page.paragraph(remarks, PageFlow::font(9.0), kInk);
    }
    page.space(2.0);
    page.rule();
    page.space(2.5);
}

void verdict(PageFlow& page, const Snapshot& snapshot) {
    const VerdictText text = verdictText(snapshot);
    drawVerdict(page, text);
    page.paragraph(text.detail, PageFlow::font(9.0), kInk);
}

void grid(PageFlow& page, const FrozenFrame& frame) {
    const auto trace = shownTrace(frame);
    page.heading(trace ? Words::tr("Character on the grid: %1, number %2; grid for %3")
                             .arg(printName(trace->print))
                             .arg(trace->number + 1)  // the first is 1
                             .arg(gridWords(*frame.snapshot))
                       : Words::tr("Character on the grid"));
    const double height = page.tight() ? 42.0 : frame.before ? 52.0 : 60.0;
    page.reserve(height + 2.0);
    ReportGrid(frame, page.area(0.0, PageFlow::kTextWidth, height), page.dots(1.0)).draw(page.painter());
    page.space(height + 2.0);
    if (!trace || page.tight()) return;
    QString legend = Words::tr("Grey: the other characters of the window.");
    if (frame.before) legend += Words::tr(" Dashed: the same character before.");
    page.paragraph(legend, PageFlow::font(7.0), kFaint);
}

void labelled(PageFlow& page, const QString& label, const QString& text) { page.beside(label, text, 8.5, 13.5); }

void cursors(PageFlow& page, const FrozenFrame& frame) {
    const Snapshot& s = *frame.snapshot;
    const auto& [a, b] = frame.cursors;
    const QString after = Words::tr(" after the start");
    if (a) labelled(page, QStringLiteral("A"), cursorText(s, *a) + after);
    if (b) labelled(page, QStringLiteral("B"), cursorText(s, *b) + after);
    if (a && b) labelled(page, Words::tr("A to B"), cursorText(s, *b - *a));
}

void notes(PageFlow& page, const FrozenFrame& frame) {
    int count = 0;
    for (const Note& note : frame.notes) {
        const QString at = Words::tr("At %1 units: ").arg(number(note.units, 2));
        labelled(page, Words::tr("Note %1").arg(++count), at + QString::fromStdString(note.text).trimmed());
    }
}

std::vector<PageRow> readingCells(const Snapshot& snapshot) {
    std::vector<PageRow> rows;
    for (const ReportRow& r : reportRows(snapshot))
        rows.push_back({{r.name, r.value, r.uncertainty, r.unit, r.limit, r.judged}, r.out});
    return rows;
}

std::vector<PageRow> instantCells(const Snapshot& s) {
    std::vector<PageRow> rows;
    for (const InstantReading& i : shownInstants(s.reading).instants)
        rows.push_back({{elementName(i.k, s.levels), i.to == Condition::mark ? Words::tr("mark") : Words::tr("space"),
                         QString::number(i.count), signedNumber(i.meanPercent, 2), number(i.rmsPercent, 2),
                         signedNumber(i.minPercent, 1), signedNumber(i.maxPercent, 1)},
                        false});
    return rows;
}

constexpr double kSecondTable = 111.0;  // mm from the left; what remains holds the instants

constexpr double kSecondWidth = PageFlow::kTextWidth - kSecondTable;

constexpr double kWorthFilling = 55.0;  // mm left of a page: the findings go before tables that do not fit

double tablesHeight(const PageFlow& page, const Snapshot& snapshot) {
    return page.tableHeight(std::max(reportRows(snapshot).size(), snapshot.reading.instants.size())) + 15.0;
}

// Both tables, and where room is sought the text in the blank below the shorter one; whether it stands there.
bool tables(PageFlow& page, const Snapshot& snapshot, const ReceivedText& text) {
    const std::vector<PageRow> left = readingCells(snapshot), right = instantCells(snapshot);
    page.reserve(tablesHeight(page, snapshot));
    const double top = page.y();
    page.heading(Words::tr("Readings"));
    page.table({{35.5, Align::left, Words::tr("quantity")},
                {18.5, Align::point, Words::tr("reading")},
                {20.5, Align::point, Words::tr("uncertainty")},
                {10.5, Align::left, Words::tr("unit")},
                {11.0, Align::point, Words::tr("limit")},
                {12.0, Align::right, Words::tr("judged")}},
               left);
    page.paragraph(
        Words::tr("Bias and end: marking positive. Speed error: fast positive. Uncertainty: covers 95 of 100."),
        PageFlow::font(7.0), kFaint, 0.0, kSecondTable - 4.0);
    const double afterLeft = page.y();
    if (right.empty()) return false;
    page.moveTo(top);
    page.heading(Words::tr("Displacement by instant"), kSecondTable);
    page.table({{8.0, Align::left, Words::tr("at")},
                {10.5, Align::left, Words::tr("to")},
                {7.0, Align::right, Words::tr("count")},
                {11.5, Align::point, Words::tr("mean")},
                {7.5, Align::point, Words::tr("rms")},
                {13.5, Align::point, Words::tr("earliest")},
                {9.0, Align::point, Words::tr("latest")}},
               right, kSecondTable);
    page.paragraph(instantsWords(snapshot.reading) + QLatin1Char('.'), PageFlow::font(7.0), kFaint, kSecondTable,
                   kSecondWidth);
    const bool holdsText =
        page.tight() && !text.words.isEmpty() && page.y() + text.height(page, kSecondWidth) <= afterLeft;
    if (holdsText) text.draw(page, kSecondTable, kSecondWidth);
    page.moveTo(std::max(page.y(), afterLeft));
    return holdsText;
}

// Whether the dead loop was among the cautions, which then stand for the whole page.
bool findings(PageFlow& page, const FrozenFrame& frame) {
    const Reading& reading = frame.snapshot->reading;
    if (!reading.findings || reading.findings->empty()) return false;
    QString heading = Words::tr("Findings, worst first");
    CautionsSaid said{};  // gathered below all findings
    for (const Finding& f : *reading.findings) {
        drawFinding(page, f, {told(f.evidence), told(f.lookAt), told(withoutCautions(f.confirm, said))}, heading);
        heading.clear();
    }
    drawFindingNotes(page, isSimulated(frame));
    std::string cautions;
    for (std::size_t i = 0; i < said.size(); ++i)
        if (said[i]) cautions += *kWorkCautions[i];
    if (cautions.empty()) return false;
    page.paragraph(Words::tr("Caution: ") + told(cautions.substr(1)), PageFlow::font(8.5, QFont::DemiBold), kInk);
    return said[1];
}

void remarksOfReading(PageFlow& page, const Reading& reading) {
    if (reading.notes.empty()) return;
    page.heading(Words::tr("Notes on the readings"));
    for (const std::string& note : reading.notes)
        page.paragraph(QStringLiteral("\u2022 ") + told(note), PageFlow::font(8.5), kInk);
}

void compose(PageFlow& page, const FrozenFrame& frame) {
    const Snapshot& snapshot = *frame.snapshot;
    head(page, frame);
    verdict(page, snapshot);
    drawComparison(page, frame);  // what the repair is proved by
    grid(page, frame);
    cursors(page, frame);
    notes(page, frame);
    const ReceivedText text = receivedText(page, snapshot);
    const bool findingsFirst = page.room() < tablesHeight(page, snapshot) && page.room() > kWorthFilling;
    bool cautioned = findingsFirst && findings(page, frame);
    const bool textStands = tables(page, snapshot, text);
    if (!findingsFirst) cautioned = findings(page, frame);
    remarksOfReading(page, snapshot.reading);
    if (!textStands && !text.words.isEmpty()) {
        page.reserve(text.height(page, PageFlow::kTextWidth));
        text.draw(page, 0.0, PageFlow::kTextWidth);
    }
    drawTrail(page, frame);
    drawInstrument(page, instrumentParts(frame));
    if (!cautioned) drawCaution(page);
}

ReportFacts factsOf(const FrozenFrame& frame) {
    const VerdictText v = verdictText(*frame.snapshot);
    return {machineName(frame) + Words::tr(", timing report"), inOneLine(v), frame.takenSecondsUtc,
            Words::tr("%1 \u00b7 measured %2 \u00b7 Trueunit %3")
                .arg(machineName(frame), takenText(frame), QLatin1String(kVersion))};
}

}  // namespace

std::vector<QImage> reportPages(const FrozenFrame& frame) {
    assert(frame.snapshot);
    return composedPages([&](PageFlow& page) { compose(page, frame); }, factsOf(frame), Paper::a4);
}

Result<QStringList> writeReport(const FrozenFrame& frame, const QString& path) {
    assert(frame.snapshot);
    return writeReportFile([&](PageFlow& page) { compose(page, frame); }, factsOf(frame), Paper::a4, path);
}

}  // namespace trueunit
