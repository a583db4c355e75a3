// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

namespace trueunit {

// Random numbers that are the same on every computer: the engine is fixed by the C++ standard, the distributions
// are our own because those of the library differ between makers. Streams of one seed are independent of each other.
class SeededRandom {
public:
    SeededRandom(std::uint64_t seed, std::uint64_t stream);

    double uniform();        // 0 <= x < 1
    double gaussian();       // mean 0, standard deviation 1
    bool chance(double of);  // true in this fraction of the calls; draws nothing when it is 0

private:
    std::mt19937_64 engine_;
    double spare_ = 0.0;
    bool hasSpare_ = false;
};

}  // namespace trueunit
