// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/findings/faulty_machine.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit::test {

namespace {

constexpr int kLevels = 5;
constexpr double kLeadIn = 0.5;
constexpr double kTail = 0.4;
constexpr double kTwoPi = 2.0 * std::numbers::pi;

}  // namespace

std::vector<unsigned> FaultyMachine::feed(const std::vector<unsigned>& tape, std::size_t from, std::size_t characters) {
    std::vector<unsigned> codes;
    mishaps = 0;
    std::size_t at = from % tape.size();
    while (codes.size() < characters) {
        if (uniform() < skipFraction) {
            at = (at + 1) % tape.size();
            ++mishaps;
        }
        unsigned code = tape[at];
        if (dropLevel > 0 && uniform() < dropFraction) code &= ~(1U << (dropLevel - 1));
        if (fillLevel > 0 && uniform() < fillFraction) code |= 1U << (fillLevel - 1);
        mishaps += code == tape[at] ? 0 : 1;
        codes.push_back(code);
        if (uniform() >= repeatFraction)
            at = (at + 1) % tape.size();
        else
            ++mishaps;
    }
    return codes;
}

// After the first closure the contact opens a few times, ever more briefly, until it is steady.
void FaultyMachine::bounce(Switching& all, double closesAt) {
    const int openings = 1 + static_cast<int>(2.0 * uniform());
    const double part = bounceSeconds / openings;
    for (int i = 0; i < openings; ++i) {
        const double steadyAt = closesAt + (i + 1) * part;
        all.emplace_back(steadyAt - (0.3 + 0.3 * uniform()) * part, false);
        all.emplace_back(steadyAt, true);
    }
}

FaultyMachine::Switching FaultyMachine::contacts(const std::vector<unsigned>& codes, double& end) {
    Switching all;
    double clutch = kLeadIn;  // when the shaft begins its turn
    const double percent = 0.01 * unit;
    const auto wobble = [&](double t) { return cyclicPercent * std::sin(kTwoPi * cyclicHz * t + 1.0); };
    for (const unsigned code : codes) {
        const double speed = 1.0 + 0.01 * (fastPercent + wanderPercent * std::sin(kTwoPi * wanderHz * clutch));
        const double t = unit / speed;
        double start = scatterPercent * gaussian();
        if (startScatterPercent > 0.0) start += startScatterPercent * gaussian();
        if (cyclicMovesStart) start += wobble(clutch);
        all.emplace_back(clutch + start * percent, false);
        bool closed = false;
        int changed = 0;
        for (int k = 1; k <= kLevels + 1; ++k) {
            const bool close = k > kLevels || ((code >> (k - 1)) & 1U) != 0;
            if (close == closed) continue;
            closed = close;
            const double due = clutch + k * t;
            double late = scatterPercent * gaussian() + wobble(due) + (close ? -biasPercent : endPercent);
            if (k - changed == 1) late += afterShortPercent;
            changed = k;
            // A lever's instant either way, or the beginning and the end of its marks alone.
            if (lateOf == LateOf::both && k == lateK) late += latePercent;
            if (lateOf == LateOf::marks && ((k == lateK && close) || (k == lateK + 1 && !close))) late += latePercent;
            all.emplace_back(due + late * percent, close);
            if (close && bounceSeconds > 0.0 && uniform() < bounceFraction) bounce(all, all.back().first);
        }
        const double irregular = stopIrregularUniform ? 2.0 * uniform() - 1.0 : std::clamp(gaussian(), -2.5, 2.5);
        clutch += (kLevels + 1 + std::max(0.4, stopUnits + stopLateUnits + stopIrregularUnits * irregular)) * t;
    }
    end = clutch;
    return all;
}

// The loop current rises and falls by its time constants, then two like stages round the corners.
std::vector<double> FaultyMachine::current(const Switching& contacts, double seconds) const {
    constexpr int kFine = 8;  // steps per sample; a switching within a step is taken at its share of it
    const double step = 1.0 / (rateHz * kFine);
    const auto share = [step](double constant) { return constant > 0.0 ? 1.0 - std::exp(-step / constant) : 1.0; };
    const double rise = share(riseConstant), fall = share(fallConstant), smooth = share(edgeSeconds);
    std::vector<double> line(static_cast<std::size_t>(seconds * rateHz));
    std::size_t next = 0;
    bool closed = true;
    double loop = 1.0, first = 1.0, second = 1.0;
    for (std::size_t n = 0; n < line.size() * kFine; ++n) {
        const double until = static_cast<double>(n + 1) * step;
        double closedFor = 0.0;
        double from = until - step;
        for (; next < contacts.size() && contacts[next].first < until; ++next) {
            closedFor += closed ? std::max(0.0, contacts[next].first - from) : 0.0;
            from = std::max(from, contacts[next].first);
            closed = contacts[next].second;
        }
        closedFor += closed ? until - from : 0.0;
        const double part = closedFor / step;
        loop += part * rise * (1.0 - loop) - (1.0 - part) * fall * loop;
        first += smooth * (loop - first);
        second += smooth * (first - second);
        if (n % kFine == kFine - 1) line[n / kFine] = second;
    }
    return line;
}

std::vector<float> FaultyMachine::card(const std::vector<double>& line) {
    std::vector<double> v(line.size());
    for (std::size_t n = 0; n < v.size(); ++n)
        v[n] = (inverted ? 1.0 - 2.0 * line[n] : 2.0 * line[n] - 1.0) * halfSwing;
    for (const double hz : polesHz) {
        const double keep = (2.0 * rateHz - kTwoPi * hz) / (2.0 * rateHz + kTwoPi * hz);  // bilinear
        double before = v.empty() ? 0.0 : v.front();
        double out = 0.0;
        for (double& x : v) {
            out = keep * out + 0.5 * (1.0 + keep) * (x - before);
            before = x;
            x = out;
        }
    }
    const double noise = halfSwing * std::pow(10.0, -snrDb / 20.0);
    const double most = clipAt > 0.0 ? clipAt * halfSwing : 1.0;
    std::vector<float> out(v.size());
    for (std::size_t n = 0; n < v.size(); ++n) {
        const double t = static_cast<double>(n) / rateHz;
        double x = v[n] + 0.01 * humPercent * halfSwing * std::sin(kTwoPi * humHz * t + 0.4) + noise * gaussian();
        x = std::clamp(x, -most, most) / (clipAt > 0.0 ? most : 1.0);
        out[n] = static_cast<float>(sixteenBit ? std::round(x * 32767.0) / 32768.0 : x);
    }
    return out;
}

std::vector<float> FaultyMachine::send(const std::vector<unsigned>& tape, std::size_t from, std::size_t characters) {
    random_.seed(seed);
    double end = 0.0;
    const Switching switching = contacts(feed(tape, from, characters), end);
    return card(current(switching, end + kTail));
}

}  // namespace trueunit::test
