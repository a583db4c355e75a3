// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace trueunit {

// A sound input, output or both, as the sound library lists it.
struct SoundDevice {
    int index = 0;        // in the present list only; a fresh list numbers anew
    std::string name;     // UTF-8
    std::string hostApi;  // the system's sound interface it belongs to
    int inputChannels = 0;
    int outputChannels = 0;
    double defaultRateHz = 0.0;
    bool defaultInput = false;
    bool defaultOutput = false;

    bool sameAs(const SoundDevice& other) const { return name == other.name && hostApi == other.hostApi; }
    std::string title() const { return hostApi.empty() ? name : name + " (" + hostApi + ")"; }
};

using DeviceList = std::vector<SoundDevice>;

DeviceList inputsOf(const DeviceList& devices);
// The same device in another list, by name; its number may have changed.
std::optional<SoundDevice> findDevice(const DeviceList& devices, const std::string& name, const std::string& hostApi);
// Two tables for a terminal, inputs before outputs.
std::string devicesText(const DeviceList& devices);

}  // namespace trueunit
