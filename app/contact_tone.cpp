// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/contact_tone.h"

#include "app/session.h"
#include "widgets/told.h"

namespace trueunit {

std::optional<SoundDevice> ContactTone::output() const {
    const auto input = session_.soundInput();
    if (!input || input->outputChannels == 0) return std::nullopt;  // the system's choice
    return input;
}

void ContactTone::toggle() {
    if (on()) {
        player_.stop();
        emit said(tr("The tone for contacts is off."));
    } else if (const Outcome outcome = player_.start(output()); !outcome) {
        emit warned(told(outcome.error().text));
    } else {
        emit said(tr("A tone of 3 kHz plays on %1, for contacts off the loop to interrupt.")
                      .arg(QString::fromStdString(player_.outputTitle())));
    }
    emit changed();
}

void ContactTone::watch() {
    if (!player_.lost()) return;
    player_.stop();
    emit warned(tr("The sound output has gone; the tone is off."));
    emit changed();
}

}  // namespace trueunit
