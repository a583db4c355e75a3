// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/seeded_random.h"

#include <cmath>

namespace trueunit {

namespace {

// Spreads neighbouring seeds and streams over the whole range before they reach the engine.
std::uint64_t scrambled(std::uint64_t x) {
    x += 0x9e3779b97f4a7c15ULL;
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
    return x ^ (x >> 31);
}

}  // namespace

SeededRandom::SeededRandom(std::uint64_t seed, std::uint64_t stream) : engine_(scrambled(scrambled(seed) + stream)) {}

double SeededRandom::uniform() { return static_cast<double>(engine_() >> 11) * 0x1.0p-53; }

// Polar method: two independent values from each accepted point of the unit disc.
double SeededRandom::gaussian() {
    if (hasSpare_) {
        hasSpare_ = false;
        return spare_;
    }
    double u = 0.0;
    double v = 0.0;
    double square = 0.0;
    do {
        u = 2.0 * uniform() - 1.0;
        v = 2.0 * uniform() - 1.0;
        square = u * u + v * v;
    } while (square >= 1.0 || square == 0.0);
    const double scale = std::sqrt(-2.0 * std::log(square) / square);
    spare_ = v * scale;
    hasSpare_ = true;
    return u * scale;
}

bool SeededRandom::chance(double of) { return of > 0.0 && uniform() < of; }

}  // namespace trueunit
