// SPDX-License-Identifier: GPL-3.0-or-later
// From a snapshot to pixels: all panels of the window take a new character and paint it.
#include <QGridLayout>
#include <algorithm>
#include <vector>

#include "core/pipeline.h"
#include "core/simulate/scenario_signal.h"
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

// The panels of the window, without what is around them.
class Panels {
public:
    Panels(int width, int height) {
        window_.resize(width, height);
        auto* layout = new QGridLayout(&window_);
        for (const WidgetMaker& maker : allWidgets()) {
            if (maker.name == QStringLiteral("instants")) continue;  // stands on the report, not in the window
            const int at = static_cast<int>(panels_.size());
            panels_.emplace_back(maker, maker.make().release());
            layout->addWidget(panels_.back().second, at / 3, at % 3);
        }
        panels_.front().second->setMinimumWidth(width * 5 / 8);  // the grid is the largest
        window_.show();
        settle();
    }

    // Milliseconds of processor time.
    double paint(const SnapshotPtr& snapshot) {
        const double before = bench::processorSeconds();
        for (auto& [maker, widget] : panels_) maker.show(*widget, snapshot);
        settle();
        return 1e3 * (bench::processorSeconds() - before);
    }

private:
    QWidget window_;
    std::vector<std::pair<WidgetMaker, QWidget*>> panels_;
};

// Width, height, and the budget of the median in milliseconds of processor time.
void snapshotToPixels(benchmark::State& state) {
    Panels panels(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
    const std::vector<SnapshotPtr> snapshots = snapshotsOfASender();
    std::vector<double> costs;
    for (auto _ : state) costs.push_back(panels.paint(snapshots[costs.size() % snapshots.size()]));
    std::nth_element(costs.begin(), costs.begin() + 40, costs.end());
    bench::holdTo(state, "cpu_ms", costs[40], static_cast<double>(state.range(2)));
}
BENCHMARK(snapshotToPixels)
    ->ArgNames({"width", "height", "budget"})
    ->Args({1440, 900, 12})
    ->Args({3840, 2160, 25})
    ->Iterations(81)
    ->Unit(benchmark::kMillisecond);

// Ten minutes of the demonstration, thirty pictures a second: none of them holds the hand up.
void longestFrameOfTenMinutes(benchmark::State& state) {
    constexpr double kSeconds = 600.0;
    constexpr double kPicturesPerSecond = 30.0;
    Result<Scenario> demonstration = readScenario(TRUEUNIT_DEMONSTRATION);
    if (!demonstration) return state.SkipWithError(demonstration.error().text.c_str());
    Panels panels(1440, 900);
    for (auto _ : state) {
        ScenarioSignal signal(*demonstration);
        Pipeline pipeline(demonstration->card.rateHz, {}, {});
        double longest = 0.0;
        double heard = 0.0;
        double shown = 0.0;
        for (auto block = signal.nextBlock(); block && heard < kSeconds; block = signal.nextBlock()) {
            pipeline.push(*block);
            heard += SampleBlock::kSamples / demonstration->card.rateHz;
            if (heard < shown + 1.0 / kPicturesPerSecond) continue;
            shown = heard;
            longest = std::max(longest, panels.paint(std::make_shared<const Snapshot>(pipeline.snapshot())));
        }
        state.counters["seconds"] = heard;
        bench::holdTo(state, "cpu_ms", longest, 50.0);
    }
}
BENCHMARK(longestFrameOfTenMinutes)->Iterations(1)->Unit(benchmark::kSecond);

}  // namespace
