// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

// The tone that bare contacts interrupt: a sine of 3 kHz at half of full scale, swelling to that in a fiftieth of a
// second. render is called by the sound library's thread: it generates, and takes no lock, no memory and no Qt.
class SteadyTone {
public:
    static constexpr double kHz = 3000.0;
    static constexpr double kAmplitude = 0.5;  // of full scale

    void setRate(double rateHz) { rateHz_ = rateHz; }        // before the first render
    void render(float* out, unsigned long frames) noexcept;  // mono

private:
    double rateHz_ = 48000.0;
    double turns_ = 0.0, loudness_ = 0.0;
};

}  // namespace trueunit
