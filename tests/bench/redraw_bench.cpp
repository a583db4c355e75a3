// SPDX-License-Identifier: GPL-3.0-or-later
// From a snapshot to pixels: all panels of the window take a new character and paint it.
#include <QGridLayout>
#include <algorithm>
#include <vector>

#include "tests/bench/budget.h"
#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

std::vector<SnapshotPtr> snapshotsOfASender() {
    std::vector<SnapshotPtr> snapshots;
    for (int i = 0; i < 40; ++i) {
        Snapshot s = SnapshotBuilder().bias(7.0).characters(700 + i).value();
        s.reading.findings = std::vector<Finding>{
            {"contact-offset", 0.97, "Contacts sit off centre", "To-mark instants are early; seen " + std::to_string(i),
             "the eccentric under the contact box.", "turn it a little; all levels must move together."}};
        snapshots.push_back(std::make_shared<const Snapshot>(std::move(s)));
    }
    return snapshots;
}

// Width, height, and the budget in milliseconds of processor time. The quickest eighth counts.
void snapshotToPixels(benchmark::State& state) {
    QWidget window;
    window.resize(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
    auto* layout = new QGridLayout(&window);
    std::vector<std::pair<WidgetMaker, QWidget*>> shown;
    for (const WidgetMaker& maker : allWidgets()) {
        if (maker.name == QStringLiteral("instants")) continue;  // stands on the report, not in the window
        const int at = static_cast<int>(shown.size());
        shown.emplace_back(maker, maker.make().release());
        layout->addWidget(shown.back().second, at / 3, at % 3);
    }
    shown.front().second->setMinimumWidth(window.width() * 5 / 8);  // the grid is the largest
    window.show();
    settle();
    const std::vector<SnapshotPtr> snapshots = snapshotsOfASender();
    std::vector<double> costs;
    for (auto _ : state) {
        const double before = bench::processorSeconds();
        for (auto& [maker, widget] : shown) maker.show(*widget, snapshots[costs.size() % snapshots.size()]);
        settle();
        costs.push_back(1e3 * (bench::processorSeconds() - before));
    }
    std::sort(costs.begin(), costs.end());
    bench::holdTo(state, "cpu_ms", costs[costs.size() / 8], static_cast<double>(state.range(2)));
}
BENCHMARK(snapshotToPixels)
    ->ArgNames({"width", "height", "budget"})
    ->Args({1440, 900, 12})
    ->Args({3840, 2160, 25})
    ->Iterations(80)
    ->Unit(benchmark::kMillisecond);

}  // namespace
