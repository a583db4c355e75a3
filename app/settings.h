// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/options.h"

namespace trueunit {

// What is remembered from one run to the next: the measurement's options and the sound input last listened to.
struct Settings {
    Options options;
    std::string deviceName;
    std::string deviceHostApi;
    int channel = 0;
    std::string limits = "bench";  // name of the set chosen
};

// Window's thread. Values that are missing or no longer valid come as defaults.
Settings loadSettings();
void saveSettings(const Settings& settings);

// The tone for work by ear. Whether it was on is not remembered: it never starts by itself.
struct EarSettings {
    std::string deviceName;  // empty: the system's choice
    std::string deviceHostApi;
    int volumePercent = 20;
};
EarSettings loadEarSettings();
void saveEarSettings(const EarSettings& settings);

}  // namespace trueunit
