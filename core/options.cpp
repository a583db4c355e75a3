// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/options.h"

#include <cmath>

#include "core/frame/code_table.h"

namespace trueunit {

std::optional<Error> Options::problem() const {
    const auto outside = [](double v, double low, double high) { return !(v >= low && v <= high); };
    if (baud && outside(*baud, 20.0, 200.0)) return Error{"The speed must lie between 20 and 200 baud."};
    if (stopUnits && outside(*stopUnits, 1.0, 2.5)) return Error{"The stop must lie between 1 and 2.5 units."};
    if (!findCode(code)) return Error{"There is no code named \"" + code + "\"; known are: " + codeNames() + "."};
    if (tonesHz.size() > 2) return Error{"At most two tones can be given."};
    for (const double hz : tonesHz)
        if (outside(hz, 100.0, 10000.0)) return Error{"A tone must lie between 100 and 10000 Hz."};
    if (tonesHz.size() == 2 && std::abs(tonesHz[0] - tonesHz[1]) < 50.0)
        return Error{"The two tones must lie at least 50 Hz apart."};
    if (windowCharacters < 0) return Error{"The window must be a number of characters, or all."};
    if (outside(slicePercent, 10.0, 90.0)) return Error{"The slice level must lie between 10 and 90 percent."};
    if (outside(clockPpm, -1000.0, 1000.0))
        return Error{"The clock trim must lie between -1000 and 1000 parts in a million."};
    return std::nullopt;
}

}  // namespace trueunit
