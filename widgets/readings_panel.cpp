// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/readings_panel.h"

#include <QVBoxLayout>
#include <map>

#include "widgets/reading_row.h"
#include "widgets/reading_texts.h"
#include "widgets/reason_line.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

const char* const kRowNames[ReadingsPanel::kRows] = {
    QT_TRANSLATE_NOOP("Words", "Speed"),
    QT_TRANSLATE_NOOP("Words", "Shaft"),
    QT_TRANSLATE_NOOP("Words", "Stop"),
    QT_TRANSLATE_NOOP("Words", "Bias"),
    QT_TRANSLATE_NOOP("Words", "End distortion"),
    QT_TRANSLATE_NOOP("Words", "Start-stop, gross"),
    QT_TRANSLATE_NOOP("Words", "Start-stop, synchronous"),
    QT_TRANSLATE_NOOP("Words", "Cyclic, largest"),
    QT_TRANSLATE_NOOP("Words", "Scatter (fortuitous)"),
    QT_TRANSLATE_NOOP("Words", "Receiving margin"),
    QT_TRANSLATE_NOOP("Words", "Lost marks, filled spaces"),
    QT_TRANSLATE_NOOP("Words", "Framing errors, feed slips"),
};
// What each tells, for its tooltip; the help has a page for each.
const char* const kMeanings[ReadingsPanel::kRows] = {
    QT_TRANSLATE_NOOP("Words", "The unit against its nominal length: motor, governor, gears, mains frequency."),
    QT_TRANSLATE_NOOP("Words", "Characters a minute while the tape runs without pause: transmitting shaft and clutch."),
    QT_TRANSLATE_NOOP("Words", "Length of the stop in units: rest of the main cam, clutch and its latch."),
    QT_TRANSLATE_NOOP("Words", "Marks too long (+) or too short (-): the contact, its gap and its eccentric."),
    QT_TRANSLATE_NOOP("Words", "Ends of marks late (+) or early (-): cam flanks, levers, return spring."),
    QT_TRANSLATE_NOOP("Words",
                      "Largest displacement against the nominal speed: what a receiver has to stand. A wrong speed "
                      "counts in: as a rule it adds, but where it works against bias or end the figure may be below "
                      "the synchronous one."),
    QT_TRANSLATE_NOOP(
        "Words",
        "Largest displacement after the mean speed is taken out: contacts, cams, levers. Where a wrong speed "
        "works against bias or end, or a fault pulls at the speed as read, the figure may be above the gross one."),
    QT_TRANSLATE_NOOP("Words", "What comes back with a shaft, gear or motor: amplitude, and how often a second."),
    QT_TRANSLATE_NOOP("Words", "What is random: worn or dirty contacts, loose pivots, noise."),
    QT_TRANSLATE_NOOP("Words",
                      "Part of a unit in which a receiver reads every element rightly; 50 is the middle. Below 0 or "
                      "over 100: even beside the element."),
    QT_TRANSLATE_NOOP(
        "Words",
        "Marks of the tape that did not come: sensing pins, transfer levers. Spaces that came as marks: pins "
        "or levers slow to return. Both are held against its text."),
    QT_TRANSLATE_NOOP("Words",
                      "Characters whose stop is not at mark: wrong speed, lost elements, a broken signal. And, held "
                      "against the text of the tape, characters sent twice or passed over: feed wheel, pawl, tape."),
};
const char* const kPages[ReadingsPanel::kRows] = {
    "speed.md",       "shaft.md",  "stop.md",    "bias.md",   "end.md",      "gross.md",
    "synchronous.md", "cyclic.md", "scatter.md", "margin.md", "findings.md", "glossary.md",
};
// A word of the sentence that explains why the reading is missing.
const char* const kReasonKeys[ReadingsPanel::kRows] = {
    "speed", "pause",  "stop",     "bias",       "end distortion", "nominal speed",
    "unit",  "cyclic", "instants", "characters", "text",           "character",
};

// What may be shown beside a "before" instead, by its key there.
const std::map<std::string, ReadingsPanel::Row> kComparable = {{"operations_per_minute", ReadingsPanel::shaft},
                                                               {"stop_units", ReadingsPanel::stop},
                                                               {"bias_percent", ReadingsPanel::bias},
                                                               {"end_percent", ReadingsPanel::end}};

QString reasonFor(const Snapshot& s, int row) {
    for (const std::string& note : s.reading.notes)
        if (QString::fromStdString(note).contains(QLatin1String(kReasonKeys[row]), Qt::CaseInsensitive))
            return told(note);
    if (!s.reading.valid()) return whyNothing(s);
    if (row == ReadingsPanel::cyclic && s.reading.distortion.cyclic)
        return Words::tr("%1: nothing periodic stands out of the scatter.").arg(Words::tr(kRowNames[row]));
    return Words::tr("%1: too few characters so far.").arg(Words::tr(kRowNames[row]));
}

}  // namespace

ReadingsPanel::ReadingsPanel(QWidget* parent)
    : Panel(Words::tr("Readings"), parent), decimals_(kRows), reason_(new ReasonLine(this)) {
    for (int i = 0; i < kRows; ++i) {
        rows_.push_back(new ReadingRow(Words::tr(kRowNames[i]), Words::tr(kMeanings[i]), this));
        rows_.back()->setProperty(theme::kHelpPage, QLatin1String(kPages[i]));
        bodyLayout()->addWidget(rows_.back(), 1);
    }
    bodyLayout()->addWidget(reason_);
    refresh(shown());
}

QSize ReadingsPanel::sizeHint() const {
    constexpr int kHeight = 294, kBriefHeight = 46, kRowHeight = 19;
    const int height = brief_ ? kBriefHeight + kRowHeight * static_cast<int>(kept_.size()) : kHeight;
    return {378, height + (reason_->isHidden() ? 0 : reason_->sizeHint().height())};
}

QString ReadingsPanel::reasonShown() const { return reason_->text(); }

void ReadingsPanel::setBrief(bool brief) {
    if (brief == brief_) return;
    brief_ = brief;
    kept_ = {speed, bias};
    chooseRows();
}

// Of what is out, as much as leaves the findings their room. What once came stays: a panel that changes its height with
// every reading at its limit cannot be read.
void ReadingsPanel::keepOut() {
    constexpr std::size_t kMost = 6;
    const std::size_t before = kept_.size();
    for (int i = 0; i < kRows && kept_.size() < kMost; ++i)
        if (rows_[static_cast<std::size_t>(i)]->text().within == false) kept_.insert(i);
    if (kept_.size() != before) chooseRows();
}

void ReadingsPanel::leaveOut(const std::set<std::string>& keys) {
    if (keys == leftOut_) return;
    leftOut_ = keys;
    chooseRows();
}

void ReadingsPanel::chooseRows() {
    for (int i = 0; i < kRows; ++i) rows_[static_cast<std::size_t>(i)]->setHidden(brief_ && !kept_.contains(i));
    if (!brief_)
        for (const std::string& key : leftOut_)
            if (const auto row = kComparable.find(key); row != kComparable.end())
                rows_[static_cast<std::size_t>(row->second)]->hide();
    refresh(shown());
    updateGeometry();
}

void ReadingsPanel::refresh(const Snapshot& s) {
    QString firstReason;
    QStringList said;
    for (int i = 0; i < kRows; ++i) {
        RowText text = readingText(static_cast<Row>(i), s, decimals_[static_cast<std::size_t>(i)]);
        if (text.value.isEmpty()) {
            text.reason = reasonFor(s, i);
            const bool untold =
                s.reading.valid() && text.judgement.isEmpty() && !rows_[static_cast<std::size_t>(i)]->isHidden();
            if (firstReason.isEmpty() && untold) firstReason = text.reason;  // else its row or the grid says it
        }
        rows_[static_cast<std::size_t>(i)]->setText(text);
        said << rows_[static_cast<std::size_t>(i)]->said();
    }
    const QString covers = Words::tr("± covers 95 of 100");
    const QString over = s.reading.valid() ? overWords(s.windowUsed) : QString();
    setRemark(over.isEmpty() ? covers : over + QStringLiteral(", ") + covers, Tone::quiet,
              {over.isEmpty() ? covers : over});
    reason_->setText(firstReason);
    reason_->setVisible(!firstReason.isEmpty());  // its room belongs to the findings otherwise
    describe(said.join(QStringLiteral("; ")));
    if (brief_) keepOut();
}

}  // namespace trueunit
