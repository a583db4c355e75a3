// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/coupling_regression.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <optional>

#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr double kPieceSeconds = 0.12;
constexpr double kBeforeSeconds = 0.0035;  // left out before an edge: a slow one begins early
constexpr double kAfterSeconds = 0.002;    // and after it
constexpr std::array<double, 4> kTailSeconds{0.001, 0.002, 0.004, 0.008};
constexpr std::size_t kFewestSamples = 40;  // of a piece
constexpr double kHighestHz = 80.0;
constexpr double kMostClipped = 0.002;
constexpr double kLowestCorner = 0.5;  // 1/s (0.08 Hz): lower ones are none
constexpr double kOnePoleGain = 1.01;  // a pole must lower the sum of squares by this factor to be believed
constexpr double kTwoPoleGain = 1.01;
constexpr double kSlowestGain = 1.3;  // so must the slowest tail
constexpr double kOut = 1e9;          // stiffness that keeps a column out

// What explains a sample: its level, the tails of the last edge by direction, the integrals. And the sample itself.
constexpr std::size_t kLevel = 0;
constexpr std::size_t kTails = 1;
constexpr std::size_t kFirst = kTails + 2 * kTailSeconds.size();
constexpr std::size_t kSecond = kFirst + 1;
constexpr std::size_t kHeard = kSecond + 1;
using Row = std::array<double, kHeard + 1>;

// Goes through a stretch once, sample by sample.
class Rows {
public:
    explicit Rows(const Stretch& s) : s_(s), high_(!s.transitions.front().up) {
        for (const double v : s.heard) mean_ += v / static_cast<double>(s.heard.size());
    }

    // The next sample's row; empty where nothing is to be explained.
    std::optional<Row> next(std::size_t i) {
        const auto at = static_cast<double>(i);
        for (; next_ < s_.transitions.size() && s_.transitions[next_].time <= at; ++next_) {
            high_ = s_.transitions[next_].up;
            since_ = s_.transitions[next_].time;
        }
        const double heard = s_.heard[i] - mean_;
        const double first = first_ + 0.5 * (heard + before_) / s_.rateHz;
        second_ += 0.5 * (first + first_) / s_.rateHz;
        first_ = first;
        before_ = heard;
        const double after = (at - since_) / s_.rateHz;
        const bool near = after < kAfterSeconds || (next_ < s_.transitions.size() &&
                                                    s_.transitions[next_].time - at < kBeforeSeconds * s_.rateHz);
        if (near || s_.clipped[i]) return std::nullopt;
        Row row{};
        row[kLevel] = high_ ? 0.5 : -0.5;
        for (std::size_t k = 0; k < kTailSeconds.size(); ++k)
            row[kTails + (high_ ? 0 : kTailSeconds.size()) + k] = std::exp(-after / kTailSeconds[k]);
        row[kFirst] = first_;
        row[kSecond] = second_;
        row[kHeard] = heard;
        return row;
    }
    void restartIntegrals() { first_ = second_ = before_ = 0.0; }

private:
    const Stretch& s_;
    bool high_;
    double mean_ = 0.0;
    std::size_t next_ = 0;
    double since_ = -1e9;
    double first_ = 0.0;
    double second_ = 0.0;
    double before_ = 0.0;
};

// Takes the parabola of a piece out of every column.
void straighten(std::vector<Row>& rows, const std::vector<double>& times) {
    std::array<std::vector<double>, 3> basis;
    for (std::size_t degree = 0; degree < basis.size(); ++degree) {
        for (const double t : times) basis[degree].push_back(std::pow(t, static_cast<double>(degree)));
        const auto dot = [&](const std::vector<double>& a, const std::vector<double>& b) {
            double sum = 0.0;
            for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
            return sum;
        };
        for (std::size_t lower = 0; lower < degree; ++lower) {
            const double share = dot(basis[degree], basis[lower]);
            for (std::size_t i = 0; i < times.size(); ++i) basis[degree][i] -= share * basis[lower][i];
        }
        const double length = std::sqrt(dot(basis[degree], basis[degree]));
        for (double& v : basis[degree]) v /= std::max(length, 1e-12);
        for (std::size_t column = 0; column < kHeard + 1; ++column) {
            double share = 0.0;
            for (std::size_t i = 0; i < rows.size(); ++i) share += rows[i][column] * basis[degree][i];
            for (std::size_t i = 0; i < rows.size(); ++i) rows[i][column] -= share * basis[degree][i];
        }
    }
}

template <std::size_t N>
void add(NormalEquations<N>& equations, const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        std::array<double, N> columns{};
        std::copy_n(row.begin(), N, columns.begin());
        equations.add(columns, row[kHeard]);
    }
}

// A slow edge comes from behind: a tail on the other side of its level would be the coupling's own droop in disguise.
template <std::size_t N>
std::optional<std::array<double, N>> solveWithoutDisguise(NormalEquations<N> equations) {
    std::array<bool, kFirst> out{};  // once only: of a line without levels one that is out may still seem to be beyond
    for (;;) {
        const auto x = equations.solve();
        if (!x) return x;
        std::size_t worst = 0;
        double most = 1e-6 * std::abs((*x)[kLevel]);
        for (std::size_t k = kTails; k < kFirst; ++k) {
            const double beyond = k < kTails + kTailSeconds.size() ? (*x)[k] : -(*x)[k];
            if (out[k] || !(beyond > most)) continue;
            most = beyond;
            worst = k;
        }
        if (worst == 0) return x;
        out[worst] = true;
        equations.stiffen(worst, kOut);
    }
}

bool possible(const HighPass& h) {
    constexpr double kHighest = 2.0 * std::numbers::pi * kHighestHz;
    return h.a > kLowestCorner && h.b >= 0.0 && h.a < 2.0 * kHighest && h.b < kHighest * kHighest;
}

struct Equations {
    NormalEquations<kFirst> none;
    NormalEquations<kSecond> onePole;
    NormalEquations<kHeard> twoPoles;

    void addPiece(std::vector<Row>& rows, const std::vector<double>& times) {
        if (rows.size() < kFewestSamples) return;
        straighten(rows, times);
        add(none, rows);
        add(onePole, rows);
        add(twoPoles, rows);
    }
    void stiffenTails() {  // those of sharp edges are not determined
        for (std::size_t k = kTails; k < kFirst; ++k) {
            none.stiffen(k, 1e-6);
            onePole.stiffen(k, 1e-6);
            twoPoles.stiffen(k, 1e-6);
        }
    }
    void leaveOutSlowest() {
        for (const std::size_t k : {kTails + kTailSeconds.size() - 1, kFirst - 1}) {
            none.stiffen(k, kOut);
            onePole.stiffen(k, kOut);
            twoPoles.stiffen(k, kOut);
        }
    }
    struct Fit {
        HighPass coupling;
        double squares = 0.0;
    };
    std::optional<Fit> best() const {
        const auto plain = solveWithoutDisguise(none);
        if (!plain) return std::nullopt;
        Fit best{{}, none.left(*plain)};
        const auto offer = [&](const HighPass& coupling, double squares, double gain) {
            if (possible(coupling) && best.squares >= gain * squares) best = {coupling, squares};
        };
        if (const auto x = solveWithoutDisguise(onePole)) offer({-(*x)[kFirst], 0.0}, onePole.left(*x), kOnePoleGain);
        if (const auto x = solveWithoutDisguise(twoPoles))
            offer({-(*x)[kFirst], -(*x)[kSecond]}, twoPoles.left(*x), kTwoPoleGain);
        return best;
    }
};

}  // namespace

std::optional<HighPass> regressCoupling(const Stretch& s) {
    const auto clipped = std::count(s.clipped.begin(), s.clipped.end(), 1);
    if (s.transitions.empty() || static_cast<double>(clipped) > kMostClipped * static_cast<double>(s.heard.size()))
        return std::nullopt;
    Equations equations;
    Rows source(s);
    const auto piece = static_cast<std::size_t>(kPieceSeconds * s.rateHz);
    std::vector<Row> rows;
    std::vector<double> times;
    for (std::size_t i = 0; i < s.heard.size(); ++i) {
        if (const auto row = source.next(i)) {
            rows.push_back(*row);
            times.push_back(static_cast<double>(i % piece) / static_cast<double>(piece) - 0.5);
        }
        if ((i + 1) % piece != 0) continue;
        equations.addPiece(rows, times);
        rows.clear();
        times.clear();
        source.restartIntegrals();
    }
    equations.stiffenTails();
    const auto slow = equations.best();
    equations.leaveOutSlowest();  // it looks much like droop: only where nothing else explains the line
    const auto quick = equations.best();
    if (quick && slow && quick->squares < kSlowestGain * slow->squares) return quick->coupling;
    return slow ? std::optional(slow->coupling) : std::nullopt;
}

}  // namespace trueunit
