// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>

namespace trueunit {

// Long work of a command: while one lives, a person at a terminal sees a line with what is done and what is left of
// it, and Ctrl-C ends the program at once with one sentence and exit code 130. For work that leaves nothing behind on
// the disk; one at a time. A script, whose standard error is no terminal, sees no line.
class ProgressLine {
public:
    ProgressLine(const std::string& what, const std::string& whenStopped);  // "measuring a.wav"; the sentence
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    void show(double done);  // 0 to 1; as often as it comes

private:
    using Clock = std::chrono::steady_clock;

    std::string what_;
    const bool watched_;
    const Clock::time_point began_ = Clock::now();
    Clock::time_point next_;  // when the line is worth changing
    bool shown_ = false;
    void (*before_)(int);  // who heard Ctrl-C
};

// " 37 %, 1:05 left"; the time stands there once it can be told.
std::string progressWords(double done, double secondsGone);

}  // namespace trueunit
