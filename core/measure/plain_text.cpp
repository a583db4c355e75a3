// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/plain_text.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/measure/plain_language.h"

namespace trueunit {

namespace {

constexpr int kLevels = 5;
constexpr std::size_t kFewestRead = 60;  // characters
constexpr std::size_t kMostRead = 4000;  // the newest of them
constexpr std::array kRates = {0.03, 0.06, 0.12, 0.22, 0.4};
constexpr double kFaultBefore = 0.01;  // probability of such a fault before the text is read
constexpr double kTrust = 0.5;         // of the evidence: letters hang together over more than pairs
constexpr double kMostGain = 50.0;     // nats that count
constexpr double kPlain = 0.4;         // nats a character by which plain text is told from code groups

// The characters as they may have been: as sent, or with the level's mark (or space) that was lost; in either case.
class FaultWalk {
public:
    FaultWalk(const PlainLanguage& language, LevelFault fault, double rate)
        : language_(language), fault_(fault), rate_(rate) {}

    // Logarithm of the probability of the text; with `harmed`, the probability too that each character was changed.
    double account(std::span<const SentCode> sent, std::vector<double>* harmed = nullptr) const;

private:
    static constexpr std::size_t kStates = 4;  // 2 * harmed + figures
    using States = std::array<double, kStates>;

    std::size_t wasBefore(std::size_t state, std::size_t code) const {
        const std::size_t bit = std::size_t{1} << (fault_.level - 1);
        return state < 2 ? code : fault_.marks ? code | bit : code & ~bit;
    }
    // That a character is sent as it is from what the state says it was.
    double sends(std::size_t state, std::size_t code) const {
        const bool mark = (code >> (fault_.level - 1) & 1U) != 0;
        const bool atRisk = mark == fault_.marks;
        if (state >= 2) return atRisk ? 0.0 : rate_;
        return atRisk ? 1.0 - rate_ : 1.0;
    }
    double step(std::size_t state, std::size_t code, std::size_t nextState, std::size_t next) const {
        const std::size_t from = wasBefore(state, code);
        const std::size_t to = wasBefore(nextState, next);
        const Shift shift = shiftAfter(state % 2 == 1 ? Shift::figures : Shift::letters, from);
        if ((nextState % 2 == 1) != (shift == Shift::figures)) return 0.0;
        return sends(nextState, next) * language_.follows(shift, from, to);
    }
    void backward(std::span<const SentCode> sent, const std::vector<States>& forward,
                  std::vector<double>& harmed) const;

    const PlainLanguage& language_;
    LevelFault fault_;
    double rate_;
};

double FaultWalk::account(std::span<const SentCode> sent, std::vector<double>* harmed) const {
    States now{};
    now[0] = sends(0, sent[0].code);
    now[2] = sends(2, sent[0].code);
    std::vector<States> forward{now};
    double account = 0.0;
    for (std::size_t i = 1; i < sent.size(); ++i) {
        States next{};
        double sum = 0.0;
        for (std::size_t a = 0; a < kStates; ++a)
            for (std::size_t b = 0; b < kStates && now[a] > 0.0; ++b)
                next[b] += now[a] * step(a, sent[i - 1].code, b, sent[i].code);
        for (const double p : next) sum += p;
        for (double& p : next) p /= sum;
        account += std::log(sum);
        now = next;
        if (harmed) forward.push_back(now);
    }
    if (harmed) backward(sent, forward, *harmed);
    return account;
}

void FaultWalk::backward(std::span<const SentCode> sent, const std::vector<States>& forward,
                         std::vector<double>& harmed) const {
    harmed.assign(sent.size(), 0.0);
    States later;
    later.fill(1.0);
    for (std::size_t i = sent.size(); i-- > 0;) {
        double all = 0.0;
        double changed = 0.0;
        for (std::size_t a = 0; a < kStates; ++a) {
            const double p = forward[i][a] * later[a];
            all += p;
            if (a >= 2) changed += p;
        }
        harmed[i] = changed / all;
        if (i == 0) break;
        States before{};
        double sum = 0.0;
        for (std::size_t a = 0; a < kStates; ++a) {
            for (std::size_t b = 0; b < kStates; ++b)
                before[a] += step(a, sent[i - 1].code, b, sent[i].code) * later[b];
            sum += before[a];
        }
        for (double& p : before) p /= sum;
        later = before;
    }
}

unsigned otherWay(unsigned code, LevelFault fault) { return code ^ (1U << (fault.level - 1)); }

// The word about a character, from gap to gap, at most kReach either way.
HarmedWord wordAbout(std::span<const SentCode> sent, std::span<const std::optional<unsigned>> meant, std::size_t at) {
    constexpr std::size_t kReach = 8;
    const auto due = [&](std::size_t i) { return meant[i].value_or(sent[i].code); };
    const auto inWord = [&](std::size_t i) { return kindOf(due(i)) == CodeKind::text; };
    std::size_t first = at;
    std::size_t last = at;
    while (first > 0 && at - first < kReach && inWord(first - 1)) --first;
    while (last + 1 < sent.size() && last - at < kReach && inWord(last + 1)) ++last;
    const auto print = [](unsigned code) {
        const int letter = letterOf(code);
        if (letter > 0) return std::string(1, static_cast<char>('A' + letter - 1));
        return std::string(kindOf(code) == CodeKind::gap ? " " : "·");
    };
    HarmedWord word;
    for (std::size_t i = first; i <= last; ++i) {
        word.sent += print(sent[i].code);
        word.meant += print(due(i));
    }
    return word;
}

// Words of letters only are the plainest.
void chooseWords(PlainTextStudy& study, std::span<const SentCode> sent) {
    constexpr std::size_t kWords = 3;
    constexpr std::size_t kShortest = 3;
    for (std::size_t i = 0; i < sent.size() && study.words.size() < kWords; ++i) {
        if (!study.meant[i]) continue;
        HarmedWord word = wordAbout(sent, study.meant, i);
        const bool plain = std::all_of(word.meant.begin(), word.meant.end(), [](char c) { return c >= 'A'; });
        if (plain && word.meant.size() >= kShortest) study.words.push_back(std::move(word));
    }
}

// The rate by how well each explains the text: mean and 95 % interval, in steps of a fifth.
void tellRate(PlainTextStudy& study, const PlainLanguage& language, std::span<const SentCode> sent) {
    constexpr double kLowest = 0.01;
    constexpr double kStep = 1.2;
    constexpr int kSteps = 25;
    std::array<double, kSteps> rates{};
    std::array<double, kSteps> weights{};
    double rate = kLowest;
    for (std::size_t i = 0; i < rates.size(); ++i, rate *= kStep) {
        rates[i] = rate;
        weights[i] = kTrust * FaultWalk(language, study.fault, rate).account(sent);
    }
    const double largest = *std::max_element(weights.begin(), weights.end());
    double all = 0.0;
    for (double& w : weights) all += w = std::exp(w - largest);
    double below = 0.0;
    for (std::size_t i = 0; i < rates.size(); ++i) {
        study.rate += rates[i] * weights[i] / all;
        if (below <= 0.025 * all) study.rateLow = rates[i] / std::sqrt(kStep);
        if (below < 0.975 * all) study.rateHigh = rates[i] * std::sqrt(kStep);
        below += weights[i];
    }
}

void tellHarmed(PlainTextStudy& study, const PlainLanguage& language, std::span<const SentCode> sent) {
    constexpr double kAlmostSurely = 0.9;
    std::vector<double> harmed;
    FaultWalk(language, study.fault, study.rate).account(sent, &harmed);
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const bool mark = (sent[i].code >> (study.fault.level - 1) & 1U) != 0;
        study.harmed += harmed[i];
        study.atRisk += mark == study.fault.marks ? 1.0 : harmed[i];
        study.meant.emplace_back();
        if (harmed[i] > kAlmostSurely) study.meant.back() = otherWay(sent[i].code, study.fault);
    }
    chooseWords(study, sent);
}

struct FaultTrial {
    LevelFault fault;
    double account = 0.0;
};

std::vector<FaultTrial> tryFaults(const PlainLanguage& language, std::span<const SentCode> sent) {
    std::vector<FaultTrial> trials;
    for (int level = 1; level <= kLevels; ++level)
        for (const bool marks : {true, false})
            for (const double rate : kRates) {
                const LevelFault fault{level, marks};
                trials.push_back({fault, FaultWalk(language, fault, rate).account(sent)});
            }
    return trials;
}

// Mean of the probabilities, as a logarithm.
double meanAccount(std::span<const FaultTrial> trials, double largest) {
    double sum = 0.0;
    for (const FaultTrial& t : trials) sum += std::exp(t.account - largest);
    return largest + std::log(sum / static_cast<double>(trials.size()));
}

}  // namespace

std::optional<PlainTextStudy> studyPlainText(const CodeTable& table, std::span<const SentCode> sent) {
    if (table.levels != kLevels || sent.size() < kFewestRead) return std::nullopt;
    const std::span<const SentCode> newest = sent.last(std::min(sent.size(), kMostRead));
    const WithoutFault without = accountWithout(newest);
    const PlainLanguage& language = plainLanguages()[without.language];
    const std::vector<FaultTrial> trials = tryFaults(language, newest);
    const FaultTrial& best = *std::max_element(
        trials.begin(), trials.end(), [](const FaultTrial& a, const FaultTrial& b) { return a.account < b.account; });
    const double gain = meanAccount(trials, best.account) - without.account;
    const double odds =
        std::exp(std::clamp(kTrust * gain, -kMostGain, kMostGain)) * kFaultBefore / (1.0 - kFaultBefore);
    PlainTextStudy study;
    study.characters = static_cast<long>(newest.size());
    study.plain = without.languageAccount - without.even > kPlain * static_cast<double>(newest.size());
    study.fault = best.fault;
    study.probability = odds / (1.0 + odds);
    tellRate(study, language, newest);
    tellHarmed(study, language, newest);
    return study;
}

}  // namespace trueunit
