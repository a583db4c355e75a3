// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/reading_text.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>
#include <string_view>

#include "core/report/judge.h"
#include "core/report/shown_instants.h"
#include "core/report/speed_swing.h"
#include "core/report/text_faults.h"

namespace trueunit {

namespace {

constexpr std::size_t kNameColumns = 22;
constexpr std::size_t kValueColumns = 34;
constexpr std::size_t kLimitColumns = 14;
constexpr std::size_t kTextColumns = 76;
constexpr std::size_t kProseColumns = 88;

// Columns a terminal uses for UTF-8 text: continuation bytes take none.
std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string padded(std::string text, std::size_t width) {
    const std::size_t used = columns(text);
    text.append(used < width ? width - used : 1, ' ');
    return text;
}

std::string fixed(double value, int decimals) {
    char buffer[64];
    std::snprintf(buffer, sizeof buffer, "%.*f", decimals, value);
    return buffer;
}

std::string withSign(double value, int decimals) {
    char buffer[64];
    std::snprintf(buffer, sizeof buffer, "%+.*f", decimals, value);
    const std::string_view digits = std::string_view(buffer).substr(1);
    return digits.find_first_of("123456789") == std::string_view::npos ? std::string(digits) : buffer;  // zero has none
}

// As many decimals as the uncertainty carries, two significant digits of it.
int decimalsFor(double uncertainty) {
    if (!(uncertainty > 0.0)) return 3;
    return std::clamp(1 - static_cast<int>(std::floor(std::log10(uncertainty))), 0, 5);
}

std::string measured(const Measured& m, std::string_view unit, bool sign) {
    const int decimals = decimalsFor(m.uncertainty);
    const std::string value = sign ? withSign(m.value, decimals) : fixed(m.value, decimals);
    return value + " ± " + fixed(m.uncertainty, decimals) + (unit.empty() ? "" : " ") + std::string(unit);
}

class Table {
public:
    Table(const Reading& reading, std::string& out) : verdict_(reading.verdict), out_(out) {}

    void row(std::string name, const std::string& value) {
        out_ += padded(std::move(name), kNameColumns) + value + "\n";
    }

    // A judged reading: key as in the JSON.
    void judged(std::string name, const std::string& value, std::string_view key) {
        const JudgedReading* j = trueunit::judged(verdict_, std::string(key));
        if (!j) return row(std::move(name), value);
        const std::string bound = "limit ±" + fixed(j->limit, j->limit == std::round(j->limit) ? 0 : 2) + " %";
        const std::string words = j->judgement == Judgement::out  ? "OUT OF LIMITS"
                                  : j->judgement == Judgement::in ? "in limits"
                                                                  : judgementWords(*j);
        row(std::move(name), padded(value, kValueColumns) + padded(bound, kLimitColumns) + words);
    }
    // Prose, broken at words.
    void prose(std::string name, std::string_view text) {
        while (columns(text) > kProseColumns) {
            const std::size_t cut = text.rfind(' ', kProseColumns);
            if (cut == std::string_view::npos || cut == 0) break;
            row(std::move(name), std::string(text.substr(0, cut)));
            name.clear();
            text.remove_prefix(cut + 1);
        }
        row(std::move(name), std::string(text));
    }
    void unknown(std::string name) { row(std::move(name), "no reading"); }
    void gap() { out_ += "\n"; }

private:
    const Verdict& verdict_;
    std::string& out_;
};

std::string kindWords(const InputReading& in) {
    std::string words = "kind not settled";
    if (in.kind == InputKind::loop) words = "loop current";
    if (in.kind == InputKind::tone) words = "interrupted tone";
    if (in.kind == InputKind::twoTone) words = "two tones";
    if (in.inverted && *in.inverted) words += ", reversed";
    return words;
}

void addInput(const InputReading& in, Table& table) {
    table.row("input", kindWords(in));
    if (in.rateHz <= 0.0) return;
    table.row("sampled", fixed(in.rateHz, 0) + " Hz, " + fixed(in.seconds, 1) + " s, " +
                             (in.gaps == 1 ? "1 gap" : std::to_string(in.gaps) + " gaps") + ", clipped " +
                             fixed(in.clippedPercent, 2) + " %");
    if (in.snrDb) table.row("signal to noise", fixed(*in.snrDb, 1) + " dB");
    std::string corners;
    for (const double hz : in.couplingHz) corners += (corners.empty() ? "" : " and ") + fixed(hz, 1) + " Hz";
    if (!corners.empty()) table.row("coupling corner", corners);
    table.row("sliced at", fixed(in.slicePercent, 0) + " % of the swing");
}

// Line breaks and other controls of the decoded text are shown as spaces; only its end is, when it is long.
void addText(const TextReading& text, Table& table) {
    table.row("characters", std::to_string(text.characters) + " in " + text.code + ", " +
                                std::to_string(text.framingErrors) + " framing errors");
    std::string shown = text.decoded;
    std::replace_if(
        shown.begin(), shown.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20U; }, ' ');
    if (columns(shown) > kTextColumns) {
        std::size_t from = shown.size() - kTextColumns;
        while (from < shown.size() && (static_cast<unsigned char>(shown[from]) & 0xC0U) == 0x80U) ++from;
        shown = "…" + shown.substr(from);
    }
    table.row("text", shown);
}

void addSpeed(const SpeedReading& s, Table& table) {
    if (s.nominalBaud) table.row("nominal speed", fixed(*s.nominalBaud, 2) + " baud");
    if (s.baud)
        table.row("speed", measured(*s.baud, "baud", false));
    else
        table.unknown("speed");
    if (s.errorPercent) table.judged("speed error", measured(*s.errorPercent, "%", true), "error_percent");
    if (s.unitMs) table.row("unit", fixed(*s.unitMs, 4) + " ms");
    if (s.characterMs) table.row("character", measured(*s.characterMs, "ms", false));
    if (s.operationsPerMinute) table.row("operations a minute", measured(*s.operationsPerMinute, "", false));
    if (s.stopUnits) table.row("stop", measured(*s.stopUnits, "units", false));
}

std::string biasWords(const Measured& bias) {
    if (std::abs(bias.value) <= bias.uncertainty) return "";
    return bias.value > 0.0 ? ", marks too long" : ", marks too short";
}

void addDistortion(const DistortionReading& d, const SpeedReading& speed, Table& table) {
    if (d.biasPercent)
        table.judged("bias", measured(*d.biasPercent, "%", true) + biasWords(*d.biasPercent), "bias_percent");
    else
        table.unknown("bias");
    if (d.endPercent)
        table.judged("end", measured(*d.endPercent, "%", true), "end_percent");
    else
        table.unknown("end");
    if (d.synchronousPercent)
        table.judged("synchronous", fixed(*d.synchronousPercent, 2) + " %", "synchronous_percent");
    if (d.grossPercent) table.judged("gross", fixed(*d.grossPercent, 2) + " %", "gross_percent");
    if (d.characteristicPercent) table.row("characteristic", fixed(*d.characteristicPercent, 2) + " %");
    if (d.fortuitousRmsPercent) table.row("fortuitous, rms", fixed(*d.fortuitousRmsPercent, 2) + " %");
    if (d.fortuitousPeakPercent) table.row("fortuitous, peak", fixed(*d.fortuitousPeakPercent, 2) + " %");
    if (d.cyclic)
        for (const CyclicLine& line : *d.cyclic)
            table.row("cyclic", fixed(line.amplitudePercent, 2) + " % at " + fixed(line.hz, 3) + " Hz, " +
                                    fixed(line.perCharacter, 3) + " a character" +
                                    (isSpeedSwing(line) && speed.unitMs
                                         ? "; the speed by " + fixed(speedSwingPercent(line, *speed.unitMs), 2) + " %"
                                         : ""));
}

void addInstants(const Reading& reading, std::string& out) {
    const ShownInstants shown = shownInstants(reading);
    if (shown.instants.empty()) return;
    out += "\ninstant          count     mean       rms  smallest   largest   (percent of a unit, late positive";
    out += shown.withoutTheFault ? ", at the speed without the fault)\n" : ")\n";
    for (const InstantReading& i : shown.instants) {
        char line[128];
        std::snprintf(line, sizeof line, "%d to %-5s %12ld %8s  %8.2f  %8s  %8s\n", i.k,
                      i.to == Condition::mark ? "mark" : "space", i.count, withSign(i.meanPercent, 2).c_str(),
                      i.rmsPercent, withSign(i.minPercent, 2).c_str(), withSign(i.maxPercent, 2).c_str());
        out += line;
    }
}

void addDetails(const Reading& r, Table& table) {
    if (r.levels)
        for (const LevelReading& l : *r.levels)
            table.row("level " + std::to_string(l.level), std::to_string(l.marksMissed) + " of " +
                                                              std::to_string(l.marksExpected) + " marks lost, " +
                                                              std::to_string(l.spacesFilled) + " of " +
                                                              std::to_string(l.spacesExpected) + " spaces filled");
    if (r.text.feedSlips)
        table.row("feed slips",
                  std::to_string(*r.text.feedSlips) + " in " + std::to_string(r.text.compared) + " characters");
    if (r.margin)
        table.row("receiving margin",
                  fixed(r.margin->lowPercent, 1) + " to " + fixed(r.margin->highPercent, 1) + " % of a unit");
    if (r.contact)
        table.row("contact",
                  std::to_string(r.contact->bounces) + " bounces, longest " + fixed(r.contact->longestMs, 2) + " ms");
    if (r.drive) {
        table.row("drive", r.drive->explanation.speedWords);
        for (const std::string& cause : r.drive->explanation.causes) table.row("", cause);
        for (const GearWanted& g : r.drive->gears) table.row("gears", gearWords(g));
    }
}

void addFindings(const std::vector<Finding>& findings, Table& table) {
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Finding& f = findings[i];
        table.gap();
        table.row("finding " + std::to_string(i + 1), f.title + ", " + fixed(100.0 * f.confidence, 0) + " % sure");
        table.prose("  seen by", f.evidence);
        table.prose("  look at", f.lookAt);
        table.prose("  confirm", f.confirm);
    }
}

// A fault that no limit is stated for, or that the readings' limits do not cover.
bool beyondPractice(const Reading& r) {
    return r.findings && std::any_of(r.findings->begin(), r.findings->end(),
                                     [](const Finding& f) { return isSureFault(f) && !f.minor; });
}

std::string verdictWords(const Reading& r, const Limits& limits) {
    if (!r.verdict.within)
        return r.verdict.judged.empty()  ? "none: nothing could be judged"
               : lacksNominal(r.verdict) ? "CANNOT TELL: set the nominal speed (" + limits.title + ")"
                                         : "CANNOT TELL YET (" + limits.title + ")";
    if (*r.verdict.within)
        return "IN LIMITS (" + limits.title + ")" + (r.levels ? "" : "; timing only, the levels were not counted") +
               (beyondPractice(r) ? "; yet with a fault, see the findings" : "");
    std::string words = "OUT OF LIMITS (" + limits.title + ")";
    for (const std::string& wrong : textFaultWords(r)) words += "; " + wrong;
    return words;
}

}  // namespace

std::string readingText(const Reading& reading, const Limits& limits) {
    std::string out;
    Table table(reading, out);
    addInput(reading.input, table);
    addText(reading.text, table);
    table.gap();
    addSpeed(reading.speed, table);
    addDistortion(reading.distortion, reading.speed, table);
    addDetails(reading, table);
    addInstants(reading, out);
    if (reading.findings) addFindings(*reading.findings, table);
    table.gap();
    table.row("verdict", verdictWords(reading, limits));
    table.row("limits", limitsText(limits));
    for (const std::string& note : reading.notes) table.row("note", note);
    return out;
}

}  // namespace trueunit
