// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/drive.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/report/finding_words.h"
#include "core/units.h"

namespace trueunit {

namespace {

constexpr double kAsExpected = 0.3;    // percent; gears and a synchronous motor keep to it
constexpr double kMainsPercent = 1.0;  // as near to a mains fault as slip and load allow
constexpr double kToothPercent = 0.3;
constexpr double kOtherStop = 0.02;  // units; what a reading of the stop may be off
constexpr int kTeethOff = 3;
constexpr double kUsualMainsOff = 2.0;  // percent; a public mains keeps to it, a generator may not
constexpr double kShaftPercent = 1.0;
constexpr int kFewestTeeth = 9, kMostTeeth = 100;

double unitsOf(const MachineCard& card, int levels) { return levels + 1 + card.stopUnits; }

double baudWith(const MachineCard& card, int levels, double ratio) {
    return card.motorTurns * ratio / card.shaftTurns / 60.0 * unitsOf(card, levels);
}

double ratioOf(const MachineCard& card) { return static_cast<double>(card.drivingTeeth) / card.drivenTeeth; }

double off(double value, double from) { return 100.0 * (value / from - 1.0); }

std::string teeth(int driving, int driven) {
    return std::to_string(driving) + " to " + std::to_string(driven) + " teeth";
}

std::string speedWords(const DriveExplanation& e, double measured) {
    std::string words = "Motor and gears make " + decimals(e.expectedBaud, 2) + " baud; measured are " +
                        decimals(measured, 2) + " baud, " + signedDecimals(e.errorPercent, 2) + " %";
    const auto standard = nearestStandardSpeed(1.0 / measured, 0.01);
    if (standard) words += ", which is the standard speed of " + decimals(standard->baud, 2) + " baud";
    return words + ".";
}

// The shaft turns as the card says, but its turn is of more units or fewer.
void stopCause(const MachineCard& card, int levels, double measuredBaud, double measuredStop, DriveExplanation& e) {
    if (std::abs(measuredStop - card.stopUnits) < kOtherStop) return;
    MachineCard seen = card;
    seen.stopUnits = measuredStop;
    if (std::abs(off(measuredBaud, expectedBaud(seen, levels))) < kAsExpected)
        e.causes.push_back("Its stop is " + decimals(measuredStop, 2) + " units instead of " +
                           decimals(card.stopUnits, 2) +
                           ": the shaft turns as motor and gears make it, and the units are shorter or longer.");
}

void mainsCauses(const MachineCard& card, DriveExplanation& e) {
    if (card.motor != MachineCard::Motor::synchronous) return;
    for (const double mains : {50.0, 60.0}) {
        if (std::abs(mains - card.mainsHz) < 1.0) continue;
        if (std::abs(e.errorPercent - off(mains, card.mainsHz)) < kMainsPercent)
            e.causes.push_back("It runs on " + decimals(mains, 0) + " Hz mains with motor and gears for " +
                               decimals(card.mainsHz, 0) + " Hz.");
    }
    if (std::abs(e.errorPercent) < kUsualMainsOff)
        e.causes.push_back("A mains of " + decimals(card.mainsHz * (1.0 + 0.01 * e.errorPercent), 2) +
                           " Hz would make it (a generator?); a synchronous motor does not slip.");
}

// A gear with a few teeth more or fewer than the card says, or the pair for another standard speed.
void gearCauses(const MachineCard& card, int levels, double measured, DriveExplanation& e) {
    const auto fits = [&](int driving, int driven) {
        return std::abs(off(measured, baudWith(card, levels, static_cast<double>(driving) / driven))) < kToothPercent;
    };
    if (fits(card.drivenTeeth, card.drivingTeeth)) e.causes.emplace_back("The two gears are exchanged.");
    int told = 0;
    for (int by = 1; by <= kTeethOff && told < 2; ++by)
        for (const int d : {by, -by})
            for (const bool driving : {true, false}) {
                const int a = card.drivingTeeth + (driving ? d : 0);
                const int b = card.drivenTeeth + (driving ? 0 : d);
                if (a < 1 || b < 1 || told == 2 || !fits(a, b)) continue;
                ++told;
                e.causes.push_back("Gears of " + teeth(a, b) + " in place of " +
                                   teeth(card.drivingTeeth, card.drivenTeeth) + " would make it.");
            }
    for (const StandardSpeed& s : kStandardSpeeds)
        if (std::abs(off(measured, 1.0 / s.unitSeconds)) < kMainsPercent &&
            std::abs(off(s.baud, card.baud)) > kMainsPercent)
            e.causes.push_back("It has the gears for " + decimals(s.baud, 2) + " baud.");
}

}  // namespace

double expectedBaud(const MachineCard& card, int levels) { return baudWith(card, levels, ratioOf(card)); }

DriveExplanation explainDrive(const MachineCard& card, int levels, double measuredBaud,
                              std::optional<double> measuredStop) {
    DriveExplanation e;
    e.expectedBaud = expectedBaud(card, levels);
    e.errorPercent = off(measuredBaud, e.expectedBaud);
    e.speedWords = speedWords(e, measuredBaud);
    if (std::abs(e.errorPercent) < kAsExpected) return e;
    if (measuredStop) stopCause(card, levels, measuredBaud, *measuredStop, e);
    if (card.motor == MachineCard::Motor::governed && std::abs(e.errorPercent) < 12.0)
        e.causes.push_back("The governor holds the motor at " +
                           decimals(card.motorTurns * (1.0 + 0.01 * e.errorPercent), 0) +
                           " turns a minute instead of " + decimals(card.motorTurns, 0) + ".");
    mainsCauses(card, e);
    gearCauses(card, levels, measuredBaud, e);
    if (e.causes.empty())
        e.causes.emplace_back("Neither mains nor a gear near the one on the card explains it: is it the right card?");
    return e;
}

std::vector<GearWanted> gearsWanted(const MachineCard& card, int levels, double baud) {
    std::vector<StandardSpeed> speeds;
    for (const StandardSpeed& s : kStandardSpeeds)
        if (std::abs(off(s.baud, baud)) > 0.5) speeds.push_back(s);
    std::sort(speeds.begin(), speeds.end(), [&](const StandardSpeed& a, const StandardSpeed& b) {
        return std::abs(std::log(a.baud / baud)) < std::abs(std::log(b.baud / baud));
    });
    speeds.resize(std::min<std::size_t>(speeds.size(), 3));
    std::vector<GearWanted> wanted;
    for (const StandardSpeed& s : speeds) {
        GearWanted g;
        g.baud = s.baud;
        g.ratio = 1.0 / s.unitSeconds / baudWith(card, levels, 1.0);
        for (int driving = kFewestTeeth; driving <= kMostTeeth; ++driving) {
            const int driven = static_cast<int>(std::lround(driving / g.ratio));
            if (driven < kFewestTeeth || driven > kMostTeeth) continue;
            const double error = off(static_cast<double>(driving) / driven, g.ratio);
            if (g.drivingTeeth != 0 && std::abs(error) > std::abs(g.errorPercent) - 0.02) continue;
            g.drivingTeeth = driving;
            g.drivenTeeth = driven;
            g.errorPercent = error;
        }
        wanted.push_back(g);
    }
    return wanted;
}

std::string gearWords(const GearWanted& g) {
    std::string words = decimals(g.baud, 2) + " baud wants a ratio of 1 : " + decimals(1.0 / g.ratio, 4);
    if (g.drivingTeeth > 0)
        words += ", as by " + teeth(g.drivingTeeth, g.drivenTeeth) + " (" + signedDecimals(g.errorPercent, 2) + " %)";
    return words + ".";
}

std::optional<std::string> shaftOf(const MachineCard& card, int levels, double measuredBaud, double hz) {
    const double characters = measuredBaud / unitsOf(card, levels);
    const double shaft = characters * card.shaftTurns;
    const std::array<std::pair<double, std::string>, 2> shafts = {
        std::pair{shaft, std::string("the transmitting shaft")},
        std::pair{shaft / ratioOf(card), std::string("the motor shaft")}};
    const auto near = [hz](double other) { return std::abs(off(hz, other)) < kShaftPercent; };
    for (const auto& [turns, name] : shafts) {
        if (near(turns)) return name;
        if (near(2.0 * turns)) return name + ", twice a turn";
    }
    for (int part = 2; part <= 12; ++part)
        if (near(shaft / part))
            return "a wheel that turns once in " + std::to_string(part) + " turns of the transmitting shaft";
    // Instants come a few to a character: a quick shaft shows at the difference from whole turns a character.
    const double motor = shaft / ratioOf(card);
    if (const double seen = std::abs(motor - std::round(motor / characters) * characters); seen > 0.05 && near(seen))
        return "the motor shaft (" + decimals(motor, 2) + " Hz), seen once a character";
    return std::nullopt;
}

}  // namespace trueunit
