// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comparison_panel.h"

#include <gtest/gtest.h>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"

namespace trueunit::test {
namespace {

QString compared(double before, double after) {
    ComparisonPanel panel;
    panel.show(SnapshotBuilder().bias(after).build());
    panel.setBefore(SnapshotBuilder().bias(before).build());
    return panel.accessibleDescription();
}

// Rounded one by one, 9.86 to 0.14 would read "+9.9, now +0.1, change -9.7".
TEST(ComparisonPanel, TheFiguresOfARowAddUpAsTheyAreShown) {
    EXPECT_TRUE(compared(9.86, 0.14).contains(u("bias +9.9, now +0.1, change \u22129.8 ±0.3, changed")))
        << compared(9.86, 0.14).toStdString();
    EXPECT_TRUE(compared(2.0, 2.0).contains(u("bias +2.0, now +2.0, change 0.0 ±0.3, none seen")));
}

}  // namespace
}  // namespace trueunit::test
