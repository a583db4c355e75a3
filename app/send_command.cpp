// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/send_command.h"

#include <chrono>
#include <cstdio>
#include <thread>

#include "app/commands.h"
#include "app/reference_sender.h"

namespace trueunit {

namespace {

constexpr double kFileRateHz = 48000.0;
constexpr std::chrono::milliseconds kAskEvery{100};

Outcome sendToOutput(const Command& command) {
    const Result<SoundDevice> output = soundOutput(command.output);
    if (!output) return output.error();
    ReferenceSender sender;
    if (Outcome started = sender.start(*output, command.sender); !started) return started;
    std::printf("Sending to %s: %s.\n%s\n", output->title().c_str(), command.sender.words().c_str(), kSenderCaution);
    std::fflush(stdout);
    while (sender.state() == SourceState::running) std::this_thread::sleep_for(kAskEvery);
    if (sender.state() == SourceState::lost) return Error{"The sound output has stopped taking the signal."};
    if (sender.missedSamples() > 0)
        return Error{"The signal had gaps, since the computer was too busy: it was no reference."};
    std::this_thread::sleep_for(std::chrono::milliseconds(400));  // what the output still holds
    return done();
}

}  // namespace

int runSend(const Command& command) {
    const Outcome sent = command.out.empty() ? sendToOutput(command)
                                             : writeReference(command.sender, command.out,
                                                              command.rateHz.value_or(kFileRateHz), command.format);
    if (!sent) return refuse(sent.error());
    return 0;
}

}  // namespace trueunit
