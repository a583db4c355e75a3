// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/findings/machine_draw.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

#include "core/units.h"

namespace trueunit::test {

namespace {

// ITU-T S.1, level 1 first; letters as in the published table, typed in anew so that the instrument's own is not used.
constexpr std::array<const char*, 26> kLetters = {"11000", "10011", "01110", "10010", "10000", "10110", "01011",
                                                  "00101", "01100", "11010", "11110", "01001", "00111", "00110",
                                                  "00011", "01101", "11101", "01010", "10100", "00001", "11100",
                                                  "01111", "11001", "10111", "10101", "10001"};
constexpr const char* kFox = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG ";

unsigned combination(const char* levels) {
    unsigned code = 0;
    for (unsigned i = 0; i < 5; ++i)
        if (levels[i] == '1') code |= 1U << i;
    return code;
}

std::vector<unsigned> punch(const std::string& text) {
    std::vector<unsigned> tape;
    for (const char c : text)
        tape.push_back(combination(c == ' ' ? "00100" : kLetters.at(static_cast<std::size_t>(c - 'A'))));
    return tape;
}

class Chance {
public:
    explicit Chance(std::uint64_t seed) : random_(seed) {}
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }
    double eitherWay(double low, double high) { return (one(2) == 0 ? 1.0 : -1.0) * between(low, high); }
    int one(int of) { return std::uniform_int_distribution<int>(0, of - 1)(random_); }
    std::uint64_t bits() { return random_(); }

private:
    std::mt19937_64 random_;
};

// What no person would call a fault: a sound machine's remaining unevenness, its loop and an honest card.
void drawHealthy(DrawnMachine& d, Chance& chance) {
    FaultyMachine& m = d.machine;
    constexpr std::array speeds = {0.022, 0.020, 1.0 / 75.0};
    constexpr std::array stops = {1.42, 1.5, 2.0, 1.42, 1.5};
    m.unit = speeds[static_cast<std::size_t>(chance.one(3))];
    m.stopUnits = stops[static_cast<std::size_t>(chance.one(5))];
    m.biasPercent = chance.between(-1.4, 1.4);
    m.endPercent = chance.between(-1.4, 1.4);
    m.scatterPercent = chance.between(0.1, 0.9);
    m.fastPercent = chance.between(-0.15, 0.15);
    m.edgeSeconds = chance.between(50e-6, 200e-6);
    constexpr std::array rates = {48000.0, 44100.0, 48000.0, 96000.0};
    m.rateHz = rates[static_cast<std::size_t>(chance.one(4))];
    m.halfSwing = std::pow(10.0, chance.between(-34.0, -12.0) / 20.0);
    for (int pole = chance.one(3); pole > 0; --pole) m.polesHz.push_back(chance.between(0.5, 40.0));
    m.snrDb = chance.between(20.0, 50.0);
    m.inverted = chance.one(2) == 0;
    m.sixteenBit = chance.one(2) == 0;
    m.seed = chance.bits();
    if (m.unit < 0.0135) d.options.baud = 75.0;  // one percent off it another standard speed is nearer
    d.characters = static_cast<std::size_t>(150 + chance.one(101));
    d.from = static_cast<std::size_t>(chance.one(1000));
}

void drawText(DrawnMachine& d, Chance& chance, bool known) {
    std::string text;
    const int which = chance.one(3);
    if (which == 0) {
        text = "RY";
    } else if (which == 1) {
        text = kFox;
    } else {  // a loop of its own; the operator gives its text, or the instrument learns it from three rounds
        const int length = 20 + chance.one(known ? 80 : 28);
        for (int i = 0; i < length; ++i) text += chance.one(6) == 0 ? ' ' : static_cast<char>('A' + chance.one(26));
        if (known) d.options.expect = text;
    }
    d.tape = punch(text);
}

struct Kind {
    const char* name;
    void (*impose)(DrawnMachine&, Chance&);
};

void size(DrawnMachine& d, const char* what, double value) {
    d.size += (d.size.empty() ? "" : ", ") + std::string(what) + " " + std::to_string(value).substr(0, 6);
}

void inOrder(DrawnMachine&, Chance&) {}

void bias(DrawnMachine& d, Chance& c) {
    d.machine.biasPercent = c.eitherWay(2.5, 20.0);
    size(d, "bias", d.machine.biasPercent);
    d.faults.emplace_back("contact-offset");
    d.outOfLimits |= std::abs(d.machine.biasPercent) > 5.3;
}

void end(DrawnMachine& d, Chance& c) {
    d.machine.endPercent = c.eitherWay(2.5, 18.0);
    size(d, "end", d.machine.endPercent);
    d.faults.emplace_back("end-offset");
    d.outOfLimits |= std::abs(d.machine.endPercent) > 5.3;
}

void lateBoth(DrawnMachine& d, Chance& c) {
    d.machine.lateK = 1 + c.one(5);
    d.machine.latePercent = c.eitherWay(4.0, 20.0);
    size(d, "k", d.machine.lateK);
    size(d, "late", d.machine.latePercent);
    d.faults.emplace_back("level-late");
    d.outOfLimits |= std::abs(d.machine.latePercent) > 11.0;
}

void lateMarks(DrawnMachine& d, Chance& c) {
    lateBoth(d, c);
    d.machine.lateOf = FaultyMachine::LateOf::marks;
}

void speed(DrawnMachine& d, Chance& c) {
    d.machine.fastPercent = c.eitherWay(1.0, 3.0);
    size(d, "fast", d.machine.fastPercent);
    d.options.baud = d.machine.unit > 0.021 ? 45.45 : d.machine.unit > 0.014 ? 50.0 : 75.0;
    d.faults.emplace_back("wrong-speed");
    d.outOfLimits = true;
}

void wander(DrawnMachine& d, Chance& c) {
    d.machine.wanderPercent = c.between(0.5, 1.5);
    d.machine.wanderHz = c.between(0.07, 0.25);
    size(d, "wander", d.machine.wanderPercent);
    size(d, "Hz", d.machine.wanderHz);
    d.faults.emplace_back("unsteady-speed");
}

void cyclic(DrawnMachine& d, Chance& c) {
    d.machine.cyclicPercent = c.between(4.0, 9.0);
    d.machine.cyclicHz = c.between(0.7, 2.6);
    d.machine.cyclicMovesStart = c.one(2) == 0;
    size(d, "cyclic", d.machine.cyclicPercent);
    size(d, "Hz", d.machine.cyclicHz);
    d.faults.emplace_back("cyclic-drive");
}

void scatter(DrawnMachine& d, Chance& c) {
    d.machine.scatterPercent = c.between(3.0, 7.0);
    size(d, "scatter", d.machine.scatterPercent);
    d.faults.emplace_back("contact-scatter");
    d.outOfLimits |= d.machine.scatterPercent > 3.5;
}

void onlyScatter(DrawnMachine& d, Chance& c) {
    scatter(d, c);
    d.title = "The instants scatter";
}

void startScatter(DrawnMachine& d, Chance& c) {
    d.machine.startScatterPercent = c.between(3.0, 7.0);
    size(d, "start scatter", d.machine.startScatterPercent);
    d.faults.emplace_back("contact-scatter");
    d.title = "The start scatters";
    d.outOfLimits |= d.machine.startScatterPercent > 4.5;
}

void trip(DrawnMachine& d, Chance& c) {
    d.machine.stopIrregularUniform = c.one(2) == 0;
    d.machine.stopIrregularUnits = c.between(0.15, 0.5);
    size(d, d.machine.stopIrregularUniform ? "stop uniform" : "stop gaussian", d.machine.stopIrregularUnits);
    d.faults.emplace_back("trip-late");
}

void bounce(DrawnMachine& d, Chance& c) {
    d.machine.bounceSeconds = c.between(0.001, 0.003);
    d.machine.bounceFraction = c.between(0.15, 1.0);
    d.machine.edgeSeconds = c.between(20e-6, 70e-6);
    size(d, "bounce ms", 1e3 * d.machine.bounceSeconds);
    size(d, "of", d.machine.bounceFraction);
    d.faults.emplace_back("contact-bounce");
}

void drop(DrawnMachine& d, Chance& c) {
    d.machine.dropLevel = 1 + c.one(5);
    d.machine.dropFraction = c.between(0.05, 0.3);
    size(d, "level", d.machine.dropLevel);
    size(d, "missed", d.machine.dropFraction);
    d.faults.emplace_back("level-dropout");
}

void fill(DrawnMachine& d, Chance& c) {
    d.machine.fillLevel = 1 + c.one(5);
    d.machine.fillFraction = c.between(0.05, 0.3);
    size(d, "level", d.machine.fillLevel);
    size(d, "filled", d.machine.fillFraction);
    d.faults.emplace_back("level-stuck");
}

void slow(DrawnMachine& d, Chance& c) {
    d.machine.riseConstant = c.between(0.001, 0.004) * std::min(1.0, d.machine.unit / 0.020);
    size(d, "rise constant ms", 1e3 * d.machine.riseConstant);
    d.machine.snrDb = std::max(d.machine.snrDb, 25.0);
    d.faults.emplace_back("slow-rise");
}

// On RY alone it cannot be told from a lever: all but one of its elements are single units.
void unsettled(DrawnMachine& d, Chance& c) {
    d.machine.afterShortPercent = c.eitherWay(4.0, 12.0);
    d.tape = punch(kFox);
    size(d, "after short", d.machine.afterShortPercent);
    d.faults.emplace_back("slow-rise");
}

void slip(DrawnMachine& d, Chance& c) {
    (c.one(2) == 0 ? d.machine.repeatFraction : d.machine.skipFraction) = c.between(0.01, 0.04);
    size(d, "repeats", d.machine.repeatFraction);
    size(d, "skips", d.machine.skipFraction);
    d.faults.emplace_back("feed-slip");
}

void mains(DrawnMachine& d, Chance& c) {
    d.machine.humPercent = c.between(7.0, 15.0);
    d.machine.humHz = c.one(2) == 0 ? 50.0 : 60.0;
    d.machine.snrDb = std::max(d.machine.snrDb, 30.0);
    size(d, "hum", d.machine.humPercent);
    d.faults.emplace_back("hum");
}

void clip(DrawnMachine& d, Chance& c) {
    d.machine.clipAt = c.between(0.7, 1.15);
    if (d.machine.polesHz.empty()) d.machine.polesHz = {c.between(2.0, 15.0)};
    for (double& hz : d.machine.polesHz) hz = std::min(hz, 15.0);
    size(d, "clip at", d.machine.clipAt);
    d.faults.emplace_back("clipped");
}

void weak(DrawnMachine& d, Chance& c) {
    d.machine.halfSwing = std::pow(10.0, c.between(-54.0, -49.0) / 20.0);
    d.machine.snrDb = c.between(12.5, 15.5);
    d.machine.sixteenBit = false;
    size(d, "snr", d.machine.snrDb);
    d.faults.emplace_back("weak-signal");
}

// Two mechanical faults at once: the first finding must be one of them.
void biasAndLate(DrawnMachine& d, Chance& c) {
    bias(d, c);
    lateBoth(d, c);
}
void speedAndScatter(DrawnMachine& d, Chance& c) {
    speed(d, c);
    scatter(d, c);
}
void dropAndBias(DrawnMachine& d, Chance& c) {
    drop(d, c);
    bias(d, c);
}
void cyclicAndTrip(DrawnMachine& d, Chance& c) {
    cyclic(d, c);
    trip(d, c);
}
void biasAndEnd(DrawnMachine& d, Chance& c) {
    bias(d, c);
    end(d, c);
}

void silence(DrawnMachine& d, Chance&) {
    d.other = DrawnMachine::Other::hiss;
    d.faults.emplace_back("no-signal");
}

void notStartStop(DrawnMachine& d, Chance& c) {
    d.other = c.one(2) == 0 ? DrawnMachine::Other::synchronous : DrawnMachine::Other::square;
    d.faults.emplace_back("not-start-stop");
}

constexpr std::array kKinds = {
    Kind{"in order", inOrder},
    Kind{"bias", bias},
    Kind{"end", end},
    Kind{"instant late", lateBoth},
    Kind{"marks late", lateMarks},
    Kind{"speed", speed},
    Kind{"in order", inOrder},
    Kind{"wander", wander},
    Kind{"cyclic", cyclic},
    Kind{"scatter", onlyScatter},
    Kind{"stop irregular", trip},
    Kind{"bounce", bounce},
    Kind{"marks missed", drop},
    Kind{"spaces filled", fill},
    Kind{"slow rise", slow},
    Kind{"in order", inOrder},
    Kind{"feed slips", slip},
    Kind{"hum", mains},
    Kind{"clipped", clip},
    Kind{"weak", weak},
    Kind{"bias + instant late", biasAndLate},
    Kind{"speed + scatter", speedAndScatter},
    Kind{"marks missed + bias", dropAndBias},
    Kind{"cyclic + stop", cyclicAndTrip},
    Kind{"bias + end", biasAndEnd},
    Kind{"in order", inOrder},
    Kind{"start scatter", startScatter},
    Kind{"silent", silence},
    Kind{"no start-stop", notStartStop},
    Kind{"scatter", onlyScatter},
    Kind{"marks missed", drop},
    Kind{"short elements", unsettled},
};

// Two-level signals without start and stop, and no signal at all.
std::vector<float> otherInput(const DrawnMachine& d) {
    std::mt19937_64 random(d.machine.seed);
    std::normal_distribution<double> normal;
    std::vector<float> out(static_cast<std::size_t>(12.0 * d.machine.rateHz));
    const double noise = d.machine.halfSwing * std::pow(10.0, -d.machine.snrDb / 20.0);
    double until = 0.0;
    bool high = false;
    double smooth = 0.0;
    for (std::size_t n = 0; n < out.size(); ++n) {
        if (static_cast<double>(n) / d.machine.rateHz >= until) {
            until += d.machine.unit;
            high = d.other == DrawnMachine::Other::square ? !high : (random() & 1U) != 0;
        }
        smooth += 0.2 * ((high ? 1.0 : -1.0) - smooth);
        const double line = d.other == DrawnMachine::Other::hiss ? 0.0 : smooth * d.machine.halfSwing;
        out[n] = static_cast<float>(line + noise * normal(random));
    }
    return out;
}

}  // namespace

// A fault that comes by chance must have come: two mishaps at least, else the tape is sent again.
std::vector<float> DrawnMachine::samples() {
    if (other != Other::none) return otherInput(*this);
    const FaultyMachine& m = machine;
    const bool byChance = m.dropLevel > 0 || m.fillLevel > 0 || m.repeatFraction > 0.0 || m.skipFraction > 0.0;
    while (true) {
        std::vector<float> sent = machine.send(tape, from, characters);
        if (!byChance || machine.mishaps >= 2) return sent;
        ++machine.seed;
    }
}

DrawnMachine drawMachine(std::uint64_t number, std::uint64_t seed) {
    Chance chance(seed * 1000003U + number);
    const Kind& kind = kKinds[number % kKinds.size()];
    DrawnMachine d;
    d.kind = kind.name;
    drawHealthy(d, chance);
    const std::string name = kind.name;
    const bool levels = name.find("marks missed") == 0 || name == "spaces filled" || name == "feed slips";
    drawText(d, chance, levels || chance.one(2) == 0);
    kind.impose(d, chance);
    return d;
}

}  // namespace trueunit::test
