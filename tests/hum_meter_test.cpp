// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/hum_meter.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace trueunit;

namespace {

struct HummingLine {
    double rateHz = 48000.0;
    double hz = 50.0;
    double amplitude = 0.05;  // of the swing
    double noise = 0.01;
    double unit = 0.022;

    // Random elements for some seconds, with ramps of 0.4 ms.
    std::vector<float> samples(double seconds) const {
        std::mt19937_64 random(3);
        std::normal_distribution<double> normal;
        std::vector<float> out(static_cast<std::size_t>(seconds * rateHz));
        double level = 1.0, to = 1.0;
        for (std::size_t n = 0; n < out.size(); ++n) {
            const double t = static_cast<double>(n) / rateHz;
            if (std::fmod(t, unit) < 1.0 / rateHz) to = (random() & 1U) != 0 ? 1.0 : 0.0;
            level += std::clamp(to - level, -1.0 / (0.0004 * rateHz), 1.0 / (0.0004 * rateHz));
            const double hum = amplitude * std::sin(2.0 * std::numbers::pi * hz * t + 1.0);
            out[n] = static_cast<float>(level + hum + noise * normal(random));
        }
        return out;
    }
};

}  // namespace

TEST(HumMeter, MeasuresHumOfEitherMains) {
    for (const double hz : {50.0, 60.0, 49.9, 60.1})
        for (const double unit : {0.022, 0.020, 1.0 / 75.0}) {
            HummingLine line;
            line.hz = hz;
            line.unit = unit;
            HumMeter meter(line.rateHz);
            meter.push(line.samples(10.0));
            ASSERT_TRUE(meter.hum()) << hz << " " << unit;
            EXPECT_NEAR(meter.hum()->hz, hz, 0.2);
            EXPECT_NEAR(meter.hum()->amplitude, 0.05, 0.004);
        }
}

TEST(HumMeter, TakesNoiseAndTheLineItselfForNoHum) {
    for (const double noise : {0.001, 0.05, 0.15}) {
        HummingLine line;
        line.amplitude = 0.0;
        line.noise = noise;
        line.unit = 0.020;  // as long as a period of 50 Hz
        HumMeter meter(line.rateHz);
        meter.push(line.samples(20.0));
        EXPECT_FALSE(meter.hum()) << noise;
    }
}

TEST(HumMeter, DoesNotDependOnHowTheLineIsChopped) {
    const auto samples = HummingLine{}.samples(5.0);
    HumMeter whole(48000.0), chopped(48000.0);
    whole.push(samples);
    for (std::size_t i = 0; i < samples.size(); i += 37)
        chopped.push(std::span(samples).subspan(i, std::min<std::size_t>(37, samples.size() - i)));
    EXPECT_NEAR(whole.hum()->amplitude, chopped.hum()->amplitude, 1e-7);  // sums in single precision
}

TEST(HumMeter, SaysNothingBeforeTwoSeconds) {
    HumMeter meter(48000.0);
    meter.push(HummingLine{}.samples(1.9));
    EXPECT_FALSE(meter.hum());
}
