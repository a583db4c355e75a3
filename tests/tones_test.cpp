// SPDX-License-Identifier: GPL-3.0-or-later
// The front ends for keyed tones: finder, demodulator, and the finder of a line in whatever comes in.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/condition/line_finder.h"
#include "core/condition/tone_demodulator.h"
#include "core/condition/tone_finder.h"
#include "tests/support/keyed_tones.h"
#include "tests/support/texts.h"
#include "tests/support/white_noise.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

constexpr double kRate = 48000.0;

std::vector<float> sent(const KeyedTones& tones, PlainSender& sender) { return tones.send(sender, mixedText(20, 3)); }

std::vector<float> sent(const KeyedTones& tones) {
    PlainSender sender;
    return sent(tones, sender);
}

// Mean lateness of the line's crossings of one half behind the instants of one direction, samples.
double meanDelay(const std::vector<float>& line, const PlainSender& sender, bool toMark) {
    double sum = 0.0;
    int n = 0;
    for (const auto& instant : sender.instants) {
        if (instant.toMark != toMark) continue;
        const auto from = static_cast<std::size_t>(instant.seconds * kRate);
        for (std::size_t i = from; i + 1 < std::min(line.size(), from + 900); ++i) {
            if ((line[i] < 0.5F) == (line[i + 1] < 0.5F) || (line[i + 1] > line[i]) != toMark) continue;
            const double part = (0.5 - line[i]) / (line[i + 1] - line[i]);
            sum += static_cast<double>(i) + part - instant.seconds * kRate;
            ++n;
            break;
        }
    }
    return n == 0 ? 1e9 : sum / n;
}

// The line between 0 and 1, by what it rests at in the lead-in and reaches on the other side.
std::vector<float> demodulated(const Tones& tones, const std::vector<float>& heard) {
    ToneDemodulator demodulator(tones, kRate);
    std::vector<float> line;
    demodulator.push(heard, line);
    std::vector<float> sorted(line.begin() + 2000, line.end());
    std::sort(sorted.begin(), sorted.end());
    const float low = sorted[sorted.size() / 20];
    const float high = sorted[sorted.size() * 19 / 20];
    for (float& v : line) v = (v - low) / (high - low);
    return line;
}

}  // namespace

TEST(ToneFinder, OneInterruptedToneIsFoundWithinItsPeak) {
    for (const double hz : {600.0, 1000.0, 2295.0, 3000.0}) {
        const auto tones = findTones(sent({.markHz = hz}), kRate, InputKind::automatic);
        ASSERT_TRUE(tones) << hz;
        EXPECT_EQ(tones->kind, InputKind::tone) << hz;
        EXPECT_NEAR(tones->lowHz, hz, 5.0);
    }
}

TEST(ToneFinder, TwoTonesAreFoundWhateverTheirDistance) {
    for (const double space : {1085.0, 1170.0, 1850.0}) {
        const auto tones = findTones(sent({.markHz = 1000.0, .spaceHz = space}), kRate, InputKind::automatic);
        ASSERT_TRUE(tones) << space;
        EXPECT_EQ(tones->kind, InputKind::twoTone) << space;
        EXPECT_NEAR(tones->lowHz, 1000.0, 15.0);
        EXPECT_NEAR(tones->highHz, space, 15.0);
    }
}

TEST(ToneFinder, ABareLoopAndNoiseCarryNoTones) {
    PlainSender sender;
    EXPECT_FALSE(findTones(sender.send(mixedText(20, 3)), kRate, InputKind::automatic));
    EXPECT_FALSE(findTones(whiteNoise(96000), kRate, InputKind::automatic));
    EXPECT_FALSE(findTones(sent({}), kRate, InputKind::loop)) << "nor is one looked for when a loop is wanted";
}

TEST(ToneDemodulator, BothDirectionsAreDelayedAlikeAndAsStated) {
    for (const Tones& tones : {Tones{InputKind::tone, 1000.0, 0.0}, Tones{InputKind::twoTone, 1275.0, 1445.0}}) {
        PlainSender sender;
        const KeyedTones keyed = tones.kind == InputKind::tone
                                     ? KeyedTones{.markHz = 1000.0, .snrDb = 60.0}
                                     : KeyedTones{.markHz = 1445.0, .spaceHz = 1275.0, .snrDb = 60.0};
        const auto line = demodulated(tones, keyed.send(sender, mixedText(120, 3)));
        const double toMark = meanDelay(line, sender, true);
        const double toSpace = meanDelay(line, sender, false);
        const ToneDemodulator stated(tones, kRate);
        EXPECT_NEAR(toMark, toSpace, 5.0) << tones.lowHz;  // 0.5 % of 22 ms; one tone's level is placed by eye here
        EXPECT_NEAR(0.5 * (toMark + toSpace), stated.delaySamples(), 5.0) << tones.lowHz;
        EXPECT_GT(stated.riseSeconds(), 0.0);
    }
}

TEST(ToneDemodulator, DoesNotDependOnHowTheSamplesAreChopped) {
    for (const Tones& tones : {Tones{InputKind::tone, 1000.0, 0.0}, Tones{InputKind::twoTone, 1275.0, 1445.0}}) {
        const auto heard = sent({.markHz = tones.lowHz, .spaceHz = tones.highHz});
        ToneDemodulator once(tones, kRate);
        ToneDemodulator chopped(tones, kRate);
        std::vector<float> whole;
        std::vector<float> pieces;
        once.push(heard, whole);
        std::mt19937 random(1);
        for (std::size_t at = 0; at < heard.size();) {
            const std::size_t n = std::min<std::size_t>(1 + random() % 700, heard.size() - at);
            chopped.push({heard.data() + at, n}, pieces);
            at += n;
        }
        EXPECT_EQ(whole, pieces);
    }
}

TEST(LineFinder, HandsOverEverySampleOnceALineIsThere) {
    PlainSender sender;
    const auto samples = sender.send(mixedText(20, 3));
    LineFinder finder(kRate, InputKind::automatic, {});
    std::uint64_t now = 0;
    bool found = false;
    for (std::size_t at = 0; at + 4800 <= samples.size() && !found; at += 4800, now += 4800)
        found = finder.push({samples.data() + at, 4800}, now, true);
    ASSERT_TRUE(found);
    EXPECT_FALSE(finder.found().tones) << "a bare loop";
    EXPECT_EQ(finder.heldFrom(), 0U);
    const auto held = finder.release();
    ASSERT_EQ(held.size(), now);
    EXPECT_TRUE(std::equal(held.begin(), held.end(), samples.begin()));
}

TEST(LineFinder, TheTonesOfTheKeyingComeWithTheLine) {
    const auto found = findLine(sent({.markHz = 2125.0, .spaceHz = 2295.0}), kRate, InputKind::automatic, {});
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->tones);
    EXPECT_EQ(found->tones->kind, InputKind::twoTone);
    const std::vector<double> set = {2130.0, 2300.0};
    const auto told = findLine(sent({.markHz = 2125.0, .spaceHz = 2295.0}), kRate, InputKind::twoTone, set);
    ASSERT_TRUE(told && told->tones);
    EXPECT_EQ(told->tones->lowHz, 2130.0);
    EXPECT_EQ(told->tones->highHz, 2300.0);
}

TEST(LineFinder, NoiseIsNoLine) { EXPECT_FALSE(findLine(whiteNoise(192000), kRate, InputKind::automatic, {})); }
