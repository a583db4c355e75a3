// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace trueunit::fuzz {

using Bytes = std::span<const std::uint8_t>;

// Each takes bytes from anywhere, as that part of the program might meet them, and aborts where a promise is broken.
void recording(Bytes bytes);
void scenario(Bytes bytes);
void machineCard(Bytes bytes);
void limits(Bytes bytes);
void archive(Bytes bytes);
void framer(Bytes bytes);
void pipeline(Bytes bytes);

struct Target {
    const char* name;  // also of its folder of inputs
    void (*run)(Bytes);
};

inline constexpr std::array<Target, 7> kTargets = {{{"recording", recording},
                                                    {"scenario", scenario},
                                                    {"machine_card", machineCard},
                                                    {"limits", limits},
                                                    {"archive", archive},
                                                    {"framer", framer},
                                                    {"pipeline", pipeline}}};

// Aborts, sanitizer or not.
inline void promise(bool kept) {
    if (!kept) __builtin_trap();
}

}  // namespace trueunit::fuzz
