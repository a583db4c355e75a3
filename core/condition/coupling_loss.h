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

    // The same for a short run of samples with one level and trust; the pull towards the level is that of its middle.
    void startRun(double level, double trust, double samples) {
        const double off = level - loss();
        const double slope = a_ * off + 2.0 * halfRatio_ * state_[0];
        pull_ = a_ * trust * (off - 0.5 * samples * slope);
        share_ = a_ * 0.5 * (1.0 - trust);
    }
    void run(double heardBefore, double heardNow) {
        const double before = state_[0];
        state_[0] += share_ * (heardBefore + heardNow) + pull_;
        state_[1] += halfRatio_ * (before + state_[0]);
    }

    // A whole run at once, along the sum of what was heard at the beginning and end of each of its samples.
    void runThrough(double samples, double heardTwice) {
        const double before = state_[0];
        state_[0] += share_ * heardTwice + pull_ * samples;
        state_[1] += halfRatio_ * samples * (before + state_[0]);
    }

    // The line's last step, of the given height, came this many samples before the present one.
    void stepWasEarlier(double height, double samplesAgo);

    std::array<double, 2> state() const { return state_; }
    void setState(std::array<double, 2> state) { state_ = state; }

private:
    std::array<double, 4> propagator(double samples) const;

    double a_ = 0.0;                                  // per sample
    double b_ = 0.0;                                  // per sample squared
    double halfRatio_ = 0.0;                          // b / a / 2
    std::array<double, 2> rest_{0.0, 0.0};            // state after a long time at line = 1
    std::array<double, 4> next_{1.0, 0.0, 0.0, 1.0};  // propagator of one sample
    double pull_ = 0.0;                               // of a run
    double share_ = 0.0;                              // of a run
    std::array<double, 2> state_{0.0, 0.0};           // loss of the first and of the second integration
};

}  // namespace trueunit
