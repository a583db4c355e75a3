// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_finder.h"

#include <gtest/gtest.h>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

constexpr std::size_t kChunk = 256;

// Pushes chunk by chunk until a line is found; returns the number of samples that took.
std::size_t pushUntilFound(LineFinder& finder, const std::vector<float>& heard, std::uint64_t first = 0) {
    for (std::size_t i = 0; i + kChunk <= heard.size(); i += kChunk)
        if (finder.push(std::span(heard).subspan(i, kChunk), first + i, true)) return i + kChunk;
    return 0;
}

std::vector<float> keyed(double leadIn) {
    test::PlainSender sender;
    sender.leadIn = leadIn;
    sender.polesHz = {8.0};
    sender.snrDb = 45.0;
    return sender.send(test::mixedText(20, 3));
}

TEST(LineFinder, FindsALineWithinTwoSecondsOfRunningTapeAndHandsOverAllItHeard) {
    LineFinder finder(48000.0, InputKind::automatic, {});
    const std::vector<float> heard = keyed(0.4);
    const std::size_t used = pushUntilFound(finder, heard, 1000);
    ASSERT_GT(used, 0U);
    EXPECT_LT(static_cast<double>(used) / 48000.0, 0.4 + 2.0);
    EXPECT_EQ(finder.heldFrom(), 1000U);
    EXPECT_FALSE(finder.found().tones);
    EXPECT_NEAR(finder.found().fit.swing, 0.5, 0.03);
    const std::vector<float> held = finder.release();
    ASSERT_EQ(held.size(), used);
    EXPECT_TRUE(std::equal(held.begin(), held.end(), heard.begin()));
}

TEST(LineFinder, WaitsThroughALongRestAndHoldsSixSecondsAtMost) {
    LineFinder finder(48000.0, InputKind::automatic, {});
    const std::vector<float> heard = keyed(9.0);
    const std::size_t used = pushUntilFound(finder, heard);
    ASSERT_GT(used, 0U);
    EXPECT_LT(static_cast<double>(used) / 48000.0, 9.0 + 2.5);
    const std::uint64_t from = finder.heldFrom();
    const std::vector<float> held = finder.release();
    EXPECT_LE(static_cast<double>(held.size()) / 48000.0, 6.0);
    EXPECT_EQ(from + held.size(), used);
    EXPECT_LT(static_cast<double>(from) / 48000.0, 9.0);  // the first character is among them
}

TEST(LineFinder, FindsALineByKeysPressedOneByOne) {
    test::PlainSender sender;
    sender.polesHz = {20.0};
    sender.snrDb = 30.0;
    sender.stopUnits = 170.0;  // 3.7 s of rest
    LineFinder finder(48000.0, InputKind::automatic, {});
    ASSERT_GT(pushUntilFound(finder, sender.send(test::mixedText(6, 3))), 0U);
    EXPECT_NEAR(finder.found().fit.swing, 0.5, 0.02);
}

TEST(LineFinder, LooksForNothingInSilence) {
    LineFinder finder(48000.0, InputKind::automatic, {});
    const std::vector<float> heard = keyed(0.4);
    for (std::size_t i = 0; i + kChunk <= heard.size(); i += kChunk)
        ASSERT_FALSE(finder.push(std::span(heard).subspan(i, kChunk), i, false));  // told that nothing is heard
}

TEST(LineFinder, AShortRecordingCanBeLookedAtAtItsEnd) {
    LineFinder finder(48000.0, InputKind::automatic, {});
    EXPECT_FALSE(finder.lookNow());
    std::vector<float> heard = keyed(0.05);
    heard.resize(40000);  // 0.8 s: no look of its own yet
    EXPECT_EQ(pushUntilFound(finder, heard), 0U);
    EXPECT_TRUE(finder.lookNow());
}

TEST(LineFinder, ABareLoopIsNotTakenForTonesWhenTonesAreWanted) {
    const std::vector<float> heard = keyed(0.4);
    const auto stretch = std::span(heard).first(96000);
    EXPECT_TRUE(findLine(stretch, 48000.0, InputKind::loop, {}));
    EXPECT_FALSE(findLine(stretch, 48000.0, InputKind::tone, {}));
    EXPECT_FALSE(findLine(stretch, 48000.0, InputKind::twoTone, {}));
}

}  // namespace
}  // namespace trueunit
