// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/text_alignment.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <map>
#include <utility>

namespace trueunit {

namespace {

// Costs are about minus two times the logarithm of the odds: a slip of the feed is far rarer than a level in error at
// worst, and dearer than any single character misread until the walk has told how often either is.
constexpr float kUnsure = 1.0F;
constexpr float kUnknownText = 2.5F;
constexpr float kOverMore = 2.0F;
constexpr float kJump = 14.0F;
constexpr float kJumpAfterGap = 0.5F;
constexpr float kDearestLevel = 8.0F;
// Below two slips where they are rare: a burst of noise is no slip and its contrary. Above where they are not.
constexpr float kDearestCharacter = 17.0F;
constexpr float kOneOfAll = 6.9F;  // a misread character is any of 31, what slipped is the one due
constexpr float kCheapestSlip = 4.5F, kDearestSlip = 9.0F;
constexpr int kMostByLevels = 2;  // in error in one character; more is another character
constexpr std::size_t kAwayFromSlip = 2;
constexpr std::size_t kMostOver = 4;
constexpr float kNever = 1e30F;
constexpr std::size_t kMostCells = 1U << 24U;

constexpr std::int32_t kBackOn = 1;     // places back on the loop: 1 = on, 2.. = over
constexpr std::int32_t kBackAgain = 0;  // the same place
constexpr std::int32_t kBackJump = 255;
constexpr std::size_t kFurthestBack = kMostOver + 1;               // but for a jump
constexpr std::array<std::int32_t, 6> kInOrder{1, 0, 2, 3, 4, 5};  // of two that cost the same the former holds

float emission(const SentCode& sent, const LoopCode& due, const AlignmentPrices& prices) {
    if (!sent.sure) return kUnsure;
    if (due.unknown) return kUnknownText;
    float cost = 0.0F;
    for (std::size_t level = 0; level < prices.lost.size(); ++level) {
        const bool mark = (due.code >> level & 1U) != 0;
        if (((sent.code >> level & 1U) != 0) != mark) cost += mark ? prices.lost[level] : prices.filled[level];
    }
    return std::min(prices.atMost, cost);
}

// What a step costs that comes from so many places back, per place it ends at.
std::vector<float> pricesOf(std::span<const LoopCode> loop, std::size_t back, const AlignmentPrices& asked) {
    std::vector<float> prices(loop.size(), kNever);
    if (back > std::max<std::size_t>(1, loop.size())) return prices;  // more than once round
    for (std::size_t j = 0; j < loop.size(); ++j) {
        const LoopCode& passed = loop[(j + loop.size() - 1) % loop.size()];
        if (back == kBackAgain)
            prices[j] = loop[j].unknown ? 0.0F : asked.again;
        else if (back == kBackOn || (back == kBackOn + 1 && passed.unknown))
            prices[j] = 0.0F;
        else
            prices[j] = asked.over + kOverMore * static_cast<float>(back - 2);
    }
    return prices;
}

// How often something goes wrong; as at worst before it was looked at.
struct ErrorRate {
    float wrong = 1.0F;
    float tries = 2.7F;
    void count(bool error) {
        wrong += error ? 1.0F : 0.0F;
        tries += 1.0F;
    }
    float price(float least, float most) const { return std::clamp(-2.0F * std::log(wrong / tries), least, most); }
};

// No slip within a few characters; to leave out a stretch of unknown text is none.
bool evenFeedAbout(const Alignment& walk, std::span<const LoopCode> loop, std::size_t i) {
    for (std::size_t j = i - kAwayFromSlip; j <= i + kAwayFromSlip; ++j) {
        const LoopCode& passed = loop[(walk.place[j] + loop.size() - 1) % loop.size()];
        const bool leftOut = walk.step[j] == Alignment::Step::over && walk.skipped[j] == 1 && passed.unknown;
        if (walk.step[j] != Alignment::Step::on && !leftOut) return false;
    }
    return true;
}

float slipPrice(const Alignment& walk, std::span<const LoopCode> loop, Alignment::Step slip) {
    ErrorRate rate{1.0F, 25.8F};
    for (std::size_t i = 1; i < walk.place.size(); ++i)
        if (!loop[walk.place[i]].unknown && !loop[walk.place[i - 1]].unknown) rate.count(walk.step[i] == slip);
    return rate.price(kCheapestSlip, kDearestSlip);
}

// All places of the loop move on together, one way of stepping after the other: many of them at a time.
struct Walk {
    Walk(std::span<const LoopCode> l, const AlignmentPrices& p)
        : loop(l), asked(p), cost(kFurthestBack + l.size()), next(cost.size()), from(l.size()) {
        for (std::size_t by = 0; by <= kFurthestBack; ++by) prices[by] = pricesOf(l, by, p);
    }

    std::span<const LoopCode> loop;
    AlignmentPrices asked;
    std::map<unsigned, std::vector<float>> emissions;  // at each place, by what came
    std::array<std::vector<float>, kFurthestBack + 1> prices;
    std::vector<float> cost;          // of the best walk that ends at each place; before them once more the last ones
    std::vector<float> next;          // the same, in the making,
    std::vector<std::int32_t> from;   // and how far back each comes from
    std::vector<std::uint8_t> back;   // characters x places
    std::vector<std::uint32_t> best;  // place of the cheapest walk, per character

    void step(const SentCode& sent) {
        const float jump =
            best.empty() ? 0.0F : cost[kFurthestBack + best.back()] + (sent.afterGap ? kJumpAfterGap : kJump);
        const std::span<float> here = std::span(next).subspan(kFurthestBack);
        std::fill(here.begin(), here.end(), jump);
        std::fill(from.begin(), from.end(), kBackJump);
        for (const std::int32_t by : kInOrder) offer(by);
        const std::vector<float>& emitted = emissionsOf(sent);
        for (std::size_t j = 0; j < here.size(); ++j) here[j] += emitted[j];
        for (std::size_t i = kFurthestBack; i-- > 0;) next[i] = next[i + loop.size()];
        back.insert(back.end(), from.begin(), from.end());
        std::swap(cost, next);
        const auto begin = cost.begin() + kFurthestBack;
        best.push_back(static_cast<std::uint32_t>(std::min_element(begin, cost.end()) - begin));
    }

    const std::vector<float>& emissionsOf(const SentCode& sent) {
        constexpr unsigned kNotSure = ~0U;
        std::vector<float>& emitted = emissions[sent.sure ? sent.code : kNotSure];
        if (emitted.empty())
            for (const LoopCode& due : loop) emitted.push_back(emission(sent, due, asked));
        return emitted;
    }

    void offer(std::int32_t by) {
        const float* const price = prices[static_cast<std::size_t>(by)].data();
        const float* const before = cost.data() + kFurthestBack - by;
        float* const least = next.data() + kFurthestBack;
        std::int32_t* const whence = from.data();
        for (std::size_t j = 0; j < from.size(); ++j) {
            const float c = before[j] + price[j];
            whence[j] = c < least[j] ? by : whence[j];
            least[j] = c < least[j] ? c : least[j];
        }
    }
};

}  // namespace

AlignmentPrices pricesLearned(std::span<const SentCode> sent, std::span<const LoopCode> loop, const Alignment& walk) {
    sent = sent.last(walk.place.size());
    std::array<ErrorRate, 8> lost, filled;
    ErrorRate misread;
    for (std::size_t i = kAwayFromSlip; i + kAwayFromSlip < sent.size(); ++i) {
        const LoopCode& due = loop[walk.place[i]];
        if (!sent[i].sure || due.unknown || !evenFeedAbout(walk, loop, i)) continue;
        const unsigned off = sent[i].code ^ due.code;
        const bool other = std::popcount(off) > kMostByLevels;
        misread.count(other);
        for (std::size_t level = 0; level < lost.size() && !other; ++level)
            ((due.code >> level & 1U) != 0 ? lost : filled)[level].count((off >> level & 1U) != 0);
    }
    AlignmentPrices learned;
    for (std::size_t level = 0; level < lost.size(); ++level) {
        learned.lost[level] = lost[level].price(learned.lost[level], kDearestLevel);
        learned.filled[level] = filled[level].price(learned.filled[level], kDearestLevel);
    }
    learned.atMost = std::clamp(misread.price(0.0F, kDearestCharacter) + kOneOfAll, learned.atMost, kDearestCharacter);
    learned.again = slipPrice(walk, loop, Alignment::Step::again);
    learned.over = slipPrice(walk, loop, Alignment::Step::over);
    return learned;
}

int levelsApart(unsigned a, unsigned b) { return std::popcount(a ^ b); }

Alignment alignToLoop(std::span<const SentCode> sent, std::span<const LoopCode> loop, const AlignmentPrices& prices) {
    Alignment out;
    if (loop.empty() || sent.empty()) return out;
    const std::size_t n = std::min(sent.size(), std::max<std::size_t>(1, kMostCells / loop.size()));
    sent = sent.last(n);
    Walk walk(loop, prices);
    walk.back.reserve(n * loop.size());
    for (const SentCode& c : sent) walk.step(c);

    out.place.resize(n);
    out.step.resize(n);
    out.skipped.resize(n);
    std::size_t at = walk.best.back();
    out.cost = static_cast<double>(walk.cost[kFurthestBack + at]) / static_cast<double>(n);
    for (std::size_t i = n; i-- > 0;) {
        using Step = Alignment::Step;
        const std::int32_t from = walk.back[i * loop.size() + at];
        out.place[i] = at;
        if (from == kBackJump) {
            out.step[i] = Step::jump;
            if (i > 0) at = walk.best[i - 1];
            continue;
        }
        out.step[i] = from == kBackAgain ? Step::again : from == kBackOn ? Step::on : Step::over;
        out.skipped[i] = std::max(0, from - 1);
        at = (at + kFurthestBack * loop.size() - static_cast<std::size_t>(from)) % loop.size();
    }
    return out;
}

}  // namespace trueunit
