// SPDX-License-Identifier: GPL-3.0-or-later
// tests/crosscheck holds the averaged spectrum against a general-purpose library as well.
#include "core/condition/spectrum.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <limits>
#include <numbers>

#include "tests/support/white_noise.h"

using namespace trueunit;
using trueunit::test::whiteNoise;

namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kRate = 48000.0;

}  // namespace

TEST(Spectrum, ASineStandsInTheBinOfItsFrequency) {
    std::vector<float> samples(48000);
    for (std::size_t i = 0; i < samples.size(); ++i)
        samples[i] = static_cast<float>(0.5 * std::sin(kTwoPi * 1500.0 * static_cast<double>(i) / kRate));
    const Spectrum s = averagedSpectrum(samples, kRate, 12.0);
    EXPECT_LE(s.binHz, 12.0);
    const auto top = std::max_element(s.power.begin(), s.power.end()) - s.power.begin();
    EXPECT_NEAR(static_cast<double>(top) * s.binHz, 1500.0, s.binHz);
}

TEST(Spectrum, WhiteNoiseIsSpreadEvenly) {
    const Spectrum s = averagedSpectrum(whiteNoise(480000), kRate, 100.0);
    double low = 0.0;
    double high = 0.0;
    const std::size_t half = s.power.size() / 2;
    for (std::size_t i = 2; i < half; ++i) low += s.power[i];
    for (std::size_t i = half; i < 2 * half - 2; ++i) high += s.power[i];
    EXPECT_NEAR(low / high, 1.0, 0.03);
}

TEST(Spectrum, SamplesThatAreNoNumbersCountAsSilence) {
    std::vector<float> samples = whiteNoise(4800);
    samples[100] = std::numeric_limits<float>::quiet_NaN();
    samples[200] = std::numeric_limits<float>::infinity();
    for (const double power : averagedSpectrum(samples, kRate, 100.0).power) EXPECT_TRUE(std::isfinite(power));
}

TEST(Spectrum, TheTransformIsTheSumThatDefinesIt) {
    const std::vector<double> samples = {1.0, -2.0, 0.5, 4.0, 0.0, 1.5, -1.0};
    const std::vector<double> power = squaredTransform(samples, 16);
    ASSERT_EQ(power.size(), 9U);
    for (std::size_t bin = 0; bin < power.size(); ++bin) {
        std::complex<double> sum;
        for (std::size_t i = 0; i < samples.size(); ++i)
            sum += samples[i] * std::polar(1.0, -kTwoPi * static_cast<double>(bin * i) / 16.0);
        EXPECT_NEAR(power[bin], std::norm(sum), 1e-9) << bin;
    }
}
