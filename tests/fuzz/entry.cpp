// SPDX-License-Identifier: GPL-3.0-or-later
// The entry that libFuzzer calls; built once for each target.
#include <cstddef>

#include "tests/fuzz/targets.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    trueunit::fuzz::TRUEUNIT_FUZZ_TARGET({data, size});
    return 0;
}
