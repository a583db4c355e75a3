// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstdint>
#include <memory>
#include <optional>

#include "app/device_list.h"
#include "app/portaudio_library.h"
#include "core/result.h"

namespace trueunit {

// A stream of the sound library, opened, started and closed within a time limit. Owned jointly by its user and
// whichever helper thread opens or closes it, so that a device that hangs harms nobody. Included by portaudio_* files
// only. What the callback works on belongs to the class derived from it.
class PortAudioStream {
public:
    struct Order {
        bool input = true;
        int channels = 1;
        double latencySeconds = 0.05;  // asked of the driver at least
        PaStreamFlags flags = paClipOff;
        PaStreamCallback* callback = nullptr;  // is handed the stream
    };

    virtual ~PortAudioStream() = default;

    // Tries the usual rates in turn. On a refusal the stream is of no more use; release() has been called if the device
    // did not answer.
    static Outcome start(const std::shared_ptr<PortAudioStream>& stream, const SoundDevice& device, const Order& order);
    static void stop(std::shared_ptr<PortAudioStream> stream);  // at once; nothing to stop: nothing happens

    bool active() const { return Pa_IsStreamActive(handle_) == 1; }
    bool silentFor(std::int64_t lastCallNs, std::int64_t longestNs) const;  // no callback, since the start or that call
    double rateHz() const { return rateHz_; }
    const PaStreamInfo* info() const { return Pa_GetStreamInfo(handle_); }

protected:
    virtual void useRate(double) {}  // before the callback is first called
    virtual void release() {}        // the callback may come once more, what it works on is no longer there

private:
    void open(const SoundDevice& device, const Order& order);
    void close();

    double rateHz_ = 0.0;
    PaStream* handle_ = nullptr;
    PaError error_ = paNoError;
    std::int64_t startedNs_ = 0;
    std::atomic<bool> settled_{false};  // set by whoever is first: the helper that has opened, or the owner giving up
    std::optional<SoundLibrary::OpenStream> counted_{std::in_place};
};

}  // namespace trueunit
