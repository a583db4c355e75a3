// SPDX-License-Identifier: GPL-3.0-or-later
// What a sound input may hand over: instants in any places, samples of any kind.
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <vector>

#include "core/frame/framing_follower.h"
#include "core/pipeline.h"
#include "core/report/reading_json.h"
#include "tests/fuzz/targets.h"

namespace trueunit::fuzz {

namespace {

constexpr double kSecondsPerSample = 1.0 / 48000.0;
constexpr std::size_t kMostEdges = 200;
constexpr std::size_t kMostSamples = 30000;

// Hands out the bytes in turn; zeros when they are used up.
struct Feed {
    Bytes bytes;

    bool empty() const { return bytes.empty(); }
    unsigned byte() {
        if (bytes.empty()) return 0;
        const unsigned b = bytes.front();
        bytes = bytes.subspan(1);
        return b;
    }
    unsigned word() {
        const unsigned high = byte();
        return 256U * high + byte();
    }
};

// A level as loud as the byte says; the ends of its range stand for what no sound input should send.
float level(unsigned byte) {
    switch (byte) {
        case 255:
            return std::numeric_limits<float>::quiet_NaN();
        case 254:
            return std::numeric_limits<float>::infinity();
        case 253:
            return -std::numeric_limits<float>::infinity();
        case 252:
            return std::numeric_limits<float>::denorm_min();
        case 251:
            return std::numeric_limits<float>::max();
        default:
            return (static_cast<float>(byte) - 125.0F) / 125.0F;
    }
}

Options optionsFrom(Feed& feed) {
    Options o;
    const unsigned choice = feed.byte();
    o.input = choice % 4 == 0   ? InputKind::automatic
              : choice % 4 == 1 ? InputKind::loop
              : choice % 4 == 2 ? InputKind::tone
                                : InputKind::twoTone;
    if (choice & 4U) o.baud = 50.0;
    if (choice & 8U) o.expect = "RY";
    o.windowCharacters = choice & 16U ? 8 : 0;
    o.slicePercent = choice & 32U ? 30.0 : 50.0;
    return o;
}

}  // namespace

void framer(Bytes bytes) {
    Feed feed{bytes};
    FramingFollower follower(5, kSecondsPerSample);
    std::vector<Character> characters;
    double time = 0.0;
    bool up = false;
    for (std::size_t i = 0; !feed.empty() && i < kMostEdges; ++i) {
        const unsigned word = feed.word();
        Edge e;
        e.time = time += word & 0x3FFFU;
        e.up = up = word & 0x8000U ? up : !up;
        e.glitch = (word & 0x4000U) != 0;
        const std::size_t before = characters.size();
        follower.push({e});
        follower.advance(e.time * kSecondsPerSample, characters);
        if (characters.size() == before) continue;
        std::vector<const Character*> recent;
        for (std::size_t k = characters.size() > 32 ? characters.size() - 32 : 0; k < characters.size(); ++k)
            recent.push_back(&characters[k]);
        follower.follow(recent);
    }
    for (std::size_t i = 1; i < characters.size(); ++i) promise(characters[i].number > characters[i - 1].number);
    for (const Character& c : characters) promise(c.code < 32 && std::isfinite(c.start));
    if (follower.framed()) promise(follower.framing().unitSeconds > 0.0);
}

void pipeline(Bytes bytes) {
    Feed feed{bytes};
    const Options options = optionsFrom(feed);
    const double rates[] = {8000.0, 44100.0, 48000.0, 192000.0};
    Pipeline line(rates[feed.byte() % 4], options, Limits{});
    std::vector<float> block;
    unsigned noise = 1;
    for (std::size_t all = 0; !feed.empty() && all < kMostSamples; all += block.size()) {
        const unsigned length = feed.word() % 6000U;
        const float value = level(feed.byte());
        block.clear();
        for (unsigned i = 0; i < length; ++i) {
            noise = 1664525U * noise + 1013904223U;
            block.push_back(value + 1e-3F * (static_cast<float>(noise >> 8) / 8388608.0F - 1.0F));
        }
        line.push(std::span<const float>(block));
    }
    line.finish();
    const Snapshot snapshot = line.snapshot();
    const auto json = nlohmann::json::parse(readingJson(snapshot.reading));
    promise(json.at("schema") == 1 && json.at("text").at("characters") >= 0);
    if (snapshot.reading.distortion.biasPercent) promise(std::isfinite(snapshot.reading.distortion.biasPercent->value));
}

}  // namespace trueunit::fuzz
