// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/quiet_stderr.h"

#include <fcntl.h>
#include <unistd.h>

#include <cstdio>

namespace trueunit {

QuietStderr::QuietStderr() {
    std::fflush(stderr);
    const int nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
    if (nowhere < 0) return;
    kept_ = fcntl(STDERR_FILENO, F_DUPFD_CLOEXEC, 3);
    if (kept_ >= 0) dup2(nowhere, STDERR_FILENO);
    close(nowhere);
}

QuietStderr::~QuietStderr() {
    if (kept_ < 0) return;
    std::fflush(stderr);
    dup2(kept_, STDERR_FILENO);
    close(kept_);
}

}  // namespace trueunit
