// SPDX-License-Identifier: GPL-3.0-or-later
// Draws machines with known faults, measures them as a recording is measured, and holds the findings against the
// truth: which finding comes first for which kind of fault, and how often findings of a stated confidence are right.
#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <thread>
#include <vector>

#include "core/pipeline.h"
#include "tests/bench/findings/machine_draw.h"

using namespace trueunit;
using trueunit::test::drawMachine;
using trueunit::test::DrawnMachine;

namespace {

constexpr std::size_t kMachines = 600;
constexpr unsigned kThreads = 2;
constexpr double kRightFirst = 0.95;
constexpr double kInOrder = 0.98;

struct Trial {
    DrawnMachine drawn;
    std::vector<Finding> findings;
    long characters = 0;
};

bool among(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

bool isRight(const DrawnMachine& d, const Finding& f) {
    if (f.id == "reversed") return d.machine.inverted;
    if (d.faults.empty()) return f.id == "in-order";
    return among(d.faults, f.id) && (f.id != d.faults.front() || f.title.starts_with(d.title));
}

std::string firstOf(const Trial& o) { return o.findings.empty() ? "none" : o.findings.front().id; }

bool firstIsRight(const Trial& o) { return !o.findings.empty() && isRight(o.drawn, o.findings.front()); }

Trial measure(std::uint64_t number, std::uint64_t seed) {
    Trial o{drawMachine(number, seed), {}, 0};
    const std::vector<float> samples = o.drawn.samples();
    const auto run = [&](std::shared_ptr<const LineModel> learned) {
        Pipeline p(o.drawn.machine.rateHz, o.drawn.options, {});
        if (learned) p.startFrom(std::move(learned));
        p.push(samples);
        p.finish();
        return p;
    };
    Pipeline second = run(run(nullptr).learned());
    const Reading r = second.reading();
    o.findings = r.findings.value_or(std::vector<Finding>{});
    o.characters = r.text.characters;
    return o;
}

void printConfusion(const std::vector<Trial>& all) {
    std::map<std::string, std::map<std::string, int>> table;
    for (const Trial& o : all) ++table[o.drawn.kind][firstOf(o)];
    std::printf("\nFirst finding by kind of fault\n");
    for (const auto& [kind, firsts] : table) {
        std::printf("  %-22s", kind.c_str());
        for (const auto& [id, n] : firsts) std::printf(" %s %d", id.c_str(), n);
        std::printf("\n");
    }
}

void printReliability(const std::vector<Trial>& all) {
    constexpr std::array edges = {0.0, 0.5, 0.7, 0.85, 0.93, 0.96, 1.01};
    std::printf("\nFindings by stated confidence\n");
    for (std::size_t b = 0; b + 1 < edges.size(); ++b) {
        double stated = 0.0;
        int n = 0, right = 0;
        for (const Trial& o : all)
            for (const Finding& f : o.findings) {
                if (f.confidence < edges[b] || f.confidence >= edges[b + 1]) continue;
                stated += f.confidence;
                ++n;
                right += isRight(o.drawn, f) ? 1 : 0;
            }
        if (n > 0)
            std::printf("  stated %.2f on average: %d of %d right, %.3f\n", stated / n, right, n, 1.0 * right / n);
    }
}

void printOverstated(const std::vector<Trial>& all) {
    std::printf("\nFindings stated at 0.5 and more that are not right\n");
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const Finding& f : all[i].findings)
            if (f.confidence >= 0.5 && !isRight(all[i].drawn, f))
                std::printf("  %zu %s (%s): %s %.2f %s\n", i, all[i].drawn.kind.c_str(), all[i].drawn.size.c_str(),
                            f.id.c_str(), f.confidence, f.title.c_str());
}

void printWrong(const std::vector<Trial>& all) {
    std::printf("\nWhere the first finding is not right\n");
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Trial& o = all[i];
        if (firstIsRight(o)) continue;
        const auto& m = o.drawn.machine;
        std::printf("  %zu %s (%s) unit %.2f ms stop %.2f snr %.0f dB poles", i, o.drawn.kind.c_str(),
                    o.drawn.size.c_str(), 1e3 * m.unit, m.stopUnits, m.snrDb);
        for (const double hz : m.polesHz) std::printf(" %.0f", hz);
        std::printf(" rate %.0f text %zu%s, %ld of %zu characters:", m.rateHz, o.drawn.tape.size(),
                    o.drawn.options.expect.empty() ? "" : " given", o.characters, o.drawn.characters);
        for (const Finding& f : o.findings) std::printf(" [%s %.2f %s]", f.id.c_str(), f.confidence, f.title.c_str());
        std::printf("\n");
    }
}

bool judge(const std::vector<Trial>& all) {
    int faulty = 0, right = 0, sound = 0, soundRight = 0, overlooked = 0, told = 0, faults = 0;
    for (const Trial& o : all) {
        const bool hit = firstIsRight(o);
        if (o.drawn.faults.empty()) {
            ++sound;
            soundRight += hit ? 1 : 0;
            continue;
        }
        ++faulty;
        right += hit ? 1 : 0;
        overlooked += o.drawn.outOfLimits && firstOf(o) == "in-order" ? 1 : 0;
        for (const std::string& id : o.drawn.faults) {
            ++faults;
            told +=
                std::any_of(o.findings.begin(), o.findings.end(), [&](const Finding& f) { return f.id == id; }) ? 1 : 0;
        }
    }
    std::printf("\nRight finding first: %d of %d faulty machines, %.3f (wanted %.2f)\n", right, faulty,
                1.0 * right / faulty, kRightFirst);
    std::printf("In order called so: %d of %d, %.3f (wanted %.2f)\n", soundRight, sound, 1.0 * soundRight / sound,
                kInOrder);
    std::printf("Faults told at all: %d of %d\n", told, faults);
    std::printf("Out of limits but called in order: %d (wanted 0)\n", overlooked);
    return right >= kRightFirst * faulty && soundRight >= kInOrder * sound && overlooked == 0;
}

}  // namespace

// Arguments: number of machines, seed.
int main(int argc, char** argv) {
    const std::size_t machines = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : kMachines;
    const std::uint64_t seed = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 1;
    std::vector<Trial> all(machines);
    std::atomic<std::size_t> next{0};
    std::vector<std::jthread> threads;
    for (unsigned t = 0; t < kThreads; ++t)
        threads.emplace_back([&] {
            for (std::size_t i = next++; i < machines; i = next++) all[i] = measure(i, seed);
        });
    threads.clear();  // waits for them
    std::printf("%zu machines, seed %llu\n", machines, static_cast<unsigned long long>(seed));
    printConfusion(all);
    printReliability(all);
    printOverstated(all);
    printWrong(all);
    return judge(all) ? 0 : 1;
}
