// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_signal.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <random>

#include "support/scenario_builder.h"

namespace trueunit {
namespace {

Scenario everyFault() {
    Scenario s = faultlessScenario("THE QUICK BROWN FOX 123");
    s.seconds = 8.0;
    s.line.edge = Scenario::Edge::gaussian;
    s.card.couplingHz = {5.0, 20.0};
    s.card.snrDb = 30.0;
    s.card.hum = Scenario::Hum{50.0, 5.0, {0.3}};
    s.card.clockPpm = 40.0;
    s.faults.biasPercent = 5.0;
    s.faults.scatterPercent = 2.0;
    s.faults.startScatterPercent = 1.0;
    s.faults.stopIrregularPercent = 10.0;
    s.faults.missingMarks = {{3, 0.2}};
    s.faults.bounce = Scenario::Bounce{1.0, 2, 0.5};
    s.faults.feedSlips = {0.05, 0.05};
    s.moves.push_back({3.0, false, 0.5, 1.0, std::nullopt, std::nullopt, std::nullopt});
    return s;
}

std::vector<float> inChunks(const Scenario& scenario, std::size_t most, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    ScenarioSignal signal(scenario);
    std::vector<float> all;
    std::vector<float> chunk(most);
    for (;;) {
        const std::size_t want = 1 + random() % most;
        const std::size_t got = signal.read(std::span(chunk).first(want));
        all.insert(all.end(), chunk.begin(), chunk.begin() + static_cast<std::ptrdiff_t>(got));
        if (got < want) return all;
    }
}

TEST(ScenarioSignalTest, TheSamplesAreTheSameHoweverTheyAreAskedFor) {
    ScenarioSignal whole(everyFault());
    const std::vector<float> expected = samplesOf(whole, 1000000);
    EXPECT_EQ(expected.size(), 384015U);  // 8 s of a clock 40 parts in a million fast
    EXPECT_EQ(inChunks(everyFault(), 1, 1), expected);
    EXPECT_EQ(inChunks(everyFault(), 5000, 2), expected);
}

TEST(ScenarioSignalTest, ASeedGivesTheSameSignalAndAnotherSeedAnother) {
    Scenario s = everyFault();
    ScenarioSignal a(s);
    ScenarioSignal b(s);
    s.seed = 2;
    ScenarioSignal c(s);
    const auto first = samplesOf(a, 100000);
    EXPECT_EQ(samplesOf(b, 100000), first);
    EXPECT_NE(samplesOf(c, 100000), first);
}

// The instants a plain zero crossing finds in the samples are those of the truth, for every shape of edge.
TEST(ScenarioSignalTest, APlainCrossingFindsTheImposedInstantsWithinAHundredthOfAPercent) {
    constexpr double kToleranceSeconds = 0.022 * 0.0001;
    for (const auto edge : {Scenario::Edge::linear, Scenario::Edge::raisedCosine, Scenario::Edge::gaussian,
                            Scenario::Edge::exponential}) {
        Scenario s = faultlessScenario("THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n");
        s.seconds = 30.0;
        s.line = {edge, 500.0, 350.0, 1.0};
        s.card.clockPpm = 60.0;
        s.faults.biasPercent = -7.0;
        s.faults.endPercent = 4.0;
        s.faults.speedPercent = 0.5;
        s.faults.scatterPercent = 2.0;
        ScenarioSignal signal(s);
        const auto found = zeroCrossings(samplesOf(signal, 2000000));
        const Truth& truth = signal.truth();
        ASSERT_EQ(found.size(), truth.instants.size());
        ASSERT_GT(found.size(), 700U);
        for (std::size_t i = 0; i < found.size(); ++i) {
            EXPECT_EQ(found[i].rising, truth.instants[i].to == Condition::mark);
            ASSERT_NEAR(found[i].sample / signal.samplesPerSecond(), truth.instants[i].seconds, kToleranceSeconds);
        }
    }
}

// As a technician would: the mean length of lone marks and lone spaces of RY, marking bias (mark - space) / 2T.
TEST(ScenarioSignalTest, MarkingBiasMakesLoneMarksLongAndLoneSpacesShort) {
    Scenario s = faultlessScenario("RY");
    s.seconds = 20.0;
    s.faults.biasPercent = 10.0;
    ScenarioSignal signal(s);
    const auto found = zeroCrossings(samplesOf(signal, 2000000));
    double sums[2] = {};
    int counts[2] = {};
    for (std::size_t i = 1; i < found.size(); ++i) {
        const double units = (found[i].sample - found[i - 1].sample) / 48000.0 / 0.022;
        if (units > 1.2) continue;  // two elements, or the stop
        const bool mark = !found[i].rising;
        sums[mark] += units;
        ++counts[mark];
    }
    EXPECT_NEAR(sums[1] / counts[1], 1.1, 1e-4);
    EXPECT_NEAR(sums[0] / counts[0], 0.9, 1e-4);
}

TEST(ScenarioSignalTest, ALimitedRunSendsWholeCharactersAndEndsAtMark) {
    Scenario s = faultlessScenario();
    s.seconds = 3.0;
    ScenarioSignal signal(s);
    const auto samples = samplesOf(signal, 1000000);
    EXPECT_EQ(samples.size(), 144000U);
    EXPECT_GT(samples.back(), 0.0F);
    EXPECT_LT(signal.truth().instants.back().seconds, 3.0);
    EXPECT_GE(signal.truth().charactersSent, 14U);
    EXPECT_EQ(samplesOf(signal, 10).size(), 0U);
}

TEST(ScenarioSignalTest, ATextThatIsNotRepeatedEndsASecondAfterIt) {
    Scenario s = faultlessScenario("RY");
    s.text.repeat = false;
    ScenarioSignal signal(s);
    const auto samples = samplesOf(signal, 1000000);
    EXPECT_NEAR(static_cast<double>(samples.size()) / 48000.0, signal.truth().instants.back().seconds + 1.0, 1e-4);
    EXPECT_EQ(signal.truth().sentText(*findCode("ita2")), "RY");
}

TEST(ScenarioSignalTest, AnEndlessRunForgetsTheOldestTruth) {
    Scenario s = faultlessScenario();
    s.machine.baud = 200.0;
    s.machine.stopUnits = 1.0;
    s.card.rateHz = 44100.0;
    ScenarioSignal signal(s);
    std::vector<float> second(44100);
    for (int i = 0; i < 150; ++i) ASSERT_EQ(signal.read(second), second.size());
    EXPECT_GT(signal.truth().charactersSent, Truth::kMostCharacters + 1000);
    EXPECT_EQ(signal.truth().characters.size(), Truth::kMostCharacters);
    EXPECT_EQ(signal.truth().characters.back().number, signal.truth().charactersSent - 1);
    EXPECT_LE(signal.truth().instants.size(), Truth::kMostInstants);
}

TEST(ScenarioSignalTest, AGapShowsInTheNumbersOfTheBlocks) {
    Scenario s = faultlessScenario();
    s.seconds = 1.0;
    s.card.gaps = {{0.5, 1000}};
    ScenarioSignal whole(s);
    const auto expected = samplesOf(whole, 48000);
    ScenarioSignal signal(s);
    std::uint64_t due = 0;
    std::uint64_t missing = 0;
    while (const auto block = signal.nextBlock()) {
        if (block->firstSample != due) {
            EXPECT_GE(due, 24000U);
            EXPECT_LT(due, 24256U);
        }
        missing += block->firstSample - due;
        due = block->firstSample + SampleBlock::kSamples;
        for (std::size_t i = 0; i < SampleBlock::kSamples; ++i)
            ASSERT_EQ(block->samples[i], expected[block->firstSample + i]);
    }
    EXPECT_EQ(missing, 1000U);
}

TEST(ScenarioSignalTest, TheEccentricShowsInTheTruth) {
    ScenarioSignal signal(faultlessScenario());
    samplesOf(signal, 96000);
    signal.turnEccentric(6.0);
    samplesOf(signal, 96000);
    EXPECT_EQ(signal.truth().characters.front().biasPercent, 0.0);
    EXPECT_EQ(signal.truth().characters.back().biasPercent, 6.0);
}

}  // namespace
}  // namespace trueunit
