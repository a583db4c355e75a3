// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/device_list.h"

#include <gtest/gtest.h>

using namespace trueunit;

namespace {
const DeviceList kDevices = {
    {0, "Line in", "ALSA", 2, 0, 48000.0, true, false},
    {1, "Headphones", "ALSA", 0, 2, 44100.0, false, true},
    {2, "Line in", "OSS", 1, 1, 44100.0, false, false},
};
}

TEST(DeviceList, InputsAreThoseWithAnInputChannel) {
    const DeviceList inputs = inputsOf(kDevices);
    ASSERT_EQ(inputs.size(), 2U);
    EXPECT_EQ(inputs[1].hostApi, "OSS");
}

TEST(DeviceList, ADeviceIsFoundAgainByNameAndInterfaceWhateverItsNumber) {
    ASSERT_TRUE(findDevice(kDevices, "Line in", "OSS"));
    EXPECT_EQ(findDevice(kDevices, "Line in", "OSS")->index, 2);
    EXPECT_FALSE(findDevice(kDevices, "Line in", "JACK"));
    EXPECT_TRUE(kDevices[0].sameAs({7, "Line in", "ALSA", 1, 0, 8000.0, false, false}));
}

TEST(DeviceList, TheTextListsInputsBeforeOutputsAndSaysWhenThereAreNone) {
    const std::string text = devicesText(kDevices);
    EXPECT_NE(text.find("  Line in (ALSA), 2 channels, 48000 Hz, default\n"), std::string::npos) << text;
    EXPECT_LT(text.find("Line in (OSS), 1 channel, 44100 Hz"), text.find("sound outputs"));
    EXPECT_GT(text.find("Headphones"), text.find("sound outputs"));
    EXPECT_EQ(devicesText({}), "sound inputs\n  none\nsound outputs\n  none\n");
}
