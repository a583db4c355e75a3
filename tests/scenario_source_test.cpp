// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_source.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>
#include <vector>

#include "core/simulate/scenario_signal.h"
#include "support/scenario_builder.h"

namespace trueunit {
namespace {

using Clock = std::chrono::steady_clock;

class ScenarioSourceTest : public testing::Test {
protected:
    // Takes what comes until the source has finished or the time is over.
    std::vector<SampleBlock> blocksOf(ScenarioSource& source, double seconds) {
        const auto until = Clock::now() + std::chrono::duration<double>(seconds);
        std::vector<SampleBlock> all;
        SampleBlock block;
        bool last = false;
        while (!last) {
            last = source.state() != SourceState::running || Clock::now() > until;
            while (ring.tryPop(block)) all.push_back(block);
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
        }
        return all;
    }

    SampleRing ring;
};

TEST_F(ScenarioSourceTest, PushesTheSamplesOfTheScenarioAtTheirPaceAndFinishes) {
    Scenario s = faultlessScenario();
    s.leadInSeconds = 0.05;
    s.seconds = 0.5;
    ScenarioSource source(s);
    EXPECT_EQ(source.state(), SourceState::idle);
    const auto began = Clock::now();
    ASSERT_TRUE(source.start(ring));
    const auto blocks = blocksOf(source, 5.0);
    const double took = std::chrono::duration<double>(Clock::now() - began).count();
    EXPECT_EQ(source.state(), SourceState::finished);
    EXPECT_GE(took, 0.49);
    ASSERT_EQ(blocks.size(), 24000U / SampleBlock::kSamples);
    ScenarioSignal signal(s);
    for (const SampleBlock& block : blocks) {
        const auto expected = signal.nextBlock();
        ASSERT_TRUE(expected);
        EXPECT_EQ(block.firstSample, expected->firstSample);
        EXPECT_EQ(block.samples, expected->samples);
        const double due = static_cast<double>(block.firstSample + SampleBlock::kSamples) / 48000.0;
        const std::chrono::duration<double> stamp = std::chrono::nanoseconds(block.stampNs) - began.time_since_epoch();
        EXPECT_GE(stamp.count(), due) << "never before its last sample can have been taken";
    }
    source.stop();
    EXPECT_EQ(source.state(), SourceState::idle);
}

TEST_F(ScenarioSourceTest, OfAMachineAtWorkAlreadyWhatItHasSentComesAtOnceAndNothingIsLeftOut) {
    Scenario s = faultlessScenario();
    s.seconds = 3.0;
    ScenarioSource source(s, 2.5);
    const auto began = Clock::now();
    ASSERT_TRUE(source.start(ring));
    const auto blocks = blocksOf(source, 5.0);
    const double took = std::chrono::duration<double>(Clock::now() - began).count();
    EXPECT_GE(took, 0.49);
    EXPECT_LT(took, 2.5);
    EXPECT_EQ(blocks.size(), 144000U / SampleBlock::kSamples);
    EXPECT_EQ(ring.droppedBlocks(), 0U);
}

TEST_F(ScenarioSourceTest, AGapIsMissingAndTakesItsTime) {
    Scenario s = faultlessScenario();
    s.seconds = 0.4;
    s.card.gaps = {{0.1, 9600}};
    ScenarioSource source(s);
    ASSERT_TRUE(source.start(ring));
    const auto blocks = blocksOf(source, 5.0);
    std::uint64_t missing = 0;
    for (std::size_t i = 1; i < blocks.size(); ++i) {
        const std::uint64_t gap = blocks[i].firstSample - blocks[i - 1].firstSample - SampleBlock::kSamples;
        EXPECT_TRUE(gap == 0 || blocks[i].stampNs - blocks[i - 1].stampNs > 150000000);
        missing += gap;
    }
    EXPECT_EQ(missing, 9600U);
}

TEST_F(ScenarioSourceTest, TheEccentricTurnsWhileItPlays) {
    Scenario s = faultlessScenario("RY");
    s.machine.baud = 100.0;
    s.leadInSeconds = 0.0;
    ScenarioSource source(s);
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    source.turnEccentric(12.0);
    source.turnEccentric(8.0);
    EXPECT_EQ(source.eccentricPercent(), 20.0);
    std::this_thread::sleep_for(std::chrono::milliseconds(400));
    source.stop();
    std::vector<float> samples;
    SampleBlock block;
    while (ring.tryPop(block)) samples.insert(samples.end(), block.samples.begin(), block.samples.end());
    const auto found = zeroCrossings(samples);
    ASSERT_GT(found.size(), 20U);
    const auto loneMarkUnits = [&](std::size_t from, int step) {  // the first one of one unit, from either end
        for (std::size_t i = from;; i = static_cast<std::size_t>(static_cast<int>(i) + step)) {
            const double units = (found[i + 1].sample - found[i].sample) / 480.0;
            if (found[i].rising && units < 1.3) return units;
        }
    };
    EXPECT_NEAR(loneMarkUnits(0, 1), 1.0, 1e-3);
    EXPECT_NEAR(loneMarkUnits(found.size() - 2, -1), 1.2, 1e-3);
}

TEST_F(ScenarioSourceTest, StopsAtOnceAndStartsAgainFromTheBeginning) {
    ScenarioSource source(faultlessScenario());
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    const auto began = Clock::now();
    source.stop();
    EXPECT_LT(std::chrono::duration<double>(Clock::now() - began).count(), 1.0);
    SampleBlock block;
    while (ring.tryPop(block)) {
    }
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    source.stop();
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_EQ(block.firstSample, 0U);
}

TEST_F(ScenarioSourceTest, StopsAtOnceInTheMiddleOfALongGap) {
    Scenario s = faultlessScenario();
    s.card.gaps = {{0.0, 480000}};  // ten seconds
    ScenarioSource source(s);
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    const auto began = Clock::now();
    source.stop();
    EXPECT_LT(std::chrono::duration<double>(Clock::now() - began).count(), 2.0);
}

TEST_F(ScenarioSourceTest, SaysWhatItIs) {
    Scenario s = faultlessScenario();
    s.machine.name = "Skerry 2";
    s.card.rateHz = 44100.0;
    EXPECT_EQ(ScenarioSource(s).description(), "Skerry 2, simulated (44.1 kHz)");
    s.card.rateHz = 48000.0;
    EXPECT_EQ(ScenarioSource(s).description(), "Skerry 2, simulated (48 kHz)");
}

}  // namespace
}  // namespace trueunit
