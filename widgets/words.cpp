// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/words.h"

#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/report/comparison.h"
#include "core/report/judge.h"
#include "core/report/shown_instants.h"
#include "widgets/figures.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

double rounded(double value, int decimals) {
    const double scale = std::pow(10.0, decimals);
    return std::round(value * scale) / scale;
}

// The decimal mark of the person's country, without marks between thousands.
QLocale numbersAsHere() {
    QLocale here;
    here.setNumberOptions(QLocale::OmitGroupSeparator);
    return here;
}

// Readings of which something holds, named shortly enough to be read across the bench. The largest displacements
// and wrong characters follow from the others, and are named only where it holds of nothing else.
QStringList namesBesideBias(const std::function<bool(const std::string& key)>& holds) {
    static constexpr std::pair<const char*, const char*> kNames[] = {
        {"error_percent", QT_TRANSLATE_NOOP("Words", "speed")}, {"end_percent", QT_TRANSLATE_NOOP("Words", "end")},
        {"framing_errors", QT_TRANSLATE_NOOP("Words", "stop")}, {"feed_slips", QT_TRANSLATE_NOOP("Words", "feed")},
        {"marks_missed", QT_TRANSLATE_NOOP("Words", "levels")}, {"spaces_filled", QT_TRANSLATE_NOOP("Words", "levels")},
    };
    QStringList names;
    for (const auto& [key, name] : kNames)
        if (holds(key)) names << Words::tr(name);
    names.removeDuplicates();
    if (names.isEmpty() && holds("wrong_characters")) names << Words::tr("text");
    if (names.isEmpty() && holds("synchronous_percent")) names << Words::tr("synchronous");
    if (names.isEmpty() && holds("gross_percent")) names << Words::tr("gross");
    return names;
}

}  // namespace

QString number(double value, int decimals) {
    const double r = rounded(value, decimals);
    const QString digits = numbersAsHere().toString(std::abs(r), 'f', decimals);
    return r < 0.0 ? QChar(kMinus) + digits : digits;
}

QString unbroken(QString text) {
    static const QRegularExpression inside(QStringLiteral("(?<=\\p{L}\\.)(?=\\d)"));
    static const QRegularExpression before(QStringLiteral("(?<=\\d) (?=%)"));
    return text.replace(inside, QString(QChar(0x2060))).replace(before, QString(QChar(0x00a0)));
}

QString signedNumber(double value, int decimals) {
    return rounded(value, decimals) > 0.0 ? u'+' + number(value, decimals) : number(value, decimals);
}

QString uncertaintyNumber(double percent) { return number(percent, percent < 0.095 ? 2 : 1); }

QString limitNumber(double limit) { return numbersAsHere().toString(limit, 'g', 4); }

QString biasWords(double biasPercent, double limitPercent) {
    if (std::abs(biasPercent) <= limitPercent) return Words::tr("in limits");
    return biasPercent > 0.0 ? Words::tr("marks too long") : Words::tr("marks too short");
}

QString othersOutWords(const Verdict& verdict) {
    const QStringList names = namesBesideBias([&verdict](const std::string& key) { return exceeds(verdict, key); });
    if (names.isEmpty()) return {};
    if (names == QStringList{Words::tr("feed")}) return Words::tr("feed slips");
    if (names.size() == 1) return Words::tr("%1 out").arg(names.front());
    if (names.size() == 2) return Words::tr("%1 and %2 out").arg(names.front(), names.back());
    return Words::tr("%1 and %2 more out").arg(names.front()).arg(names.size() - 1);
}

QString othersOpenWords(const Verdict& verdict) {
    const QStringList names = namesBesideBias([&verdict](const std::string& key) {
        const JudgedReading* j = judged(verdict, key);
        return j && j->judgement == Judgement::open;
    });
    return names.isEmpty() ? QString() : Words::tr("%1 ?").arg(names.front());
}

QString directionWords(double biasPercent, double limitPercent) {
    const bool tooLong = biasPercent > 0.0;
    if (std::abs(biasPercent) > limitPercent)
        return tooLong ? Words::tr(": make them shorter") : Words::tr(": make them longer");
    if (std::abs(biasPercent) < 0.25) return {};
    return tooLong ? Words::tr(", marks a little long") : Words::tr(", marks a little short");
}

QString toWords(Condition to) { return to == Condition::mark ? Words::tr("to mark") : Words::tr("to space"); }

QString instantsWords(const Reading& reading) {
    return shownInstants(reading).withoutTheFault
               ? Words::tr("Percent of a unit at the speed without the fault, late positive")
               : Words::tr("Percent of a unit at the sender's own speed, late positive");
}

QString elementName(int k, int levels) {
    if (k <= 0) return Words::tr("start");
    return k <= levels ? QString::number(k) : Words::tr("stop");
}

QString gridWords(const Snapshot& snapshot) {
    const auto& baud = snapshot.reading.speed.nominalBaud;
    return baud ? Words::tr("nominal %1 baud").arg(limitNumber(*baud)) : Words::tr("the sender's own speed");
}

QString withOutRule(const QString& tip) {
    const QString rule = Words::tr(
        "Out is an instant beyond the start-stop limit and, while bias or end is out of limits, one beyond the limit "
        "of bias (to mark) or end (to space). A mean is also out beyond that while the worst instant is out, and only "
        "when the whole of its uncertainty is beyond; a question mark stands where that cannot be told.");
    return QStringLiteral("<p>%1</p><p>%2</p>").arg(tip, rule);
}

QString shortPrint(const std::string& print) {
    static const std::pair<const char*, const char*> kShort[] = {
        {"space", "sp"},           {"letters", "ltr"}, {"figures", "fig"}, {"line feed", "lf"},
        {"carriage return", "cr"}, {"blank", "nul"},   {"bell", "bel"},    {"who are you", "who"},
    };
    for (const auto& [full, brief] : kShort)
        if (print == full) return QString::fromLatin1(brief);
    return QString::fromStdString(print).left(3);
}

QString whyNothing(const Snapshot& snapshot) {
    if (!snapshot.reading.notes.empty()) return told(snapshot.reading.notes.front());
    if (!snapshot.stateText.empty()) return told(snapshot.stateText);
    switch (snapshot.state) {
        case SignalState::waiting:
            return Words::tr("No input yet.");
        case SignalState::silent:
            return Words::tr("The input is silent.");
        case SignalState::searching:
            return Words::tr("A signal, but no characters in it yet.");
        case SignalState::idle:
            return Words::tr("The line rests.");
        case SignalState::reading:
            break;
    }
    return Words::tr("Too few characters so far.");
}

QString counted(long count, const QString& one, const QString& many) {
    if (count == 0) return Words::tr("no ") + many;
    return QString::number(count) + u' ' + (count == 1 ? one : many);
}

QString overWords(std::size_t characters) {
    return characters == 1 ? Words::tr("over one character") : Words::tr("over %1 characters").arg(characters);
}

QString fromHereWords(std::size_t over, bool ofAll) {
    return ofAll ? Words::tr("window all: each point over the last %1").arg(over)
                 : Words::tr("from here each point %1").arg(overWords(over));
}

QString dayFormat() {
    QString format = QLocale().dateFormat(QLocale::ShortFormat);
    if (!format.contains(QLatin1String("yyyy"))) format.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    return format;
}

QString dayWords(qint64 secondsUtc) {
    return QLocale().toString(QDateTime::fromSecsSinceEpoch(secondsUtc).date(), dayFormat());
}

QString momentWords(qint64 secondsUtc) {
    const QTime time = QDateTime::fromSecsSinceEpoch(secondsUtc).time();
    return dayWords(secondsUtc) + QLatin1Char(' ') + time.toString(QStringLiteral("HH:mm"));
}

namespace {

bool isOut(const Snapshot& s, const char* key) {
    const JudgedReading* judgement = judged(s.reading.verdict, key);
    return judgement && judgement->judgement == Judgement::out;
}

bool meansAreOut(const Snapshot& s) { return isOut(s, "bias_percent") || isOut(s, "end_percent"); }

double meanLimit(Condition to, const Limits& limits) {
    return to == Condition::mark ? limits.biasPercent : limits.endPercent;
}

// Of a mean that is off by so much at least.
bool liesOut(Condition to, double off, const Snapshot& s) {
    const bool peakIsOut = isOut(s, "gross_percent") || isOut(s, "synchronous_percent");
    return off > 0.0 && (instantIsOut(to, off, s) || (peakIsOut && off > meanLimit(to, s.limits)));
}

}  // namespace

bool instantIsOut(Condition to, double displacementPercent, const Snapshot& snapshot) {
    const double off = std::abs(displacementPercent);
    return off > snapshot.limits.grossPercent || (meansAreOut(snapshot) && off > meanLimit(to, snapshot.limits));
}

bool meanIsOut(const InstantReading& instant, const Snapshot& s) {
    const auto mean = meanAmong(instant, shownInstants(s.reading).instants);
    return mean && liesOut(instant.to, std::abs(mean->value) - mean->uncertainty, s);
}

bool meanIsOpen(const InstantReading& instant, const Snapshot& s) {
    return !meanIsOut(instant, s) && liesOut(instant.to, std::abs(instant.meanPercent), s);
}

int StableDecimals::update(double uncertainty) {
    // One digit below the leading digit of the uncertainty's range: 0.05 .. 0.5 asks for one decimal.
    const double u = std::max(uncertainty, 1e-3);
    const auto wanted = [](double x) { return std::clamp(static_cast<int>(std::ceil(std::log10(0.5 / x))), 0, 2); };
    const bool leftRange = decimals_ < 0 || (wanted(u * 1.33) != decimals_ && wanted(u / 1.33) != decimals_);
    if (leftRange) decimals_ = wanted(u);
    return decimals_;
}

}  // namespace trueunit
