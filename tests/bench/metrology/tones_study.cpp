// SPDX-License-Identifier: GPL-3.0-or-later
// Bias of a tone interrupted by the contacts and of two-tone keying, the tones found by the program, at 30 dB.
#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"
#include "tests/support/keyed_tones.h"
#include "tests/support/measure_twice.h"

namespace trueunit::bench {

namespace {

constexpr double kBound = 0.5;  // percent of a unit
constexpr std::size_t kCharacters = 200;

using Keying = test::KeyedTones;

std::string nameOf(const Keying& k) {
    char text[80];
    if (k.spaceHz == 0.0)
        std::snprintf(text, sizeof text, "tone of %.0f Hz", k.markHz);
    else
        std::snprintf(text, sizeof text, "tones %.0f, %.0f Hz%s%s", k.markHz, k.spaceHz,
                      k.spaceStrength != 1.0 ? ", unequal" : "", k.onePhase ? "" : ", phase jumps");
    return text;
}

Row toneRow(const Keying& k, double bias) {
    test::PlainSender sender;
    sender.biasPercent = bias;
    sender.seed = 5;
    const std::vector<float> samples = k.send(sender, foxCodes(kCharacters));
    const Reading r = test::measureTwice(samples, sender.rateHz).reading();
    const auto& found = r.distortion.biasPercent;
    Row row = errorRow(nameOf(k), bias, found ? std::optional(found->value) : std::nullopt,
                       found ? std::optional(found->uncertainty) : std::nullopt, kBound);
    const InputKind expected = k.spaceHz == 0.0 ? InputKind::tone : InputKind::twoTone;
    if (found && r.input.kind != expected) {
        row.ok = false;
        row.remark = "another kind of input found";
    }
    return row;
}

}  // namespace

void studyTones(Table& table) {
    table.heading("Bias of keyed tones at 30 dB, found from the signal", "%");
    const std::vector<Keying> keyings = {
        {600.0, 0.0},
        {1000.0, 0.0},
        {1500.0, 0.0},
        {2295.0, 0.0},
        {3000.0, 0.0},
        {1000.0, 1085.0},
        {1275.0, 1445.0},
        {2125.0, 2295.0},
        {1275.0, 2125.0},
        {1445.0, 1275.0},
        {1275.0, 1445.0, 0.7},
        {1275.0, 2125.0, 0.7},
        {1085.0, 915.0, 0.8},
        {2125.0, 2295.0, 1.4},
        {1275.0, 1445.0, 1.0, false},
        {1275.0, 2125.0, 1.0, false},
    };
    const auto rows = onTwoThreads(2 * keyings.size(),
                                   [&](std::size_t i) { return toneRow(keyings[i / 2], i % 2 == 0 ? 5.0 : -8.0); });
    for (const Row& row : rows) table.add(row);
}

}  // namespace trueunit::bench
