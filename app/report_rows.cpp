// SPDX-License-Identifier: GPL-3.0-or-later
// The readings of a report as rows. All figures of a row have the same decimals: of its reading, what the uncertainty
// carries, of a limit no fewer than it was set with, and of two moments side by side those of the finer.
#include <algorithm>
#include <cmath>

#include "app/report_text.h"
#include "core/report/judge.h"
#include "core/report/speed_swing.h"
#include "widgets/level_row.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

const QString kPlusMinus = QStringLiteral("\u00b1");
const QString kPercent = QStringLiteral("%");

// What a row shows of one moment.
struct Figure {
    std::optional<double> value;
    double uncertainty = 0.0;
    int places = 0;
};

Figure figure(const std::optional<Measured>& m) {
    return m ? Figure{m->value, m->uncertainty, placesFor(*m)} : Figure{};
}

Figure figure(const std::optional<double>& v, int places) { return {v, 0.0, places}; }

// Of a limit as it was set.
int placesOf(double limit) {
    int places = 0;
    for (double rest = limit; places < 3 && std::abs(rest - std::round(rest)) > 1e-6; ++places) rest *= 10.0;
    return places;
}

QString judgedWord(Judgement judgement) {
    if (judgement == Judgement::open) return QStringLiteral("?");
    return judgement == Judgement::out ? Words::tr("OUT") : Words::tr("in");
}

enum class Sides { one, both };  // both: read with its sign, and judged either way

class Rows {
public:
    Rows(const Snapshot& snapshot, const Snapshot* beside) : s_(snapshot), beside_(beside) {}

    // Gives the figure of a reading; the key is that of its limit, if it has one.
    template <class Of>
    void add(const QString& name, const QString& unit, Sides sides, Of of, const char* key = "") {
        const Figure own = of(s_.reading), other = beside_ ? of(beside_->reading) : Figure{};
        const JudgedReading* judgedAs = judged(s_.reading.verdict, key);
        const JudgedReading* otherAs = beside_ ? judged(beside_->reading.verdict, key) : nullptr;
        int places = std::max(own.places, other.places);
        for (const JudgedReading* j : {judgedAs, otherAs})
            if (j) places = std::max(places, placesOf(j->limit));
        rows_.push_back({name, kNoValue, unit, {}, {}, {}, false});
        if (own.value) show(own, places, sides);
        if (judgedAs) judge(*judgedAs, places, sides);
    }

    void add(ReportRow row) { rows_.push_back(std::move(row)); }
    void beOut() {  // the last one, though no limit in percent is set for it
        rows_.back().out = true;
        rows_.back().judged = judgedWord(Judgement::out);
    }
    std::vector<ReportRow> take() { return std::move(rows_); }

private:
    void show(const Figure& figure, int places, Sides sides) {
        ReportRow& row = rows_.back();
        row.value = sides == Sides::both ? signedNumber(*figure.value, places) : number(*figure.value, places);
        if (figure.uncertainty > 0.0)
            row.uncertainty = kPlusMinus + number(std::max(figure.uncertainty, std::pow(10.0, -places)), places);
    }

    void judge(const JudgedReading& j, int places, Sides sides) {
        ReportRow& row = rows_.back();
        row.limit = (sides == Sides::both ? kPlusMinus : QString()) + number(j.limit, places);
        row.out = j.judgement == Judgement::out;
        row.judged = judgedWord(j.judgement);
        if (j.judgement == Judgement::open) row.open = told(judgementWords(j));
    }

    const Snapshot& s_;
    const Snapshot* beside_;
    std::vector<ReportRow> rows_;
};

// Readings that later stages fill: shown when they are there, left out when nobody looked.
void addFurther(Rows& rows, const Reading& r) {
    const DistortionReading& d = r.distortion;
    const auto plain = [&rows](const QString& name, const QString& unit, const std::optional<double>& v, int places) {
        if (v) rows.add(name, unit, Sides::one, [&](const Reading&) { return figure(v, places); });
    };
    plain(Words::tr("Characteristic"), kPercent, d.characteristicPercent, 2);
    plain(Words::tr("Scatter (fortuitous), rms"), kPercent, d.fortuitousRmsPercent, 2);
    plain(Words::tr("Scatter, peak"), kPercent, d.fortuitousPeakPercent, 2);
    for (const CyclicLine& line : d.cyclic.value_or(std::vector<CyclicLine>{})) {
        const bool speed = isSpeedSwing(line) && r.speed.unitMs;
        plain((speed ? Words::tr("Swing of speed, %1 Hz") : Words::tr("Cyclic, at %1 Hz")).arg(number(line.hz, 2)),
              kPercent, speed ? speedSwingPercent(line, *r.speed.unitMs) : line.amplitudePercent, 2);
    }
    if (r.margin) {
        plain(Words::tr("Receiving margin, from"), kPercent, r.margin->lowPercent, 0);
        plain(Words::tr("Receiving margin, to"), kPercent, r.margin->highPercent, 0);
    }
    if (r.levels) {
        const auto share = [&](const QString& name, const LevelTally& t, const char* key) {
            if (t.all == 0) return;
            plain(Words::tr("%1, of %2").arg(name).arg(t.all), kPercent,
                  100.0 * static_cast<double>(t.count) / static_cast<double>(t.all), 2);
            if (exceeds(r.verdict, key)) rows.beOut();
        };
        share(Words::tr("Lost marks"), tallyOf(*r.levels, &LevelReading::marksMissed, &LevelReading::marksExpected),
              "marks_missed");
        share(Words::tr("Filled spaces"),
              tallyOf(*r.levels, &LevelReading::spacesFilled, &LevelReading::spacesExpected), "spaces_filled");
    }
    if (r.text.feedSlips && r.text.compared > 0) {
        plain(Words::tr("Slips of the feed, of %1").arg(r.text.compared), {}, double(*r.text.feedSlips), 0);
        if (exceeds(r.verdict, "feed_slips")) rows.beOut();
    }
    if (!r.contact) return;
    plain(Words::tr("Contact bounces"), {}, double(r.contact->bounces), 0);
    if (r.contact->bounces > 0) plain(Words::tr("Longest bounce"), Words::tr("ms"), r.contact->longestMs, 2);
}

}  // namespace

int placesFor(const Measured& m) {
    if (!(m.uncertainty > 0.0)) return 2;
    // Two figures of the uncertainty while the first is 1 or 2, one above: common practice in stating uncertainty.
    // Below one at least hundredths, so that the rows of a table are alike.
    return std::clamp(static_cast<int>(std::ceil(-std::log10(m.uncertainty / 2.5))), m.uncertainty < 1.0 ? 2 : 1, 3);
}

std::vector<ReportRow> reportRows(const Snapshot& s, const Snapshot* beside) {
    using R = const Reading&;
    Rows rows(s, beside);
    rows.add(
        Words::tr("Bias"), kPercent, Sides::both, [](R r) { return figure(r.distortion.biasPercent); }, "bias_percent");
    rows.add(
        Words::tr("End distortion"), kPercent, Sides::both, [](R r) { return figure(r.distortion.endPercent); },
        "end_percent");
    rows.add(
        Words::tr("Start-stop, gross"), kPercent, Sides::one, [](R r) { return figure(r.distortion.grossPercent, 1); },
        "gross_percent");
    rows.add(
        Words::tr("Start-stop, synchronous"), kPercent, Sides::one,
        [](R r) { return figure(r.distortion.synchronousPercent, 1); }, "synchronous_percent");
    rows.add(
        s.reading.speed.wanderPercent ? Words::tr("Speed error, mean") : Words::tr("Speed error"), kPercent,
        Sides::both, [](R r) { return figure(r.speed.errorPercent); }, "error_percent");
    if (s.reading.speed.wanderPercent)
        rows.add(Words::tr("Wander, either way"), kPercent, Sides::one,
                 [](R r) { return figure(r.speed.wanderPercent, 2); });
    rows.add(Words::tr("Speed"), Words::tr("baud"), Sides::one, [](R r) { return figure(r.speed.baud); });
    rows.add(Words::tr("Unit"), Words::tr("ms"), Sides::one, [](R r) { return figure(r.speed.unitMs, 3); });
    rows.add(Words::tr("Character period"), Words::tr("ms"), Sides::one,
             [](R r) { return figure(r.speed.characterMs); });
    rows.add(Words::tr("Shaft"), Words::tr("/min"), Sides::one,
             [](R r) { return figure(r.speed.operationsPerMinute); });
    rows.add(Words::tr("Stop"), Words::tr("units"), Sides::one, [](R r) { return figure(r.speed.stopUnits); });
    rows.add(Words::tr("Stop, spread rms"), Words::tr("units"), Sides::one,
             [](R r) { return figure(r.speed.stopSpreadUnits, 3); });
    addFurther(rows, s.reading);
    return rows.take();
}

}  // namespace trueunit
