// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/text_alignment.h"

#include <algorithm>
#include <bit>
#include <cstdint>

namespace trueunit {

namespace {

// Costs are about minus two times the logarithm of the odds: a level in error 1 : 3 against a right one at worst, a
// slip of the feed far rarer, and dearer than any single character misread.
constexpr float kPerLevel = 2.0F;
constexpr float kOtherCharacter = 6.0F;
constexpr float kUnsure = 1.0F;
constexpr float kUnknownText = 2.5F;
constexpr float kAgain = 6.5F;
constexpr float kOver = 6.5F;
constexpr float kOverMore = 2.0F;
constexpr float kJump = 14.0F;
constexpr float kJumpAfterGap = 0.5F;
constexpr int kMostOver = 4;
constexpr std::size_t kMostCells = 1U << 24U;

constexpr std::uint8_t kBackOn = 1;     // places back on the loop: 1 = on, 2.. = over
constexpr std::uint8_t kBackAgain = 0;  // the same place
constexpr std::uint8_t kBackJump = 255;

float emission(const SentCode& sent, const LoopCode& due) {
    if (!sent.sure) return kUnsure;
    if (due.unknown) return kUnknownText;
    return std::min(kOtherCharacter, kPerLevel * static_cast<float>(levelsApart(sent.code, due.code)));
}

struct Walk {
    std::span<const LoopCode> loop;
    std::vector<float> cost;          // of the best walk that ends at each place
    std::vector<std::uint8_t> back;   // characters x places
    std::vector<std::uint32_t> best;  // place of the cheapest walk, per character

    std::size_t before(std::size_t place, std::size_t by) const { return (place + loop.size() - by) % loop.size(); }

    void step(const SentCode& sent) {
        const std::size_t m = loop.size();
        const float leastBefore = best.empty() ? 0.0F : cost[best.back()];
        const float jump = best.empty() ? 0.0F : leastBefore + (sent.afterGap ? kJumpAfterGap : kJump);
        std::vector<float> next(m);
        for (std::size_t j = 0; j < m; ++j) {
            float least = jump;
            std::uint8_t from = kBackJump;
            const auto offer = [&](float c, std::uint8_t b) {
                if (c >= least) return;
                least = c;
                from = b;
            };
            if (!best.empty()) {
                offer(cost[before(j, 1)], kBackOn);
                offer(cost[j] + (loop[j].unknown ? 0.0F : kAgain), kBackAgain);
                for (int s = 1; s <= kMostOver && static_cast<std::size_t>(s) < m; ++s) {
                    const bool free = s == 1 && loop[before(j, 1)].unknown;
                    const float price = free ? 0.0F : kOver + kOverMore * static_cast<float>(s - 1);
                    offer(cost[before(j, static_cast<std::size_t>(s) + 1)] + price, static_cast<std::uint8_t>(s + 1));
                }
            }
            next[j] = least + emission(sent, loop[j]);
            back.push_back(from);
        }
        cost = std::move(next);
        best.push_back(static_cast<std::uint32_t>(std::min_element(cost.begin(), cost.end()) - cost.begin()));
    }
};

}  // namespace

int levelsApart(unsigned a, unsigned b) { return std::popcount(a ^ b); }

Alignment alignToLoop(std::span<const SentCode> sent, std::span<const LoopCode> loop) {
    Alignment out;
    if (loop.empty() || sent.empty()) return out;
    const std::size_t n = std::min(sent.size(), std::max<std::size_t>(1, kMostCells / loop.size()));
    sent = sent.last(n);
    Walk walk{loop, std::vector<float>(loop.size(), 0.0F), {}, {}};
    walk.back.reserve(n * loop.size());
    for (const SentCode& c : sent) walk.step(c);

    out.place.resize(n);
    out.step.resize(n);
    out.skipped.resize(n);
    std::size_t at = walk.best.back();
    out.cost = static_cast<double>(walk.cost[at]) / static_cast<double>(n);
    for (std::size_t i = n; i-- > 0;) {
        using Step = Alignment::Step;
        const std::uint8_t from = walk.back[i * loop.size() + at];
        out.place[i] = at;
        if (from == kBackJump) {
            out.step[i] = Step::jump;
            if (i > 0) at = walk.best[i - 1];
            continue;
        }
        out.step[i] = from == kBackAgain ? Step::again : from == kBackOn ? Step::on : Step::over;
        out.skipped[i] = std::max(0, static_cast<int>(from) - 1);
        at = walk.before(at, from);
    }
    return out;
}

}  // namespace trueunit
