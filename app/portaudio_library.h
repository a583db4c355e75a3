// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <portaudio.h>

#include <atomic>
#include <string>

#include "app/device_list.h"
#include "core/result.h"

namespace trueunit {

// The sound library as a whole: opened once and quietly, listed, closed at the end. Included by portaudio_* files only.
// Window's thread only, apart from the count of open streams.
class SoundLibrary {
public:
    static SoundLibrary& instance();

    Result<DeviceList> devices();
    Result<DeviceList> relist();
    static std::string errorText(PaError error);

    // Held as long as the library has a stream, hanging ones included.
    class OpenStream {
    public:
        OpenStream() { ++instance().openStreams_; }
        ~OpenStream() { --instance().openStreams_; }
        OpenStream(const OpenStream&) = delete;
        OpenStream& operator=(const OpenStream&) = delete;
    };

private:
    enum class State { closed, open, silent };

    SoundLibrary() = default;
    ~SoundLibrary();
    Outcome open();

    State state_ = State::closed;
    DeviceList devices_;
    std::atomic<int> openStreams_{0};
};

}  // namespace trueunit
