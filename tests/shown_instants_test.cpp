// SPDX-License-Identifier: GPL-3.0-or-later
// A fault that hangs on the element before, through the whole path: the independent sender runs at its nominal speed.
#include "core/report/shown_instants.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/pipeline.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

Reading readingOf(double latePercent, int level, double speed = 1.0) {
    test::PlainSender sender;
    sender.unit = speed * sender.nominal;
    sender.scatterPercent = 0.3;
    sender.extraPercent = [=](int k, bool, double) { return k == level ? latePercent : 0.0; };
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    pipeline.push(sender.send(test::mixedText(300, 4)));
    pipeline.finish();
    return pipeline.reading();
}

TEST(ShownInstants, AreThoseReadWhereNothingIsSetAside) {
    const Reading r = readingOf(0.0, 1, 1.004);
    ASSERT_FALSE(r.instants.empty());
    const ShownInstants shown = shownInstants(r);
    EXPECT_FALSE(shown.withoutTheFault);
    EXPECT_DOUBLE_EQ(shown.unitSeconds, 1e-3 * *r.speed.unitMs);
    for (std::size_t i = 0; i < r.instants.size(); ++i)
        EXPECT_DOUBLE_EQ(shown.instants[i].meanPercent, r.instants[i].meanPercent);
}

// A lever at the fifth place lengthens the unit as read; without that only its own instants are out of place.
TEST(ShownInstants, ALeverOutOfPlaceLeavesTheOthersWhereTheyAre) {
    const Reading r = readingOf(12.0, 5);
    double pulled = 0.0;
    for (const InstantReading& i : r.instants) pulled = std::max(pulled, i.k == 5 ? 0.0 : std::abs(i.meanPercent));
    EXPECT_GT(pulled, 2.0) << "nothing to set aside";
    const ShownInstants shown = shownInstants(r);
    EXPECT_TRUE(shown.withoutTheFault);
    EXPECT_NEAR(shown.unitSeconds, 0.022, 0.022 * 5e-4);
    for (const InstantReading& i : shown.instants) {
        EXPECT_NEAR(i.meanPercent, i.k == 5 ? 12.0 : 0.0, 0.3) << i.k;
        EXPECT_LT(i.minPercent, i.meanPercent);
        EXPECT_GT(i.maxPercent, i.meanPercent);
    }
}

TEST(ShownInstants, NeedANominalSpeedToSetAnythingAside) {
    Reading r = readingOf(12.0, 5);
    r.speed.nominalUnitMs.reset();
    EXPECT_FALSE(shownInstants(r).withoutTheFault);
    r.speed.unitMs.reset();
    EXPECT_EQ(shownInstants(r).unitSeconds, 0.0);
}

}  // namespace
}  // namespace trueunit
