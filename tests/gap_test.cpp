// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/pipeline.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

// A running tape in blocks, some of which can be lost on the way.
class Gap : public ::testing::Test {
protected:
    Gap() {
        sender_.biasPercent = 6.0;
        sender_.polesHz = {8.0};
        sender_.snrDb = 45.0;
        codes_ = test::mixedText(90, 7);
        heard_ = sender_.send(codes_);
        pipeline_ = std::make_unique<Pipeline>(sender_.rateHz, Options{}, Limits{});
    }

    std::uint64_t blockAt(double seconds) const {
        return static_cast<std::uint64_t>(seconds * sender_.rateHz) / SampleBlock::kSamples;
    }
    std::uint64_t blocks() const { return heard_.size() / SampleBlock::kSamples; }

    // Pushes blocks [from, to); `shift` samples of the signal are gone without a step in the number.
    void play(std::uint64_t from, std::uint64_t to, std::size_t shift = 0, bool lossBeforeFirst = false) {
        for (std::uint64_t b = from; b < to; ++b) {
            SampleBlock block;
            block.firstSample = b * SampleBlock::kSamples;
            block.lossBefore = lossBeforeFirst && b == from;
            const std::size_t at = block.firstSample + shift;
            if (at + SampleBlock::kSamples > heard_.size()) return;
            std::copy_n(heard_.begin() + static_cast<std::ptrdiff_t>(at), SampleBlock::kSamples, block.samples.begin());
            pipeline_->push(block);
        }
    }

    // What was printed must be the beginning of the text and its end, with some characters gone between.
    void expectOnlyTheMiddleMissing(const std::string& printed, std::size_t mostMissing) const {
        const std::vector<unsigned>& codes = codes_;
        bool found = false;
        for (std::size_t before = 0; before <= codes.size() && !found; ++before)
            for (std::size_t gone = 0; gone <= mostMissing && before + gone <= codes.size() && !found; ++gone) {
                const std::vector<unsigned> head(codes.begin(), codes.begin() + static_cast<std::ptrdiff_t>(before));
                const std::vector<unsigned> tail(codes.begin() + static_cast<std::ptrdiff_t>(before + gone),
                                                 codes.end());
                found = printed == test::printed(head) + test::printed(tail);  // each begins in letters
            }
        EXPECT_TRUE(found) << printed << "\n" << test::printed(codes);
    }

    void expectTruth(const Reading& r) const {
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.grossPercent && r.speed.stopUnits);
        EXPECT_NEAR(r.distortion.biasPercent->value, 6.0, 0.1);
        EXPECT_LT(*r.distortion.grossPercent, 7.0);  // an instant measured across the gap would stand out
        EXPECT_NEAR(r.speed.stopUnits->value, 1.42, 0.005);
        EXPECT_EQ(r.text.framingErrors, 0);
    }

    test::PlainSender sender_;
    std::vector<unsigned> codes_;
    std::vector<float> heard_;
    std::unique_ptr<Pipeline> pipeline_;
};

TEST_F(Gap, AStepInTheBlockNumberIsCountedAndNothingIsReadAcrossIt) {
    const std::uint64_t at = blockAt(7.0);
    constexpr std::uint64_t kLost = 20;  // 107 ms: less than a character
    play(0, at);
    play(at + kLost, blocks());
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    EXPECT_EQ(s.reading.input.gaps, 1);
    EXPECT_EQ(s.lostSamples, kLost * SampleBlock::kSamples);
    EXPECT_NEAR(s.seconds, static_cast<double>(blocks() * SampleBlock::kSamples) / sender_.rateHz, 0.01);
    expectOnlyTheMiddleMissing(s.reading.text.decoded, 4);
    expectTruth(s.reading);
}

TEST_F(Gap, NoCharacterOverlapsTheMissingSamples) {
    const std::uint64_t at = blockAt(12.0);  // so that the traces, the last 32 characters, lie on both sides
    constexpr std::uint64_t kLost = 33;
    play(0, at);
    play(at + kLost, blocks());
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    const double from = static_cast<double>(at * SampleBlock::kSamples) / sender_.rateHz;
    const double to = static_cast<double>((at + kLost) * SampleBlock::kSamples) / sender_.rateHz;
    int before = 0;
    int after = 0;
    for (const auto& t : s.traces) {
        const double begins = t->startSeconds;
        const double ends = begins + 6.0 * sender_.unit;
        EXPECT_TRUE(ends < from || begins > to) << "a character from " << begins << " to " << ends;
        before += ends < from;
        after += begins > to;
    }
    EXPECT_GT(before, 0);
    EXPECT_GT(after, 0);
}

TEST_F(Gap, ALossOfUnknownLengthIsAGapAlthoughTheNumbersGoOn) {
    const std::uint64_t at = blockAt(7.0);
    play(0, at);
    play(at, blocks(), 1500, true);  // 31 ms are gone and nobody knows how many
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    EXPECT_EQ(s.reading.input.gaps, 1);
    EXPECT_EQ(s.lostSamples, 0U);
    EXPECT_GE(s.reading.text.characters, 84);
    expectTruth(s.reading);
}

TEST_F(Gap, SeveralGapsAreCountedEach) {
    play(0, blockAt(4.0));
    play(blockAt(4.0) + 1, blockAt(8.0));
    play(blockAt(8.0) + 100, blockAt(11.0));
    play(blockAt(11.0) + 7, blocks());
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    EXPECT_EQ(s.reading.input.gaps, 3);
    EXPECT_EQ(s.lostSamples, 108U * SampleBlock::kSamples);
    expectTruth(s.reading);
}

TEST_F(Gap, TheFramingBeginsAnewAndReadingsComeBack) {
    const std::uint64_t at = blockAt(7.0);
    play(0, at);
    const Snapshot before = pipeline_->snapshot();
    EXPECT_EQ(before.state, SignalState::reading);
    play(at + 50, at + 51);
    const Snapshot after = pipeline_->snapshot();
    EXPECT_NE(after.state, SignalState::reading);
    EXPECT_FALSE(after.stateText.empty());
    EXPECT_EQ(after.reading.text.characters, before.reading.text.characters);
    play(at + 51, blockAt(11.0));
    const Snapshot back = pipeline_->snapshot();
    EXPECT_EQ(back.state, SignalState::reading);
    EXPECT_GT(back.reading.text.characters, before.reading.text.characters + 15);
}

TEST_F(Gap, CharacterNumbersGoOnUpwards) {
    const std::uint64_t at = blockAt(12.0);
    play(0, at);
    play(at + 50, blocks());
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    for (std::size_t i = 1; i < s.tape.size(); ++i) EXPECT_GT(s.tape[i].number, s.tape[i - 1].number);
}

TEST_F(Gap, AStreamThatDoesNotBeginAtZeroHasNoGap) {
    play(blockAt(1.0), blocks());
    pipeline_->finish();
    EXPECT_EQ(pipeline_->snapshot().reading.input.gaps, 0);
}

TEST_F(Gap, ANumberThatGoesBackIsAGapToo) {
    play(0, blockAt(7.0));
    play(blockAt(2.0), blocks());
    pipeline_->finish();
    const Snapshot s = pipeline_->snapshot();
    EXPECT_GE(s.reading.input.gaps, 1);
    expectTruth(s.reading);
}

}  // namespace
}  // namespace trueunit
