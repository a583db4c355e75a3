// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <memory>
#include <string>
#include <vector>

#include "tests/support/temporary_folder.h"

namespace trueunit::test {

// A sound server of the test's own with one sink that leads nowhere; what is played into it can be recorded from the
// ALSA input "benchmon", sample for sample. All its files are in a temporary folder, and the environment of this
// process points there, so create it before the sound library is first used.
class PrivateSoundServer {
public:
    PrivateSoundServer();
    ~PrivateSoundServer();

    bool running() const { return ready_; }
    void kill();                                     // at once, as a crash would
    void freeze();                                   // alive, but answering nobody
    void thaw();                                     // answering again
    bool restart(int rateHz);                        // ended or not: afresh, its sink at that rate
    bool suspend(bool suspended);                    // the sink alone: no samples come
    bool loadAnotherInput(const std::string& name);  // a second one for the library to list

    // Plays a sound file into the sink in the background. The player ends by itself, or with this object.
    bool play(const std::string& path);
    bool waitForPlayer();

private:
    void writeAlsaConfiguration(const std::string& further) const;
    void startServer(int rateHz);

    TemporaryFolder folder_;
    pid_t server_ = -1;
    pid_t player_ = -1;
    bool ready_ = false;
};

}  // namespace trueunit::test
