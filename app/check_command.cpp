// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_command.h"

#include <unistd.h>

#include <QDateTime>
#include <chrono>
#include <cstdio>
#include <thread>

#include "app/check_record.h"
#include "app/commands.h"
#include "app/version.h"

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kLookEvery{50};

// Only where a person watches: a script gets the result alone.
void tellProgress(const char* what, double fraction) {
    if (isatty(STDERR_FILENO)) std::fprintf(stderr, "\r%s %3.0f %% ", what, 100.0 * fraction);
}

void endProgress() {
    if (isatty(STDERR_FILENO)) std::fputs("\r\033[K", stderr);
}

Result<LoopbackResult> checkCard(const Command& command) {
    const auto devices = loopbackDevices(command.loopback);
    if (!devices) return devices.error();
    std::optional<double> tone;
    if (command.toneHz > 0.0) tone = command.toneHz;
    LoopbackCheck check(devices->first, devices->second, tone);
    if (const Outcome started = check.start(); !started) return started.error();
    if (tone)
        std::fprintf(stderr, "Let the reference tone of %g Hz play into the input for 12 s; then put the cable in.\n",
                     *tone);
    while (!check.poll()) {
        tellProgress("sound card", check.progress());
        std::this_thread::sleep_for(kLookEvery);
    }
    return check.result();
}

}  // namespace

int runCheck(const Command& command) {
    CheckRecord record;
    record.version = kVersion;
    if (!command.loopback.empty()) {
        Result<LoopbackResult> card = checkCard(command);
        endProgress();
        if (!card) return refuse(card.error());
        record.loopback = std::move(*card);
    }
    record.memory = checkInMemory([](double fraction) { tellProgress("in memory", fraction); }, {});
    endProgress();
    record.takenSecondsUtc = QDateTime::currentSecsSinceEpoch();
    const std::string text = command.json ? checkJson(record).toStdString() : checkText(record, true).toStdString();
    std::fwrite(text.data(), 1, text.size(), stdout);
    if (const Outcome kept = keepCheck(record); !kept) return refuse(kept.error());
    return record.passed() ? 0 : 1;
}

}  // namespace trueunit
