// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/float_text.h"

#include <array>
#include <bit>
#include <cstdint>

namespace trueunit {

namespace {

constexpr std::string_view kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

std::string encoded(const std::vector<std::uint8_t>& bytes) {
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t left = bytes.size() - i;
        const std::uint32_t three = std::uint32_t{bytes[i]} << 16U |
                                    (left > 1 ? std::uint32_t{bytes[i + 1]} << 8U : 0U) |
                                    (left > 2 ? std::uint32_t{bytes[i + 2]} : 0U);
        text += kDigits[three >> 18U];
        text += kDigits[three >> 12U & 63U];
        text += left > 1 ? kDigits[three >> 6U & 63U] : '=';
        text += left > 2 ? kDigits[three & 63U] : '=';
    }
    return text;
}

std::optional<std::vector<std::uint8_t>> decoded(std::string_view text) {
    if (text.size() % 4 != 0) return std::nullopt;
    while (text.ends_with('=')) text.remove_suffix(1);
    std::vector<std::uint8_t> bytes;
    bytes.reserve(text.size() * 3 / 4);
    std::uint32_t held = 0;
    int bits = 0;
    for (const char c : text) {
        const auto digit = kDigits.find(c);
        if (digit == std::string_view::npos) return std::nullopt;
        held = held << 6U | static_cast<std::uint32_t>(digit);
        bits += 6;
        if (bits < 8) continue;
        bits -= 8;
        bytes.push_back(static_cast<std::uint8_t>(held >> static_cast<unsigned>(bits) & 255U));
    }
    return bytes;
}

}  // namespace

std::string floatsToText(const std::vector<float>& values) {
    std::vector<std::uint8_t> bytes;
    bytes.reserve(values.size() * 4);
    for (const float v : values) {
        const auto word = std::bit_cast<std::uint32_t>(v);
        for (unsigned shift = 0; shift < 32; shift += 8)
            bytes.push_back(static_cast<std::uint8_t>(word >> shift & 255U));
    }
    return encoded(bytes);
}

std::optional<std::vector<float>> floatsFromText(std::string_view text) {
    const auto bytes = decoded(text);
    if (!bytes || bytes->size() % 4 != 0) return std::nullopt;
    std::vector<float> values;
    values.reserve(bytes->size() / 4);
    for (std::size_t i = 0; i < bytes->size(); i += 4) {
        std::uint32_t word = 0;
        for (std::size_t b = 0; b < 4; ++b) word |= std::uint32_t{(*bytes)[i + b]} << (8U * b);
        values.push_back(std::bit_cast<float>(word));
    }
    return values;
}

}  // namespace trueunit
