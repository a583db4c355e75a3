// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/analysis_thread.h"

#include <gtest/gtest.h>

#include <chrono>
#include <functional>

#include "core/simulate/scenario_signal.h"

using namespace trueunit;
using namespace std::chrono_literals;

namespace {

Scenario sender() {
    Scenario s;
    s.machine.baud = 50.0;
    s.text.send = "RYRYRY THE LAMP IS LIT ";
    s.faults.biasPercent = 6.0;
    s.card.couplingHz = {8.0};
    s.card.snrDb = 50.0;
    return s;
}

// Fills a ring as fast as it takes the blocks, so that seconds of signal need no seconds of waiting.
class AnalysisThreadTest : public testing::Test {
protected:
    AnalysisThreadTest() : signal_(sender()) {}

    void send(double seconds) {
        const auto blocks = static_cast<int>(seconds * signal_.rateHz() / SampleBlock::kSamples);
        for (int i = 0; i < blocks; ++i) {
            while (ring_.waitingBlocks() >= SampleRing::kBlocks) std::this_thread::sleep_for(1ms);
            SampleBlock block = *signal_.nextBlock();
            block.stampNs = ++stamp_;
            ring_.tryPush(block);
        }
    }
    void skip(int blocks) {
        for (int i = 0; i < blocks; ++i) signal_.nextBlock();
    }
    std::shared_ptr<const Snapshot> waitFor(const std::function<bool(const Snapshot&)>& holds) {
        const auto limit = std::chrono::steady_clock::now() + 20s;
        while (std::chrono::steady_clock::now() < limit) {
            if (auto s = latest_.take(); s && holds(*s)) return s;
            std::this_thread::sleep_for(5ms);
        }
        return nullptr;
    }

    ScenarioSignal signal_;
    SampleRing ring_;
    LatestSnapshot latest_;
    std::int64_t stamp_ = 0;
};

constexpr double kEccentricWithin = 0.2;  // over a few seconds of text

}  // namespace

TEST_F(AnalysisThreadTest, PublishesReadingsOfWhatTheRingCarries) {
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(12.0);
    const auto s = waitFor([](const Snapshot& x) { return x.seconds > 11.9; });
    ASSERT_TRUE(s);
    EXPECT_EQ(s->state, SignalState::reading);
    ASSERT_TRUE(s->reading.distortion.biasPercent);
    EXPECT_NEAR(s->reading.distortion.biasPercent->value, 6.0, kEccentricWithin);
    EXPECT_GT(s->newestStampNs, 0);
    EXPECT_EQ(s->lostSamples, 0U);
    EXPECT_EQ(s->reading.input.gaps, 0);
}

TEST_F(AnalysisThreadTest, ALostBlockIsCountedAndTheFramingBeginsAnew) {
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(8.0);
    skip(20);  // 107 ms: more than half a character
    send(8.0);
    analysis.finish();
    const auto s = waitFor([](const Snapshot& x) { return x.seconds > 15.9; });
    ASSERT_TRUE(s);
    EXPECT_EQ(s->reading.input.gaps, 1);
    EXPECT_EQ(s->lostSamples, 20U * SampleBlock::kSamples);
    EXPECT_EQ(s->reading.text.framingErrors, 0);  // the cut character is left out, not misread
    EXPECT_NEAR(s->reading.distortion.biasPercent->value, 6.0, kEccentricWithin);
}

TEST_F(AnalysisThreadTest, AStalledAnalysisLosesBlocksAndSaysHowMany) {
    const double seconds = 1.2 * static_cast<double>(SampleRing::kBlocks * SampleBlock::kSamples) / signal_.rateHz();
    const auto blocks = static_cast<int>(seconds * signal_.rateHz() / SampleBlock::kSamples);
    for (int i = 0; i < blocks; ++i) ring_.tryPush(*signal_.nextBlock());  // nobody pops: the ring overflows
    const std::uint64_t dropped = ring_.droppedBlocks();
    ASSERT_GT(dropped, 100U);
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    ASSERT_TRUE(waitFor([&](const Snapshot& x) { return x.lostSamples == dropped * SampleBlock::kSamples; }))
        << "the loss shows before the next block arrives";
    while (ring_.waitingBlocks() > 0) std::this_thread::sleep_for(1ms);
    send(6.0);
    const auto s = waitFor([](const Snapshot& x) { return x.reading.input.gaps == 1 && x.seconds > 18.0; });
    ASSERT_TRUE(s);
    EXPECT_EQ(s->lostSamples, dropped * SampleBlock::kSamples);
    EXPECT_EQ(s->state, SignalState::reading);
}

TEST_F(AnalysisThreadTest, AnotherWindowOrLimitKeepsTheRecord) {
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(10.0);
    const auto before = waitFor([](const Snapshot& x) { return x.seconds > 9.9; });
    ASSERT_TRUE(before);
    Options options;
    options.windowCharacters = 8;
    options.baud = 45.45;
    Limits limits;
    limits.biasPercent = 50.0;
    analysis.change(options, limits);
    const auto s = waitFor([](const Snapshot& x) { return x.options.windowCharacters == 8; });
    ASSERT_TRUE(s);
    EXPECT_EQ(s->windowUsed, 8U);  // at once: no new character has come
    EXPECT_EQ(s->limits.biasPercent, 50.0);
    EXPECT_EQ(s->reading.speed.nominalBaud, 45.45);
    EXPECT_EQ(s->trail.size(), before->trail.size());
    EXPECT_EQ(s->traces.back()->number, before->traces.back()->number);
}

TEST_F(AnalysisThreadTest, AnotherSliceBeginsTheRecordAnewWithoutLearningTheWiringAgain) {
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(10.0);
    ASSERT_TRUE(waitFor([](const Snapshot& x) { return x.seconds > 9.9; }));
    Options options;
    options.slicePercent = 40.0;
    analysis.change(options, {});
    ASSERT_TRUE(waitFor([](const Snapshot& x) { return x.options.slicePercent == 40.0; }));
    send(4.0);
    const auto s = waitFor([](const Snapshot& x) { return x.windowUsed >= 8 && x.seconds > 13.9; });
    ASSERT_TRUE(s);
    EXPECT_LT(s->windowUsed, 40U);
    EXPECT_FALSE(s->reading.input.couplingHz.empty());
}

TEST_F(AnalysisThreadTest, ARestartForgetsEverything) {
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(8.0);
    ASSERT_TRUE(waitFor([](const Snapshot& x) { return x.seconds > 7.9 && x.windowUsed > 8; }));
    analysis.restart();
    ASSERT_TRUE(waitFor([](const Snapshot& x) { return x.windowUsed == 0 && x.trail.empty(); }));
    send(6.0);
    EXPECT_TRUE(waitFor([](const Snapshot& x) { return x.windowUsed >= 8; }));
}

TEST_F(AnalysisThreadTest, SerialsRiseAcrossPipelinesAndThreads) {
    {
        AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
        send(2.0);
        ASSERT_TRUE(waitFor([](const Snapshot& x) { return x.seconds > 1.9; }));
    }
    const std::uint64_t before = latest_.take()->serial;
    AnalysisThread analysis(ring_, latest_, signal_.rateHz(), {}, {});
    send(1.0);
    ASSERT_TRUE(waitFor([&](const Snapshot& x) { return x.serial > before + 1; }));
}
