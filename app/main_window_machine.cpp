// SPDX-License-Identifier: GPL-3.0-or-later
// The window and the machine card.
#include "app/machine_card_dialog.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "widgets/told.h"

namespace trueunit {

// A card brings its code, speed and stop along; the person may change them afterwards. What it brought, and nobody has
// changed, goes with it.
void MainWindow::askMachineCard() {
    std::optional<double> measured, stop;
    const auto shown = keeper_.frozen() ? keeper_.frame().snapshot : live_;
    if (shown && shown->reading.speed.baud) measured = shown->reading.speed.baud->value;
    if (shown && shown->reading.speed.stopUnits) stop = shown->reading.speed.stopUnits->value;
    MachineCardDialog dialog(session_.options().card, measured, stop, this);
    if (dialog.exec() != QDialog::Accepted) return;
    Options options = session_.options();
    const auto before = options.card;
    options.card = dialog.card();
    if (before && !options.card) {
        if (options.baud == before->baud) options.baud.reset();
        if (options.stopUnits == before->stopUnits) options.stopUnits.reset();
    }
    if (options.card) {
        options.code = options.card->code;
        options.baud = options.card->baud;
        options.stopUnits = options.card->stopUnits;
    }
    if (const Outcome outcome = session_.setOptions(options); !outcome)
        messages_->warn(told(outcome.error().text));
    else if (keeper_.frozen())
        messages_->say(tr("The frozen frame stays as measured; let go to see the card's part."));
}

}  // namespace trueunit
