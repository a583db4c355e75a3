// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/device_list.h"
#include "app/self_check.h"
#include "core/measure/clock_trim.h"
#include "core/result.h"

namespace trueunit {

// What a loop-back cable from output to input tells of the sound card, output and input together.
struct LoopbackResult {
    std::string input;
    std::string output;
    double rateHz = 0.0;
    std::vector<double> couplingHz;
    std::optional<double> snrDb;
    std::optional<double> riseMs;    // 10 to 90 %, of the reference's 0.3 ms edges
    std::optional<double> delayMs;   // from handing a sample to the output to getting it from the input
    std::optional<ClockTrim> clock;  // by a reference tone, where one was given
    std::string clockWords;          // why there is no clock error
    long gaps = 0;
    std::vector<CheckRow> rows;
};

// The card under test: sends reference signals out of an output and reads them back from an input, one bias after the
// other; before that, where the frequency of a reference tone is given, listens to the tone. About half a minute.
//
// Everything here belongs to the owner's thread, which calls poll every tenth of a second or so; the measuring runs on
// threads inside. Nothing starts before start().
class LoopbackCheck {
public:
    LoopbackCheck(SoundDevice input, SoundDevice output, std::optional<double> toneHz);
    ~LoopbackCheck();

    Outcome start();
    bool poll();                                   // true: it is over, with a result or an error
    double progress() const;                       // 0..1
    const Result<LoopbackResult>& result() const;  // valid once poll has returned true

private:
    struct Bench;
    std::unique_ptr<Bench> bench_;
};

// "INPUT,OUTPUT" as on the command line; names may hold commas themselves, an empty one is the system's own.
Result<std::pair<SoundDevice, SoundDevice>> loopbackDevices(const std::string& names);

}  // namespace trueunit
