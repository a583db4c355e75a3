// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/trail_foot.h"

#include <algorithm>

#include "widgets/words.h"

namespace trueunit {

namespace {
constexpr double kGapPixels = 10.0;  // between words
}

void TrailFoot::add(const std::vector<SmoothingChange>& changes, bool all, double now, double left, double right) {
    const double gap = kGapPixels * secondsPerPixel_;
    for (auto change = changes.rbegin(); change != changes.rend(); ++change) {
        const QString words = fromHereWords(change->over, all && change == changes.rbegin());
        const double half = 0.5 * widthOf(words);
        if (right - left < 2 * (half + gap)) return;
        const double at = std::clamp(change->seconds - now + half + 0.4 * gap, left + gap + half, right - gap - half);
        addCentred(at, words);
        right = at - half;
    }
}

}  // namespace trueunit
