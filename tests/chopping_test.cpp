// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <random>

#include "core/pipeline.h"
#include "core/report/reading_json.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

void append(std::vector<double>& out, const std::optional<Measured>& m) {
    out.push_back(m ? m->value : -1e300);
    out.push_back(m ? m->uncertainty : -1e300);
}
void append(std::vector<double>& out, const std::optional<double>& v) { out.push_back(v.value_or(-1e300)); }

// Every number that a moment holds, unrounded: equal means equal in every bit.
std::vector<double> numbersOf(const Snapshot& s) {
    std::vector<double> n;
    const Reading& r = s.reading;
    for (const auto& m : {r.speed.baud, r.speed.errorPercent, r.speed.characterMs, r.speed.operationsPerMinute,
                          r.speed.stopUnits, r.distortion.biasPercent, r.distortion.endPercent})
        append(n, m);
    for (const auto& v : {r.input.snrDb, r.input.peakDbfs, r.speed.unitMs, r.distortion.grossPercent,
                          r.distortion.synchronousPercent, r.distortion.fortuitousRmsPercent})
        append(n, v);
    n.insert(n.end(), r.input.couplingHz.begin(), r.input.couplingHz.end());
    for (const InstantReading& i : r.instants)
        n.insert(n.end(), {double(i.k), double(i.count), i.meanPercent, i.rmsPercent, i.minPercent, i.maxPercent});
    for (const DisplacementDot& d : s.dots) n.insert(n.end(), {double(d.number), double(d.k), d.percent});
    for (const TrailPoint& t : s.trail) n.insert(n.end(), {double(t.number), t.seconds, t.biasPercent, t.uncertainty});
    for (const auto& t : s.traces) n.insert(n.end(), t->level.begin(), t->level.end());
    n.insert(n.end(), {s.seconds, s.levelDbfs, s.gridUnitSeconds});
    return n;
}

void expectSame(const Snapshot& a, const Snapshot& b, const std::string& how) {
    EXPECT_EQ(a.reading.text.decoded, b.reading.text.decoded) << how;
    EXPECT_EQ(readingJson(a.reading), readingJson(b.reading)) << how;
    EXPECT_EQ(numbersOf(a), numbersOf(b)) << how;
}

test::PlainSender roughSender() {
    test::PlainSender sender;
    sender.polesHz = {8.0};
    sender.snrDb = 30.0;
    sender.biasPercent = 7.0;
    sender.endPercent = -2.0;
    sender.scatterPercent = 1.0;
    sender.humPercent = 3.0;
    sender.inverted = true;
    return sender;
}

template <class NextSize>
Snapshot measured(const std::vector<float>& heard, double rateHz, NextSize nextSize) {
    Pipeline pipeline(rateHz, Options{}, Limits{});
    for (std::size_t i = 0; i < heard.size();) {
        const std::size_t n = std::min(heard.size() - i, nextSize());
        pipeline.push(std::span(heard).subspan(i, n));
        i += n;
    }
    pipeline.finish();
    return pipeline.snapshot();
}

TEST(Chopping, WholeAndSampleBySampleAreTheSameMeasurement) {
    test::PlainSender sender = roughSender();
    sender.rateHz = 12000.0;
    const std::vector<float> heard = sender.send(test::mixedText(40, 1));
    const Snapshot whole = measured(heard, sender.rateHz, [&] { return heard.size(); });
    ASSERT_TRUE(whole.reading.distortion.biasPercent);
    ASSERT_GE(whole.reading.text.characters, 38);
    expectSame(whole, measured(heard, sender.rateHz, [] { return std::size_t{1}; }), "sample by sample");
}

TEST(Chopping, RandomBlocksAreTheSameMeasurement) {
    test::PlainSender sender = roughSender();
    const std::vector<float> heard = sender.send(test::mixedText(54, 2));  // long enough for the second look
    const Snapshot whole = measured(heard, sender.rateHz, [&] { return heard.size(); });
    ASSERT_TRUE(whole.reading.distortion.biasPercent);
    for (const unsigned seed : {1U, 2U}) {
        std::mt19937 random(seed);
        std::uniform_int_distribution<std::size_t> size(1, seed == 2 ? 100000 : 700);
        expectSame(whole, measured(heard, sender.rateHz, [&] { return size(random); }), "seed=" + std::to_string(seed));
    }
}

TEST(Chopping, NumberedBlocksAreTheSameMeasurementAsBareSamples) {
    test::PlainSender sender = roughSender();
    std::vector<float> heard = sender.send(test::mixedText(40, 3));
    heard.resize(heard.size() / SampleBlock::kSamples * SampleBlock::kSamples);
    const Snapshot whole = measured(heard, sender.rateHz, [&] { return heard.size(); });
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    for (std::size_t i = 0; i < heard.size(); i += SampleBlock::kSamples) {
        SampleBlock block;
        block.firstSample = i;
        std::copy_n(heard.begin() + static_cast<std::ptrdiff_t>(i), SampleBlock::kSamples, block.samples.begin());
        pipeline.push(block);
    }
    pipeline.finish();
    expectSame(whole, pipeline.snapshot(), "blocks");
}

TEST(Chopping, LookingOnTheWayDoesNotChangeWhatComesOut) {
    test::PlainSender sender = roughSender();
    const std::vector<float> heard = sender.send(test::mixedText(40, 4));
    Pipeline silent(sender.rateHz, Options{}, Limits{});
    Pipeline watched(sender.rateHz, Options{}, Limits{});
    for (std::size_t i = 0; i < heard.size(); i += 1600) {
        const auto part = std::span(heard).subspan(i, std::min<std::size_t>(1600, heard.size() - i));
        silent.push(part);
        watched.push(part);
        watched.snapshot();
    }
    silent.finish();
    watched.finish();
    EXPECT_EQ(readingJson(silent.reading()), readingJson(watched.reading()));
}

}  // namespace
}  // namespace trueunit
