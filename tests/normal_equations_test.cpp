// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/normal_equations.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

TEST(NormalEquations, FitThePublishedLineThroughAnscombesFirstSet) {
    // F. J. Anscombe, Graphs in Statistical Analysis, The American Statistician 27 (1973), 17-21, from memory:
    // y = 3.0001 + 0.5001 x, residual sum of squares 13.763, standard error of the slope 0.1179.
    constexpr std::array kX = {10.0, 8.0, 13.0, 9.0, 11.0, 14.0, 6.0, 4.0, 12.0, 7.0, 5.0};
    constexpr std::array kY = {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68};
    NormalEquations<2> equations;
    for (std::size_t i = 0; i < kX.size(); ++i) equations.add({1.0, kX[i]}, kY[i]);
    const auto line = equations.solve();
    ASSERT_TRUE(line);
    EXPECT_NEAR((*line)[0], 3.0001, 5e-5);
    EXPECT_NEAR((*line)[1], 0.5001, 5e-5);
    EXPECT_NEAR(equations.left(*line), 13.763, 5e-4);
    const auto inverse = equations.inverse();
    ASSERT_TRUE(inverse);
    EXPECT_NEAR(std::sqrt((*inverse)[1][1] * 13.763 / 9.0), 0.1179, 5e-5);
}

TEST(NormalEquations, AWeightCountsLikeThatManyObservations) {
    NormalEquations<2> weighted;
    NormalEquations<2> repeated;
    const auto both = [&](double x, double y, int n) {
        weighted.add({1.0, x}, y, n);
        for (int i = 0; i < n; ++i) repeated.add({1.0, x}, y);
    };
    both(0.0, 1.0, 3);
    both(1.0, 4.0, 1);
    both(2.0, 2.0, 2);
    const auto a = weighted.solve();
    const auto b = repeated.solve();
    ASSERT_TRUE(a && b);
    EXPECT_NEAR((*a)[0], (*b)[0], 1e-12);
    EXPECT_NEAR((*a)[1], (*b)[1], 1e-12);
    EXPECT_NEAR(weighted.left(*a), repeated.left(*b), 1e-12);
}

TEST(NormalEquations, AnUnknownThatNothingDeterminesGivesNoSolution) {
    NormalEquations<2> equations;
    for (int i = 0; i < 5; ++i) equations.add({1.0, 2.0}, 3.0);  // always the same row
    EXPECT_FALSE(equations.inverse());
    EXPECT_FALSE(equations.solve());
    EXPECT_FALSE(NormalEquations<3>{}.solve());
}

TEST(NormalEquations, StiffeningHoldsAnUnknownAtZero) {
    NormalEquations<2> equations;
    for (int i = 0; i < 5; ++i) equations.add({1.0, 2.0}, 3.0);
    equations.stiffen(1, 1e12);
    const auto x = equations.solve();
    ASSERT_TRUE(x);
    EXPECT_NEAR((*x)[0], 3.0, 1e-6);
    EXPECT_NEAR((*x)[1], 0.0, 1e-6);
}

TEST(NormalEquations, TheInverseTimesTheMatrixIsOne) {
    const std::array<std::array<double, 3>, 4> rows = {
        {{1.0, 2.0, 0.5}, {0.0, 1.0, 3.0}, {2.0, -1.0, 1.0}, {1.0, 1.0, 1.0}}};
    NormalEquations<3> equations;
    std::array<std::array<double, 3>, 3> matrix{};
    for (const auto& row : rows) {
        equations.add(row, 0.0);
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j < 3; ++j) matrix[i][j] += row[i] * row[j];
    }
    const auto inverse = equations.inverse();
    ASSERT_TRUE(inverse);
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) {
            double v = 0.0;
            for (std::size_t k = 0; k < 3; ++k) v += matrix[i][k] * (*inverse)[k][j];
            EXPECT_NEAR(v, i == j ? 1.0 : 0.0, 1e-12);
        }
}

}  // namespace
}  // namespace trueunit
