// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/measure/slip_places.h"
#include "core/measure/tape_text.h"

namespace trueunit {

// What one level should have sent, and did.
struct LevelCount {
    int level = 0;  // 1 = first sent
    long marksExpected = 0;
    long marksMissed = 0;
    long spacesExpected = 0;
    long spacesFilled = 0;
};

// A character that the feed sent in place of another reads as lost marks or filled spaces while it is not told for a
// slip: so few beside slips prove nothing of the levels. None at all proves nothing either way.
constexpr bool mayBeSlips(long hits, long slips) { return hits <= 3 && hits <= slips; }

// Where a character lies on the tape, and how the feed brought it there.
struct TapePlace {
    std::optional<unsigned> hole;  // the combination there; empty: not known
    bool tells = false;            // what came is right or wrong beyond doubt: not about a slip or beside unknown text
    bool again = false;            // sent once before
    std::vector<unsigned> passed;  // combinations passed over just before, in their order
};

// The characters of a window held against the text of their tape.
struct TapeStudy {
    TextSource source = TextSource::given;
    std::size_t loopLength = 0;      // characters once round; of the sentence for the fox
    long compared = 0;               // characters
    long repeated = 0;               // feed slips: sent once more
    long skipped = 0;                // feed slips: passed over
    long wrong = 0;                  // characters that are not what they should be, beyond what may be slips
    long strange = 0;                // of them more than two levels off: no level's fault
    double costPerCharacter = 0.0;   // of the alignment
    std::vector<LevelCount> levels;  // by level
    std::vector<TapePlace> places;   // of the last characters aligned, newest last
    std::optional<SlipPlaces> slipPlaces{};
    bool othersBetween = false;  // characters that the given text does not hold, before it begins anew
    int otherCharacters = 0;     // of the given text, that every round has otherwise: taken as the tape's own
    std::string round = {};      // what a round of it prints; see printOf()
};

// Looks in all of `sent` for the text, and counts over the last `counted` of them. Empty when it is not known what the
// tape should send, or when it clearly sends something else. `given` is the person's text, empty when there is none.
std::optional<TapeStudy> studyTape(const CodeTable& table, std::string_view given, std::span<const SentCode> sent,
                                   std::size_t counted);

// How often each level was at mark, without any text: of the characters that came whole.
struct LevelShare {
    int level = 0;
    long marks = 0;
    long characters = 0;
};
std::vector<LevelShare> levelShares(std::span<const SentCode> sent, int levels);

// The 95 % interval of a rate of which `hits` of `tries` were seen (E. B. Wilson, 1927). Fractions.
struct RateInterval {
    double low = 0.0;
    double high = 1.0;
};
RateInterval rateInterval(long hits, long tries);

}  // namespace trueunit
