// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <string>
#include <vector>

namespace trueunit::test {

// A WAVE file put together byte by byte, after "Multimedia Programming Interface and Data Specifications 1.0" (1991),
// from memory: RIFF chunk, "fmt " of 16 bytes, "data", little endian; format 1 is PCM, 3 IEEE float. It shares no code
// with the library that reads it.
enum class WaveFormat { pcm16, pcm24, pcm32, float32 };

inline std::string waveBytes(const std::vector<float>& interleaved, unsigned channels, unsigned rate,
                             WaveFormat format) {
    const unsigned bytes = format == WaveFormat::pcm16 ? 2 : format == WaveFormat::pcm24 ? 3 : 4;
    std::string out;
    const auto put = [&out](std::uint64_t value, unsigned count) {
        for (unsigned i = 0; i < count; ++i) out += static_cast<char>((value >> (8U * i)) & 0xFFU);
    };
    const std::uint64_t dataBytes = interleaved.size() * bytes;
    out += "RIFF";
    put(36 + dataBytes, 4);
    out += "WAVEfmt ";
    put(16, 4);
    put(format == WaveFormat::float32 ? 3 : 1, 2);
    put(channels, 2);
    put(rate, 4);
    put(std::uint64_t{rate} * channels * bytes, 4);
    put(channels * bytes, 2);
    put(8U * bytes, 2);
    out += "data";
    put(dataBytes, 4);
    for (const float v : interleaved) {
        if (format == WaveFormat::float32) {
            put(std::bit_cast<std::uint32_t>(v), 4);
        } else {
            const double fullScale = std::pow(2.0, 8.0 * bytes - 1.0);
            put(static_cast<std::uint64_t>(std::llround(static_cast<double>(v) * fullScale)), bytes);
        }
    }
    return out;
}

inline void writeBytes(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

}  // namespace trueunit::test
