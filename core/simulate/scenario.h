// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.h"
#include "core/units.h"

namespace trueunit {

// One demonstration: a machine with known faults, the line and the card between it and the instrument, and what the
// instrument is expected to say. A plain value, checked by parseScenario. Percentages are of the nominal unit T0;
// a displacement is positive when late; bias and end are marking positive.
struct Scenario {
    struct Machine {
        std::string name = "unnamed";
        std::string code = "ita2";  // a name codeNames() lists
        double baud = 50.0;         // 20..200; a number of the standard speeds means their exact unit
        double stopUnits = 1.5;     // 1..2.5, of the machine's own unit
    };

    // Either a text, or one drawn from letters and space.
    struct Text {
        std::string send;
        bool repeat = true;        // a tape loop; otherwise the line rests at mark after the text
        int randomCharacters = 0;  // 0: send is meant
        std::uint64_t randomSeed = 1;
    };

    enum class Edge { linear, raisedCosine, gaussian, exponential };

    // The loop: every edge crosses 50 % of the swing at its instant, whatever its shape.
    struct Line {
        Edge edge = Edge::raisedCosine;
        double riseUs = 300.0;  // 10 to 90 % towards mark
        double fallUs = 300.0;  // 90 to 10 % towards space
        double swing = 1.0;     // of the full loop current
    };

    struct Hum {
        double hz = 50.0;
        double percent = 0.0;           // of the swing, peak to peak, of the fundamental
        std::vector<double> harmonics;  // 2nd, 3rd, ... as fractions of the fundamental
    };

    struct Gap {
        double atSeconds = 0.0;
        std::uint32_t samples = 0;
    };

    enum class Channel { mono, left, right };  // where a rendered file carries the signal

    struct Card {
        double rateHz = 48000.0;
        double levelDbfs = -12.0;        // half of a full swing, against full scale
        std::vector<double> couplingHz;  // 0 to 2 high-pass poles
        std::optional<double> snrDb;     // 20 log10(half the swing / rms noise); empty: no noise
        std::optional<Hum> hum;
        std::optional<double> clip;  // of the swing: flattened beyond this on either side; full scale always flattens
        bool inverted = false;
        double dcOffset = 0.0;  // of full scale
        double clockPpm = 0.0;  // the card's clock is fast by this much
        std::vector<Gap> gaps;  // in order of time
        Channel channel = Channel::mono;
    };

    struct InstantShift {
        int k = 1;
        std::optional<Condition> to;  // empty: either direction
        double percent = 0.0;
    };

    struct Characteristic {
        int units = 1;  // length of the element before the instant
        double percent = 0.0;
    };

    struct Cyclic {
        double percent = 0.0;                     // amplitude
        double hz = 0.0;                          // of a part that turns with the motor, or:
        std::optional<double> turnsPerCharacter;  // of a part behind the clutch, which rests in a pause
        double phaseTurns = 0.0;                  // at the lead-in's beginning, or at the first character
        bool start = false;                       // moves the start instant as well
    };

    struct LevelFault {
        int level = 1;  // 1 = first sent
        double fraction = 0.0;
    };

    struct Bounce {
        double ms = 1.0;        // from the first closure to steady
        int openings = 1;       // within that time
        double fraction = 1.0;  // of the closures
    };

    struct Pause {
        int everyCharacters = 0;  // or, when 0, once:
        double atSeconds = 0.0;
        double seconds = 0.0;
    };

    struct FeedSlips {
        double repeatFraction = 0.0;  // of the characters: sent once more
        double skipFraction = 0.0;    // of the characters: not sent
    };

    struct SpeedWander {
        double percent = 0.0;  // amplitude, of the speed
        double hz = 0.1;
    };

    struct Faults {
        double speedPercent = 0.0;  // fast is positive: T = T0 / (1 + speedPercent / 100)
        double biasPercent = 0.0;
        double endPercent = 0.0;
        double scatterPercent = 0.0;       // standard deviation of each instant but the start, independent
        double startScatterPercent = 0.0;  // standard deviation of the start instant alone
        double stopLatePercent = 0.0;      // every stop longer by this
        double stopIrregularPercent = 0.0;
        bool stopIrregularUniform = false;  // true: +-percent, all alike; false: gaussian, standard deviation
        std::optional<SpeedWander> speedWander;
        std::vector<InstantShift> instants;
        std::vector<Characteristic> characteristic;
        std::vector<Cyclic> cyclic;
        std::vector<LevelFault> missingMarks;
        std::vector<LevelFault> filledSpaces;
        std::optional<Bounce> bounce;
        std::vector<Pause> pauses;
        FeedSlips feedSlips;
    };

    // A hand on the machine: takes effect from the first character that starts at or after the time.
    struct Move {
        double atSeconds = 0.0;
        bool relative = false;  // true: added to what is; false: becomes what is
        std::optional<double> speedPercent;
        std::optional<double> biasPercent;
        std::optional<double> endPercent;
        std::optional<double> scatterPercent;
        std::optional<double> stopLatePercent;
    };

    struct ExpectedReading {
        double value = 0.0;
        double within = 0.0;  // +-, same unit
    };

    struct ExpectedInstant {
        int k = 1;
        Condition to = Condition::mark;
        double meanPercent = 0.0;
        double within = 0.0;
    };

    struct Expect {
        std::vector<std::string> findings;                // ids
        std::map<std::string, ExpectedReading> readings;  // by their key in the JSON reading
        std::vector<ExpectedInstant> instants;
        std::optional<std::string> text;  // what is decoded, or a part of it
    };

    std::string title;
    std::string story;
    Machine machine;
    Text text;
    double leadInSeconds = 0.5;  // at mark, before the first character
    double seconds = 0.0;        // 0: endless while the text repeats, else a second beyond the text
    Line line;
    Card card;
    Faults faults;
    std::vector<Move> moves;  // in order of time
    std::uint64_t seed = 1;
    Expect expect;

    double nominalUnitSeconds() const { return namedSpeed(machine.baud).unitSeconds; }
    std::string plainText() const;  // what is sent once round, random text included
};

// Either the scenario or one sentence naming the key that is wrong. Every value is bounded, so that no file can make
// the simulation hang or fill the memory.
Result<Scenario> parseScenario(std::string_view json);
Result<Scenario> readScenario(const std::string& path);

}  // namespace trueunit
