// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_finder.h"

#include <gtest/gtest.h>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

class EdgeFinderOnKnownSignal : public ::testing::Test {
protected:
    EdgeFinderOnKnownSignal() {
        sender_.polesHz = {8.0};
        sender_.snrDb = 45.0;
        sender_.biasPercent = 5.0;
        heard_ = sender_.send(test::mixedText(40, 3));
        line_ = findLine(std::span(heard_).first(96000), sender_.rateHz, InputKind::loop, {});
    }

    // From the first sample on; what came out must never have been promised away by knownTo before.
    std::vector<Edge> found() {
        constexpr std::size_t kStep = 256;
        LineConditioner conditioner(*line_, sender_.rateHz, 0);
        EdgeFinder finder(sender_.rateHz, 0.5, 0);
        Conditioned conditioned;
        std::vector<Edge> edges;
        double promised = 0.0;
        for (std::size_t i = 0; i < heard_.size(); i += kStep) {
            const std::size_t before = edges.size();
            conditioned.clear();
            conditioner.push(std::span(heard_).subspan(i, std::min(kStep, heard_.size() - i)), conditioned);
            finder.push(conditioned, edges);
            for (std::size_t e = before; e < edges.size(); ++e) EXPECT_GT(edges[e].time, promised - 1.0);
            promised = finder.knownTo();
        }
        conditioned.clear();
        conditioner.finish(conditioned);
        finder.finish(conditioned, edges);
        return edges;
    }

    test::PlainSender sender_;
    std::vector<float> heard_;
    std::optional<FoundLine> line_;
};

TEST_F(EdgeFinderOnKnownSignal, HandsOutEveryInstantInOrderWhereItWas) {
    ASSERT_TRUE(line_);
    const std::vector<Edge> edges = found();
    ASSERT_EQ(edges.size(), sender_.instants.size());
    for (std::size_t i = 0; i < edges.size(); ++i) {
        EXPECT_EQ(edges[i].up, sender_.instants[i].toMark);
        EXPECT_FALSE(edges[i].glitch);
        EXPECT_EQ(edges[i].bounces, 0);
        EXPECT_NEAR(edges[i].time / sender_.rateHz, sender_.instants[i].seconds, 0.004 * 0.022);
    }
}

TEST_F(EdgeFinderOnKnownSignal, AShortSpikeIsToldAsOneAndNoInstant) {
    ASSERT_TRUE(line_);
    const auto at = static_cast<std::size_t>((sender_.instants.back().seconds + 0.1) * sender_.rateHz);
    for (std::size_t i = at; i < at + 60; ++i) heard_[i] -= 0.5F;  // 1.25 ms of space while the line rests at mark
    const std::vector<Edge> edges = found();
    ASSERT_EQ(edges.size(), sender_.instants.size() + 1);
    EXPECT_TRUE(edges.back().glitch);
    EXPECT_NEAR(edges.back().time, static_cast<double>(at), 20.0);
}

}  // namespace
}  // namespace trueunit
