// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/displacements.h"

#include <array>

namespace trueunit {

void takeOutMeans(std::vector<Displaced>& d) {
    struct Mean {
        double sum = 0.0;
        double n = 0.0;
    };
    std::array<std::array<Mean, 2>, kMostPlaces> means{};
    for (const Displaced& i : d) {
        Mean& m = means[static_cast<std::size_t>(i.k)][i.toMark ? 1 : 0];
        m.sum += i.left;
        m.n += 1.0;
    }
    for (Displaced& i : d) {
        const Mean& m = means[static_cast<std::size_t>(i.k)][i.toMark ? 1 : 0];
        i.left -= m.sum / m.n;
    }
}

std::vector<Displaced> displacementsOf(Characters characters, double unitSeconds) {
    std::vector<Displaced> out;
    for (std::size_t c = 0; c < characters.size(); ++c) {
        if (!characters[c]->measurable()) continue;
        int previous = 0;
        for (const Instant& i : characters[c]->instants) {
            out.push_back({characters[c]->start + i.seconds, characters[c]->start, i.k, i.to == Condition::mark,
                           i.k - previous, c, displacementPercent(i, unitSeconds)});
            previous = i.k;
        }
    }
    return out;
}

std::vector<Displaced> displacementsAboutMeans(Characters characters, double unitSeconds) {
    std::vector<Displaced> out = displacementsOf(characters, unitSeconds);
    takeOutMeans(out);
    return out;
}

}  // namespace trueunit
