// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/report/drive.h"
#include "core/report/finding.h"
#include "core/units.h"

namespace trueunit {

// All that is said of one window of characters. An empty optional is a reading the data cannot carry; the reason
// stands in Reading::notes. Percent of a unit unless a name says otherwise; definitions in DEVELOPERS.md.

struct InputReading {
    InputKind kind = InputKind::automatic;  // automatic = not settled
    std::optional<bool> inverted;
    double rateHz = 0.0;
    double seconds = 0.0;
    std::optional<double> snrDb;         // half the swing against the rms noise
    std::optional<double> humPercent;    // peak to peak, of the swing; empty: no more than the noise hides
    std::optional<double> riseToMarkMs;  // 10 to 90 %, of the edges as they come
    std::optional<double> riseToSpaceMs;
    std::optional<double> peakDbfs;  // largest sample, dB of full scale
    std::vector<double> couplingHz;  // high-pass corners found, 0 to 2 of them
    double clippedPercent = 0.0;     // of all samples
    double frontEndRiseMs = 0.0;     // 10 to 90 %, of a demodulator; 0 for a bare loop
    long gaps = 0;
    double slicePercent = 50.0;
    double toneHz = 0.0;   // of an interrupted tone, or the lower of two; 0 for a bare loop
    double shiftHz = 0.0;  // between two tones
    long levelSteps = 0;   // sudden falls of the level, after each of which the line had to be found again
};

struct TextReading {
    std::string code;
    std::string decoded;  // UTF-8; the window's characters
    long characters = 0;
    long framingErrors = 0;
    std::optional<long> wrongCharacters{};  // held against the text of the tape; empty: it is not known
    std::optional<long> feedSlips{};        // characters sent twice or passed over,
    long compared = 0;                      // of so many held against it
    std::string round{};                    // what it prints once round, given, recognised or learned; empty: not known
};

struct SpeedReading {
    std::optional<double> nominalBaud;
    std::optional<double> nominalUnitMs;
    std::optional<double> unitMs;  // measured
    std::optional<Measured> baud;
    std::optional<Measured> errorPercent;  // fast is positive
    std::optional<Measured> characterMs;
    std::optional<Measured> operationsPerMinute;
    std::optional<Measured> stopUnits;
    long over = 0;                            // characters that gave the unit: a few take more than their own
    std::optional<double> wanderPercent{};    // either way, of a speed that does not stay; empty: none is known
    std::optional<double> stopSpreadUnits{};  // rms, of the stop from one character to the next, slow changes set aside
};

struct CyclicLine {
    double amplitudePercent = 0.0;
    double hz = 0.0;
    double perCharacter = 0.0;
    bool shiftsStart = false;  // the starts of the characters swing with it
};

struct DistortionReading {
    std::optional<double> grossPercent;
    std::optional<double> synchronousPercent;
    std::optional<Measured> biasPercent;  // marking positive
    std::optional<Measured> endPercent;   // marking positive
    std::optional<double> characteristicPercent;
    std::optional<double> fortuitousRmsPercent;
    std::optional<double> fortuitousPeakPercent;
    std::optional<std::vector<CyclicLine>> cyclic;
    // Of the fortuitous, rms: what all instants of a character share, and what each has by itself. Not in the JSON.
    std::optional<double> togetherPercent{}, apartPercent{};
    long fortuitousOver = 0;  // characters: of a long window the last. Not in the JSON either.
};

// Synchronous displacement of the instants nominally k units after the start, late positive.
struct InstantReading {
    int k = 0;
    Condition to = Condition::mark;
    long count = 0;
    double meanPercent = 0.0;
    double rmsPercent = 0.0;  // standard deviation about the mean
    double minPercent = 0.0;
    double maxPercent = 0.0;
};

struct LevelReading {
    int level = 0;  // 1 = first sent
    long marksExpected = 0;
    long marksMissed = 0;
    long spacesExpected = 0;
    long spacesFilled = 0;
};

// The measured speed by the motor and gears of the machine card.
struct DriveReading {
    std::string card;  // its title
    DriveExplanation explanation;
    std::vector<GearWanted> gears;  // for other standard speeds
};

// The instant that bounds where a level may be sampled, and the character it belongs to.
struct MarginBound {
    double percent = 0.0;         // of a unit within the level, 50 = centre
    std::uint64_t character = 0;  // its number
    std::string print;            // what it stands for
};

struct LevelMargin {
    int level = 0;                    // 1 = first sent
    std::optional<MarginBound> low;   // sampled earlier, that character's level reads as the one before
    std::optional<MarginBound> high;  // sampled later, as the one after
};

struct MarginReading {
    double lowPercent = 0.0;  // of a unit, 50 = centre
    double highPercent = 0.0;
    std::vector<LevelMargin> levels = {};
};

struct ContactReading {
    long bounces = 0;  // in all
    double longestMs = 0.0;
    long bouncedClosures = 0;  // of so many:
    long closures = 0;
};

// With the uncertainty as a guard band; open: the limit lies inside it, and more characters may settle it.
enum class Judgement { in, out, open };

struct JudgedReading {
    std::string key;  // as in the JSON reading
    Judgement judgement = Judgement::open;
    double limit = 0.0;           // percent
    std::optional<long> more{};   // open: about so many more characters settle it; empty: none can
    bool missing = false;         // open for want of a reading: no nominal speed is known to hold it against
    bool pulled = false;          // open while a fault pulls at it that is set aside; more characters do not settle it
    std::optional<int> window{};  // where more would, but the window takes no more: one that does; 0: all
};

struct Verdict {
    std::string limits;
    std::optional<bool> within;           // empty: nothing could be judged, or something is open and nothing is out
    std::vector<std::string> exceeded;    // JSON keys of the readings out of limits
    std::vector<JudgedReading> judged{};  // each reading that the limits speak of
};

// What the readings would be without the levers that are out of place and without what ends a short element.
struct SetAsideReading {
    double biasPercent = 0.0;
    double endPercent = 0.0;
    std::optional<double> errorPercent{};  // of the speed; empty: no nominal speed
};

struct Reading {
    InputReading input;
    TextReading text;
    SpeedReading speed;
    DistortionReading distortion;
    std::vector<InstantReading> instants;
    std::optional<std::vector<LevelReading>> levels;
    std::optional<MarginReading> margin;
    std::optional<ContactReading> contact;
    std::optional<DriveReading> drive;             // empty: no card was given
    std::optional<std::vector<Finding>> findings;  // worst first; empty optional: not looked for
    Verdict verdict;
    std::vector<std::string> notes;             // one sentence each
    std::optional<SetAsideReading> setAside{};  // empty: nothing to set aside
    bool valid() const { return distortion.biasPercent.has_value() || speed.baud.has_value(); }
};

}  // namespace trueunit
