// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <numbers>

namespace trueunit {

// The bias to be heard: a fixed tone and one beside it that differs by one hertz for each percent of bias, so that it
// beats as fast as the bias is large, and zero bias does not beat at all. Marks too long: the second tone is higher
// and carries its octave, bright; too short: it is lower and carries the octave below, dull.
// The setters are called by the window's thread, render by the sound library's: it generates, and takes no lock, no
// memory and no Qt. What is set is reached in a twentieth of a second, without a click.
class BeatTone {
public:
    static constexpr double kFixedHz = 657.0;
    static constexpr double kHzPerPercent = 1.0;
    static constexpr double kMostHz = 60.0;  // of the difference

    void setRate(double rateHz) { rateHz_ = rateHz; }  // before the first render
    void setBias(double percent) { bias_.store(percent, std::memory_order_relaxed); }
    void setKnown(bool known) { known_.store(known, std::memory_order_relaxed); }        // false: no reading, silence
    void setVolume(double volume) { volume_.store(volume, std::memory_order_relaxed); }  // 0 .. 1 of full scale
    void setMuted(bool muted) { muted_.store(muted, std::memory_order_relaxed); }

    void render(float* out, unsigned long frames) noexcept;  // mono

private:
    struct Phase {
        double turns = 0.0;
        double advance(double step) {
            turns += step;
            if (turns >= 1.0) turns -= 1.0;
            return turns;
        }
    };

    std::atomic<double> bias_{0.0}, volume_{0.2};
    std::atomic<bool> known_{false}, muted_{false};

    // The sound library's thread only, after the first render.
    double rateHz_ = 48000.0;
    double shownBias_ = 0.0, loudness_ = 0.0;
    Phase fixed_, moved_;
    double movedTurns_ = 0.0;  // over two turns of the moved tone: phase of the octave below
};

static_assert(std::atomic<double>::is_always_lock_free && std::atomic<bool>::is_always_lock_free);

}  // namespace trueunit
