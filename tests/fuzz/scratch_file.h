// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <string>

#include "tests/fuzz/targets.h"

namespace trueunit::fuzz {

// Bytes as a file of this process, removed again.
class ScratchFile {
public:
    ScratchFile(const char* name, Bytes bytes)
        : path_(std::filesystem::temp_directory_path() / (name + std::to_string(getpid()))) {
        std::FILE* file = std::fopen(path_.c_str(), "wb");
        const bool whole = file && (bytes.empty() || std::fwrite(bytes.data(), bytes.size(), 1, file) == 1);
        promise(whole && std::fclose(file) == 0);
    }
    ~ScratchFile() { std::filesystem::remove(path_); }
    ScratchFile(const ScratchFile&) = delete;
    ScratchFile& operator=(const ScratchFile&) = delete;

    std::string path() const { return path_; }

private:
    std::filesystem::path path_;
};

}  // namespace trueunit::fuzz
