// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTest>
#include <functional>
#include <optional>

#include "app/bench_panels.h"
#include "app/main_window.h"
#include "app/session.h"

namespace trueunit::test {

// The real window on the real session, playing the embedded demonstration at its own pace.
class BenchWindow : public ::testing::Test {
protected:
    BenchWindow() {
        window.resize(1440, 900);
        window.show();
        QTest::qWait(50);
    }

    // Lets the window run until it is so, at most so long.
    static bool waitUntil(const std::function<bool()>& so, int seconds = 30) {
        return QTest::qWaitFor(so, seconds * 1000);
    }
    const Snapshot* shown() const { return panels().shown().get(); }
    BenchPanels& panels() const { return const_cast<MainWindow&>(window).panels(); }
    std::optional<double> bias() const {
        if (!shown() || !shown()->reading.distortion.biasPercent) return std::nullopt;
        return shown()->reading.distortion.biasPercent->value;
    }
    bool biasIsKnown() {
        return waitUntil([this] { return bias().has_value(); });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&window, key, modifiers); }

    Session session;
    MainWindow window{session};
};

}  // namespace trueunit::test
