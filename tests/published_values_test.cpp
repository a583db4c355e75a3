// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument against values published elsewhere; the source stands beside each.
#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "core/frame/code_table.h"
#include "core/measure/timing.h"
#include "core/report/compose_reading.h"
#include "core/units.h"
#include "tests/support/character_builder.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;

// ITU-T Recommendation S.1, International Telegraph Alphabet No. 2; the US figures are a national variant. Levels 1 to
// 5 in sending order; "" prints nothing by itself.
struct Ita2Row {
    const char* levels;
    const char* letter;
    const char* figure;
    const char* usFigure;
};
constexpr std::array kIta2 = {
    Ita2Row{"11000", "A", "-", "-"},    Ita2Row{"10011", "B", "?", "?"},  Ita2Row{"01110", "C", ":", ":"},
    Ita2Row{"10010", "D", "", "$"},     Ita2Row{"10000", "E", "3", "3"},  Ita2Row{"10110", "F", "", "!"},
    Ita2Row{"01011", "G", "", "&"},     Ita2Row{"00101", "H", "", "#"},   Ita2Row{"01100", "I", "8", "8"},
    Ita2Row{"11010", "J", "", "'"},     Ita2Row{"11110", "K", "(", "("},  Ita2Row{"01001", "L", ")", ")"},
    Ita2Row{"00111", "M", ".", "."},    Ita2Row{"00110", "N", ",", ","},  Ita2Row{"00011", "O", "9", "9"},
    Ita2Row{"01101", "P", "0", "0"},    Ita2Row{"11101", "Q", "1", "1"},  Ita2Row{"01010", "R", "4", "4"},
    Ita2Row{"10100", "S", "'", ""},     Ita2Row{"00001", "T", "5", "5"},  Ita2Row{"11100", "U", "7", "7"},
    Ita2Row{"01111", "V", "=", ";"},    Ita2Row{"11001", "W", "2", "2"},  Ita2Row{"10111", "X", "/", "/"},
    Ita2Row{"10101", "Y", "6", "6"},    Ita2Row{"10001", "Z", "+", "\""}, Ita2Row{"00010", "", "", ""},
    Ita2Row{"01000", "\n", "\n", "\n"}, Ita2Row{"11111", "", "", ""},     Ita2Row{"11011", "", "", ""},
    Ita2Row{"00100", " ", " ", " "},    Ita2Row{"00000", "", "", ""},
};

unsigned combination(const char* levels) {
    unsigned code = 0;
    for (int i = 0; i < 5; ++i) code |= levels[i] == '1' ? 1U << i : 0U;
    return code;
}

const unsigned kLetters = combination("11111");
const unsigned kFigures = combination("11011");

TEST(PublishedIta2, AllThirtyTwoCombinationsPrintWhatRecommendationS1Says) {
    std::map<unsigned, const Ita2Row*> seen;
    for (const Ita2Row& row : kIta2) seen[combination(row.levels)] = &row;
    ASSERT_EQ(seen.size(), 32U);
    for (const auto& [code, row] : seen) {
        if (code == kLetters || code == kFigures) continue;
        Decoder letters(*findCode("ita2"));
        EXPECT_EQ(letters.text(code), row->letter) << row->levels;
        Decoder figures(*findCode("ita2"));
        figures.text(kFigures);
        EXPECT_EQ(figures.text(code), row->figure) << row->levels;
        Decoder us(*findCode("ita2-us"));
        us.text(kFigures);
        EXPECT_EQ(us.text(code), row->usFigure) << row->levels;
    }
}

TEST(PublishedIta2, TheShiftsHoldUntilTheOtherOneComes) {
    Decoder decoder(*findCode("ita2"));
    const unsigned w = combination("11001");
    EXPECT_EQ(decoder.text(w), "W");
    EXPECT_EQ(decoder.text(kFigures), "");
    EXPECT_EQ(decoder.text(w), "2");
    EXPECT_EQ(decoder.text(combination("00100")), " ");
    EXPECT_EQ(decoder.text(w), "2");  // no shift on space: S.1 knows none
    EXPECT_EQ(decoder.text(kLetters), "");
    EXPECT_EQ(decoder.text(w), "W");
}

TEST(PublishedIta2, ALineOfEverySignSurvivesASentSignal) {
    // The whole alphabet in both cases, sent by the plain sender and read by the pipeline.
    std::vector<unsigned> codes;
    std::string expected;
    for (const bool figures : {false, true}) {
        codes.push_back(figures ? kFigures : kLetters);
        for (const Ita2Row& row : kIta2) {
            const unsigned code = combination(row.levels);
            if (code == kLetters || code == kFigures) continue;
            codes.push_back(code);
            expected += figures ? row.figure : row.letter;
        }
    }
    test::PlainSender sender;
    EXPECT_EQ(test::measureTwice(sender.send(codes), sender.rateHz).reading().text.decoded, expected);
}

// Derived: operations per minute = 60 baud / units per character, words per minute a sixth of that (a word is five
// letters and a space). The row of 45.45 baud and 7.42 units is that of US Army signal course SS0330.
struct SpeedRow {
    double baud;
    double unitMs;
    double units;
    double characterMs;
    double operations;
    double words;
};
constexpr std::array kSpeeds = {
    SpeedRow{45.45, 22.000, 7.00, 154.00, 389.6, 64.9}, SpeedRow{45.45, 22.000, 7.42, 163.24, 367.6, 61.3},
    SpeedRow{45.45, 22.000, 7.50, 165.00, 363.6, 60.6}, SpeedRow{50.0, 20.000, 7.00, 140.00, 428.6, 71.4},
    SpeedRow{50.0, 20.000, 7.42, 148.40, 404.3, 67.4},  SpeedRow{50.0, 20.000, 7.50, 150.00, 400.0, 66.7},
    SpeedRow{56.88, 17.581, 7.42, 130.45, 460.0, 76.7}, SpeedRow{74.2, 13.477, 7.42, 100.00, 600.0, 100.0},
    SpeedRow{75.0, 13.333, 7.50, 100.00, 600.0, 100.0}, SpeedRow{100.0, 10.000, 7.50, 75.00, 800.0, 133.3},
};

Reading readingOf(const CharacterBuilder& builder, const std::vector<unsigned>& codes, const Options& options = {}) {
    const CharacterLog log = test::logOf(builder.characters(codes));
    WindowOfCharacters all;
    all.window = all.recent = log.last(0);
    return composeReading(all, options, Limits{}, InputReading{});
}

TEST(PublishedSpeeds, EachRowOfTheSpeedsTableComesOut) {
    for (const SpeedRow& row : kSpeeds) {
        EXPECT_NEAR(1e3 * namedSpeed(row.baud).unitSeconds, row.unitMs, 0.0005) << row.baud;
        CharacterBuilder builder;
        builder.unit = namedSpeed(row.baud).unitSeconds;
        builder.stopUnits = row.units - 6.0;
        const Reading r = readingOf(builder, test::allCodes());
        EXPECT_EQ(r.speed.nominalBaud, std::optional(row.baud));
        EXPECT_NEAR(*r.speed.nominalUnitMs, row.unitMs, 0.0005);
        EXPECT_NEAR(r.speed.characterMs->value, row.characterMs, 0.005);
        EXPECT_NEAR(r.speed.operationsPerMinute->value, row.operations, 0.06);  // the table rounds 459.95 to 460.0
        EXPECT_NEAR(r.speed.operationsPerMinute->value / 6.0, row.words, 0.05);
        EXPECT_NEAR(r.speed.stopUnits->value, row.units - 6.0, 1e-6);
        EXPECT_NEAR(r.speed.errorPercent->value, 0.0, 1e-6);
    }
}

TEST(PublishedSpeeds, ElevenUnitsAtAHundredAndTenBaudAreTenCharactersASecond) {
    CharacterBuilder builder;
    builder.levels = 8;
    builder.unit = namedSpeed(110.0).unitSeconds;
    builder.stopUnits = 2.0;
    const auto characters = builder.characters({0x55, 0x2A, 0x7F, 0x00, 0x41});
    const auto period = characterPeriod(test::pointersTo(characters), builder.unit, 8);
    ASSERT_TRUE(period);
    EXPECT_NEAR(period->value, 0.100, 1e-9);
}

TEST(PublishedSpeeds, SixUnitsAndAStopOfThirtyOneMillisecondsMake368Operations) {
    // US Army signal course SS0330: 163 ms, 368 operations, 61.3 words a minute. A signal, measured.
    test::PlainSender sender;
    sender.stopUnits = 31.0 / 22.0;
    const Reading r = test::measureTwice(sender.send(test::allCodes()), sender.rateHz).reading();
    ASSERT_TRUE(r.speed.characterMs && r.speed.operationsPerMinute);
    EXPECT_NEAR(r.speed.characterMs->value, 163.0, 0.02);
    EXPECT_EQ(std::lround(r.speed.operationsPerMinute->value), 368);
    EXPECT_NEAR(r.speed.operationsPerMinute->value / 6.0, 61.3, 0.05);
}

// Bell System Technical Journal, October 1938, pp. 627-628: with the start instant as reference, bias moves the
// space-to-mark instants (marking: early, spacing: late), end distortion the mark-to-space instants inside the
// character (marking: late, spacing: early).
struct MovedInstant {
    const char* kind;
    Condition to;
    double displacementPercent;  // late positive
    double bias;
    double end;
};
constexpr std::array kMoved = {
    MovedInstant{"marking bias", Condition::mark, -10.0, 10.0, 0.0},
    MovedInstant{"spacing bias", Condition::mark, 10.0, -10.0, 0.0},
    MovedInstant{"marking end distortion", Condition::space, 10.0, 0.0, 10.0},
    MovedInstant{"spacing end distortion", Condition::space, -10.0, 0.0, -10.0},
};

TEST(PublishedSigns, BiasAndEndHaveTheSignsOfTheBellSystemTechnicalJournal) {
    for (const MovedInstant& m : kMoved) {
        CharacterBuilder builder;
        builder.extraPercent = [&m](std::uint64_t, int, Condition to) {
            return to == m.to ? m.displacementPercent : 0.0;
        };
        const Reading r = readingOf(builder, test::allCodes());
        EXPECT_NEAR(r.distortion.biasPercent->value, m.bias, 1e-6) << m.kind;
        EXPECT_NEAR(r.distortion.endPercent->value, m.end, 1e-6) << m.kind;
        for (const InstantReading& i : r.instants)
            EXPECT_NEAR(i.meanPercent, i.to == m.to ? m.displacementPercent : 0.0, 1e-6)
                << m.kind << ", instant " << i.k;
    }
}

TEST(PublishedSigns, HoldForASignalMeasuredFromEndToEnd) {
    for (const MovedInstant& m : kMoved) {
        test::PlainSender sender;
        sender.polesHz = {8.0};
        sender.extraPercent = [&m](int, bool toMark, double) {
            return toMark == (m.to == Condition::mark) ? m.displacementPercent : 0.0;
        };
        const Reading r = test::measureTwice(sender.send(test::allCodes()), sender.rateHz).reading();
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent) << m.kind;
        EXPECT_NEAR(r.distortion.biasPercent->value, m.bias, 0.1) << m.kind;
        EXPECT_NEAR(r.distortion.endPercent->value, m.end, 0.1) << m.kind;
    }
}

TEST(PublishedSigns, BiasOfSingleUnitsIsHalfTheDifferenceOfMarkAndSpaceLengths) {
    // Derived: (t_mark - t_space) / 2 T for reversals, marking positive.
    CharacterBuilder builder;
    builder.biasPercent = 6.0;
    const Character y = builder.character(0, combination("10101"));  // to mark at 1, to space at 2, to mark at 3 ...
    ASSERT_GE(y.instants.size(), 3U);
    const double mark = y.instants[1].seconds - y.instants[0].seconds;
    const double space = y.instants[2].seconds - y.instants[1].seconds;
    EXPECT_NEAR(100.0 * (mark - space) / (2.0 * builder.unit), 6.0, 1e-9);
    EXPECT_NEAR(readingOf(builder, test::allCodes()).distortion.biasPercent->value, 6.0, 1e-6);
}

TEST(PublishedDistortion, ThreeQuartersOfAPercentOfSpeedAloneMakeFourAndAHalfAtTheStop) {
    // Derived from the definitions of ITU-T R.140 (gross: nominal grid, synchronous: actual grid): 6 x 0.75 = 4.5,
    // 5 x 0.75 = 3.75. The 0.75 % is the tolerance of ITU-T S.3, from memory.
    CharacterBuilder builder;
    builder.unit = builder.nominal * 1.0075;
    const std::vector<Character> characters = builder.characters(test::allCodes());
    EXPECT_NEAR(*startStopDistortion(test::pointersTo(characters), builder.nominal), 4.5, 1e-9);
    EXPECT_NEAR(*startStopDistortion(test::pointersTo(characters), builder.unit), 0.0, 1e-9);
    double atFive = 0.0;
    for (const Character& c : characters)
        for (const Instant& i : c.instants)
            if (i.k == 5) atFive = std::max(atFive, displacementPercent(i, builder.nominal));
    EXPECT_NEAR(atFive, 3.75, 1e-9);
    const Reading r = readingOf(builder, test::allCodes());
    EXPECT_NEAR(*r.distortion.grossPercent, 4.5, 1e-6);
    EXPECT_NEAR(*r.distortion.synchronousPercent, 0.0, 1e-6);
}

TEST(PublishedDistortion, TheSameComesOutOfASignalOnTheGridAndInTheReadings) {
    test::PlainSender sender;
    sender.unit = sender.nominal * 1.0075;
    Pipeline pipeline = test::measureTwice(sender.send(test::allCodes()), sender.rateHz);
    const Snapshot s = pipeline.snapshot();
    ASSERT_TRUE(s.reading.distortion.grossPercent && s.reading.distortion.synchronousPercent);
    EXPECT_NEAR(*s.reading.distortion.grossPercent, 4.5, 0.15);
    EXPECT_NEAR(*s.reading.distortion.synchronousPercent, 0.0, 0.15);
    ASSERT_FALSE(s.traces.empty());
    for (const auto& trace : s.traces)
        for (const TraceInstant& i : trace->instants) {
            EXPECT_NEAR(i.displacementPercent, 0.75 * i.k, 0.15) << "instant " << i.k;
        }
}

// Derived, brute force over all 32 codes: the part of a unit in which a receiver with a sampling window of 0.2 of a
// unit reads everything right; the instrument gives the range for a window of no width.
struct MarginRow {
    const char* signal;
    double bias;
    double end;
    double periodPercent;
    double low;
    double high;
};
constexpr double kSamplingWindowPercent = 20.0;
constexpr std::array kMargins = {
    MarginRow{"perfect", 0.0, 0.0, 0.0, 10.0, 90.0},
    MarginRow{"20 % marking bias", 20.0, 0.0, 0.0, 10.0, 70.0},
    MarginRow{"20 % spacing end", 0.0, -20.0, 0.0, 10.0, 70.0},
    MarginRow{"20 % spacing bias", -20.0, 0.0, 0.0, 30.0, 90.0},
    MarginRow{"20 % marking end", 0.0, 20.0, 0.0, 30.0, 90.0},
    MarginRow{"1.5 % slow", 0.0, 0.0, 1.5, 17.5, 93.0},
    MarginRow{"1.5 % fast", 0.0, 0.0, -1.5, 8.5, 81.0},
};

TEST(PublishedMargin, EachRowComesOutOfTheRecords) {
    for (const MarginRow& row : kMargins) {
        CharacterBuilder builder;
        builder.biasPercent = row.bias;
        builder.endPercent = row.end;
        builder.unit = builder.nominal * (1.0 + 0.01 * row.periodPercent);
        const auto characters = builder.characters(test::allCodes());
        const auto range = samplingRange(test::pointersTo(characters), builder.nominal, 5);
        ASSERT_TRUE(range) << row.signal;
        EXPECT_NEAR(100.0 * range->low + 0.5 * kSamplingWindowPercent, row.low, 1e-6) << row.signal;
        EXPECT_NEAR(100.0 * range->high - 0.5 * kSamplingWindowPercent, row.high, 1e-6) << row.signal;
    }
}

TEST(PublishedMargin, EachRowComesOutOfASignal) {
    for (const MarginRow& row : kMargins) {
        test::PlainSender sender;
        sender.biasPercent = row.bias;
        sender.endPercent = row.end;
        sender.unit = sender.nominal * (1.0 + 0.01 * row.periodPercent);
        const Reading r = test::measureTwice(sender.send(test::allCodes()), sender.rateHz).reading();
        ASSERT_TRUE(r.margin) << row.signal;
        EXPECT_NEAR(r.margin->lowPercent + 0.5 * kSamplingWindowPercent, row.low, 0.2) << row.signal;
        EXPECT_NEAR(r.margin->highPercent - 0.5 * kSamplingWindowPercent, row.high, 0.2) << row.signal;
    }
}

TEST(PublishedMargin, AnIdealReceiverReadsWithinTheRangeAndFailsBeyondIt) {
    // The range against a receiver written here: it looks at the line at (level + r) units after the start.
    CharacterBuilder builder;
    builder.biasPercent = 13.0;
    builder.endPercent = 7.0;
    builder.unit = builder.nominal * 1.006;
    const auto characters = builder.characters(test::allCodes());
    const auto range = samplingRange(test::pointersTo(characters), builder.nominal, 5);
    ASSERT_TRUE(range);
    const auto misread = [&](double r) {
        int wrong = 0;
        for (const Character& c : characters)
            for (int level = 1; level <= 5; ++level) {
                Condition seen = Condition::space;
                for (const Instant& i : c.instants)
                    if (i.seconds <= (level + r) * builder.nominal) seen = i.to;
                wrong += (seen == Condition::mark) != (((c.code >> (level - 1)) & 1U) != 0);
            }
        return wrong;
    };
    EXPECT_EQ(misread(range->low + 1e-6), 0);
    EXPECT_EQ(misread(0.5), 0);
    EXPECT_EQ(misread(range->high - 1e-6), 0);
    EXPECT_GT(misread(range->low - 1e-6), 0);
    EXPECT_GT(misread(range->high + 1e-6), 0);
}

}  // namespace
}  // namespace trueunit
