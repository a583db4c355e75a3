// SPDX-License-Identifier: GPL-3.0-or-later
// Every kept input through its target, without a fuzzer: what was once found stays mended.
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

#include "tests/fuzz/targets.h"

int main(int argc, char** argv) {
    if (argc != 2) return 2;
    for (const auto& target : trueunit::fuzz::kTargets) {
        int inputs = 0;
        for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(argv[1]) / target.name)) {
            std::ifstream file(entry.path(), std::ios::binary);
            const std::vector<char> bytes((std::istreambuf_iterator<char>(file)), {});
            std::printf("%s\n", entry.path().c_str());
            std::fflush(stdout);  // the last one named is the one that failed
            target.run({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
            ++inputs;
        }
        if (inputs == 0) return 1;
    }
    return 0;
}
