// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_conditioner.h"

#include <gtest/gtest.h>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

struct Found {
    std::vector<float> heard;
    FoundLine line;
};

Found foundAtPole(double hz, double seconds) {
    test::PlainSender sender;
    sender.polesHz = {hz};
    sender.snrDb = 45.0;
    Found f;
    f.heard = sender.send(test::mixedText(60, 3));
    const auto line = findLine(std::span(f.heard).first(static_cast<std::size_t>(seconds * sender.rateHz)),
                               sender.rateHz, InputKind::loop, {});
    EXPECT_TRUE(line);
    f.line = line.value_or(FoundLine{});
    return f;
}

TEST(LineConditioner, KnowsTheCouplingBetterAfterEightSeconds) {
    const Found f = foundAtPole(0.7, 1.25);
    LineConditioner conditioner(f.line, test::PlainSender{}.rateHz, 0);
    Conditioned out;
    conditioner.push(f.heard, out);
    const auto corners = conditioner.line().fit.coupling.cornersHz();
    ASSERT_EQ(corners.size(), 1U);
    EXPECT_NEAR(corners[0], 0.7, 0.03);
}

TEST(LineConditioner, GivesASampleOfLineForEachHeardHoweverTheyCome) {
    const Found f = foundAtPole(8.0, 2.0);
    const auto conditioned = [&](std::size_t step) {
        LineConditioner conditioner(f.line, test::PlainSender{}.rateHz, 0);
        Conditioned out;
        for (std::size_t i = 0; i < f.heard.size(); i += step)
            conditioner.push(std::span(f.heard).subspan(i, std::min(step, f.heard.size() - i)), out);
        conditioner.finish(out);
        return out.line;
    };
    const std::vector<float> whole = conditioned(f.heard.size());
    EXPECT_EQ(whole.size(), f.heard.size());
    // What is measured once more is measured on all that came by then.
    EXPECT_EQ(conditioned(256), conditioned(64));
}

}  // namespace
}  // namespace trueunit
