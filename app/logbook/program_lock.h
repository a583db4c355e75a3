// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLockFile;

namespace trueunit {

// Takes a lock that dies with its program, however old it is. One whose program was killed before it could sign it
// names nobody: it is waited for as long as signing takes, half a second, and then taken over. False while another
// lives.
bool takeLock(QLockFile& lock);

}  // namespace trueunit
