// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress_line.h"

#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <csignal>
#include <cstdio>
#include <cstring>

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kFirstAfter{500};  // what is done sooner needs no line
constexpr std::chrono::milliseconds kEvery{200};
constexpr double kToldFrom = 0.02;  // of the work; before that the time left is a guess
constexpr int kStoppedCode = 130;   // 128 and the number of the signal, as shells have it
constexpr const char* kWipe = "\r\033[K";

// What the handler writes, laid ready: a handler may do little more than write and leave.
char lastWords[200];

void leave(int) {
    if (write(STDERR_FILENO, lastWords, std::strlen(lastWords)) < 0) _exit(kStoppedCode);  // nobody to tell
    _exit(kStoppedCode);
}

}  // namespace

std::string progressWords(double done, double secondsGone) {
    const double part = std::clamp(done, 0.0, 1.0);
    char words[60];
    if (part < kToldFrom) {
        std::snprintf(words, sizeof words, "%3.0f %%", 100.0 * part);
        return words;
    }
    const long left = std::lround(secondsGone * (1.0 - part) / part);
    std::snprintf(words, sizeof words, "%3.0f %%, %ld:%02ld left", 100.0 * part, left / 60, left % 60);
    return words;
}

ProgressLine::ProgressLine(const std::string& what, const std::string& whenStopped)
    : what_(what), watched_(isatty(STDERR_FILENO) == 1), next_(began_ + kFirstAfter) {
    std::snprintf(lastWords, sizeof lastWords, "%strueunit: %s\n", watched_ ? kWipe : "", whenStopped.c_str());
    before_ = std::signal(SIGINT, SIG_IGN);
    // What was started in the background without Ctrl-C stays without it.
    if (before_ != SIG_IGN) std::signal(SIGINT, leave);
}

ProgressLine::~ProgressLine() {
    if (before_ != SIG_ERR) std::signal(SIGINT, before_);
    if (shown_) std::fputs(kWipe, stderr);
}

void ProgressLine::show(double done) {
    const Clock::time_point now = Clock::now();
    if (!watched_ || now < next_) return;
    next_ = now + kEvery;
    shown_ = true;
    const double gone = std::chrono::duration<double>(now - began_).count();
    std::fprintf(stderr, "%s%s %s", kWipe, what_.c_str(), progressWords(done, gone).c_str());
}

}  // namespace trueunit
