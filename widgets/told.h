// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

namespace trueunit {

// What the core says, in the language of the person. The core speaks English and knows no Qt: whole sentences are
// recognised by the patterns in core_sentences.cpp, whose "%1" stand for what changes, and are translated as wholes.
// A sentence without a pattern comes as it is. The window's thread; remembers what it has told.
QString told(const std::string& english);

}  // namespace trueunit
