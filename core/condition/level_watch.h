// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace trueunit {

// Whether a line that shows no transitions any more is keyed nevertheless, at a level so much fainter that they are
// not told from noise: a gain turned down, a plug half out. Looks at a stretch of the samples after every quiet time;
// where the line only rests it looks less and less often. Costs nothing while there are transitions. One thread.
class LevelWatch {
public:
    LevelWatch(double rateHz, bool coupled) : rateHz_(rateHz), coupled_(coupled) {}

    // Samples of the line, demodulated if it rides on tones, and whether a transition was told in them; `swing` as
    // the line is scaled by. True: there is another line in them.
    bool push(std::span<const float> samples, bool transitions, double swing);

private:
    bool keyed(double swing) const;

    double rateHz_;
    bool coupled_;
    double quiet_ = 0.0;  // samples without a transition
    double pause_ = 0.0;  // samples from the last look to the next stretch
    std::vector<float> stretch_;
};

}  // namespace trueunit
