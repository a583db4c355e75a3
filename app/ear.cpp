// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ear.h"

#include <algorithm>

#include "app/session.h"
#include "widgets/told.h"

namespace trueunit {

Ear::Ear(Session& session, QObject* parent) : QObject(parent), session_(session), settings_(loadEarSettings()) {
    player_.setVolume(0.01 * settings_.volumePercent);
}

Ear::~Ear() { session_.expectTone(false); }

std::optional<SoundDevice> Ear::output() const {
    if (settings_.deviceName.empty()) return std::nullopt;
    const Result<DeviceList> outputs = TonePlayer::outputs();
    if (!outputs) return std::nullopt;
    return findDevice(*outputs, settings_.deviceName, settings_.deviceHostApi);  // gone: the system's choice
}

bool Ear::plays(const SoundDevice& output) const {
    return output.name == settings_.deviceName && output.hostApi == settings_.deviceHostApi;
}

void Ear::toggle() {
    if (!on()) return begin();
    player_.stop();
    session_.expectTone(false);
    emit said(tr("The tone is off."));
    emit changed();
}

void Ear::begin() {
    const Outcome outcome = player_.start(output());
    if (!outcome) {
        emit warned(told(outcome.error().text));
    } else {
        feedbackSaid_ = false;
        session_.expectTone(true);
        emit said(
            tr("By ear on %1: one beat a second for each percent, none at zero; bright is marks too long, deep is "
               "marks too short.")
                .arg(QString::fromStdString(player_.outputTitle())));
    }
    emit changed();
}

void Ear::toggleMute() {
    muted_ = !muted_;
    player_.setMuted(muted_);
    emit said(muted_ ? tr("The tone is muted.") : tr("The tone is no longer muted."));
}

void Ear::changeVolume(int percent) {
    settings_.volumePercent = std::clamp(settings_.volumePercent + percent, 0, 100);
    player_.setVolume(0.01 * settings_.volumePercent);
    saveEarSettings(settings_);
    emit said(tr("Volume of the tone %1 %.").arg(settings_.volumePercent));
}

void Ear::choose(const SoundDevice& output) {
    settings_.deviceName = output.name;
    settings_.deviceHostApi = output.hostApi;
    saveEarSettings(settings_);
    if (on())
        begin();
    else
        emit said(tr("The tone will play on %1.").arg(QString::fromStdString(output.title())));
}

void Ear::follow(const Snapshot& snapshot) {
    if (!on()) return;
    const auto& bias = snapshot.reading.distortion.biasPercent;
    const bool reads = bias && snapshot.state == SignalState::reading;
    player_.setBias(reads ? std::optional(bias->value) : std::nullopt);
    watch();
}

void Ear::watch() {
    if (player_.lost()) {
        player_.stop();
        session_.expectTone(false);
        emit warned(tr("The sound output has gone; the tone is off."));
        emit changed();
    } else if (!feedbackSaid_ && session_.toneHeard()) {
        feedbackSaid_ = true;
        emit warned(
            tr("The tone is heard in the measured input and spoils the readings: play it on another output, or "
               "choose an input that does not record what is played."));
    }
}

}  // namespace trueunit
