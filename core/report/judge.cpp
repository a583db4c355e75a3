// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/judge.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/report/text_faults.h"

namespace trueunit {

namespace {

// The largest of some hundred to a thousand normally scattered instants comes out differently each time: 95 % within so
// much of their scatter (standard deviation pi / sqrt(12 ln n), Fisher and Tippett 1928, from memory).
constexpr double kPeakScatter = 0.7;
constexpr double kMostMore = 500.0;  // characters; more is minutes of tape, and soon another number

// Upwards: it is a guess.
long oneFigure(double characters) {
    const double step = std::pow(10.0, std::floor(std::log10(std::max(characters, 1.0))));
    return std::max(static_cast<long>(std::ceil(characters / step) * step), 1L);
}

int offeredWindow(long characters) {
    for (const int offered : kOfferedWindows)
        if (offered >= characters) return offered;
    return 0;
}

std::string windowName(int characters) { return characters == 0 ? "all" : std::to_string(characters); }

// The scatter's share of the uncertainty falls with the root of the count, the instrument's own does not fall.
std::optional<long> moreCharacters(double distance, double uncertainty, double part, long count) {
    const double room = distance * distance - part * part;
    if (room <= 0.0 || count <= 0) return std::nullopt;
    const double scatter = std::max(uncertainty * uncertainty - part * part, 0.0);
    const double more = std::ceil(static_cast<double>(count) * (scatter / room - 1.0));
    if (more > kMostMore) return std::nullopt;
    return oneFigure(more);
}

JudgedReading held(const char* key, Measured m, double limit, double part, long count, bool full = false) {
    JudgedReading j;
    j.key = key;
    j.limit = limit;
    const double size = std::abs(m.value);
    if (size + m.uncertainty <= limit)
        j.judgement = Judgement::in;
    else if (size - m.uncertainty > limit)
        j.judgement = Judgement::out;
    else
        j.more = moreCharacters(std::abs(size - limit), m.uncertainty, part, count);
    if (full && j.more) j.window = offeredWindow(count + *j.more);
    return j;
}

// A largest value that is beyond its limit proves that the limit was left. One within it proves little where the
// largest of as many other characters might not be. It does not settle with more of them, so that none are asked for.
JudgedReading heldPeak(const char* key, double value, double limit, double part, double scatter) {
    const double others = value > limit ? 0.0 : kPeakScatter * scatter;
    return held(key, {value, std::hypot(part, others)}, limit, part, 0);
}

// The doubt that a fault brings into the speed does not lessen with the characters; a speed that wanders is taken for
// bias by the few.
void awaitMending(std::vector<JudgedReading>& judged, bool wanders, bool few) {
    for (JudgedReading& j : judged) {
        const bool offset = j.key == "bias_percent" || j.key == "end_percent";
        if (offset && wanders && few) j.judgement = Judgement::open;
        if (!(j.key == "error_percent" || (wanders && offset)) || j.judgement != Judgement::open || j.missing) continue;
        j.more.reset();
        j.pulled = true;
    }
}

std::string nameOf(const std::string& key) {
    if (key == "error_percent") return "the speed error";
    if (key == "gross_percent") return "the gross distortion";
    if (key == "synchronous_percent") return "the synchronous distortion";
    if (key == "end_percent") return "the end distortion";
    return "the bias";
}

}  // namespace

Verdict judgeReading(const Reading& r, const Limits& limits, const InstrumentPart& part,
                     const JudgedCharacters& characters) {
    Verdict v;
    v.limits = limits.name;
    if (!r.valid()) return v;
    const DistortionReading& d = r.distortion;
    const double scatter = d.fortuitousRmsPercent.value_or(0.0);
    if (r.speed.errorPercent && limits.statesSpeed)
        v.judged.push_back(held("error_percent", *r.speed.errorPercent, limits.speedPercent, part.speedPercent,
                                characters.unit, characters.full));
    else if (limits.statesSpeed && r.speed.baud)
        v.judged.push_back({"error_percent", Judgement::open, limits.speedPercent, {}, true});
    if (d.grossPercent && limits.statesGross)
        v.judged.push_back(heldPeak("gross_percent", *d.grossPercent, limits.grossPercent, part.peakPercent, scatter));
    if (d.synchronousPercent && limits.statesSynchronous)
        v.judged.push_back(heldPeak("synchronous_percent", *d.synchronousPercent, limits.synchronousPercent,
                                    part.peakPercent, scatter));
    if (d.biasPercent && limits.statesBias)
        v.judged.push_back(held("bias_percent", *d.biasPercent, limits.biasPercent, part.biasPercent, characters.window,
                                characters.full));
    if (d.endPercent && limits.statesEnd)
        v.judged.push_back(held("end_percent", *d.endPercent, limits.endPercent, part.biasPercent, characters.window,
                                characters.full));
    if (r.setAside || r.speed.wanderPercent)
        awaitMending(v.judged, r.speed.wanderPercent.has_value(), characters.window < characters.unit);
    bool open = v.judged.empty();
    for (const JudgedReading& j : v.judged) {
        if (j.judgement == Judgement::out) v.exceeded.push_back(j.key);
        open |= j.judgement == Judgement::open;
    }
    for (std::string& key : textFaults(r)) v.exceeded.push_back(std::move(key));
    if (!v.exceeded.empty())
        v.within = false;
    else if (!open)
        v.within = true;
    return v;
}

bool exceeds(const Verdict& verdict, const std::string& key) {
    return std::find(verdict.exceeded.begin(), verdict.exceeded.end(), key) != verdict.exceeded.end();
}

const JudgedReading* judged(const Verdict& verdict, const std::string& key) {
    const auto found = std::find_if(verdict.judged.begin(), verdict.judged.end(),
                                    [&](const JudgedReading& j) { return j.key == key; });
    return found == verdict.judged.end() ? nullptr : &*found;
}

PlainVerdict plainVerdict(const Reading& r) {
    const auto value = [&r](const std::string& key) {
        const auto of = [](const std::optional<Measured>& m) { return m ? std::abs(m->value) : 0.0; };
        if (key == "error_percent") return of(r.speed.errorPercent);
        if (key == "gross_percent") return r.distortion.grossPercent.value_or(0.0);
        if (key == "synchronous_percent") return r.distortion.synchronousPercent.value_or(0.0);
        return of(key == "end_percent" ? r.distortion.endPercent : r.distortion.biasPercent);
    };
    PlainVerdict plain{r.verdict.within, r.verdict.exceeded};
    for (const JudgedReading& j : r.verdict.judged)
        if (j.judgement == Judgement::open && value(j.key) > j.limit) plain.exceeded.push_back(j.key);
    if (!plain.within && !r.verdict.judged.empty() && !lacksNominal(r.verdict)) plain.within = plain.exceeded.empty();
    if (!plain.exceeded.empty()) plain.within = false;
    return plain;
}

bool lacksNominal(const Verdict& verdict) {
    return std::any_of(verdict.judged.begin(), verdict.judged.end(), [](const auto& j) { return j.missing; });
}

std::string judgementWords(const JudgedReading& j) {
    if (j.judgement == Judgement::in) return "in";
    if (j.judgement == Judgement::out) return "out";
    if (j.missing) return "cannot tell: no nominal speed";
    if (j.pulled) return "cannot tell: a fault pulls at it, see findings";
    if (!j.more) return "cannot tell: too near the limit";
    if (j.window) return "cannot tell over so few: take the window " + windowName(*j.window);
    return "cannot tell yet: " + std::to_string(*j.more) + (*j.more == 1 ? " more character" : " more characters");
}

std::string originWords(LimitsOrigin kind) {
    if (kind == LimitsOrigin::published) return "published";
    return kind == LimitsOrigin::practice ? "common practice" : "own";
}

std::string limitsText(const Limits& limits) {
    std::string all;
    const auto add = [&all](const char* name, bool stated, double limit) {
        if (!stated) return;
        char text[48];
        std::snprintf(text, sizeof text, "%s%s %g", all.empty() ? "" : ", ", name, limit);
        all += text;
    };
    add("bias", limits.statesBias, limits.biasPercent);
    add("end", limits.statesEnd, limits.endPercent);
    add("gross", limits.statesGross, limits.grossPercent);
    add("synchronous", limits.statesSynchronous, limits.synchronousPercent);
    add("speed", limits.statesSpeed, limits.speedPercent);
    return limits.title + ": " + all + " %. Origin: " + originWords(limits.kind) + ". " + limits.origin;
}

std::vector<std::string> openNotes(const Verdict& verdict) {
    std::vector<std::string> notes;
    for (const JudgedReading& j : verdict.judged) {
        if (j.judgement != Judgement::open || j.missing) continue;
        std::string note = "Whether " + nameOf(j.key) + " is in limits cannot be told";
        note += j.pulled   ? " before the fault that pulls at it is mended."
                : j.window ? " over so few characters: take the window " + windowName(*j.window) + "."
                : j.more   ? " yet: about " + std::to_string(*j.more) + " more characters are wanted."
                           : ": it is nearer to the limit than its uncertainty.";
        notes.push_back(std::move(note));
    }
    return notes;
}

}  // namespace trueunit
