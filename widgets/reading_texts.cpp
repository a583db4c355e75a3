// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/reading_texts.h"

#include <algorithm>
#include <cmath>

#include "core/report/judge.h"
#include "core/report/speed_swing.h"
#include "widgets/level_row.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

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
        text.judgement =
            j->window   ? Words::tr("? window %1").arg(*j->window == 0 ? Words::tr("all") : QString::number(*j->window))
            : j->more   ? Words::tr("? %1 more").arg(*j->more)
            : j->pulled ? Words::tr("? see findings")
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
    if (s.reading.contact && s.reading.contact->bounces > 0)
        text.judgement = counted(s.reading.contact->bounces, Words::tr("bounce"), Words::tr("bounces"));
    else if (!s.reading.distortion.cyclic) {
        text.judgement = Words::tr("not final");
        text.inWords = Words::tr("not final: it falls if more characters show something periodic in it");
    }
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
    text.within = t.framingErrors == 0 && !exceeds(s.reading.verdict, "feed_slips");
    if (!t.feedSlips) return text;
    text.value = Words::tr("%1, %2").arg(t.framingErrors).arg(*t.feedSlips);
    if (t.compared == 0) return text;
    text.judgement = Words::tr("of %1, %2").arg(t.characters).arg(t.compared);
    text.inWords = Words::tr("framing errors: %1 of %2 characters; feed slips: %3 of %4 characters")
                       .arg(t.framingErrors)
                       .arg(t.characters)
                       .arg(*t.feedSlips)
                       .arg(t.compared);
    return text;
}

}  // namespace

RowText readingText(ReadingsPanel::Row row, const Snapshot& s, StableDecimals& decimals) {
    const DistortionReading& d = s.reading.distortion;
    RowText text;
    switch (row) {
        case ReadingsPanel::speed:
            return speedRow(s, decimals);
        case ReadingsPanel::shaft:
            return measured(s.reading.speed.operationsPerMinute, Words::tr("/min"), decimals);
        case ReadingsPanel::stop:
            text = measured(s.reading.speed.stopUnits, Words::tr("units"), decimals);
            if (const auto& spread = s.reading.speed.stopSpreadUnits)
                text.judgement = Words::tr("spread %1").arg(number(*spread, 2));
            return text;
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

}  // namespace trueunit
