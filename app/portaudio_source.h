// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <memory>
#include <optional>

#include "app/device_list.h"
#include "core/acquire/sample_source.h"

namespace trueunit {

// A sound input, through PortAudio. One channel of at most two goes to the ring.
//
// Threads: everything here belongs to the window's thread; PortAudio's callback thread runs SoundCapture. A device
// that hangs is waited for no longer than a few seconds, then abandoned with all that it still may touch.
class PortAudioSource : public SampleSource {
public:
    explicit PortAudioSource(SoundDevice device, int channel = 0);
    ~PortAudioSource() override;

    Outcome start(SampleRing& ring) override;
    void stop() override;
    SourceState state() const override;
    double rateHz() const override;
    std::string description() const override;
    double inputLatencyMs() const;  // between the socket and the callback, as the library reports it; 0 when idle

    const SoundDevice& device() const { return device_; }
    int channels() const;          // captured: 1 or 2
    int channel() const;           // heard: 0 = left
    void setChannel(int channel);  // takes effect in the next buffer
    // The channel that has carried far more signal than the one heard since the last call; empty: the choice is right.
    std::optional<int> strongerChannel();

    // Every input and output. The list is made once, until relist.
    static Result<DeviceList> devices();
    // Makes a fresh list; refused while any stream is open, since the library must be closed for it.
    static Result<DeviceList> relist();

private:
    struct Stream;
    SoundDevice device_;
    std::shared_ptr<Stream> stream_;  // shared with the helper thread that opens or closes it
    int channel_ = 0;
    std::array<double, 2> energySeen_{};
};

}  // namespace trueunit
