// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/readings_panel.h"

#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/report/judge.h"
#include "widgets/level_row.h"
#include "widgets/reading_row.h"
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
    QT_TRANSLATE_NOOP("Words", "Characters a minute while the tape runs without pause: main shaft and clutch."),
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
        "works against bias or end, the figure may be above the gross one."),
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
    return Words::tr("%1: too few characters so far.").arg(Words::tr(kRowNames[row]));
}

// A question mark and how many characters more stand for what cannot be told yet.
void judge(RowText& text, const Snapshot& s, const char* key) {
    const JudgedReading* j = judged(s.reading.verdict, key);
    if (!j || text.value.isEmpty()) return;
    const QString limit = Words::tr(", limit ") + limitNumber(j->limit);
    text.brief = told(judgementWords(*j));
    text.judgement = text.brief + limit;
    text.inWords = text.judgement + QStringLiteral(" %");
    if (j->judgement == Judgement::open) {
        text.brief = QStringLiteral("?");
        text.judgement = j->more      ? Words::tr("? %1 more").arg(*j->more)
                         : j->pulled  ? Words::tr("? see findings")
                         : j->missing ? Words::tr("? set the speed")
                                      : Words::tr("? at the limit");
    } else {
        text.within = j->judgement == Judgement::in;
    }
}

RowText measured(const std::optional<Measured>& m, const QString& unit, StableDecimals& decimals) {
    RowText text;
    if (!m) {
        decimals.reset();
        return text;
    }
    const int places = decimals.update(m->uncertainty);
    text.value = number(m->value, places);
    text.unit = unit;
    text.uncertainty = QStringLiteral("±") + number(std::max(m->uncertainty, std::pow(10.0, -places)), places);
    return text;
}

// With one decimal, as on the gauge: the same bias never reads two ways.
RowText asOnGauge(const std::optional<Measured>& m) {
    RowText text;
    if (!m) return text;
    text.value = signedNumber(m->value, 1);
    text.unit = QStringLiteral("%");
    text.uncertainty = QStringLiteral("±") + uncertaintyNumber(m->uncertainty);
    return text;
}

RowText plain(const std::optional<double>& value, const Snapshot& s, const char* key) {
    RowText text;
    if (!value) return text;
    text.value = number(*value, 1);
    text.unit = QStringLiteral("%");
    judge(text, s, key);
    return text;
}

RowText speedRow(const Snapshot& s, StableDecimals& decimals) {
    const SpeedReading& speed = s.reading.speed;
    RowText text = measured(speed.baud, Words::tr("Bd"), decimals);
    if (!speed.baud || !speed.errorPercent) return text;
    judge(text, s, "error_percent");
    const QString error = QStringLiteral("%1 %").arg(signedNumber(speed.errorPercent->value, 2));
    if (!text.inWords.isEmpty()) text.inWords = error + QStringLiteral(", ") + text.inWords;
    if (const JudgedReading* j = judged(s.reading.verdict, "error_percent"); j && j->pulled) return text;
    if (speed.wanderPercent) {  // in limits on the mean, that is
        text.judgement = text.brief = Words::tr("wanders %1 %").arg(number(*speed.wanderPercent, 1));
        text.within.reset();
        return text;
    }
    text.judgement = error;
    if (!text.brief.isEmpty()) text.judgement += QStringLiteral(", ") + text.brief;
    return text;
}

RowText scatterRow(const Snapshot& s) {
    RowText text;
    const auto& rms = s.reading.distortion.fortuitousRmsPercent;
    if (!rms) return text;
    text.value = number(*rms, 1);
    text.unit = Words::tr("% rms");
    if (!s.reading.distortion.cyclic) text.judgement = Words::tr("any swing included");
    return text;
}

// The part of a unit within which an ideal receiver reads every element rightly; its middle is 50 %.
RowText samplingRow(const Snapshot& s) {
    RowText text;
    const auto& margin = s.reading.margin;
    if (!margin) return text;
    text.value = QStringLiteral("%1 … %2").arg(number(margin->lowPercent, 0), number(margin->highPercent, 0));
    text.unit = QStringLiteral("%");
    return text;
}

// The strongest of what is periodic. A dash says why there is none: not found, or not looked for yet.
RowText cyclicRow(const Snapshot& s) {
    RowText text;
    const auto& lines = s.reading.distortion.cyclic;
    if (!lines || lines->empty()) {
        if (s.reading.text.characters > 0)
            text.judgement = lines ? Words::tr("none found") : Words::tr("cannot be told yet");
        return text;
    }
    const auto weight = [](const CyclicLine& line) { return isSpeedSwing(line) ? 0.0 : line.amplitudePercent; };
    const auto largest = std::max_element(
        lines->begin(), lines->end(), [&](const CyclicLine& a, const CyclicLine& b) { return weight(a) < weight(b); });
    const bool speed = isSpeedSwing(*largest) && s.reading.speed.unitMs;
    text.value = number(speed ? speedSwingPercent(*largest, *s.reading.speed.unitMs) : largest->amplitudePercent, 1);
    text.unit = speed ? Words::tr("% speed") : QStringLiteral("%");
    text.judgement = text.brief = Words::tr("at %1 Hz").arg(number(largest->hz, 2));
    return text;
}

RowText framingRow(const Snapshot& s) {
    RowText text;
    const TextReading& t = s.reading.text;
    if (t.characters == 0) return text;
    text.value = QString::number(t.framingErrors);
    text.brief = Words::tr("of %1").arg(t.characters);
    text.judgement = Words::tr("of %1").arg(counted(t.characters, Words::tr("character"), Words::tr("characters")));
    const auto& out = s.reading.verdict.exceeded;
    const auto exceeds = [&out](const char* key) { return std::find(out.begin(), out.end(), key) != out.end(); };
    text.within = t.framingErrors == 0 && !exceeds("feed_slips");
    if (!t.feedSlips) return text;
    text.value = Words::tr("%1, %2").arg(t.framingErrors).arg(*t.feedSlips);
    if (t.compared > 0) text.judgement = Words::tr("of %1, %2").arg(t.characters).arg(t.compared);
    return text;
}

RowText rowText(ReadingsPanel::Row row, const Snapshot& s, StableDecimals& decimals) {
    const DistortionReading& d = s.reading.distortion;
    RowText text;
    switch (row) {
        case ReadingsPanel::speed:
            return speedRow(s, decimals);
        case ReadingsPanel::shaft:
            return measured(s.reading.speed.operationsPerMinute, Words::tr("/min"), decimals);
        case ReadingsPanel::stop:
            return measured(s.reading.speed.stopUnits, Words::tr("units"), decimals);
        case ReadingsPanel::bias:
            text = asOnGauge(d.biasPercent);
            judge(text, s, "bias_percent");
            return text;
        case ReadingsPanel::end:
            text = asOnGauge(d.endPercent);
            judge(text, s, "end_percent");
            return text;
        case ReadingsPanel::gross:
            return plain(d.grossPercent, s, "gross_percent");
        case ReadingsPanel::synchronous:
            return plain(d.synchronousPercent, s, "synchronous_percent");
        case ReadingsPanel::cyclic:
            return cyclicRow(s);
        case ReadingsPanel::scatter:
            return scatterRow(s);
        case ReadingsPanel::sampling:
            return samplingRow(s);
        case ReadingsPanel::levels:
            return levelsRow(s);
        case ReadingsPanel::framing:
            return framingRow(s);
        case ReadingsPanel::kRows:
            break;
    }
    return text;
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
    constexpr int kHeight = 294, kBriefHeight = 84;
    return {378, (brief_ ? kBriefHeight : kHeight) + (reason_->isHidden() ? 0 : reason_->sizeHint().height())};
}

QString ReadingsPanel::reasonShown() const { return reason_->text(); }

void ReadingsPanel::setBrief(bool brief) {
    if (brief == brief_) return;
    brief_ = brief;
    chooseRows();
}

void ReadingsPanel::leaveOut(const std::set<std::string>& keys) {
    if (keys == leftOut_) return;
    leftOut_ = keys;
    chooseRows();
}

void ReadingsPanel::chooseRows() {
    for (int i = 0; i < kRows; ++i) rows_[static_cast<std::size_t>(i)]->setHidden(brief_ && i != speed && i != bias);
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
        RowText text = rowText(static_cast<Row>(i), s, decimals_[static_cast<std::size_t>(i)]);
        if (text.value.isEmpty()) {
            text.reason = reasonFor(s, i);
            const bool untold = text.judgement.isEmpty() && !rows_[static_cast<std::size_t>(i)]->isHidden();
            if (firstReason.isEmpty() && untold) firstReason = text.reason;  // else its row says it
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
}

}  // namespace trueunit
