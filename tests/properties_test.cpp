// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold of the readings whatever the machine sends: drawn machines, no expected numbers.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/normal_equations.h"
#include "core/report/shown_instants.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

constexpr std::size_t kSent = 40;
// An instant is uncertain by noise over slope. At 60 dB that is 0.0005 of the swing over 0.8 swings in 300 us, 0.19 us
// or 0.0009 % of a unit; the means of 40 characters are uncertain by less, the largest of 200 instants by four times as
// much. The rest is room for the edge's own shape between two samples.
constexpr double kMeanPercent = 0.01;
constexpr double kInstantPercent = 0.05;

// A directly coupled machine at 45.45 baud with something of everything.
PlainSender drawnMachine(unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> percent(-8.0, 8.0);
    PlainSender sender;
    sender.biasPercent = percent(random);
    sender.endPercent = 0.5 * percent(random);
    sender.scatterPercent = 1.0;
    sender.extraPercent = [late = percent(random)](int k, bool, double) { return k == 3 ? 0.4 * late : 0.0; };
    sender.seed = seed;
    return sender;
}

Snapshot heardAs(std::vector<float> heard, double rateHz = 48000.0) {
    return test::measureTwice(heard, rateHz).snapshot();
}

double largest(const std::vector<DisplacementDot>& dots) {
    double most = 0.0;
    for (const DisplacementDot& d : dots) most = std::max(most, std::abs(d.percent));
    return most;
}

// The same characters, and every displacement of the one is the other's times the sign.
void expectAlike(const Snapshot& a, const Snapshot& b, double sign = 1.0) {
    ASSERT_TRUE(a.reading.distortion.biasPercent && a.reading.distortion.endPercent && a.reading.speed.errorPercent);
    ASSERT_TRUE(b.reading.distortion.biasPercent && b.reading.distortion.endPercent && b.reading.speed.errorPercent);
    EXPECT_EQ(a.reading.text.decoded, b.reading.text.decoded);
    EXPECT_EQ(a.reading.text.characters, static_cast<long>(kSent));
    const auto& d = a.reading.distortion;
    EXPECT_NEAR(d.biasPercent->value, sign * b.reading.distortion.biasPercent->value, kMeanPercent);
    EXPECT_NEAR(d.endPercent->value, sign * b.reading.distortion.endPercent->value, kMeanPercent);
    if (sign > 0.0) {  // a rate: turned round it is the same only to the first order
        EXPECT_NEAR(a.reading.speed.errorPercent->value, b.reading.speed.errorPercent->value, 0.001);
    }
    ASSERT_EQ(a.dots.size(), b.dots.size());
    for (std::size_t i = 0; i < a.dots.size(); ++i)
        ASSERT_NEAR(a.dots[i].percent, sign * b.dots[i].percent, kInstantPercent) << "dot " << i;
}

class Properties : public ::testing::TestWithParam<unsigned> {};

TEST_P(Properties, GainPolarityAndOffsetChangeNoReading) {
    PlainSender sender = drawnMachine(GetParam());
    const std::vector<float> heard = sender.send(test::mixedText(kSent, GetParam()));
    const Snapshot plain = heardAs(heard);
    const auto changed = [&](float gain, float offset) {
        std::vector<float> other = heard;
        for (float& v : other) v = gain * v + offset;
        return heardAs(std::move(other));
    };
    for (const float gain : {0.02F, 1.9F, -1.0F}) {
        SCOPED_TRACE("gain=" + std::to_string(gain));
        const Snapshot other = changed(gain, 0.0F);
        expectAlike(plain, other);
        EXPECT_EQ(other.reading.input.inverted, std::optional(gain < 0.0F));
    }
    SCOPED_TRACE("offset");
    expectAlike(plain, changed(0.5F, -0.3F));
}

TEST_P(Properties, EverySampleRateReadsTheSameInstants) {
    PlainSender sender = drawnMachine(GetParam());
    const auto at = [&](double rateHz) {
        sender.rateHz = rateHz;  // the instants are drawn before the noise: they stay
        return heardAs(sender.send(test::mixedText(kSent, GetParam())), rateHz);
    };
    const Snapshot usual = at(48000.0);
    for (const double rateHz : {44100.0, 96000.0}) {
        SCOPED_TRACE(rateHz);
        expectAlike(usual, at(rateHz));
    }
}

TEST_P(Properties, TurningEveryDisplacementRoundTurnsEveryReadingRound) {
    PlainSender sender = drawnMachine(GetParam());
    const std::vector<unsigned> codes = test::mixedText(kSent, GetParam());
    const Snapshot plain = heardAs(sender.send(codes));
    PlainSender turned = sender;
    turned.biasPercent = -sender.biasPercent;
    turned.endPercent = -sender.endPercent;
    turned.scatterPercent = -sender.scatterPercent;  // the same draws, the other way
    turned.extraPercent = [&sender](int k, bool toMark, double t) { return -sender.extraPercent(k, toMark, t); };
    expectAlike(plain, heardAs(turned.send(codes)), -1.0);
    EXPECT_GT(largest(plain.dots), 20.0 * kInstantPercent);
}

// What was imposed is what is read, instant by instant: against the grid of the unit fitted to the imposed ones.
TEST_P(Properties, EveryDisplacementImposedIsTheDisplacementRead) {
    PlainSender sender = drawnMachine(GetParam());
    const Snapshot read = heardAs(sender.send(test::mixedText(kSent, GetParam())));
    struct Imposed {
        int k;
        bool toMark;
        double late;
    };
    std::vector<Imposed> imposed;
    double start = 0.0;
    double due = 0.0;  // start of the next character
    for (const PlainSender::Instant& i : sender.instants) {
        if (!i.toMark && i.seconds > due - 0.5 * sender.unit) {
            start = i.seconds;
            due = start + (sender.levels + 1 + sender.stopUnits) * sender.unit;
            continue;
        }
        const double late = i.seconds - start;
        imposed.push_back({static_cast<int>(std::lround(late / sender.unit)), i.toMark, late});
    }
    NormalEquations<3> equations;
    for (const Imposed& i : imposed) equations.add({double(i.k), i.toMark ? 1.0 : 0.0, i.toMark ? 0.0 : 1.0}, i.late);
    const auto fit = equations.solve();
    ASSERT_TRUE(fit);
    ASSERT_EQ(read.dots.size(), imposed.size());
    const ShownInstants shown = shownInstants(read.reading);  // the unit the dots are drawn with
    const double unit = shown.withoutTheFault ? shown.unitSeconds : (*fit)[0];
    EXPECT_NEAR(unit, sender.unit, 0.003 * sender.unit);
    for (std::size_t n = 0; n < imposed.size(); ++n) {
        EXPECT_EQ(read.dots[n].k, imposed[n].k);
        const double percent = 100.0 * (imposed[n].late - imposed[n].k * unit) / sender.nominal;
        ASSERT_NEAR(read.dots[n].percent, percent, kInstantPercent) << "instant " << n;
    }
    EXPECT_NEAR(read.reading.distortion.biasPercent->value, -100.0 * (*fit)[1] / sender.nominal, kMeanPercent);
    EXPECT_NEAR(read.reading.distortion.endPercent->value, 100.0 * (*fit)[2] / sender.nominal, kMeanPercent);
}

INSTANTIATE_TEST_SUITE_P(Machines, Properties, ::testing::Values(1U, 2U),
                         [](const auto& i) { return "Seed" + std::to_string(i.param); });

}  // namespace
}  // namespace trueunit
