// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "app/device_list.h"
#include "core/result.h"

namespace trueunit {

// Plays a tone on a sound output, from start() to stop() and never by itself. Window's thread; the sound
// library's callback renders and nothing else.
class TonePlayer {
public:
    enum class Voice {
        beats,   // of the bias, to adjust by ear
        steady,  // for bare contacts to interrupt; bias, volume and muting do not matter to it
    };

    explicit TonePlayer(Voice voice = Voice::beats) : voice_(voice) {}
    ~TonePlayer();
    TonePlayer(const TonePlayer&) = delete;
    TonePlayer& operator=(const TonePlayer&) = delete;

    static Result<DeviceList> outputs();

    // On the given output, or the system's default one. The one that plays goes on when it cannot be opened.
    Outcome start(const std::optional<SoundDevice>& output);
    void stop();
    bool playing() const { return stream_ != nullptr; }
    bool lost() const;  // it was started and the output went away
    std::string outputTitle() const;

    void setBias(std::optional<double> percent);  // empty: no reading, silence
    void setVolume(double volume);                // 0 .. 1
    void setMuted(bool muted);

private:
    struct Stream;
    void hand(Stream& stream) const;

    const Voice voice_;
    std::shared_ptr<Stream> stream_;
    SoundDevice device_;
    std::optional<double> bias_;
    double volume_ = 0.2;
    bool muted_ = false;
};

}  // namespace trueunit
