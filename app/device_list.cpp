// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/device_list.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

std::string line(const SoundDevice& d, int channels, bool isDefault) {
    return "  " + d.title() + ", " + std::to_string(channels) + (channels == 1 ? " channel, " : " channels, ") +
           std::to_string(std::lround(d.defaultRateHz)) + " Hz" + (isDefault ? ", default" : "") + "\n";
}

}  // namespace

DeviceList inputsOf(const DeviceList& devices) {
    DeviceList inputs;
    std::copy_if(devices.begin(), devices.end(), std::back_inserter(inputs),
                 [](const SoundDevice& d) { return d.inputChannels > 0; });
    return inputs;
}

std::optional<SoundDevice> findDevice(const DeviceList& devices, const std::string& name, const std::string& hostApi) {
    const auto found = std::find_if(devices.begin(), devices.end(),
                                    [&](const SoundDevice& d) { return d.name == name && d.hostApi == hostApi; });
    if (found == devices.end()) return std::nullopt;
    return *found;
}

std::string devicesText(const DeviceList& devices) {
    std::string inputs;
    std::string outputs;
    for (const SoundDevice& d : devices) {
        if (d.inputChannels > 0) inputs += line(d, d.inputChannels, d.defaultInput);
        if (d.outputChannels > 0) outputs += line(d, d.outputChannels, d.defaultOutput);
    }
    if (inputs.empty()) inputs = "  none\n";
    if (outputs.empty()) outputs = "  none\n";
    return "sound inputs\n" + inputs + "sound outputs\n" + outputs;
}

}  // namespace trueunit
