// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/plain_language.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <string>

#include "core/measure/letter_pairs.h"

namespace trueunit {

namespace {

constexpr double kMisread = 1e-3;         // of a character that is none of plain text's
constexpr double kAccountChanges = 0.02;  // chance that the account that holds changes from one character to the next
constexpr std::size_t kHabit = 400;       // characters: a habit learned over more would learn a fault too

struct CodePlaces {
    std::array<CodeKind, PlainLanguage::kCodes> kind{};
    std::array<int, PlainLanguage::kCodes> letter{};  // 1 to 26; 0 for what is none
};

CodePlaces namePlaces() {
    using enum CodeKind;
    CodePlaces a;
    for (unsigned code = 0; code < PlainLanguage::kCodes; ++code) {
        Decoder decoder(*findCode("ita2"));
        const std::string name = decoder.name(code);
        CodeKind& kind = a.kind[code];
        if (name.size() == 1)
            a.letter[code] = name[0] - 'A' + 1;
        else if (name == "space")
            kind = gap;
        else if (name == "carriage return")
            kind = carriageReturn;
        else if (name == "line feed")
            kind = lineFeed;
        else if (name == "letters")
            kind = letters;
        else if (name == "figures")
            kind = figures;
        else
            kind = blank;
    }
    return a;
}

const CodePlaces& codePlaces() {
    static const CodePlaces a = namePlaces();
    return a;
}

constexpr std::size_t kKinds = 7;
using KindRow = std::array<double, kKinds>;

constexpr std::size_t at(CodeKind kind) { return static_cast<std::size_t>(kind); }

// What follows what on a tape, in either case; common practice, estimated. Rows and columns as CodeKind; text takes
// what is left of one.
constexpr std::array<KindRow, kKinds> kInLetters = {{
    {0, 0, 0.015, 0.003, 0.004, 0.02, 0.001},  // the gap's share comes from the letter pairs
    {0, 0, 0.015, 0.003, 0.004, 0.04, 0.001},
    {0, 0.01, 0.15, 0.75, 0.05, 0.01, 0.01},
    {0, 0.02, 0.08, 0.10, 0.30, 0.04, 0.01},
    {0, 0.25, 0.05, 0.03, 0.20, 0.03, 0.01},
    {0, 0, 0, 0, 0, 0, 0},
    {0, 0.01, 0.03, 0.03, 0.06, 0.01, 0.80},
}};
constexpr std::array<KindRow, kKinds> kInFigures = {{
    {0, 0.12, 0.04, 0.005, 0.15, 0.01, 0.001},
    {0, 0.05, 0.02, 0.005, 0.10, 0.10, 0.001},
    {0, 0.01, 0.15, 0.75, 0.05, 0.01, 0.01},
    {0, 0.02, 0.08, 0.10, 0.20, 0.10, 0.01},
    {0, 0, 0, 0, 0, 0, 0},
    {0, 0.02, 0.02, 0.01, 0.02, 0.10, 0.001},
    {0, 0.01, 0.03, 0.03, 0.06, 0.01, 0.80},
}};

double shareLeft(const KindRow& row) { return 1.0 - std::accumulate(row.begin(), row.end(), 0.0); }

double pairShare(const LetterPairs& pairs, const CodePlaces& a, std::size_t from, std::size_t to) {
    using enum CodeKind;
    const KindRow& row = kInLetters[at(a.kind[from])];
    const double left = shareLeft(row);
    if (a.kind[from] == text || a.kind[from] == gap) return left * pairs.probability(a.letter[from], a.letter[to]);
    if (a.kind[to] == gap) return row[at(gap)];
    return left * pairs.probability(0, a.letter[to]);
}

// Letters that do not hang together at all: code groups, call signs, an exercise. No fault shows in them.
double evenShare(std::size_t from, std::size_t to) {
    using enum CodeKind;
    constexpr double letterOrGap = 27.0;
    const CodePlaces& a = codePlaces();
    const KindRow& row = kInLetters[at(a.kind[from])];
    return a.kind[to] == text || a.kind[to] == gap ? (shareLeft(row) + row[at(gap)]) / letterOrGap
                                                   : row[at(a.kind[to])];
}

PlainLanguage makeLanguage(const LetterPairs& pairs) {
    using enum CodeKind;
    constexpr double figureSigns = 26.0;
    const CodePlaces& a = codePlaces();
    PlainLanguage p;
    for (std::size_t from = 0; from < PlainLanguage::kCodes; ++from) {
        for (std::size_t to = 0; to < PlainLanguage::kCodes; ++to) {
            const CodeKind kind = a.kind[to];
            const bool pair = kind == text || (kind == gap && (a.kind[from] == text || a.kind[from] == gap));
            const double inLetters = pair ? pairShare(pairs, a, from, to) : kInLetters[at(a.kind[from])][at(kind)];
            const double inFigures = kind == text ? shareLeft(kInFigures[at(a.kind[from])]) / figureSigns
                                                  : kInFigures[at(a.kind[from])][at(kind)];
            p.inLetters[from][to] = inLetters + kMisread / PlainLanguage::kCodes;
            p.inFigures[from][to] = inFigures + kMisread / PlainLanguage::kCodes;
        }
    }
    return p;
}

// The habit of a text: what followed what in it so far. Learns as it goes.
class Habit {
public:
    double share(std::size_t from, std::size_t to) const {
        constexpr double kPairWeight = 2.0;
        constexpr double kFlatWeight = 4.0;
        const double alone = (single_[to] + kFlatWeight / PlainLanguage::kCodes) / (total_ + kFlatWeight);
        return (pair_[from][to] + kPairWeight * alone) / (after_[from] + kPairWeight);
    }
    void see(std::size_t from, std::size_t to) { ++single_[to], ++total_, ++pair_[from][to], ++after_[from]; }

private:
    std::array<double, PlainLanguage::kCodes> single_{}, after_{};
    double total_ = 0.0;
    PlainLanguage::Table pair_{};
};

}  // namespace

CodeKind kindOf(std::size_t code) { return codePlaces().kind[code]; }

int letterOf(std::size_t code) { return codePlaces().letter[code]; }

const std::vector<PlainLanguage>& plainLanguages() {
    static const std::vector<PlainLanguage> all = [] {
        std::vector<PlainLanguage> texts;
        for (const LetterPairs& pairs : letterPairs()) texts.push_back(makeLanguage(pairs));
        return texts;
    }();
    return all;
}

Shift shiftAfter(Shift before, std::size_t code) {
    const CodeKind kind = codePlaces().kind[code];
    return kind == CodeKind::figures ? Shift::figures : kind == CodeKind::letters ? Shift::letters : before;
}

double PlainLanguage::follows(Shift shift, std::size_t from, std::size_t to) const {
    return shift == Shift::letters ? inLetters[from][to] : inFigures[from][to];
}

// The best account of the text without a fault, in nats: at each character the languages and the habit are weighed by
// how they did on the characters before (Bayes' rule; the fixed-share rule of Herbster and Warmuth, 1998).
WithoutFault accountWithout(std::span<const SentCode> sent) {
    const std::vector<PlainLanguage>& texts = plainLanguages();
    const std::size_t accounts = texts.size() + 2;
    std::vector<double> weight(accounts, 1.0 / static_cast<double>(accounts));
    std::vector<double> languages(texts.size(), 0.0);
    Habit habit;
    Shift shift = Shift::letters;
    WithoutFault best;
    for (std::size_t i = 1; i < sent.size(); ++i) {
        const std::size_t from = sent[i - 1].code;
        const std::size_t to = sent[i].code;
        best.even += std::log(evenShare(from, to));
        shift = shiftAfter(shift, from);
        double sum = 0.0;
        for (std::size_t n = 0; n < weight.size(); ++n) {
            const double share = n < texts.size()    ? texts[n].follows(shift, from, to)
                                 : n == texts.size() ? habit.share(from, to)
                                                     : evenShare(from, to);
            if (n < texts.size()) languages[n] += std::log(share);
            weight[n] *= share;
            sum += weight[n];
        }
        best.account += std::log(sum);
        for (double& w : weight)
            w = (1.0 - kAccountChanges) * w / sum + kAccountChanges / static_cast<double>(weight.size());
        if (i % kHabit == 0) habit = Habit();
        habit.see(from, to);
    }
    const auto likeliest = std::max_element(languages.begin(), languages.end());
    best.language = static_cast<std::size_t>(likeliest - languages.begin());
    best.languageAccount = *likeliest;
    return best;
}

}  // namespace trueunit
