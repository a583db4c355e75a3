// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace trueunit::test {

// A sender with one fault or two, its loop and the card, for the benchmark of the findings. Shares no code with the
// instrument nor with core/simulate: contacts are switched, the loop current follows by its time constants, the card
// couples it and adds what cards add. Percentages are of the nominal unit, late and marking positive.
struct FaultyMachine {
    // The machine
    double unit = 0.020;  // nominal, seconds
    double stopUnits = 1.5;
    double fastPercent = 0.0;
    double biasPercent = 0.0;
    double endPercent = 0.0;
    double scatterPercent = 0.0;       // standard deviation of every instant, start included
    double startScatterPercent = 0.0;  // of the start, besides
    double stopIrregularUnits = 0.0;
    bool stopIrregularUniform = false;  // else gaussian
    double stopLateUnits = 0.0;         // every stop longer by this
    int lateK = 0;                      // 0: none
    double latePercent = 0.0;
    enum class LateOf { both, marks } lateOf = LateOf::both;
    double afterShortPercent = 0.0;  // of instants that end a single unit
    double cyclicPercent = 0.0;
    double cyclicHz = 1.0;
    bool cyclicMovesStart = false;
    double wanderPercent = 0.0;  // of the speed
    double wanderHz = 0.1;
    int dropLevel = 0;
    double dropFraction = 0.0;
    int fillLevel = 0;
    double fillFraction = 0.0;
    double bounceSeconds = 0.0;
    double bounceFraction = 1.0;
    double repeatFraction = 0.0;
    double skipFraction = 0.0;

    // The loop
    double edgeSeconds = 150e-6;  // time constant of either smoothing stage
    double riseConstant = 0.0;    // seconds; 0: the loop follows at once
    double fallConstant = 0.0;

    // The card
    double rateHz = 48000.0;
    double halfSwing = 0.25;  // full scale = 1
    std::vector<double> polesHz;
    double snrDb = 45.0;
    double humPercent = 0.0;  // peak to peak, of the swing
    double humHz = 50.0;
    double clipAt = 0.0;  // full scale reached at this part of half the swing; 0: never
    bool inverted = false;
    bool sixteenBit = false;
    std::uint64_t seed = 1;

    // What went wrong by chance in the last sending: slips of the feed, levels lost or filled.
    long mishaps = 0;

    // Sends so many characters of the tape, round and round from a point.
    std::vector<float> send(const std::vector<unsigned>& tape, std::size_t from, std::size_t characters);

private:
    using Switching = std::vector<std::pair<double, bool>>;  // seconds, contact closes
    std::vector<unsigned> feed(const std::vector<unsigned>& tape, std::size_t from, std::size_t characters);
    Switching contacts(const std::vector<unsigned>& codes, double& end);
    void bounce(Switching& all, double closesAt);
    std::vector<double> current(const Switching& contacts, double seconds) const;
    std::vector<float> card(const std::vector<double>& line);
    double gaussian() { return normal_(random_); }
    double uniform() { return uniform_(random_); }

    std::mt19937_64 random_;
    std::normal_distribution<double> normal_;
    std::uniform_real_distribution<double> uniform_;
};

}  // namespace trueunit::test
