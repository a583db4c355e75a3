// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/measure/nudge.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// An instant as the grid shows it, k units after the start of its character.
struct TraceInstant {
    int k = 0;
    Condition to = Condition::mark;
    double seconds = 0.0;              // after the start instant
    double displacementPercent = 0.0;  // from the ideal boundary of the grid unit, late positive
    double steadySeconds = 0.0;        // until a contact that bounced was steady; 0: it was at once
};

// One received character with its line signal, restored and scaled: 0 = space, 1 = mark.
struct CharacterTrace {
    std::uint64_t number = 0;         // counts since the input started
    unsigned code = 0;                // level 1 is bit 0
    std::string print;                // UTF-8, what it stands for: "R", "5", "space", "letters"
    bool stopPresent = true;          // false: framing error
    double startSeconds = 0.0;        // start instant since the input started
    double firstSampleSeconds = 0.0;  // of level[0], after the start instant (negative: before it)
    double sampleSeconds = 0.0;       // spacing of level
    std::vector<float> level;
    std::vector<TraceInstant> instants;  // k = 1 ..
};

// A dot of the displacement plot; the window's characters, oldest first.
struct DisplacementDot {
    std::uint64_t number = 0;  // of its character
    int k = 0;
    Condition to = Condition::mark;
    double percent = 0.0;  // synchronous, late positive
};

inline constexpr std::size_t kTrailSpeedOver = 8;  // characters: more would smooth a swing away

struct TrailPoint {
    std::uint64_t number = 0;        // of the character that ends the window
    double seconds = 0.0;            // since the input started
    double biasPercent = 0.0;        // over the window
    double uncertainty = 0.0;        // 95 %
    std::size_t over = 0;            // characters of that window, once it is full; 0: not known (frames kept earlier)
    std::optional<Measured> baud{};  // over the last kTrailSpeedOver characters; empty: not known
};

struct TapeCharacter {
    std::uint64_t number = 0;
    unsigned code = 0;
    std::string print;
    bool stopPresent = true;
    std::optional<unsigned> due;        // the combination the tape should have sent, where its text is known
    bool presumed = false;              // it is not known, but a plain text would have it so
    std::string duePrint = {};          // how what was due is named, in the case the tape is in; empty: not known
    bool again = false;                 // sent once before: the tape did not move
    std::vector<unsigned> passed = {};  // combinations the feed passed over just before, in their order,
    std::vector<std::string> passedPrint = {};  // and how they are named; "" where the case is not known
    std::optional<unsigned> instead = {};       // what the text has here, too close to a slip to say what became of it

    bool slipped() const { return again || !passed.empty(); }
};

enum class SignalState {
    waiting,    // nothing has arrived yet
    silent,     // samples, but no signal among them
    searching,  // a signal, not yet framed
    reading,    // characters are being measured
    idle,       // was reading; the line rests
};

// The same moment over more characters than a window for adjusting has.
struct FirmReading {
    std::size_t characters = 0;
    Reading reading;
    std::vector<DisplacementDot> dots;
};

// Immutable picture of one moment: all that widgets may see. Made by the analysis thread, shared read-only.
struct Snapshot {
    std::uint64_t serial = 0;
    SignalState state = SignalState::waiting;
    std::string stateText;           // one sentence, empty when reading
    double seconds = 0.0;            // of input so far
    std::int64_t newestStampNs = 0;  // monotonic stamp of the block in which the newest character ended; 0 = none

    double levelDbfs = -200.0;  // peak of the last 100 ms
    bool clippingNow = false;
    std::uint64_t lostSamples = 0;

    Options options;               // as set
    Limits limits;                 // as chosen
    int levels = 5;                // of the code
    double gridUnitSeconds = 0.0;  // unit of the ideal grid: the nominal one, else the measured; 0 = not known
    Reading reading;               // over the window
    std::size_t windowUsed = 0;    // characters in the reading,
    std::size_t findingsUsed = 0;  // and those its findings rest on, all after the last nudge; 0: as many
    std::shared_ptr<const FirmReading> firm;  // over those, where the window has fewer; not kept with a frame

    std::vector<std::shared_ptr<const CharacterTrace>> traces;  // the last ones, oldest first, at most 96
    std::vector<DisplacementDot> dots;                          // at most 2,000
    std::vector<TrailPoint> trail;                              // at most 4,096, oldest first
    std::vector<TapeCharacter> tape;                            // at most 96, oldest first
    std::vector<Nudge> nudges;                                  // at most 64, oldest first
    std::size_t nudgesLearnedIn = 0;                            // characters until nudges are found; 0: they are
    std::optional<Measured> biasSinceNudge;                     // over the last characters since the last of them
};

}  // namespace trueunit
