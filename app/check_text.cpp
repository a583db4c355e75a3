// SPDX-License-Identifier: GPL-3.0-or-later
// A self-check in words: for the terminal, the dialog and the report.
#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>
#include <cmath>
#include <cstdio>

#include "app/check_record.h"

namespace trueunit {

namespace {

// The terminal speaks English, since no language is taken there; a file is written by checkJson() alone.
struct CheckWords {
    Q_DECLARE_TR_FUNCTIONS(CheckWords)
};

QString number(const char* format, double value) {
    return QString::asprintf(format, value).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString rowText(const CheckRow& row) {
    const QString condition = CheckWords::tr(row.condition.c_str()).leftJustified(58);
    const QString set = number("%+6.1f", row.set);
    if (row.read.uncertainty < 0.0) return CheckWords::tr("  %1 set %2   no reading\n").arg(condition, set);
    return CheckWords::tr("  %1 set %2   read %3 +- %4   off %5  %6\n")
        .arg(condition, set, number("%+9.3f", row.read.value), number("%.3f", row.read.uncertainty),
             number("%+7.3f", row.residual()), row.good() ? CheckWords::tr("good") : CheckWords::tr("TOO FAR"));
}

QString summaryText(const std::vector<CheckRow>& rows) {
    const CheckSummary s = summaryOf(rows);
    return CheckWords::tr("residual bias %1 +- %2 % (95 %), worst %3 %; %4 of %5 good\n")
        .arg(number("%+.4f", s.residualPercent.value), number("%.4f", s.residualPercent.uncertainty),
             number("%+.3f", s.worstPercent))
        .arg(s.good)
        .arg(s.rows);
}

QString clockText(const LoopbackResult& r) {
    if (!r.clock) {
        const QString why = QString::fromStdString(r.clockWords);
        return CheckWords::tr("  clock         not measured") + (why.isEmpty() ? QString() : ": " + why) + '\n';
    }
    const QString off = r.clock->ppm.value < 0.0
                            ? CheckWords::tr("  clock         slow by %1 +- %2 parts in a million\n")
                            : CheckWords::tr("  clock         fast by %1 +- %2 parts in a million\n");
    return off.arg(number("%.2f", std::abs(r.clock->ppm.value)), number("%.2f", r.clock->ppm.uncertainty));
}

QString cardText(const LoopbackResult& r) {
    QString text =
        CheckWords::tr("card: %1 from %2, %3 Hz\n")
            .arg(QString::fromStdString(r.input), QString::fromStdString(r.output), number("%.0f", r.rateHz));
    QStringList corners;
    for (const double hz : r.couplingHz) corners += number("%.1f Hz", hz);
    text += corners.isEmpty()
                ? CheckWords::tr("  coupling      none found\n")
                : CheckWords::tr("  coupling      high-pass at %1\n").arg(corners.join(CheckWords::tr(" and ")));
    if (r.snrDb) text += CheckWords::tr("  noise         %1 dB below half the swing\n").arg(number("%.1f", *r.snrDb));
    if (r.riseMs) text += CheckWords::tr("  edges         %1 ms, of 0.30 ms sent\n").arg(number("%.2f", *r.riseMs));
    if (r.delayMs)
        text += CheckWords::tr("  delay         about %1 ms from output to input\n").arg(number("%.0f", *r.delayMs));
    text += clockText(r);
    return text + CheckWords::tr("  gaps          %1\n").arg(r.gaps);
}

template <class... Values>
std::string formatted(const char* format, Values... values) {
    char text[400];
    std::snprintf(text, sizeof text, format, values...);
    return text;
}

// Kept with visits and frames as it stands, so it is English; told() knows it where it is shown.
std::string line(const std::vector<CheckRow>& rows) {
    const CheckSummary s = summaryOf(rows);
    return formatted("residual bias %+.3f +- %.3f %%, %s", s.residualPercent.value, s.residualPercent.uncertainty,
                     s.passed() ? "passed" : "NOT PASSED");
}

}  // namespace

bool CheckRecord::passed() const {
    const bool card = !loopback || (summaryOf(loopback->rows).passed() && loopback->gaps == 0);
    const bool own = memory.empty() || summaryOf(memory).passed();
    return card && own && (loopback || !memory.empty());
}

QString checkText(const CheckRecord& record, bool everyRow) {
    const QString when =
        QDateTime::fromSecsSinceEpoch(record.takenSecondsUtc).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    QString text = (record.passed() ? CheckWords::tr("self-check of %1, version %2: PASSED\n")
                                    : CheckWords::tr("self-check of %1, version %2: NOT PASSED\n"))
                       .arg(when, QString::fromStdString(record.version));
    const auto add = [&](const std::vector<CheckRow>& rows) {
        if (everyRow)
            for (const CheckRow& row : rows) text += rowText(row);
        text += QStringLiteral("  ") + summaryText(rows);
    };
    if (!record.memory.empty()) {
        text += CheckWords::tr("\nin memory: known signals, bias in percent of a unit\n");
        add(record.memory);
    }
    if (record.loopback) {
        text += CheckWords::tr("\nthrough the loop-back cable\n") + QStringLiteral("  ") + cardText(*record.loopback);
        add(record.loopback->rows);
    }
    text += record.passed() ? CheckWords::tr("\nEvery known bias was read within 0.1 % and its uncertainty.\n")
                            : CheckWords::tr("\nSee above; do not trust readings until it passes.\n");
    return text;
}

QString checkLine(const CheckRecord& record) {
    QString text = QDateTime::fromSecsSinceEpoch(record.takenSecondsUtc).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    if (!record.memory.empty()) text += QStringLiteral(", in memory ") + QString::fromStdString(line(record.memory));
    if (record.loopback) {
        text += QStringLiteral(", through %1 ").arg(QString::fromStdString(record.loopback->input)) +
                QString::fromStdString(line(record.loopback->rows));
        if (record.loopback->clock)
            text += QString::fromStdString(
                formatted(", clock %+.1f parts in a million", record.loopback->clock->ppm.value));
    }
    return text.replace(QStringLiteral("+-"), QStringLiteral("\u00b1"));
}

std::string lastCheckLine() {
    const auto last = lastCheck();
    return last ? checkLine(*last).toStdString() : std::string();
}

}  // namespace trueunit
