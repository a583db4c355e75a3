// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>

#include "app/device_list.h"
#include "core/acquire/sample_ring.h"
#include "core/acquire/sample_source.h"
#include "core/result.h"

namespace trueunit {

// A sound output, through PortAudio: plays what stands in a ring, the same on every channel, and silence when there is
// nothing. It never starts by itself.
//
// Threads: everything here belongs to the owner's thread; PortAudio's callback thread runs SoundPlayback. A device
// that hangs is waited for no longer than a few seconds, then abandoned with all that it still may touch.
class PortAudioOutput {
public:
    explicit PortAudioOutput(SoundDevice device);
    ~PortAudioOutput();

    Outcome start(SampleRing& ring);
    void stop();                         // at once, what is in the ring stays there
    SourceState state() const;           // idle, running or lost
    double rateHz() const;               // valid once started
    std::int64_t firstSampleNs() const;  // monotonic, when the first sample was handed to the library; 0 = not yet
    std::uint64_t playedSamples() const;
    std::uint64_t missedSamples() const;  // since the first block: silence where there should have been a signal
    const SoundDevice& device() const { return device_; }

private:
    struct Stream;
    SoundDevice device_;
    std::shared_ptr<Stream> stream_;  // shared with the helper thread that opens or closes it
};

// The output of that name, or the system's own when the name is empty; a sentence when there is none.
Result<SoundDevice> soundOutput(const std::string& name);

}  // namespace trueunit
