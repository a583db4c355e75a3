// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_trial.h"

#include <array>
#include <cmath>

#include "core/condition/coupling_loss.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {
constexpr double kSilence = 1e-5;  // swing, of full scale
}

Trial tryHighPass(const Stretch& s, const HighPass& highPass) {
    CouplingLoss loss(highPass, s.rateHz);
    std::array<CouplingLoss, 2> memory{loss, loss};
    memory[0].setState({1.0, 0.0});
    memory[1].setState({0.0, 1.0});
    const bool startsHigh = !s.transitions.front().up;
    double line = startsHigh ? 0.5 : -0.5;
    NormalEquations<4> equations;
    std::size_t next = 0;
    std::size_t seen = 0;
    for (std::size_t i = 0; i < s.heard.size(); ++i) {
        for (; next < s.transitions.size() && s.transitions[next].time <= static_cast<double>(i); ++next) {
            const double to = s.transitions[next].up ? 0.5 : -0.5;
            loss.stepWasEarlier(to - line, static_cast<double>(i) - s.transitions[next].time);
            line = to;
        }
        const double passed = line - loss.step(line);
        const double m0 = -memory[0].step(0.0);
        const double m1 = -memory[1].step(0.0);
        if (s.blind[i]) continue;
        equations.add({passed, 1.0, m0, m1}, s.heard[i]);
        ++seen;
    }
    for (std::size_t i = 0; i < 4; ++i) equations.stiffen(i, 1e-7 * static_cast<double>(seen + 1));
    Trial trial;
    const auto solution = equations.solve();
    if (!solution || seen < 20 || !(std::abs((*solution)[0]) > kSilence)) return trial;
    const double swing = (*solution)[0];
    if (swing <= 0.0) return trial;  // the transitions say which way is up
    trial.squares = equations.left(*solution);
    trial.fit = {swing,      (*solution)[1],
                 highPass,   std::sqrt(trial.squares / static_cast<double>(seen)) / swing,
                 startsHigh, {(*solution)[2] / swing, (*solution)[3] / swing},
                 s.rails};
    return trial;
}

}  // namespace trueunit
