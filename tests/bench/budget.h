// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <benchmark/benchmark.h>

namespace trueunit::bench {

// Puts what was measured and what is allowed into the table; beyond that the run fails.
void holdTo(benchmark::State& state, const char* counter, double value, double budget);

double processorSeconds();  // of this process: what else the machine does hardly enters

}  // namespace trueunit::bench
