// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/text_feed.h"

#include "core/frame/code_table.h"

namespace trueunit {

namespace {
constexpr std::uint64_t kFeedStream = 2;
}

TextFeed::TextFeed(const Scenario& scenario)
    : repeat_(scenario.text.repeat), slips_(scenario.faults.feedSlips), random_(scenario.seed, kFeedStream) {
    const CodeTable& code = *findCode(scenario.machine.code);
    const std::string text = scenario.plainText();
    firstRound_ = encode(code, text);
    laterRounds_ = encode(code, text + text).substr(firstRound_.size());
}

std::optional<unsigned> TextFeed::next() {
    if (again_) {
        const auto code = again_;
        again_.reset();
        return code;
    }
    std::optional<unsigned> code = advance();
    while (code && random_.chance(slips_.skipFraction)) code = advance();
    if (code && random_.chance(slips_.repeatFraction)) again_ = code;
    return code;
}

std::optional<unsigned> TextFeed::advance() {
    const auto& round = first_ ? firstRound_ : laterRounds_;
    if (at_ < round.size()) return round[at_++];
    if (!repeat_) return std::nullopt;
    first_ = false;
    at_ = 1;
    return laterRounds_[0];
}

}  // namespace trueunit
