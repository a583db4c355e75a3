// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <random>
#include <vector>

namespace trueunit::test {

inline std::vector<float> whiteNoise(std::size_t n) {
    std::mt19937_64 random(7);
    std::normal_distribution<float> normal(0.0F, 0.1F);
    std::vector<float> v(n);
    for (float& x : v) x = normal(random);
    return v;
}

}  // namespace trueunit::test
