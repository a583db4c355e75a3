// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sndfile.h>

#include <string>

namespace trueunit {

// Why the sound library refused, as the end of a sentence; null: the last attempt to open a file.
inline std::string soundFileRefusal(SNDFILE* file) {
    const std::string text = sf_strerror(file);
    const std::string ofTheSystem = "System error : ";  // says nothing to the person
    return text.starts_with(ofTheSystem) ? text.substr(ofTheSystem.size()) : text;
}

}  // namespace trueunit
