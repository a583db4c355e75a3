// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/frame/unit_fit.h"
#include "core/measure/character_log.h"
#include "core/measure/decomposition.h"
#include "core/measure/level_counts.h"
#include "core/measure/plain_text.h"
#include "core/measure/timing.h"
#include "core/measure/window_fit.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// Puts the numbers of one window together. `window` are its characters; `recent` the last ones that the unit is taken
// from when the window is too short to tell speed from bias (at least the window itself). Pure.
struct WindowOfCharacters {
    std::vector<const LoggedCharacter*> window;
    std::vector<const LoggedCharacter*> recent;
    std::optional<Decomposition> parts;             // of the window's displacement
    std::optional<TapeStudy> tape;                  // held against the text of the tape; empty: that is not known
    std::optional<PlainTextStudy> plainText{};      // then: read as a plain text, if there are characters enough
    std::vector<const LoggedCharacter*> telling{};  // by which a lever out of place is told; empty: the window's
    std::vector<const LoggedCharacter*> longer{};   // by which a speed that wanders is told; empty: the window's
    std::optional<StandardSpeed> taken{};           // the nominal speed of the reading before this one
    std::uint64_t settledSince = 0;                 // number of the first character after the last nudge
};
Reading composeReading(const WindowOfCharacters& characters, const Options& options, const Limits& limits,
                       InputReading input);

// The parts of the displacement over the window; slow enough to be asked for only now and then.
std::optional<Decomposition> partsOf(const WindowOfCharacters& characters);

// The characters of the window held against the text of their tape, which is looked for in all of `seen`.
std::optional<TapeStudy> tapeOf(const std::vector<const LoggedCharacter*>& seen, std::size_t window,
                                const Options& options);

// Where the text of the tape is not known: the characters read as a plain text.
std::optional<PlainTextStudy> plainTextOf(const std::vector<const LoggedCharacter*>& seen, const Options& options);

// Characters that are read as a plain text, at least: fewer tell too little.
constexpr std::size_t kPlainTextCharacters = 256;

// Characters in which the text of a tape is looked for, at least.
constexpr std::size_t kTapeCharacters = 512;

// Characters that lost marks and filled spaces are counted over, at least: they are too seldom to be seen in a window
// that follows the screwdriver, and a sender that loses marks is not in limits.
constexpr std::size_t kLevelsCharacters = 256;

// The nominal unit: as set, else the standard speed nearest to the measured one. The one that was taken before stays
// until another is clearly nearer, or it is clearly too far: a speed that scatters about a bound must not jump.
// `uncertainty` of the unit, seconds: until it parts the two, another is not clearly nearer.
std::optional<StandardSpeed> nominalSpeed(const Options& options, double unitSeconds,
                                          const std::optional<StandardSpeed>& taken = {}, double uncertainty = 0.0);

}  // namespace trueunit
