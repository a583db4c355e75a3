// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/widget_rig.h"

#include <QCoreApplication>

#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/displacement_plot.h"
#include "widgets/eccentric_panel.h"
#include "widgets/findings_panel.h"
#include "widgets/instant_table.h"
#include "widgets/level_meter.h"
#include "widgets/margin_view.h"
#include "widgets/readings_panel.h"
#include "widgets/tape_view.h"
#include "widgets/trail_view.h"

namespace trueunit::test {

namespace {

template <class W>
WidgetMaker maker(const char* name) {
    return {QString::fromLatin1(name), [] { return std::make_unique<W>(); },
            [](QWidget& widget, const SnapshotPtr& snapshot) { static_cast<W&>(widget).show(snapshot); }};
}

}  // namespace

std::vector<WidgetMaker> allWidgets() {
    return {maker<CharacterGrid>("grid"),
            maker<BiasGauge>("gauge"),
            maker<DisplacementPlot>("displacement"),
            maker<TrailView>("trail"),
            maker<ReadingsPanel>("readings"),
            maker<InstantTable>("instants"),
            maker<TapeView>("tape"),
            maker<LevelMeter>("level"),
            maker<FindingsPanel>("findings"),
            maker<EccentricPanel>("eccentric"),
            maker<MarginView>("margin")};
}

void settle() {
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
}

}  // namespace trueunit::test
