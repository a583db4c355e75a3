// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/machine_card.h"
#include "core/result.h"

namespace trueunit {

// The machine cards there are: those built in (resources/machines) and the person's own, one JSON file each in their
// folder; an own card stands in for a built-in one of its name. Any thread; reads the disk.
std::vector<MachineCard> machineCards(std::vector<Error>* refused = nullptr);  // refused: a sentence per bad file
Result<MachineCard> machineCardNamed(const std::string& nameOrFile);           // a file when it ends in .json
Outcome keepMachineCard(const MachineCard& card);                              // what had that name before is replaced
QString ownMachinesFolder();

// A name for the file of a card with this title: small letters, digits and hyphens.
std::string cardNameFor(const QString& title);

}  // namespace trueunit
