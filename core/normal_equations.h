// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <optional>

namespace trueunit {

// Linear least squares with N unknowns, observation by observation: y = row . unknowns.
template <std::size_t N>
class NormalEquations {
public:
    using Vector = std::array<double, N>;
    using Matrix = std::array<Vector, N>;

    void add(const Vector& row, double y, double weight = 1.0) {
        for (std::size_t i = 0; i < N; ++i) {
            right_[i] += weight * row[i] * y;
            for (std::size_t j = 0; j <= i; ++j) left_[i][j] += weight * row[i] * row[j];
        }
        squares_ += weight * y * y;
    }
    // Many observations at once, by the sums of their products: lower triangle, row times y, y squared.
    void addSums(const Matrix& rows, const Vector& right, double squares) {
        for (std::size_t i = 0; i < N; ++i) {
            right_[i] += right[i];
            for (std::size_t j = 0; j <= i; ++j) left_[i][j] += rows[i][j];
        }
        squares_ += squares;
    }
    void stiffen(std::size_t i, double amount) { left_[i][i] += amount; }

    // Inverse of the normal matrix; empty when the observations leave an unknown undetermined.
    std::optional<Matrix> inverse() const {
        Matrix lower{};
        for (std::size_t i = 0; i < N; ++i)
            for (std::size_t j = 0; j <= i; ++j) {
                double v = left_[i][j];
                for (std::size_t k = 0; k < j; ++k) v -= lower[i][k] * lower[j][k];
                if (i != j) {
                    lower[i][j] = v / lower[j][j];
                } else {
                    if (!(v > 1e-10 * left_[i][i]) || !(v > 0.0)) return std::nullopt;
                    lower[i][i] = std::sqrt(v);
                }
            }
        Matrix result{};
        for (std::size_t c = 0; c < N; ++c) setColumn(result, c, lower);
        return result;
    }

    std::optional<Vector> solve() const {
        const std::optional<Matrix> inv = inverse();
        if (!inv) return std::nullopt;
        Vector x{};
        for (std::size_t i = 0; i < N; ++i)
            for (std::size_t j = 0; j < N; ++j) x[i] += (*inv)[i][j] * right_[j];
        return x;
    }

    // Weighted sum of squares that a solution leaves.
    double left(const Vector& solution) const {
        double s = squares_;
        for (std::size_t i = 0; i < N; ++i) s -= solution[i] * right_[i];
        return s > 0.0 ? s : 0.0;
    }

private:
    // Solves L L^T x = e_c by substitution.
    static void setColumn(Matrix& result, std::size_t c, const Matrix& lower) {
        Vector z{};
        for (std::size_t i = 0; i < N; ++i) {
            double v = i == c ? 1.0 : 0.0;
            for (std::size_t k = 0; k < i; ++k) v -= lower[i][k] * z[k];
            z[i] = v / lower[i][i];
        }
        for (std::size_t i = N; i-- > 0;) {
            double v = z[i];
            for (std::size_t k = i + 1; k < N; ++k) v -= lower[k][i] * result[k][c];
            result[i][c] = v / lower[i][i];
        }
    }

    Matrix left_{};  // lower triangle
    Vector right_{};
    double squares_ = 0.0;
};

}  // namespace trueunit
