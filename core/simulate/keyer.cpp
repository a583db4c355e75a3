// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/keyer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/frame/code_table.h"

namespace trueunit {

namespace {

constexpr std::uint64_t kMachineStream = 3;
constexpr double kLeastElement = 0.02;       // units: instants never meet or change places, however large the faults
constexpr double kLeastStop = 0.3;           // units
constexpr double kMostStartPercent = 80.0;   // of a unit, the start instant off its beat
constexpr double kMostSteadyPercent = 60.0;  // bias or end, eccentric included

double turn(double turns) { return std::sin(2.0 * std::numbers::pi * turns); }

void move(double& value, const std::optional<double>& to, bool relative) {
    if (to) value = relative ? value + *to : *to;
}

}  // namespace

Keyer::Keyer(const Scenario& scenario)
    : faults_(scenario.faults),
      moves_(scenario.moves),
      now_{faults_.speedPercent, faults_.biasPercent, faults_.endPercent, faults_.scatterPercent,
           faults_.stopLatePercent},
      levels_(findCode(scenario.machine.code)->levels),
      stopUnits_(scenario.machine.stopUnits),
      nominalUnit_(scenario.nominalUnitSeconds()),
      beat_(scenario.leadInSeconds),
      pauseTaken_(scenario.faults.pauses.size(), false),
      feed_(scenario),
      random_(scenario.seed, kMachineStream) {}

bool Keyer::next(KeyedCharacter& out) {
    const auto code = feed_.next();
    if (!code) return false;
    applyMoves();
    double speedPercent = now_.speedPercent;
    if (faults_.speedWander) speedPercent += faults_.speedWander->percent * turn(faults_.speedWander->hz * beat_);
    unit_ = nominalUnit_ / (1.0 + speedPercent / 100.0);
    out.sent = {number_,
                *code,
                withFailedLevels(*code),
                startSeconds(),
                unit_,
                std::clamp(now_.biasPercent + eccentric_, -kMostSteadyPercent, kMostSteadyPercent),
                std::clamp(now_.endPercent, -kMostSteadyPercent, kMostSteadyPercent)};
    keyInstants(out);
    advanceBeat();
    if (faults_.bounce) addBounces(out.instants);
    lastInstant_ = out.instants.back().seconds;
    ++number_;
    return true;
}

void Keyer::applyMoves() {
    for (; nextMove_ < moves_.size() && moves_[nextMove_].atSeconds <= beat_; ++nextMove_) {
        const Scenario::Move& m = moves_[nextMove_];
        move(now_.speedPercent, m.speedPercent, m.relative);
        move(now_.biasPercent, m.biasPercent, m.relative);
        move(now_.endPercent, m.endPercent, m.relative);
        move(now_.scatterPercent, m.scatterPercent, m.relative);
        move(now_.stopLatePercent, m.stopLatePercent, m.relative);
        now_.speedPercent = std::clamp(now_.speedPercent, -20.0, 20.0);
        now_.scatterPercent = std::max(now_.scatterPercent, 0.0);
    }
}

unsigned Keyer::withFailedLevels(unsigned code) {
    for (const auto& fault : faults_.missingMarks) {
        const unsigned bit = 1U << (fault.level - 1);
        if ((code & bit) != 0 && random_.chance(fault.fraction)) code &= ~bit;
    }
    for (const auto& fault : faults_.filledSpaces) {
        const unsigned bit = 1U << (fault.level - 1);
        if ((code & bit) == 0 && random_.chance(fault.fraction)) code |= bit;
    }
    return code;
}

double Keyer::cyclicPercent(double seconds, bool ofStart) const {
    double percent = 0.0;
    for (const auto& c : faults_.cyclic) {
        if (ofStart && !c.start) continue;
        const double characters =
            static_cast<double>(number_) + (seconds - beat_) / ((levels_ + 1 + stopUnits_) * unit_);
        const double turns = c.turnsPerCharacter ? *c.turnsPerCharacter * characters : c.hz * seconds;
        percent += c.percent * turn(turns + c.phaseTurns);
    }
    return percent;
}

double Keyer::startSeconds() {
    double percent = cyclicPercent(beat_, true);
    if (faults_.startScatterPercent > 0.0) percent += faults_.startScatterPercent * random_.gaussian();
    percent = std::clamp(percent, -kMostStartPercent, kMostStartPercent);
    return std::max(beat_ + percent / 100.0 * nominalUnit_, lastInstant_ + kLeastElement * nominalUnit_);
}

double Keyer::imposedPercent(int k, Condition to, int unitsBefore, double seconds) {
    double percent = cyclicPercent(seconds, false);
    for (const auto& shift : faults_.instants)
        if (shift.k == k && (!shift.to || *shift.to == to)) percent += shift.percent;
    for (const auto& c : faults_.characteristic)
        if (c.units == unitsBefore) percent += c.percent;
    if (now_.scatterPercent > 0.0) percent += now_.scatterPercent * random_.gaussian();
    return percent;
}

// The start instant is to space, so bias shows in the instants to mark alone and end distortion in those to space
// (Bell System Technical Journal, October 1938, pp. 627-628).
void Keyer::keyInstants(KeyedCharacter& out) {
    const SentCharacter& sent = out.sent;
    const double toPercent = 100.0 / nominalUnit_;
    out.instants.clear();
    out.instants.push_back(
        {sent.startSeconds, 0, Condition::space, (sent.startSeconds - beat_) * toPercent, false, number_});
    Condition before = Condition::space;
    int unitsBefore = 0;
    for (int k = 1; k <= levels_ + 1; ++k) {
        ++unitsBefore;
        const bool isMark = k > levels_ || (sent.sentCode >> (k - 1) & 1U) != 0;
        const Condition to = isMark ? Condition::mark : Condition::space;
        if (to == before) continue;
        const double due = beat_ + k * unit_;
        const double steady = to == Condition::mark ? -sent.biasPercent : sent.endPercent;
        const double percent = steady + imposedPercent(k, to, unitsBefore, due);
        const double seconds =
            std::max(due + percent / toPercent, out.instants.back().seconds + kLeastElement * nominalUnit_);
        const double seen = (seconds - sent.startSeconds - k * unit_) * toPercent;
        out.instants.push_back({seconds, k, to, seen, false, number_});
        before = to;
        unitsBefore = 0;
    }
    lastInstant_ = out.instants.back().seconds;
}

// The closure at its instant, then openings evenly spread until the contact is steady. What would reach the next
// instant is left out.
void Keyer::addBounces(std::vector<TrueInstant>& instants) {
    const Scenario::Bounce& bounce = *faults_.bounce;
    const double half = bounce.ms / 1000.0 / (2.0 * bounce.openings);
    std::vector<TrueInstant> all;
    for (std::size_t i = 0; i < instants.size(); ++i) {
        const TrueInstant& closure = instants[i];
        all.push_back(closure);
        if (closure.to != Condition::mark || !random_.chance(bounce.fraction)) continue;
        const double limit = i + 1 < instants.size() ? instants[i + 1].seconds : beat_ - nominalUnit_ * kLeastElement;
        for (int o = 0; o < bounce.openings; ++o) {
            const double opens = closure.seconds + (2 * o + 1) * half;
            if (opens + half + kLeastElement * nominalUnit_ > limit) break;
            all.push_back({opens, closure.k, Condition::space, 0.0, true, number_});
            all.push_back({opens + half, closure.k, Condition::mark, 0.0, true, number_});
        }
    }
    instants = std::move(all);
}

void Keyer::advanceBeat() {
    double latePercent = now_.stopLatePercent;
    if (faults_.stopIrregularPercent > 0.0)
        latePercent += faults_.stopIrregularPercent *
                       (faults_.stopIrregularUniform ? 2.0 * random_.uniform() - 1.0 : random_.gaussian());
    double pause = 0.0;
    const double ends = beat_ + (levels_ + 1 + stopUnits_) * unit_;
    for (std::size_t i = 0; i < faults_.pauses.size(); ++i) {
        const Scenario::Pause& p = faults_.pauses[i];
        const bool once = p.everyCharacters == 0;
        const bool due = once ? !pauseTaken_[i] && ends >= p.atSeconds
                              : (number_ + 1) % static_cast<std::uint64_t>(p.everyCharacters) == 0;
        if (!due) continue;
        pauseTaken_[i] = true;
        pause += p.seconds;
    }
    beat_ = std::max(ends + latePercent / 100.0 * nominalUnit_, lastInstant_ + kLeastStop * unit_) + pause;
}

}  // namespace trueunit
