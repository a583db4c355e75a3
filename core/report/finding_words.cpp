// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/finding_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <utility>

namespace trueunit {

namespace {
constexpr const char* kTrueMinus = "\u2212";

bool isZero(double value, int places) { return std::abs(value) < 0.5 * std::pow(10.0, -places); }
}  // namespace

std::string decimals(double value, int places) {
    std::array<char, 48> text{};
    std::snprintf(text.data(), text.size(), "%.*f", places, std::abs(value));
    return (value < 0.0 && !isZero(value, places) ? kTrueMinus : "") + std::string(text.data());
}

std::string shortest(double value) {
    std::string text = decimals(value, 2);
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string signedDecimals(double value, int places) {
    return (value > 0.0 && !isZero(value, places) ? "+" : "") + decimals(value, places);
}

std::string withoutCautions(std::string words, CautionsSaid& said) {
    CautionsSaid all;
    all.fill(true);
    for (std::size_t i = 0; i < said.size(); ++i)
        if (words.find(*kWorkCautions[i]) != std::string::npos) said[i] = true;
    return withoutRepeated(std::move(words), all);
}

std::string withoutRepeated(std::string words, CautionsSaid& said) {
    for (std::size_t i = 0; i < said.size(); ++i) {
        const auto at = words.find(*kWorkCautions[i]);
        if (at == std::string::npos) continue;
        if (said[i]) words.erase(at, kWorkCautions[i]->size());
        said[i] = true;
    }
    return words;
}

std::string learnedWords(TextSource source) {
    return source == TextSource::learned ? std::string(" ") + kLearnedText : std::string();
}

std::string percent(double value, int places) { return decimals(std::abs(value), places) + " %"; }

std::string instantName(int k, int levels) {
    return k > levels ? std::string("the beginning of stop") : "instant " + std::to_string(k);
}

double chanceBeyond(double value, double uncertainty, double threshold) {
    const double sigma = std::max(uncertainty / 1.96, 1e-6);
    return 0.5 * std::erfc((threshold - std::abs(value)) / sigma / std::numbers::sqrt2);
}

namespace {

std::string sourceName(TextSource source) {
    switch (source) {
        case TextSource::given:
            return "the expected text";
        case TextSource::reversals:
            return "RY";
        case TextSource::fox:
            return "the fox sentence";
        case TextSource::learned:
            return "the rounds of the tape before";
    }
    return "";
}

}  // namespace

std::string heldAgainst(const TapeStudy& tape, long windowCharacters) {
    const std::string name = sourceName(tape.source);
    if (10 * tape.compared < 9 * windowCharacters)  // the rest stands between its rounds
        return name + " where it stands, in " + std::to_string(tape.compared) + " of " +
               std::to_string(windowCharacters) + " characters";
    if (tape.compared <= windowCharacters) return name;
    return name + " over the last " + std::to_string(tape.compared) + " characters";
}

std::string rateWords(long hits, long tries) {
    const RateInterval i = rateInterval(hits, tries);
    return decimals(100.0 * static_cast<double>(hits) / static_cast<double>(tries), 1) + " % (95 % interval " +
           decimals(100.0 * i.low, 1) + " to " + decimals(100.0 * i.high, 1) + " %)";
}

std::string setAsideWords(const DisplacementPattern& pattern, std::optional<double> speedError) {
    const std::string bias = "Set aside, bias is " + signedDecimals(pattern.bias.value, 1) + " %",
                      end = "end distortion " + signedDecimals(pattern.end.value, 1) + " %";
    return speedError ? bias + ", " + end + " and the speed error " + signedDecimals(*speedError, 2) + " %."
                      : bias + " and " + end + ".";
}

}  // namespace trueunit
