// SPDX-License-Identifier: GPL-3.0-or-later
// Bias through the card's coupling, and from inputs of every quality a technician may bring.
#include <algorithm>
#include <functional>

#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"
#include "tests/support/measure_twice.h"
#include "tests/support/texts.h"

namespace trueunit::bench {

namespace {

constexpr std::size_t kCharacters = 200;
constexpr double kBias = 5.0;

using Sender = test::PlainSender;

struct Case {
    const char* name;
    double bound;  // percent of a unit
    std::function<void(Sender&)> set;
};

void addBiasRows(Table& table, const std::vector<Case>& cases) {
    const auto rows = onTwoThreads(cases.size(), [&](std::size_t i) {
        Sender sender;
        sender.snrDb = 45.0;
        sender.biasPercent = kBias;
        sender.seed = 11;
        cases[i].set(sender);
        return biasRow(cases[i].name, sender, cases[i].bound);
    });
    for (const Row& row : rows) table.add(row);
}

}  // namespace

std::vector<unsigned> foxCodes(std::size_t n) {
    const auto text = test::codesOf("RYRYRY THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 0123456789\n");
    std::vector<unsigned> codes(n);
    for (std::size_t i = 0; i < n; ++i) codes[i] = text[i % text.size()];
    return codes;
}

Row biasRow(const std::string& condition, Sender sender, double bound) {
    auto samples = sender.send(foxCodes(kCharacters));
    for (float& v : samples) v = std::min(1.0F, std::max(-1.0F, v));  // as any card would
    const Reading r = test::measureTwice(samples, sender.rateHz).reading();
    std::optional<double> bias;
    std::optional<double> stated;
    if (r.distortion.biasPercent) {
        bias = r.distortion.biasPercent->value;
        stated = r.distortion.biasPercent->uncertainty;
    }
    Row row = errorRow(condition, sender.biasPercent, bias, stated, bound);
    if (static_cast<std::size_t>(r.text.characters) < kCharacters * 95 / 100) {
        row.ok = false;
        row.remark = std::to_string(r.text.characters) + " of " + std::to_string(kCharacters) + " characters";
    }
    return row;
}

void studyCoupling(Table& table) {
    table.heading("Bias through the coupling", "%");
    addBiasRows(table, {{"no coupling", 0.05, [](Sender&) {}},
                        {"0.5 Hz", 0.05, [](Sender& s) { s.polesHz = {0.5}; }},
                        {"8 Hz", 0.05, [](Sender& s) { s.polesHz = {8.0}; }},
                        {"20 Hz", 0.05, [](Sender& s) { s.polesHz = {20.0}; }},
                        {"40 Hz", 0.15, [](Sender& s) { s.polesHz = {40.0}; }},
                        {"10 and 1 Hz", 0.15,
                         [](Sender& s) {
                             s.polesHz = {10.0, 1.0};
                         }},
                        {"20 and 5 Hz", 0.15,
                         [](Sender& s) {
                             s.polesHz = {20.0, 5.0};
                         }},
                        {"40 and 20 Hz", 0.15,
                         [](Sender& s) {
                             s.polesHz = {40.0, 20.0};
                         }},
                        {"40 and 40 Hz", 0.15, [](Sender& s) {
                             s.polesHz = {40.0, 40.0};
                         }}});
}

void studyInputs(Table& table) {
    table.heading("Bias from difficult inputs", "%");
    const auto hum = [](Sender& s) {
        s.humPercent = 10.0;
        s.polesHz = {10.0};
    };
    const auto clipped = [](Sender& s) {
        s.swing = 2.5;  // full scale is reached at four fifths of half the swing
        s.polesHz = {8.0};
    };
    addBiasRows(table, {{"-50 dBFS, 35 dB", 0.05,
                         [](Sender& s) {
                             s.swing = 0.0063;
                             s.snrDb = 35.0;
                             s.polesHz = {10.0};
                         }},
                        {"hum of 10 % at 50 Hz", 0.05, hum},
                        {"hum of 10 % at 50 Hz, harmonics", 0.05,
                         [&](Sender& s) {
                             hum(s);
                             s.humHarmonics = {0.4, 0.3};
                         }},
                        {"hum of 10 % at 60 Hz, harmonics", 0.05,
                         [&](Sender& s) {
                             hum(s);
                             s.humHz = 60.0;
                             s.humHarmonics = {0.4, 0.3};
                         }},
                        {"clipped, no coupling", 0.05,
                         [&](Sender& s) {
                             clipped(s);
                             s.polesHz.clear();
                         }},
                        {"clipped, 8 Hz", 0.25, clipped},  // what is cut off is lost: the reading states as much
                        {"inverted", 0.05,
                         [](Sender& s) {
                             s.inverted = true;
                             s.polesHz = {10.0};
                         }},
                        {"44.1 kHz", 0.05,
                         [](Sender& s) {
                             s.rateHz = 44100.0;
                             s.polesHz = {10.0};
                         }},
                        {"96 kHz", 0.05,
                         [](Sender& s) {
                             s.rateHz = 96000.0;
                             s.polesHz = {10.0};
                         }},
                        {"192 kHz", 0.05, [](Sender& s) {
                             s.rateHz = 192000.0;
                             s.polesHz = {10.0};
                         }}});
}

}  // namespace trueunit::bench
