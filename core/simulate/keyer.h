// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/simulate/scenario.h"
#include "core/simulate/seeded_random.h"
#include "core/simulate/text_feed.h"
#include "core/simulate/truth.h"

namespace trueunit {

struct KeyedCharacter {
    SentCharacter sent;
    std::vector<TrueInstant> instants;  // start first; to space and to mark in turn; ends at mark
};

// The simulated sender: text to the instants of its contacts, character by character, every fault imposed with a
// known size. True seconds, exact to rounding. The cam keeps its beat: only a late trip or a pause moves the beat of
// the characters after it, and scatter of the start instant shows in the others as seen from the start.
class Keyer {
public:
    explicit Keyer(const Scenario& scenario);

    bool next(KeyedCharacter& out);                      // false: the tape is out
    double nextBeat() const { return beat_; }            // seconds at which the cam releases the next character
    double lastInstant() const { return lastInstant_; }  // seconds
    void turnEccentric(double biasPercent) { eccentric_ += biasPercent; }  // from the next character on

private:
    struct Settings {  // what moves can change
        double speedPercent;
        double biasPercent;
        double endPercent;
        double scatterPercent;
        double stopLatePercent;
    };

    void applyMoves();
    unsigned withFailedLevels(unsigned code);
    double imposedPercent(int k, Condition to, int unitsBefore, double seconds);
    double cyclicPercent(double seconds, bool ofStart) const;
    double startSeconds();
    void keyInstants(KeyedCharacter& out);
    void addBounces(std::vector<TrueInstant>& instants);
    void advanceBeat();

    Scenario::Faults faults_;
    std::vector<Scenario::Move> moves_;
    std::size_t nextMove_ = 0;
    Settings now_;
    double eccentric_ = 0.0;
    int levels_;
    double stopUnits_;
    double nominalUnit_;  // T0, seconds
    double unit_ = 0.0;   // T of this character, seconds
    double beat_;
    double lastInstant_ = -1.0;
    std::uint64_t number_ = 0;
    std::vector<bool> pauseTaken_;
    TextFeed feed_;
    SeededRandom random_;
};

}  // namespace trueunit
