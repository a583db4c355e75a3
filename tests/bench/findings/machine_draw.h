// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/options.h"
#include "tests/bench/findings/faulty_machine.h"

namespace trueunit::test {

// A machine drawn by chance, with what is wrong with it.
struct DrawnMachine {
    std::string kind;                 // of the fault, in our words
    std::string size;                 // as imposed
    std::vector<std::string> faults;  // finding ids that are right, one of them first; empty: in order
    std::string title = {};           // begins that of the first finding; empty: its id is enough
    bool outOfLimits = false;
    FaultyMachine machine;
    Options options;
    std::vector<unsigned> tape;
    std::size_t from = 0;
    std::size_t characters = 200;
    enum class Other {
        none,
        hiss,
        synchronous,
        square
    } other = Other::none;  // what is on the input instead of a machine
    std::vector<float> samples();
};

// The kinds in turn, so that each is met equally often; everything else by chance.
DrawnMachine drawMachine(std::uint64_t number, std::uint64_t seed);

}  // namespace trueunit::test
