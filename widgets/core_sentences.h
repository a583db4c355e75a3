// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

namespace trueunit {

// The sentences of the core that can be translated, in English, with "%1" for what changes. The first that fits counts.
std::span<const char* const> earlierSentences();
std::span<const char* const> findingSentences();
std::span<const char* const> otherSentences();
std::span<const char* const> refusalSentences();
std::span<const char* const> signalSentences();

}  // namespace trueunit
