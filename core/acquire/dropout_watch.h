// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace trueunit {

// Stretches in which the card or its driver put nothing for samples that were lost, or a plug had no contact: from one
// sample to the next silent out of a level that was not, for milliseconds, which neither an edge nor a coupling does.
// Where silence is nothing unusual, as in a recording without noise, none is told. Analysis thread or the one that runs
// ahead of it; hardly any cost.
class DropoutWatch {
public:
    struct Dropout {
        std::size_t begin = 0, end = 0;  // of the samples pushed
        bool begins = false;             // false: it goes on from the samples before
    };

    explicit DropoutWatch(double rateHz);

    // None is told before. Levels of the line as far as no coupling takes them: silence at one of them is its own.
    void start(std::span<const double> levels);
    void stop() { watching_ = false; }  // of a keyed tone, whose silence is a condition of the line

    // The first dropout in these samples; `peak` is the largest magnitude of the last tenth of a second.
    std::optional<Dropout> push(std::span<const float> samples, float peak);

private:
    void enter(float before);  // silence begins

    bool watching_ = false;

    double rateHz_;
    std::size_t shortest_;      // samples
    double usualAfter_;         // samples, after which silence is unusual again
    double sinceSilent_ = 0.0;  // samples
    std::size_t silent_ = 0;    // at the end of what was pushed
    bool jumped_ = false;       // it came at once
    bool out_ = false;          // it is a dropout
    double runs_ = 0.0;         // silences of late, any
    float last_ = 0.0F;
    float level_ = 0.0F;  // the peak of late, fading slowly
};

}  // namespace trueunit
