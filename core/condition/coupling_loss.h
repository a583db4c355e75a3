// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

namespace trueunit {

// A sound card's high-pass, s^2 / (s^2 + a s + b): b = 0 is one pole, both 0 is none.
struct HighPass {
    double a = 0.0;  // 1/s, >= 0
    double b = 0.0;  // 1/s^2, >= 0

    static HighPass ofCorners(double firstHz, double secondHz = 0.0);  // real poles in cascade; 0 = none
    std::vector<double> cornersHz() const;  // 0 to 2 of them, largest first; a complex pair counts twice
};

// What the high-pass takes away from a keyed line: heard = line - loss. Fed with the line's known levels it gives the
// loss back without integrating any noise. Exact for steps that fall between samples (2 x 2 matrix exponential).
// Value type; a few multiplications a sample.
class CouplingLoss {
public:
    CouplingLoss() = default;
    CouplingLoss(const HighPass& highPass, double rateHz);

    // Loss at this sample; then moves on by one sample during which the line stays at the given level.
    double step(double line) {
        const double loss = state_[0] + state_[1];
        const std::array<double, 2> off{state_[0] - line * rest_[0], state_[1] - line * rest_[1]};
        state_[0] = line * rest_[0] + next_[0] * off[0] + next_[1] * off[1];
        state_[1] = line * rest_[1] + next_[2] * off[0] + next_[3] * off[1];
        return loss;
    }

    double loss() const { return state_[0] + state_[1]; }

    // Moves on by one sample along what was heard at its beginning and end, with a share of trust in the given level:
    // 0 integrates what was heard, whatever the edge looks like, and its noise with it; 1 is step().
    void follow(double heardBefore, double heardNow, double level, double trust) {
        const double before = state_[0];
        state_[0] += a_ * ((1.0 - trust) * 0.5 * (heardBefore + heardNow) + trust * (level - loss()));
        state_[1] += halfRatio_ * (before + state_[0]);
    }

    // The same with no trust in any level.
    void follow(double heardBefore, double heardNow) {
        const double before = state_[0];
        state_[0] += halfA_ * (heardBefore + heardNow);
        state_[1] += halfRatio_ * (before + state_[0]);
    }

    // A short run of samples at once, with one level and trust, along the sum of what was heard at the beginning and
    // end of each; the pull towards the level is that of the run's middle. Little of it waits for the state.
    void followRun(double samples, double heardTwice, double level, double trust) {
        const double pull = a_ * trust * samples;
        const double ofLoss = pull * (1.0 - 0.5 * samples * a_);
        const double ofState = pull * samples * halfRatio_;
        const double fed = halfA_ * (1.0 - trust) * heardTwice + ofLoss * level;
        const double before = state_[0];
        state_[0] = before * (1.0 - ofLoss - ofState) + (fed - ofLoss * state_[1]);
        state_[1] += halfRatio_ * samples * (before + state_[0]);
    }

    // The line's last step, of the given height, came this many samples before the present one.
    void stepWasEarlier(double height, double samplesAgo);

    std::array<double, 2> state() const { return state_; }
    void setState(std::array<double, 2> state) { state_ = state; }

private:
    std::array<double, 4> propagator(double samples) const;

    double a_ = 0.0;                                  // per sample
    double halfA_ = 0.0;                              // a / 2
    double b_ = 0.0;                                  // per sample squared
    double halfRatio_ = 0.0;                          // b / a / 2
    std::array<double, 2> rest_{0.0, 0.0};            // state after a long time at line = 1
    std::array<double, 4> next_{1.0, 0.0, 0.0, 1.0};  // propagator of one sample
    std::array<double, 2> state_{0.0, 0.0};           // loss of the first and of the second integration
};

}  // namespace trueunit
