// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <cstdint>
#include <optional>

namespace trueunit {

// The two conditions of the line. Mark = Z = loop closed = hole in the tape; an idle loop rests at mark.
enum class Condition : std::uint8_t { space, mark };
constexpr Condition opposite(Condition c) { return c == Condition::mark ? Condition::space : Condition::mark; }

// What reaches the sound card.
enum class InputKind : std::uint8_t {
    automatic,
    loop,     // the loop current itself, coupled through the card's high-pass
    tone,     // one tone, interrupted by the contacts
    twoTone,  // one tone for mark, another for space
};

// An instant of the stream, in samples since its first one; the fraction is meant.
struct SampleTime {
    double samples = 0.0;
    double seconds(double rateHz) const { return samples / rateHz; }
};

// A reading with its expanded uncertainty: value +- uncertainty holds the truth in 95 of 100 cases. Same unit.
struct Measured {
    double value = 0.0;
    double uncertainty = 0.0;
};

// A standard modulation rate. 1/T in baud; the unit is held, because the trade names 22 ms "45.45 baud".
struct StandardSpeed {
    double baud;         // as the trade writes it
    double unitSeconds;  // exact nominal unit
};

// Speeds met on five- and eight-unit start-stop machines; derived by T = 1/baud, 45.45 being 22 ms and 74.2 being
// 600 operations a minute of 7.42 units (US Army signal course SS0330; NAVEDTRA 14189).
inline constexpr std::array kStandardSpeeds = {
    StandardSpeed{45.45, 0.022},       StandardSpeed{50.0, 0.020},      StandardSpeed{56.88, 1.0 / 56.88},
    StandardSpeed{74.2, 0.1 / 7.42},   StandardSpeed{75.0, 1.0 / 75.0}, StandardSpeed{100.0, 0.010},
    StandardSpeed{110.0, 1.0 / 110.0},
};

inline constexpr double kNominalWithin = 0.03;  // of the unit: what is farther off is no standard speed

// The standard speed whose unit is nearest to the given one, if it lies within the given fraction of it.
inline std::optional<StandardSpeed> nearestStandardSpeed(double unitSeconds, double within = kNominalWithin) {
    std::optional<StandardSpeed> best;
    double bestOff = within;
    for (const StandardSpeed& s : kStandardSpeeds) {
        const double off = std::abs(s.unitSeconds / unitSeconds - 1.0);
        if (off <= bestOff) {
            bestOff = off;
            best = s;
        }
    }
    return best;
}

// The speed a person means by a number: the table's unit when the number is the table's, 1/baud otherwise.
inline StandardSpeed namedSpeed(double baud) {
    for (const StandardSpeed& s : kStandardSpeeds)
        if (std::abs(s.baud - baud) < 0.006) return s;
    return {baud, 1.0 / baud};
}

}  // namespace trueunit
