// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/acquire/dropout_watch.h"
#include "core/condition/line_fit.h"
#include "core/condition/tone_finder.h"

namespace trueunit {

// What was found to carry the keying.
struct FoundLine {
    LineFit fit;
    std::optional<Tones> tones;  // empty: a bare loop
};

// Waits for a keyed line: gathers samples, looks at the last ones every half second, and hands over what it gathered
// once a line is in it, so that no character is lost. Keeps at most 24 seconds and looks at all of it now and then, for
// keys pressed one by one. Analysis thread.
class LineFinder {
public:
    LineFinder(double rateHz, InputKind wanted, std::vector<double> tonesHz);

    // Adds samples; `now` is the number of the first of them. True when a line has been found in what is held.
    bool push(std::span<const float> samples, std::uint64_t now, bool hearing);
    bool lookNow();  // without waiting for the next half second; at the end of a recording

    bool heldHasSteps() const;  // of a line, though too few of them to find it

    const FoundLine& found() const { return *found_; }
    std::uint64_t heldFrom() const { return heldFrom_; }
    std::vector<float> release();  // hands over the samples and starts anew

private:
    void forget(std::size_t oldest);  // samples

    double rateHz_;
    InputKind wanted_;
    std::vector<double> tonesHz_;
    std::vector<float> held_;
    std::uint64_t heldFrom_ = 0;
    std::uint64_t nextLook_ = 0;
    std::uint64_t nextLookAtAll_ = 0;
    std::optional<FoundLine> found_;
};

// So that it tells silence of the line from samples that are missing.
void startOn(DropoutWatch& watch, const FoundLine& line);

// The line in a stretch of samples, tones demodulated first. Pure.
std::optional<FoundLine> findLine(std::span<const float> samples, double rateHz, InputKind wanted,
                                  std::span<const double> tonesHz);

}  // namespace trueunit
