// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/measure/timing.h"

namespace trueunit {

// Places within a character are counted 1 .. levels + 1; tables over them have this many entries.
inline constexpr std::size_t kMostPlaces = 12;

// One instant's displacement as the decomposition works on it. Percent of the actual unit.
struct Displaced {
    double seconds = 0.0;       // when it came
    double startSeconds = 0.0;  // when its character started
    int k = 0;
    bool toMark = false;
    int precedingUnits = 0;     // length of the element it ends, rounded
    std::size_t character = 0;  // index; instants of one character share its start
    double left = 0.0;          // what is not explained yet
};

// Synchronous displacements of measurable characters.
std::vector<Displaced> displacementsOf(Characters characters, double unitSeconds);
// The same with the means by k and direction taken out.
std::vector<Displaced> displacementsAboutMeans(Characters characters, double unitSeconds);
void takeOutMeans(std::vector<Displaced>& d);  // by k and direction

}  // namespace trueunit
