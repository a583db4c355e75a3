// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace trueunit {

// What a machine is by its plate and its gears: enough to say at what speed it should send.
struct MachineCard {
    std::string name;   // of its file: small letters, digits, hyphens
    std::string title;  // as the person calls it
    std::string code = "ita2";
    double baud = 50.0;      // it is meant to send, 20..200
    double stopUnits = 1.5;  // 1..2.5

    enum class Motor { synchronous, governed };
    Motor motor = Motor::synchronous;
    double mainsHz = 50.0;       // of a synchronous motor
    double motorTurns = 1500.0;  // a minute; of a synchronous motor at that mains, of a governed one as set
    int drivingTeeth = 1;        // of the gear on the motor
    int drivenTeeth = 1;         // of the gear on the transmitting shaft
    double shaftTurns = 1.0;     // of the transmitting shaft in each character
};

}  // namespace trueunit
