// SPDX-License-Identifier: GPL-3.0-or-later
// Re-openings too short for the line to fall: they keep it half way up. From the samples of the simulated sender to the
// reading; that edges without them, of whatever form, are not taken for such.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/pipeline.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/scenario_builder.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

Reading measured(const Scenario& scenario) {
    ScenarioSignal signal(scenario);
    const auto samples = samplesOf(signal, static_cast<std::size_t>(scenario.seconds * signal.rateHz()));
    return test::measureTwice(samples, signal.rateHz()).reading();
}

Scenario smearedBounce(double ms, int openings, double fraction) {
    Scenario s = faultlessScenario("THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n");
    s.seconds = 40.0;
    s.line.edge = Scenario::Edge::raisedCosine;
    s.line.riseUs = 400.0;
    s.line.fallUs = 500.0;
    s.card.couplingHz = {12.0};
    s.card.snrDb = 38.0;
    s.faults.scatterPercent = 0.4;
    s.faults.bounce = Scenario::Bounce{ms, openings, fraction};
    return s;
}

TEST(EdgeHalt, ShortReopeningsAreCountedAndTheInstantIsTheFirstClosure) {
    for (const auto& [ms, openings] : {std::pair{1.1, 2}, {1.1, 3}, {2.0, 3}}) {
        SCOPED_TRACE(std::to_string(ms) + " ms, " + std::to_string(openings));
        const Reading r = measured(smearedBounce(ms, openings, 0.6));
        long closures = 0;
        for (const InstantReading& i : r.instants) closures += i.to == Condition::mark ? i.count : 0;
        ASSERT_TRUE(r.contact && r.findings && r.distortion.biasPercent);
        EXPECT_GT(r.contact->bounces, 0.54 * static_cast<double>(closures));
        EXPECT_NEAR(r.contact->longestMs, ms, 0.35);
        EXPECT_NEAR(r.distortion.biasPercent->value, 0.0, 0.6);  // 2 % late by the crossing of the middle alone
        EXPECT_EQ(r.findings->front().id, "contact-bounce");
    }
}

// Whatever of filter or magnets forms an edge, and with noise, it goes straight up.
TEST(EdgeHalt, NoEdgeThatGoesStraightUpIsCalledOne) {
    using Edge = test::PlainSender::Edge;
    for (const Edge edge : {Edge::linear, Edge::gaussian, Edge::exponential})
        for (const double rise : {80e-6, 500e-6, 2e-3, 4e-3})
            for (const double snr : {24.0, 45.0})
                for (const double pole : {0.0, 20.0}) {
                    SCOPED_TRACE(std::to_string(static_cast<int>(edge)) + ", " + std::to_string(1e3 * rise) + " ms, " +
                                 std::to_string(snr) + " dB, " + std::to_string(pole) + " Hz");
                    test::PlainSender sender;
                    sender.edge = edge;
                    sender.rise = rise;
                    sender.snrDb = snr;
                    sender.scatterPercent = 0.5;
                    if (pole > 0.0) sender.polesHz = {pole};
                    const auto samples = sender.send(test::mixedText(60, 3));
                    const Reading r = test::measureTwice(samples, sender.rateHz).reading();
                    ASSERT_TRUE(r.contact);
                    EXPECT_EQ(r.contact->bounces, 0);
                }
}

}  // namespace
}  // namespace trueunit
