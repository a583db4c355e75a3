// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_text.h"

#include <QDateTime>
#include <QLocale>
#include <QTimeZone>
#include <algorithm>
#include <cmath>

#include "core/report/judge.h"
#include "core/report/text_faults.h"
#include "core/simulate/scenario_source.h"
#include "widgets/cause_words.h"
#include "widgets/cursor_readout.h"
#include "widgets/level_row.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

QString inputKindText(InputKind kind) {
    switch (kind) {
        case InputKind::automatic:
            return Words::tr("not settled");
        case InputKind::loop:
            return Words::tr("loop current");
        case InputKind::tone:
            return Words::tr("interrupted tone");
        case InputKind::twoTone:
            return Words::tr("two tones");
    }
    return {};
}

QString windowText(const Snapshot& s) {
    const QString used = Words::tr("%1 characters used").arg(s.windowUsed);
    if (s.options.windowCharacters != 0 && s.windowUsed > static_cast<std::size_t>(s.options.windowCharacters))
        return used + Words::tr(", the window of %1 being too short for a proof").arg(s.options.windowCharacters);
    return (s.options.windowCharacters == 0 ? Words::tr("all characters")
                                            : Words::tr("last %1 characters").arg(s.options.windowCharacters)) +
           QStringLiteral(", ") + used;
}

QString couplingText(const InputReading& in) {
    if (in.couplingHz.empty()) return Words::tr("none found");
    QStringList corners;
    for (const double hz : in.couplingHz) corners += number(hz, 1) + Words::tr(" Hz");
    return Words::tr("high-pass at ") + corners.join(Words::tr(" and "));
}

// The name of a reading within a sentence; German nouns keep their capitals.
QString inSentence(const QString& name) {
    const QLocale::Language language = QLocale().language();
    return language == QLocale::English || language == QLocale::C ? name.toLower() : name;
}

// A number that a person set, with as many figures.
QString asSet(double value) { return QLocale().toString(value, 'g', 6); }

QString speedSet(const Snapshot& s) {
    if (s.options.baud) return Words::tr("%1 baud").arg(asSet(*s.options.baud));
    const auto& nominal = s.reading.speed.nominalBaud;
    return nominal ? Words::tr("none: %1 baud taken, the nearest usual speed").arg(asSet(*nominal))
                   : Words::tr("found from the signal");
}

QString limitsWords(const Limits& limits) {
    QStringList all;
    const auto add = [&all](const QString& name, bool stated, double limit) {
        if (stated) all += name + QLatin1Char(' ') + asSet(limit);
    };
    add(told("bias"), limits.statesBias, limits.biasPercent);
    add(told("end distortion"), limits.statesEnd, limits.endPercent);
    add(Words::tr("gross"), limits.statesGross, limits.grossPercent);
    add(Words::tr("synchronous"), limits.statesSynchronous, limits.synchronousPercent);
    add(told("speed error"), limits.statesSpeed, limits.speedPercent);
    QString source = told(limits.origin);
    if (source.endsWith(u'.')) source.chop(1);  // stands within a list
    return Words::tr("%1: %2 % (%3; %4)")
        .arg(told(limits.title), all.join(QStringLiteral(", ")), source, told(originWords(limits.kind)));
}

QString momentText(std::int64_t secondsUtc) {
    const QDateTime local = QDateTime::fromSecsSinceEpoch(secondsUtc).toLocalTime();
    const int minutes = local.offsetFromUtc() / 60;
    const QString offset = QStringLiteral("%1%2:%3")
                               .arg(minutes < 0 ? QStringLiteral("\u2212") : QStringLiteral("+"))
                               .arg(std::abs(minutes) / 60, 2, 10, QLatin1Char('0'))
                               .arg(std::abs(minutes) % 60, 2, 10, QLatin1Char('0'));
    return local.toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")) + Words::tr(" (UTC") + offset + QLatin1Char(')');
}

}  // namespace

namespace {

// Nothing is out, but a limit lies within the uncertainty of a reading.
VerdictText openText(const Snapshot& s) {
    QStringList parts;
    for (const ReportRow& r : reportRows(s))
        if (!r.open.isEmpty())
            parts += r.value == kNoValue
                         ? r.name + QStringLiteral(": ") + r.open
                         : Words::tr("%1 %2\u00a0% (limit\u00a0%3\u00a0%): %4").arg(r.name, r.value, r.limit, r.open);
    return {lacksNominal(s.reading.verdict) ? Words::tr("Cannot tell: set the nominal speed")
                                            : Words::tr("Cannot tell yet"),
            Words::tr("%1. Limits: %2.").arg(parts.join(QStringLiteral("; ")), told(s.limits.title)), std::nullopt};
}

// Good timing alone is not the whole of a good sender: what was not counted is said.
VerdictText inLimitsText(const Snapshot& s) {
    const QString limits = told(s.limits.title);
    if (s.reading.levels && s.options.expect.empty())  // learned: each stretch against the others
        return {Words::tr("In limits"),
                Words::tr("Every reading that was judged lies within its limit (%1), and no character differs from the "
                          "text that the tape repeats.")
                    .arg(limits),
                true};
    if (s.reading.levels)
        return {Words::tr("In limits"),
                Words::tr("Every reading that was judged lies within its limit (%1), and no character differs from the "
                          "text given for the tape.")
                    .arg(limits),
                true};
    return {Words::tr("Timing in limits"),
            Words::tr("Every reading that was judged lies within its limit (%1). The text of the tape is not "
                      "known, so lost marks were not counted.")
                .arg(limits),
            true};
}

// Whoever reads the headline alone must not take limits that were kept for a machine without a fault; and what is out
// is named as the list of findings names it.
const Finding* headFinding(const Snapshot& s) {
    if (!s.reading.findings) return nullptr;
    const std::vector<Finding>& all = *s.reading.findings;
    const bool out = s.reading.verdict.within == false || lacksNominal(s.reading.verdict);
    const auto fits = [out](const Finding& f) {
        return isSureFault(f) || (out && isFault(f) && f.confidence > kLikely);
    };
    const auto found = std::find_if(all.begin(), all.end(), fits);
    return found == all.end() ? nullptr : &*found;
}

// The first and whatever else is as good as certain.
std::vector<const Finding*> namedFaults(const Snapshot& s, const Finding& head) {
    std::vector<const Finding*> named{&head};
    for (const Finding& f : *s.reading.findings)
        if (&f != &head && isSureFault(f) && (!f.minor || f.id == head.id)) named.push_back(&f);
    return named;
}

QString faultText(const std::vector<const Finding*>& named) {
    QStringList titles;
    double least = 1.0;
    for (const Finding* f : named) {
        titles << told(f->title);
        least = std::min(least, f->confidence);
    }
    return Words::tr("Found, %1 % sure: %2.").arg(qRound(100.0 * least)).arg(titles.join(u"; "));
}

VerdictText judgedText(const Snapshot& s) {
    const Verdict& v = s.reading.verdict;
    const QString limits = told(s.limits.title);
    if (!v.within && !v.judged.empty()) return openText(s);
    if (!v.within)
        return {Words::tr("Not judged"), Words::tr("No reading could be held against the limits (%1).").arg(limits),
                std::nullopt};
    if (*v.within) return inLimitsText(s);
    QStringList parts;
    for (const std::string& wrong : textFaultWords(s.reading)) parts += told(wrong);
    QString lead;  // which way, unless a finding says so
    for (const ReportRow& r : reportRows(s)) {
        if (!r.out || r.limit.isEmpty()) continue;  // lost marks are told in numbers above
        parts += Words::tr("%1 %2\u00a0% (limit\u00a0%3\u00a0%)").arg(inSentence(r.name), r.value, r.limit);
        if (r.name != Words::tr("Bias")) continue;
        if (const QString by = pulledBy(s); !by.isEmpty()) parts.back() += QStringLiteral(", ") + by;
        if (!headFinding(s))
            lead = biasWords(s.reading.distortion.biasPercent->value, s.limits.biasPercent) + QStringLiteral(": ");
    }
    QString detail = lead + parts.join(QStringLiteral("; "));
    if (detail.isEmpty()) detail = Words::tr("See the readings");
    detail[0] = detail[0].toUpper();
    return {Words::tr("Out of limits"), Words::tr("%1. Limits: %2.").arg(detail, limits), false};
}

}  // namespace

VerdictText verdictText(const Snapshot& s) {
    VerdictText text = judgedText(s);
    const Finding* head = headFinding(s);
    if (!head) return text;
    const auto named = namedFaults(s, *head);
    text.fault = faultText(named);
    text.beyond = !head->minor;
    if (named.size() == 1 && !head->lookAt.empty()) text.lookAt = Words::tr("Look at: ") + told(head->lookAt);
    if (s.reading.verdict.judged.empty()) return text;
    if (!text.within) text.headline = Words::tr("With a fault; whether in limits cannot be told yet");
    if (text.within.value_or(false)) text.headline = Words::tr("%1, yet with a fault").arg(text.headline);
    return text;
}

QString inOneLine(const VerdictText& v) {
    const QString fault = v.fault.isEmpty() ? QString() : v.fault + QLatin1Char(' ');
    return v.headline + QStringLiteral(". ") + fault + v.detail;
}

QString cursorText(const Snapshot& s, double units) {
    const auto place = cursorPlace(units, s);
    if (!place) return number(units, 3) + Words::tr(" units");
    QString text = Words::tr("%1 ms, %2 units").arg(number(place->ms, 2), number(units, 3));
    if (place->degrees) text += Words::tr(", %1\u00b0 of the cam").arg(number(*place->degrees, 1));
    return text;
}

std::vector<std::pair<QString, QString>> settingsRows(const FrozenFrame& frame) {
    const Snapshot& s = *frame.snapshot;
    const InputReading& in = s.reading.input;
    std::vector<std::pair<QString, QString>> rows;
    rows.emplace_back(Words::tr("Input"), told(frame.inputDescription));
    rows.emplace_back(
        Words::tr("Signal"),
        inputKindText(in.kind) +
            (in.inverted ? (*in.inverted ? Words::tr(", reversed") : Words::tr(", upright")) : QString()));
    rows.emplace_back(Words::tr("Coupling"), couplingText(in));
    if (in.snrDb) rows.emplace_back(Words::tr("Signal to noise"), number(*in.snrDb, 0) + Words::tr(" dB"));
    rows.emplace_back(Words::tr("Clipped"), number(in.clippedPercent, 2) + Words::tr(" % of samples"));
    rows.emplace_back(Words::tr("Losses"), Words::tr("%1 gaps, %2 samples").arg(in.gaps).arg(s.lostSamples));
    rows.emplace_back(Words::tr("Code"), QString::fromStdString(s.options.code).toUpper());
    rows.emplace_back(Words::tr("Speed set"), speedSet(s));
    rows.emplace_back(Words::tr("Stop set"), s.options.stopUnits
                                                 ? Words::tr("%1 units").arg(asSet(*s.options.stopUnits))
                                                 : Words::tr("found from the signal"));
    rows.emplace_back(Words::tr("Text of the tape"), !s.options.expect.empty()  ? Words::tr("given")
                                                     : !s.reading.levels        ? Words::tr("none given")
                                                     : textIsLearned(s.reading) ? Words::tr("learned from its rounds")
                                                                                : Words::tr("recognised"));
    rows.emplace_back(Words::tr("Window"), windowText(s));
    rows.emplace_back(Words::tr("Slice level"), Words::tr("%1 % of the swing").arg(asSet(in.slicePercent)));
    rows.emplace_back(Words::tr("Limits"), limitsWords(s.limits));
    rows.emplace_back(Words::tr("Self-check"),
                      frame.selfCheck.empty() ? Words::tr("none kept") : told(frame.selfCheck));
    rows.emplace_back(Words::tr("Clock trim"),
                      Words::tr("%1 parts in a million").arg(signedNumber(s.options.clockPpm, 1)));
    return rows;
}

QString printName(const std::string& print) {
    if (print == "'") return Words::tr("apostrophe");
    if (print == "\"") return Words::tr("quotation mark");
    if (print == ".") return Words::tr("full stop");
    if (print == ",") return Words::tr("comma");
    const QString words = told(print);
    if (words.trimmed().isEmpty()) return Words::tr("a character without print");
    return words.size() == 1 ? Words::tr("\u201c%1\u201d").arg(words) : words;
}

QString takenText(const FrozenFrame& frame) { return momentText(frame.takenSecondsUtc); }

QString whenText(const FrozenFrame& frame) {
    if (frame.fileSecondsUtc == 0) return Words::tr("Taken ") + takenText(frame);
    return Words::tr("From a recording, its file of %1; measured %2")
        .arg(momentText(frame.fileSecondsUtc), takenText(frame));
}

bool isSimulated(const FrozenFrame& frame) { return frame.inputDescription.find(kSimulatedInput) != std::string::npos; }

QString fromText(const FrozenFrame& frame) {
    const QString characters = windowText(*frame.snapshot);
    if (frame.inputDescription.empty()) return characters;
    return told(frame.inputDescription) + QStringLiteral(" \u00b7 ") + characters;
}

}  // namespace trueunit
