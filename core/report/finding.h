// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace trueunit {

// What the signal says about the machine (or the wiring, or the card). Texts are whole sentences for the bench.
struct Finding {
    std::string id;           // stable, one of the ids listed in DEVELOPERS.md
    double confidence = 0.0;  // 0..1: how often such a finding is right
    std::string title;
    std::string evidence;  // with the numbers it rests on
    std::string lookAt;    // which part of the mechanism
    std::string confirm;   // how to make sure, with the caution that belongs to it
};

}  // namespace trueunit
