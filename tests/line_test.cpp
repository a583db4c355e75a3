// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/line.h"

#include <gtest/gtest.h>

#include <string>

namespace trueunit {
namespace {

using Edge = Scenario::Edge;
constexpr double kRate = 48000.0;

class LineTest : public testing::TestWithParam<Edge> {
protected:
    Scenario::Line setup(double riseUs, double fallUs) const { return {GetParam(), riseUs, fallUs, 1.0}; }

    // Level at one time of a line that opens at 0.1 s and closes at 0.2 s.
    double levelAt(double seconds, double riseUs = 500, double fallUs = 900) const {
        SimulatedLine line(setup(riseUs, fallUs), kRate);
        line.push(0.1, Condition::space);
        line.push(0.2, Condition::mark);
        for (double t = 0.0; t < seconds; t += 1e-4) line.levelAt(t);
        return line.levelAt(seconds);
    }
};

TEST_P(LineTest, RestsAtMarkAndReachesEitherLevel) {
    EXPECT_EQ(levelAt(0.05), 1.0);
    EXPECT_NEAR(levelAt(0.15), 0.0, 1e-8);
    EXPECT_NEAR(levelAt(0.25), 1.0, 1e-8);
}

TEST_P(LineTest, CrossesHalfTheSwingAtTheInstantInEitherDirection) {
    EXPECT_NEAR(levelAt(0.1), 0.5, 1e-9);
    EXPECT_NEAR(levelAt(0.2), 0.5, 1e-9);
}

TEST_P(LineTest, TakesTheStatedTimeFrom10To90PercentAndBack) {
    const auto timeAt = [&](double from, double level, bool rising) {  // bisection
        double low = from;
        double high = from + 0.006;
        for (int i = 0; i < 50; ++i) {
            const double middle = (low + high) / 2;
            (levelAt(middle) < level) == rising ? low = middle : high = middle;
        }
        return low;
    };
    EXPECT_NEAR(timeAt(0.197, 0.9, true) - timeAt(0.197, 0.1, true), 500e-6, 1e-9);
    EXPECT_NEAR(timeAt(0.097, 0.1, false) - timeAt(0.097, 0.9, false), 900e-6, 1e-9);
}

TEST_P(LineTest, AnEdgeThatIsCutShortStaysBetweenTheLevels) {
    SimulatedLine line(setup(2000, 50), kRate);
    for (int i = 0; i < 40; ++i) line.push(0.01 + 0.0004 * i, i % 2 == 0 ? Condition::space : Condition::mark);
    for (double t = 0.0; t < 0.1; t += 1.0 / kRate) {
        const double level = line.levelAt(t);
        EXPECT_GE(level, 0.0);
        EXPECT_LE(level, 1.0);
    }
    EXPECT_NEAR(line.levelAt(0.2), 1.0, 1e-8) << "and comes to rest where the last edge leads";
}

std::string edgeName(const testing::TestParamInfo<Edge>& edge) {
    switch (edge.param) {
        case Edge::linear:
            return "linear";
        case Edge::raisedCosine:
            return "raisedCosine";
        case Edge::gaussian:
            return "gaussian";
        case Edge::exponential:
            break;
    }
    return "exponential";
}

INSTANTIATE_TEST_SUITE_P(EveryEdge, LineTest,
                         testing::Values(Edge::linear, Edge::raisedCosine, Edge::gaussian, Edge::exponential),
                         edgeName);

TEST(LineEdgeTest, NoEdgeIsQuickerThanTwoSamples) {
    SimulatedLine line({Edge::linear, 0.0, 0.0, 1.0}, kRate);
    line.push(0.1, Condition::space);
    int between = 0;
    for (int n = 0; n < 9600; ++n) {
        const double level = line.levelAt(n / kRate);
        between += level > 0.0 && level < 1.0 ? 1 : 0;
    }
    EXPECT_GE(between, 2);
}

}  // namespace
}  // namespace trueunit
