// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>
#include <string>
#include <thread>

#include "app/portaudio_output.h"
#include "core/acquire/recording_writer.h"
#include "core/simulate/reference_signal.h"

namespace trueunit {

// What must be said wherever the reference sender is offered.
inline constexpr const char* kSenderCaution =
    "The sound output is for the line input of a receiver or of another instrument. It never drives a loop directly: "
    "a loop is hazardous live, well above 60 V DC, and would reach the computer and the person at it. Key a loop only "
    "through an isolating part rated for it. Local codes and licensed practice come first.";

// Sends a known signal out of a sound output, until it is stopped or the signal has come to its end. Owns the output,
// the ring and the thread that keeps the ring filled. Owner's thread, but for what runs inside.
class ReferenceSender {
public:
    ReferenceSender() = default;
    ~ReferenceSender() { stop(); }
    ReferenceSender(const ReferenceSender&) = delete;
    ReferenceSender& operator=(const ReferenceSender&) = delete;

    Outcome start(const SoundDevice& output, const SenderSettings& settings);
    void stop();

    SourceState state() const;            // finished: all has been played
    std::uint64_t missedSamples() const;  // silence within the signal: it is no reference any more
    double sentSeconds() const;
    std::int64_t firstSampleNs() const { return output_ ? output_->firstSampleNs() : 0; }
    const SenderSettings& settings() const { return settings_; }
    std::string outputTitle() const { return output_ ? output_->device().title() : std::string(); }

private:
    void fill(const std::stop_token& stop, double rateHz);

    SenderSettings settings_;
    std::unique_ptr<SampleRing> ring_;
    std::unique_ptr<PortAudioOutput> output_;
    std::atomic<std::uint64_t> missed_{0};
    std::atomic<bool> filled_{false};  // the whole signal has been put into the ring
    std::jthread thread_;              // last: joined before the rest goes
};

// The same signal into a .wav or .flac file instead, one channel. Without a length and an end: a minute of it.
Outcome writeReference(SenderSettings settings, const std::string& path, double rateHz, SampleFormat format);

}  // namespace trueunit
