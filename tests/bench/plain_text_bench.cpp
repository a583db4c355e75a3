// SPDX-License-Identifier: GPL-3.0-or-later
// How often lost marks and filled spaces are told from a plain text that nobody knows, and how often a sound level is
// suspected. The text is the licence in resources/, English prose that had no part in the letter pairs; other files may
// be given instead. Pure: no signal is made here.
#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

#include "core/measure/plain_text.h"

using namespace trueunit;

namespace {

constexpr std::array<std::size_t, 3> kLengths = {128, 256, 512};
constexpr std::array kRates = {0.05, 0.1, 0.2, 0.3};
constexpr int kLevels = 5;
constexpr double kMostSuspected = 0.01;  // of sound windows that a fault is told of
constexpr double kFewestTold = 0.85;     // of windows of 256 characters with a fifth of one level's marks lost

struct Tally {
    long windows = 0;
    long told = 0;
    long right = 0;
};
struct Stated {
    double sum = 0.0;
    long told = 0;
    long right = 0;
};

std::vector<unsigned> tapeOf(const char* path) {
    std::ifstream file(path);
    std::string text{std::istreambuf_iterator<char>(file), {}};
    for (char& c : text)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    std::vector<unsigned> codes;
    for (const unsigned char c : encode(*findCode("ita2"), text)) codes.push_back(c);
    return codes;
}

std::vector<SentCode> window(const std::vector<unsigned>& tape, std::size_t from, std::size_t length, LevelFault fault,
                             double rate, std::mt19937& random) {
    std::vector<SentCode> sent;
    const unsigned bit = 1U << (fault.level - 1);
    std::uniform_real_distribution<> chance;
    for (std::size_t i = from; i < from + length; ++i) {
        const bool atRisk = ((tape[i] & bit) != 0) == fault.marks;
        sent.push_back({atRisk && chance(random) < rate ? tape[i] ^ bit : tape[i], true, false});
    }
    return sent;
}

class Bench {
public:
    explicit Bench(std::vector<unsigned> tape) : tape_(std::move(tape)) {}

    Tally run(std::size_t length, LevelFault fault, double rate) {
        Tally tally;
        for (std::size_t from = 0; from + length <= tape_.size(); from += length) {
            const auto study = studyPlainText(*findCode("ita2"), window(tape_, from, length, fault, rate, random_));
            if (!study) continue;
            ++tally.windows;
            const bool right = rate > 0.0 && study->fault.level == fault.level && study->fault.marks == fault.marks;
            note(study->probability, right);
            if (study->probability < kPlainTextTold) continue;
            ++tally.told;
            tally.right += right ? 1 : 0;
        }
        return tally;
    }
    void printStated() const {
        std::printf("\nBy stated probability, all of the above\n");
        for (const Stated& s : stated_)
            if (s.told > 0)
                std::printf("  stated %.2f on average: %ld of %ld right\n", s.sum / static_cast<double>(s.told),
                            s.right, s.told);
    }

private:
    void note(double probability, bool right) {
        constexpr std::array edges = {0.5, 0.7, 0.9, 0.97};
        if (probability < edges[0]) return;
        const auto at = std::upper_bound(edges.begin(), edges.end(), probability) - edges.begin() - 1;
        Stated& s = stated_[static_cast<std::size_t>(at)];
        s.sum += probability;
        ++s.told;
        s.right += right ? 1 : 0;
    }

    std::vector<unsigned> tape_;
    std::mt19937 random_{1};
    std::array<Stated, 4> stated_{};
};

double share(long part, long whole) { return static_cast<double>(part) / static_cast<double>(std::max(whole, 1L)); }

// Windows of a length without any fault: at most one in a hundred is suspected.
bool soundWindows(Bench& bench, std::size_t length) {
    const Tally sound = bench.run(length, {}, 0.0);
    std::printf("  %zu characters, sound: %ld of %ld windows suspected\n", length, sound.told, sound.windows);
    return share(sound.told, sound.windows) <= kMostSuspected;
}

// Each level in turn loses marks, or fills spaces, at a rate.
bool harmedWindows(Bench& bench, std::size_t length, double rate, bool marks) {
    Tally all;
    for (int level = 1; level <= kLevels; ++level) {
        const Tally t = bench.run(length, {level, marks}, rate);
        all.windows += t.windows;
        all.told += t.told;
        all.right += t.right;
    }
    std::printf("  %zu characters, %2.0f %% of one level's %s: told of %ld of %ld, the level right in %ld\n", length,
                100.0 * rate, marks ? "marks lost" : "spaces filled", all.told, all.windows, all.right);
    return length != 256 || rate != 0.2 || share(all.right, all.windows) >= kFewestTold;
}

bool study(const char* path, bool soundOnly) {
    Bench bench(tapeOf(path));
    std::printf("%s\n", path);
    bool good = true;
    for (const std::size_t length : kLengths) {
        good &= soundWindows(bench, length);
        if (soundOnly) continue;
        for (const double rate : kRates)
            for (const bool marks : {true, false}) good &= harmedWindows(bench, length, rate, marks);
    }
    bench.printStated();
    return good;
}

}  // namespace

// Arguments: texts, one run each; "--sound" before them leaves out the faults.
int main(int argc, char** argv) {
    std::vector<std::string> paths(argv + std::min(argc, 1), argv + argc);
    const bool soundOnly = !paths.empty() && paths.front() == "--sound";
    if (soundOnly) paths.erase(paths.begin());
    if (paths.empty()) paths.emplace_back(TRUEUNIT_PROSE);
    bool good = true;
    for (const std::string& path : paths) good &= study(path.c_str(), soundOnly);
    return good ? 0 : 1;
}
