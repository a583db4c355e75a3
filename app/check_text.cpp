// SPDX-License-Identifier: GPL-3.0-or-later
// A self-check in words: for the terminal, the dialog and the report.
#include <QDateTime>
#include <cmath>
#include <cstdio>

#include "app/check_record.h"

namespace trueunit {

namespace {

template <class... Values>
std::string formatted(const char* format, Values... values) {
    char text[400];
    std::snprintf(text, sizeof text, format, values...);
    return text;
}

std::string rowText(const CheckRow& row) {
    if (row.read.uncertainty < 0.0)
        return formatted("  %-58s set %+6.1f   no reading\n", row.condition.c_str(), row.set);
    return formatted("  %-58s set %+6.1f   read %+9.3f +- %.3f   off %+7.3f  %s\n", row.condition.c_str(), row.set,
                     row.read.value, row.read.uncertainty, row.residual(), row.good() ? "good" : "TOO FAR");
}

std::string summaryText(const std::vector<CheckRow>& rows) {
    const CheckSummary s = summaryOf(rows);
    return formatted("residual bias %+.4f +- %.4f %% (95 %%), worst %+.3f %%; %d of %d good\n", s.residualPercent.value,
                     s.residualPercent.uncertainty, s.worstPercent, s.good, s.rows);
}

std::string cardText(const LoopbackResult& r) {
    std::string text = "card: " + r.input + " from " + r.output + formatted(", %.0f Hz\n", r.rateHz);
    std::string corners;
    for (const double hz : r.couplingHz) corners += (corners.empty() ? "" : " and ") + formatted("%.1f Hz", hz);
    text += "  coupling      " + (corners.empty() ? "none found" : "high-pass at " + corners) + "\n";
    if (r.snrDb) text += formatted("  noise         %.1f dB below half the swing\n", *r.snrDb);
    if (r.riseMs) text += formatted("  edges         %.2f ms, of 0.30 ms sent\n", *r.riseMs);
    if (r.delayMs) text += formatted("  delay         about %.0f ms from output to input\n", *r.delayMs);
    if (r.clock)
        text += formatted("  clock         %s by %.2f +- %.2f parts in a million\n",
                          r.clock->ppm.value < 0.0 ? "slow" : "fast", std::abs(r.clock->ppm.value),
                          r.clock->ppm.uncertainty);
    else
        text += "  clock         not measured" + (r.clockWords.empty() ? "" : ": " + r.clockWords) + "\n";
    text += formatted("  gaps          %ld\n", r.gaps);
    return text;
}

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

std::string checkText(const CheckRecord& record, bool everyRow) {
    std::string text = "self-check of " +
                       QDateTime::fromSecsSinceEpoch(record.takenSecondsUtc)
                           .toString(QStringLiteral("yyyy-MM-dd HH:mm"))
                           .toStdString() +
                       ", version " + record.version + (record.passed() ? ": PASSED\n" : ": NOT PASSED\n");
    if (!record.memory.empty()) {
        text += "\nin memory: known signals, bias in percent of a unit\n";
        if (everyRow)
            for (const CheckRow& row : record.memory) text += rowText(row);
        text += "  " + summaryText(record.memory);
    }
    if (record.loopback) {
        text += "\nthrough the loop-back cable\n  " + cardText(*record.loopback);
        if (everyRow)
            for (const CheckRow& row : record.loopback->rows) text += rowText(row);
        text += "  " + summaryText(record.loopback->rows);
    }
    text += record.passed() ? "\nEvery known bias was read within 0.1 % and its uncertainty.\n"
                            : "\nSee above; do not trust readings until it passes.\n";
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
