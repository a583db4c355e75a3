// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/firm_moment.h"

#include <gtest/gtest.h>

#include "core/frame/code_table.h"
#include "core/pipeline.h"
#include "core/report/comparison.h"
#include "tests/support/plain_sender.h"

namespace trueunit {
namespace {

std::shared_ptr<const Snapshot> heard(int characters, int window) {
    test::PlainSender sender;
    sender.biasPercent = 4.0;
    sender.scatterPercent = 0.4;
    sender.snrDb = 40.0;
    const auto ry = encode(*findCode("ita2"), "RY");
    std::vector<unsigned> codes;
    for (int i = 0; i < characters; ++i) codes.push_back(ry[static_cast<std::size_t>(i % 2)]);
    Options options;
    options.windowCharacters = window;
    Pipeline pipeline(sender.rateHz, options, {});
    pipeline.push(sender.send(codes));
    pipeline.finish();
    return std::make_shared<const Snapshot>(pipeline.snapshot());
}

TEST(FirmMoment, RestsOnMoreThanAWindowForAdjustingHas) {
    const auto moment = heard(100, 8), firm = firmMoment(moment);
    ASSERT_EQ(moment->windowUsed, 8U);
    EXPECT_GE(firm->windowUsed, kFirmCharacters);
    EXPECT_EQ(static_cast<std::size_t>(firm->reading.text.characters), firm->windowUsed);
    EXPECT_NEAR(firm->reading.distortion.biasPercent->value, 4.0, 0.1);
    EXPECT_GT(firm->dots.size(), moment->dots.size());
    EXPECT_EQ(firm->seconds, moment->seconds);
}

TEST(FirmMoment, IsTheMomentItselfWhereThatIsFirmOrThereIsNoMore) {
    const auto longer = heard(100, 0), few = heard(8, 8);
    EXPECT_EQ(firmMoment(longer), longer);
    EXPECT_EQ(firmMoment(few), few);
    EXPECT_EQ(firmMoment(nullptr), nullptr);
}

TEST(FirmMoment, NeverMixesWhatWasBeforeANudgeWithWhatCameAfter) {
    auto turned = std::make_shared<Snapshot>(*heard(100, 8));
    Nudge nudge;
    nudge.number = turned->traces.back()->number - 10;
    turned->nudges.push_back(nudge);
    EXPECT_EQ(firmMoment(turned)->windowUsed, 8U);
    turned->nudges.back().number = turned->traces.back()->number - 80;
    EXPECT_GE(firmMoment(turned)->windowUsed, kFirmCharacters);
}

}  // namespace
}  // namespace trueunit
