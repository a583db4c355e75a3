// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_text.h"

#include <QDateTime>
#include <QTimeZone>
#include <algorithm>
#include <cmath>

#include "core/report/judge.h"
#include "core/report/text_faults.h"
#include "widgets/cursor_readout.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

const QString kNone = QStringLiteral("\u2014");
const QString kPlusMinus = QStringLiteral("\u00b1");

bool exceeded(const Snapshot& s, const char* key) {
    const auto& keys = s.reading.verdict.exceeded;
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

// A row without a limit.
ReportRow row(const QString& name, const QString& unit, const std::optional<Measured>& m, bool sign) {
    ReportRow r{name, kNone, unit, {}, {}, {}, false};
    if (!m) return r;
    const int places = placesFor(*m);
    r.value = sign ? signedNumber(m->value, places) : number(m->value, places);
    if (m->uncertainty > 0.0) r.uncertainty = kPlusMinus + number(m->uncertainty, places);
    return r;
}

ReportRow row(const QString& name, const QString& unit, const std::optional<double>& v, int places) {
    return {name, v ? number(*v, places) : kNone, unit, {}, {}, {}, false};
}

ReportRow judge(ReportRow r, const Snapshot& s, const char* key, bool bothSides) {
    const JudgedReading* j = judged(s.reading.verdict, key);
    if (!j) return r;
    r.limit = (bothSides ? kPlusMinus : QString()) + QString::number(j->limit);
    r.out = j->judgement == Judgement::out;
    r.judged = r.out ? Words::tr("OUT") : j->judgement == Judgement::in ? Words::tr("in") : QStringLiteral("?");
    if (j->judgement == Judgement::open) r.open = QString::fromStdString(judgementWords(*j));
    return r;
}

// Readings that later stages fill: shown when they are there, left out when nobody looked.
void appendFurther(std::vector<ReportRow>& rows, const Reading& r) {
    const DistortionReading& d = r.distortion;
    if (d.characteristicPercent)
        rows.push_back(row(Words::tr("Characteristic"), QStringLiteral("%"), d.characteristicPercent, 2));
    if (d.fortuitousRmsPercent)
        rows.push_back(row(Words::tr("Scatter (fortuitous), rms"), QStringLiteral("%"), d.fortuitousRmsPercent, 2));
    if (d.fortuitousPeakPercent)
        rows.push_back(row(Words::tr("Scatter, peak"), QStringLiteral("%"), d.fortuitousPeakPercent, 2));
    if (d.cyclic)
        for (const CyclicLine& line : *d.cyclic)
            rows.push_back(row(Words::tr("Cyclic, at %1 Hz").arg(line.hz, 0, 'f', 2), QStringLiteral("%"),
                               std::optional<double>(line.amplitudePercent), 2));
    if (r.margin)
        rows.push_back({Words::tr("Receiver may sample"),
                        number(r.margin->lowPercent, 0) + QStringLiteral(" \u2026 ") + number(r.margin->highPercent, 0),
                        QStringLiteral("%"),
                        {},
                        {},
                        {},
                        false});
    if (r.contact)
        rows.push_back(row(Words::tr("Contact bounces"), {}, std::optional<double>(double(r.contact->bounces)), 0));
}

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

int placesFor(const Measured& m) {
    if (!(m.uncertainty > 0.0)) return 2;
    // Two figures of the uncertainty while the first is 1 or 2, one above: common practice in stating uncertainty.
    return std::clamp(static_cast<int>(std::ceil(-std::log10(m.uncertainty / 2.5))), 1, 3);
}

std::vector<ReportRow> reportRows(const Snapshot& s) {
    const Reading& r = s.reading;
    const QString percent = QStringLiteral("%");
    std::vector<ReportRow> rows;
    rows.push_back(judge(row(Words::tr("Bias"), percent, r.distortion.biasPercent, true), s, "bias_percent", true));
    rows.push_back(
        judge(row(Words::tr("End distortion"), percent, r.distortion.endPercent, true), s, "end_percent", true));
    rows.push_back(
        judge(row(Words::tr("Start-stop, gross"), percent, r.distortion.grossPercent, 1), s, "gross_percent", false));
    rows.push_back(judge(row(Words::tr("Start-stop, synchronous"), percent, r.distortion.synchronousPercent, 1), s,
                         "synchronous_percent", false));
    rows.push_back(judge(row(Words::tr("Speed error"), percent, r.speed.errorPercent, true), s, "error_percent", true));
    rows.push_back(row(Words::tr("Speed"), Words::tr("baud"), r.speed.baud, false));
    rows.push_back(row(Words::tr("Unit"), Words::tr("ms"), r.speed.unitMs, 3));
    rows.push_back(row(Words::tr("Character"), Words::tr("ms"), r.speed.characterMs, false));
    rows.push_back(row(Words::tr("Shaft"), Words::tr("/min"), r.speed.operationsPerMinute, false));
    rows.push_back(row(Words::tr("Stop"), Words::tr("units"), r.speed.stopUnits, false));
    appendFurther(rows, r);
    return rows;
}

namespace {

// Nothing is out, but a limit lies within the uncertainty of a reading.
VerdictText openText(const Snapshot& s) {
    QStringList parts;
    for (const ReportRow& r : reportRows(s))
        if (!r.open.isEmpty())
            parts += Words::tr("%1 %2\u00a0% (limit\u00a0%3\u00a0%): %4").arg(r.name, r.value, r.limit, r.open);
    return {Words::tr("Cannot tell yet"),
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

}  // namespace

VerdictText verdictText(const Snapshot& s) {
    const Verdict& v = s.reading.verdict;
    const QString limits = told(s.limits.title);
    if (!v.within && !v.judged.empty()) return openText(s);
    if (!v.within)
        return {Words::tr("Not judged"), Words::tr("No reading could be held against the limits (%1).").arg(limits),
                std::nullopt};
    if (*v.within) return inLimitsText(s);
    QStringList parts;
    for (const std::string& wrong : textFaultWords(s.reading)) parts += told(wrong);
    for (const ReportRow& r : reportRows(s))
        if (r.out) parts += Words::tr("%1 %2\u00a0% (limit\u00a0%3\u00a0%)").arg(r.name.toLower(), r.value, r.limit);
    const auto& bias = s.reading.distortion.biasPercent;
    QString words;
    if (bias && exceeded(s, "bias_percent"))
        words = biasWords(bias->value, s.limits.biasPercent) + QStringLiteral(": ");
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    QString detail = words + parts.join(QStringLiteral("; "));
    if (detail.isEmpty()) detail = Words::tr("See the readings");
    detail[0] = detail[0].toUpper();
    return {Words::tr("Out of limits"), Words::tr("%1. Limits: %2.").arg(detail, limits), false};
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
    rows.emplace_back(Words::tr("Input"), QString::fromStdString(frame.inputDescription));
    rows.emplace_back(
        Words::tr("Signal"),
        inputKindText(in.kind) +
            (in.inverted ? (*in.inverted ? Words::tr(", reversed") : Words::tr(", upright")) : QString()));
    rows.emplace_back(Words::tr("Coupling"), couplingText(in));
    if (in.snrDb) rows.emplace_back(Words::tr("Signal to noise"), number(*in.snrDb, 0) + Words::tr(" dB"));
    rows.emplace_back(Words::tr("Clipped"), number(in.clippedPercent, 2) + Words::tr(" % of samples"));
    rows.emplace_back(Words::tr("Losses"), Words::tr("%1 gaps, %2 samples").arg(in.gaps).arg(s.lostSamples));
    rows.emplace_back(Words::tr("Code"), QString::fromStdString(s.options.code));
    rows.emplace_back(Words::tr("Speed set"),
                      s.options.baud ? Words::tr("%1 baud").arg(*s.options.baud) : Words::tr("found from the signal"));
    rows.emplace_back(Words::tr("Stop set"), s.options.stopUnits ? Words::tr("%1 units").arg(*s.options.stopUnits)
                                                                 : Words::tr("found from the signal"));
    rows.emplace_back(Words::tr("Window"), windowText(s));
    rows.emplace_back(Words::tr("Slice level"), Words::tr("%1 % of the swing").arg(in.slicePercent));
    rows.emplace_back(Words::tr("Limits"), told(limitsText(s.limits)));
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

QString fromText(const FrozenFrame& frame) {
    const QString characters = windowText(*frame.snapshot);
    if (frame.inputDescription.empty()) return characters;
    return QString::fromStdString(frame.inputDescription) + QStringLiteral(" \u00b7 ") + characters;
}

}  // namespace trueunit
