// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"
#include "core/report/speed_swing.h"

namespace trueunit {

namespace {

constexpr long kFewestCharacters = 16;
constexpr double kMildSpeedPercent = 0.4;
constexpr double kPulledPercent = 0.05;  // of the speed: more than its figures show
constexpr double kMainsPercent = 1.5;    // of the speed: as near to a mains fault as gears and slip allow
constexpr double kMildLinePercent = 1.5;
constexpr double kLineLimitPercent = 5.0;
constexpr double kSpeedSoFar = 0.9;    // of the confidence is left before
constexpr double kShaftIsRight = 0.6;  // then it is hardly the speed
constexpr double kWanderLimit = 0.6;   // rms percent; puts the stop instant off by some 5 % at its worst
constexpr std::array kStops = {1.0, 1.27, 1.42, 1.5, 1.96, 2.0};  // met in practice (NAVEDTRA 14189)

std::optional<double> usualStop(double units, double within) {
    for (const double stop : kStops)
        if (std::abs(units - stop) < within) return stop;
    return std::nullopt;
}

// Error of the speed, fast is positive. A lever out of place is set aside in it, so that the doubt it throws on the
// speed as read does not count here.
std::optional<Measured> speedError(const Symptoms& s) {
    const auto& read = s.reading.speed.errorPercent;
    if (!read || !s.pattern || !s.pattern->pullsAtReadings()) return read;
    return Measured{*s.speedErrorByPattern(), std::max(0.0, read->uncertainty - std::abs(s.pattern->unitPercent))};
}

// Why the finding has another figure than the reading.
std::string whatPullsIt(const Symptoms& s, const Measured& error) {
    const double read = s.reading.speed.errorPercent->value;
    if (std::abs(read - error.value) < kPulledPercent) return "";
    return (s.pattern->afterShort ? " What short elements do" : " A level out of place") +
           std::string(" pulls the speed as read to ") + signedDecimals(read, 2) + " %; here it is set aside.";
}

// A part that swings by so much of a unit turns that much faster and slower, and moves an instant the more the longer
// ago the character started. What moves the early instants as far as the late ones is another thing.
std::string asSpeed(const Symptoms& s, const CyclicLine& line) {
    if (line.perCharacter <= 0.0 || line.perCharacter >= 1.0) return "";
    if (!line.shiftsStart)
        return " Held against the start of their character the first instants swing as far as the last: that is not "
               "the speed of the drive, nor the bias, though the trails of both may wave with it.";
    return " As a swing of the speed that is " + percent(speedSwingPercent(line, s.unitMs()), 2) + " either way.";
}

// The strongest line that is the speed's own.
const CyclicLine* slowSwing(const Symptoms& s) {
    if (s.reading.distortion.cyclic)
        for (const CyclicLine& line : *s.reading.distortion.cyclic)
            if (isSpeedSwing(line)) return &line;
    return nullptr;
}

long staysOver(const Symptoms& s) { return s.steadiness ? s.steadiness->blocks : 0; }

// A line or a scatter of a few percent leaves some of itself in the speed of a short window.
bool swings(const Symptoms& s) {
    return s.reading.distortion.fortuitousRmsPercent.value_or(0.0) + s.largestLinePercent() > 3.0;
}

std::string mainsHint(double errorPercent) {
    if (std::abs(errorPercent + 16.67) < kMainsPercent)
        return " That is a machine for 60 Hz on 50 Hz mains: wrong motor or gears for this mains.";
    if (std::abs(errorPercent - 20.0) < kMainsPercent)
        return " That is a machine for 50 Hz on 60 Hz mains: wrong motor or gears for this mains.";
    return "";
}

// Whether the shaft turns at the wrong speed or its elements alone are of the wrong length: the character period,
// start to start, knows nothing of the elements.
struct WhatIsSlow {
    std::string words;
    bool elementsAlone = false;
};

WhatIsSlow shaftOrElements(const Symptoms& s, double error) {
    const auto& speed = s.reading.speed;
    if (!speed.characterMs || !speed.nominalUnitMs) return {};
    const double actual = *speed.nominalUnitMs / (1.0 + 0.01 * error);
    const double withActual = speed.characterMs->value / actual - (s.levels + 1);
    const double withNominal = speed.characterMs->value / *speed.nominalUnitMs - (s.levels + 1);
    const auto fits = [&](double stop) {
        return s.options.stopUnits ? std::abs(stop - *s.options.stopUnits) < 0.03 : usualStop(stop, 0.015).has_value();
    };
    const std::string period = " Start to start it takes " + decimals(speed.characterMs->value, 2) + " ms";
    if (fits(withActual))
        return {period + ", a stop of " + decimals(withActual, 2) +
                " of its own units: the whole shaft turns at the wrong speed."};
    if (fits(withNominal))
        return {period +
                    ", as it should: the shaft turns at the right speed and the elements alone are of the wrong "
                    "length (cam sleeve, wrong cams).",
                true};
    return {period + "."};
}

// What the machine card makes of the speed; nothing without a card.
std::string byTheCard(const Symptoms& s) {
    if (!s.reading.drive) return "";
    std::string words = " " + s.reading.drive->explanation.speedWords;
    for (const std::string& cause : s.reading.drive->explanation.causes) words += " " + cause;
    return words;
}

// Which shaft of the machine card turns with a line.
std::string shaftByTheCard(const Symptoms& s, double hz) {
    if (!s.options.card || !s.reading.speed.baud) return "";
    const auto shaft = shaftOf(*s.options.card, s.levels, s.reading.speed.baud->value, hz);
    return shaft ? " By the machine card that is " + *shaft + "."
                 : " No shaft of the machine card turns so; the card knows the motor's and the transmitting one.";
}

std::optional<RankedFinding> noStandardSpeed(const Symptoms& s) {
    if (!s.reading.speed.baud || s.options.baud) return std::nullopt;
    const double baud = s.reading.speed.baud->value;
    const StandardSpeed *below = nullptr, *above = nullptr;
    for (const StandardSpeed& each : kStandardSpeeds) {
        if (each.baud < baud) below = &each;
        if (each.baud > baud && !above) above = &each;
    }
    Finding f;
    f.id = "wrong-speed";
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    f.seenAt.speed = true;
    f.confidence = 0.7;
    f.title = "It runs at " + decimals(baud, 2) + " baud, which is no standard speed";
    f.evidence = "The unit is " + decimals(s.unitMs(), 3) + " ms." + byTheCard(s);
    for (const StandardSpeed* each : {below, above})
        if (each)
            f.evidence += " It is " + signedDecimals(100.0 * (baud / each->baud - 1.0), 2) + " % off " +
                          decimals(each->baud, 2) + " baud." + mainsHint(100.0 * (baud / each->baud - 1.0));
    f.lookAt = "Motor speed, governor, gears for another speed or another mains frequency.";
    f.confirm =
        "Read the speed on the machine's plate and set it here; count the shaft with a strobe or a timer." + kUnplug;
    return RankedFinding{f, 2.0};
}

// A shaft that turns a whole number of times in each character moves the same instant the same way each time: no line
// comes of it. One that seems to is a change of the machine in the midst of the window.
bool mayBeShaft(const CyclicLine& line) {
    const double turns = line.perCharacter;
    return !isSpeedSwing(line) && (turns < 0.9 || std::abs(turns - std::round(turns)) > 0.02);
}

bool mayBeTheSpeeds(const Symptoms& s, const CyclicLine& line) {
    const bool stays = staysOver(s) >= kFewestSteadyBlocks && s.wanderPercent() == 0.0;
    return !stays && maySwingSlowly(line);
}

std::string turnsInWords(double perCharacter) {
    if (perCharacter > 1.0)
        return decimals(perCharacter, 2) + " times in each character: a shaft before the transmitting shaft";
    return "once in " + decimals(1.0 / perCharacter, 2) +
           " characters: a shaft or wheel that turns once in so many turns of the transmitting shaft";
}

}  // namespace

std::optional<RankedFinding> wrongSpeed(const Symptoms& s) {
    if (s.reading.text.characters < kFewestCharacters) return std::nullopt;
    const auto error = speedError(s);
    if (!error) return noStandardSpeed(s);
    const double doubt = std::hypot(error->uncertainty, 1.96 * s.wanderPercent());
    if (std::abs(error->value) < kMildSpeedPercent) return std::nullopt;
    const bool fast = error->value > 0.0;
    const bool mild = std::abs(error->value) <= s.limits.speedPercent;
    const bool presumed = !s.options.baud && !s.reading.drive;
    Finding f;
    f.id = "wrong-speed";
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    f.seenAt.speed = true;
    f.confidence = std::clamp(0.98 * chanceBeyond(error->value, doubt, 0.8 * kMildSpeedPercent), 0.05, 0.98) *
                   (s.strays() || (mild && swings(s)) ? 0.6 : 1.0) *
                   (staysOver(s) < kFewestSteadyBlocks ? kSpeedSoFar : 1.0);
    const WhatIsSlow slow = shaftOrElements(s, error->value);
    if (slow.elementsAlone) f.confidence *= kShaftIsRight;
    f.title = std::string(fast ? "Runs fast by " : "Runs slow by ") + percent(error->value, 2) +
              (mild       ? ", within limits"
               : presumed ? ", if it is meant for " + shortest(*s.reading.speed.nominalBaud) + " baud"
                          : "");
    f.evidence = "The elements are " + decimals(*s.reading.speed.nominalUnitMs / (1.0 + 0.01 * error->value), 3) +
                 " ms long where " + decimals(*s.reading.speed.nominalUnitMs, 3) + " ms belong to " +
                 decimals(*s.reading.speed.nominalBaud, 2) +
                 " baud; the instants are off in proportion to their number, " +
                 percent(error->value * (s.levels + 1)) + " at the beginning of stop." + whatPullsIt(s, *error) +
                 slow.words + (s.reading.drive ? byTheCard(s) : mainsHint(error->value)) +
                 (presumed ? " Nobody has said what speed is meant: the nearest usual one was taken." : "");
    f.lookAt =
        slow.elementsAlone
            ? "Cam sleeve and cams; or several levels out of place at once, which together pass for a speed."
            : std::string(
                  "Governor, where the motor has one: its setting and contacts; then motor, mains frequency, gears") +
                  (fast ? "." : "; a slipping belt or clutch.");
    f.confirm =
        std::string(presumed ? "First read the speed on the machine's plate and set it in the window. " : "") +
        "Set the speed with a strobe or tuning fork, or by this reading, and watch both the unit and the operations "
        "per minute." +
        kUnplug;
    return RankedFinding{f, std::abs(error->value) / s.limits.speedPercent};
}

std::optional<RankedFinding> unsteadySpeed(const Symptoms& s) {
    if (!s.steadiness || !s.steadiness->wanders()) return std::nullopt;
    const Steadiness& w = *s.steadiness;
    Finding f;
    f.id = "unsteady-speed";
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    f.seenAt.speed = true;
    f.confidence = std::clamp(0.98 - 1.0 / w.wanderRatio, 0.5, 0.97) * (s.strays() ? 0.4 : 1.0);
    const CyclicLine* swing = slowSwing(s);
    f.title = "The speed wanders by about " + percent(std::numbers::sqrt2 * w.wander, 2) + " either way";
    f.evidence = "Taken over eight characters at a time, the unit varies by " + percent(w.wander, 2) + " rms, " +
                 decimals(std::sqrt(w.wanderRatio), 0) + " times what chance makes of it";
    if (swing) f.evidence += ", with a swing once in " + decimals(1.0 / swing->hz, 1) + " seconds";
    f.evidence += ". A speed that was set in that time shows so too.";
    f.lookAt = swing && speedSwingPercent(*swing, s.unitMs()) > w.wander
                   ? "A swing so regular speaks for a governor that hunts (contacts, weights, spring), or for a part "
                     "that turns once in that time, such as the joint of a belt; then motor brushes, mains supply, dry "
                     "bearings."
                   : "Governor (hunting, dirty governor contacts, sticking weights), motor brushes, mains supply, a "
                     "slipping belt or clutch, dry bearings.";
    f.confirm =
        "Watch the trail of the speed for some minutes with the machine warm; hold the load even (no tape) and see "
        "whether "
        "it still wanders." +
        kUnplug;
    return RankedFinding{f, w.wander / kWanderLimit};
}

std::optional<RankedFinding> cyclicDrive(const Symptoms& s) {
    if (!s.reading.distortion.cyclic) return std::nullopt;
    const CyclicLine* worst = nullptr;
    for (const CyclicLine& line : *s.reading.distortion.cyclic)
        if (mayBeShaft(line) && !mayBeTheSpeeds(s, line) && (!worst || line.amplitudePercent > worst->amplitudePercent))
            worst = &line;
    if (!worst || worst->amplitudePercent < kMildLinePercent) return std::nullopt;
    Finding f;
    f.id = "cyclic-drive";
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    const double rest = s.reading.distortion.fortuitousRmsPercent.value_or(worst->amplitudePercent);
    f.confidence = std::clamp(0.98 - 0.08 * rest / worst->amplitudePercent, 0.5, 0.97);
    f.title =
        "The displacement swings by " + percent(worst->amplitudePercent) + " at " + decimals(worst->hz, 2) + " Hz";
    f.evidence = "A periodic line of " + percent(worst->amplitudePercent) + " of a unit either way stands out at " +
                 decimals(worst->hz, 3) + " Hz";
    if (worst->perCharacter > 0.0) f.evidence += ", " + turnsInWords(worst->perCharacter);
    f.evidence += "; " + percent(rest) + " rms is left without it." + asSpeed(s, *worst) + shaftByTheCard(s, worst->hz);
    const bool ofSpeed = worst->shiftsStart || worst->perCharacter >= 1.0;
    f.lookAt = "The gear or shaft that turns at " + decimals(60.0 * worst->hz, 1) + " turns a minute" +
               (ofSpeed ? ": eccentric or bent gear, a damaged tooth, a bent shaft, a bearing with play. A joint in a "
                          "belt that comes round so often and a governor that hunts do the same."
                        : ", above all where it can shift contacts and cams against each other: a bent shaft, a "
                          "bearing with play, an eccentric or bent gear, a damaged tooth. The starts keep their time: "
                          "so it works on what makes the levels (their cams, levers, contacts) and not on what makes "
                          "the start.");
    f.confirm =
        "Count teeth from the transmitting shaft on to find which turns so. With the power off turn the machine by "
        "hand through one revolution of that shaft and feel for a stiff place or play." +
        kUnplug;
    return RankedFinding{f, 0.3 + worst->amplitudePercent / kLineLimitPercent};
}

}  // namespace trueunit
