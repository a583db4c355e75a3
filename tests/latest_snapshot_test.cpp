// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/latest_snapshot.h"

#include <gtest/gtest.h>

#include <thread>

namespace trueunit {
namespace {

Snapshot numbered(std::uint64_t serial) {
    Snapshot s;
    s.serial = serial;
    s.seconds = static_cast<double>(serial);
    s.stateText = std::to_string(serial);
    return s;
}

TEST(LatestSnapshot, IsEmptyUntilTheFirstIsPublished) {
    LatestSnapshot latest;
    EXPECT_EQ(latest.take(), nullptr);
    latest.publish(numbered(1));
    ASSERT_NE(latest.take(), nullptr);
    EXPECT_EQ(latest.take()->serial, 1U);
}

TEST(LatestSnapshot, WhatWasTakenStaysAsItWasWhenANewerOneComes) {
    LatestSnapshot latest;
    latest.publish(numbered(1));
    const std::shared_ptr<const Snapshot> frozen = latest.take();
    latest.publish(numbered(2));
    EXPECT_EQ(frozen->serial, 1U);
    EXPECT_EQ(latest.take()->serial, 2U);
}

TEST(LatestSnapshot, TwoThreadsNeverSeeAnOlderOrAMixedOne) {
    constexpr std::uint64_t kLast = 20000;
    LatestSnapshot latest;
    std::thread writer([&] {
        for (std::uint64_t i = 1; i <= kLast; ++i) latest.publish(numbered(i));
    });
    std::uint64_t newest = 0;
    std::uint64_t mixed = 0;
    std::uint64_t older = 0;
    while (newest < kLast) {
        const std::shared_ptr<const Snapshot> s = latest.take();
        if (!s) continue;
        older += s->serial < newest ? 1U : 0U;
        mixed += s->stateText != std::to_string(s->serial) || s->seconds != static_cast<double>(s->serial) ? 1U : 0U;
        newest = s->serial;
    }
    writer.join();
    EXPECT_EQ(older, 0U);
    EXPECT_EQ(mixed, 0U);
}

}  // namespace
}  // namespace trueunit
