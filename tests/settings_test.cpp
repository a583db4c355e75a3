// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QSettings>

#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

class SettingsTest : public testing::Test {
protected:
    SettingsTest() {
        QCoreApplication::setOrganizationName("Trueunit test");
        QCoreApplication::setApplicationName("Trueunit test");
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, QString::fromStdString(folder_.file("")));
    }
    const TemporaryFolder folder_;
};

}  // namespace

TEST_F(SettingsTest, ComeBackAsTheyWereSaved) {
    Settings s;
    s.options.baud = 45.45;
    s.options.windowCharacters = 32;
    s.options.input = InputKind::tone;
    s.options.slicePercent = 40.0;
    s.options.clockPpm = -12.5;
    s.deviceName = "Line in";
    s.deviceHostApi = "ALSA";
    s.channel = 1;
    s.limits = "s3";
    saveSettings(s);
    const Settings back = loadSettings();
    EXPECT_EQ(back.options.baud, 45.45);
    EXPECT_FALSE(back.options.stopUnits.has_value());
    EXPECT_EQ(back.options.windowCharacters, 32);
    EXPECT_EQ(back.options.input, InputKind::tone);
    EXPECT_EQ(back.options.slicePercent, 40.0);
    EXPECT_EQ(back.options.clockPpm, -12.5);
    EXPECT_EQ(back.deviceName, "Line in");
    EXPECT_EQ(back.deviceHostApi, "ALSA");
    EXPECT_EQ(back.channel, 1);
    EXPECT_EQ(back.limits, "s3");
}

TEST_F(SettingsTest, AreDefaultsWhenNothingUsableIsStored) {
    EXPECT_FALSE(loadSettings().options.baud.has_value());
    QSettings().setValue("measure/baud", 5.0);
    QSettings().setValue("measure/input", 99);
    EXPECT_FALSE(loadSettings().options.baud.has_value());
    EXPECT_EQ(loadSettings().options.input, InputKind::automatic);
}
