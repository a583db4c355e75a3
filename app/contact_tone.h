// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

#include "app/tone_player.h"

namespace trueunit {

class Session;

// The tone for bare contacts that are off the loop: plays steadily while it is switched on, by the output of the card
// that is listened to, where it has one, so that there is one ground. Window's thread.
class ContactTone : public QObject {
    Q_OBJECT

public:
    explicit ContactTone(Session& session, QObject* parent = nullptr) : QObject(parent), session_(session) {}

    bool on() const { return player_.playing(); }
    void toggle();
    void watch();  // on every tick

signals:
    void changed();  // on or off
    void said(const QString& sentence);
    void warned(const QString& sentence);

private:
    std::optional<SoundDevice> output() const;

    Session& session_;
    TonePlayer player_{TonePlayer::Voice::steady};
};

}  // namespace trueunit
