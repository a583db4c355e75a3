// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

#include "app/settings.h"
#include "app/tone_player.h"
#include "core/report/snapshot.h"

namespace trueunit {

class Session;

// The bias by ear, for hands-busy work: plays while it is switched on, follows the snapshots, says when the tone finds
// its way into the measured input. Volume and output are remembered; whether it was on is not. Window's thread.
class Ear : public QObject {
    Q_OBJECT

public:
    explicit Ear(Session& session, QObject* parent = nullptr);
    ~Ear() override;

    bool on() const { return player_.playing(); }
    bool muted() const { return muted_; }
    int volumePercent() const { return settings_.volumePercent; }
    bool plays(const SoundDevice& output) const;

    void toggle();
    void toggleMute();
    void changeVolume(int percent);
    void choose(const SoundDevice& output);  // and plays there when it is on
    void follow(const Snapshot& snapshot);   // on every tick

signals:
    void changed();  // on or off
    void said(const QString& sentence);
    void warned(const QString& sentence);

private:
    std::optional<SoundDevice> output() const;
    void begin();
    void watch();

    Session& session_;
    TonePlayer player_;
    EarSettings settings_;
    bool muted_ = false;
    bool feedbackSaid_ = false;
};

}  // namespace trueunit
