// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/condition/level_watch.h"
#include "core/condition/line_finder.h"
#include "core/condition/line_restorer.h"
#include "core/condition/tone_demodulator.h"

namespace trueunit {

// What conditioning makes of some samples: the line from 0 (low) to 1 (high), late by the conditioner's delay, and the
// transitions seen in it, each before the line around it comes.
struct Conditioned {
    std::vector<float> line;
    std::vector<Transition> transitions;
    bool stale = false;  // the signal goes on at another level: the line must be found again

    void clear() {
        line.clear();
        transitions.clear();
        stale = false;
    }
};

// A found line from samples to its level: demodulated if it rides on tones, its levels restored. Measures the coupling
// once more after some seconds, because the first look had little to go by. Knows nothing of what comes after it, so it
// may run ahead on a thread of its own. One thread; the result does not depend on how the samples are chopped.
class LineConditioner {
public:
    LineConditioner(const FoundLine& line, double rateHz, std::uint64_t firstSample);

    void push(std::span<const float> samples, Conditioned& out);  // appends
    void finish(Conditioned& out);                                // lets go what is held back

    void keepCoupling() { refineAt_ = UINT64_MAX; }  // it is known well already
    const FoundLine& line() const { return line_; }

private:
    void refineCoupling(std::span<const float> samples);

    FoundLine line_;
    double rateHz_;
    std::optional<ToneDemodulator> demodulator_;
    std::vector<float> demodulated_;  // of one push
    LineRestorer restorer_;
    LevelWatch watch_;
    std::vector<float> recent_;  // since the line was found, until the coupling is measured again
    std::uint64_t refineAt_;     // samples
};

}  // namespace trueunit
