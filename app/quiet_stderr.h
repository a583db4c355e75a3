// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

// Sends standard error nowhere while it lives: the sound library reports its own trials there, line by line, and
// offers no way to ask it not to. One at a time; the owner's thread. What other threads say meanwhile is lost too.
class QuietStderr {
public:
    QuietStderr();
    ~QuietStderr();
    QuietStderr(const QuietStderr&) = delete;
    QuietStderr& operator=(const QuietStderr&) = delete;

private:
    int kept_ = -1;
};

}  // namespace trueunit
