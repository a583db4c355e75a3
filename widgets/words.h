// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/report/snapshot.h"

namespace trueunit {

// The words of the panels, in the language of the person: Words::tr("...").
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

// How numbers and states are said, the same in every widget.

QString number(double value, int decimals);  // "1.42", "−0.3"; never "−0.0"
// "S.3" is one word, and so is "2 %".
QString unbroken(QString text);
QString signedNumber(double value, int decimals);                 // "+7.3", "−0.3", "0.0"
QString uncertaintyNumber(double percent);                        // of a bias: "0.3", "0.05"
QString limitNumber(double limit);                                // "5", "0.75"
QString biasWords(double biasPercent, double limitPercent);       // "marks too long", "marks too short", "in limits"
QString othersOutWords(const Verdict& verdict);                   // "end out": what is out beside the bias; or empty
QString othersOpenWords(const Verdict& verdict);                  // "end ?": what cannot be told yet; or empty
QString directionWords(double biasPercent, double limitPercent);  // ": make them shorter", ", a little long"; or empty
QString toWords(Condition to);                                    // "to mark", "to space"
QString instantsWords(const Reading& reading);  // what the displacements of the instants are of: "% of a unit at ..."
QString elementName(int k, int levels);         // "start", "1" .. "5", "stop": the element k units after the start
QString shortPrint(const std::string& print);   // fits under one column of tape: "R", "sp", "ltr"
QString whyNothing(const Snapshot& snapshot);   // the sentence that says why there is no reading
QString dayFormat();                            // "dd.MM.yyyy": the country's, the year in full; files have yyyy-MM-dd
QString dayWords(qint64 secondsUtc);            // "28.11.2026", of this time zone
QString momentWords(qint64 secondsUtc);         // "28.11.2026 14:03"
QString counted(long count, const QString& one, const QString& many);  // "no gaps", "1 gap", "2 gaps"
QString overWords(std::size_t characters);                             // "over 128 characters"

QString fromHereWords(std::size_t over, bool ofAll = false);  // "from here over 128 characters"

QString gridWords(const Snapshot& snapshot);  // "nominal 50 baud": what the grid is ruled for
QString withOutRule(const QString& tip);      // and when instants and their means are called "out"

// One instant is out of limits beyond the start-stop limit; and while bias or end is out, beyond the limit of bias (to
// mark) or end (to space), which the plot tints. The mean of many is so too while their worst is out, and only when the
// whole of its uncertainty is beyond. So nothing is marked while every reading is in limits.
bool instantIsOut(Condition to, double displacementPercent, const Snapshot& snapshot);
bool meanIsOut(const InstantReading& instant, const Snapshot& snapshot);
bool meanIsOpen(const InstantReading& instant, const Snapshot& snapshot);  // beyond, but not for certain

// Digits after the point that the uncertainty supports, without flicker: a new number of digits is taken only when
// the uncertainty has left the range of the old one by a third.
class StableDecimals {
public:
    int update(double uncertainty);
    void reset() { decimals_ = -1; }

private:
    int decimals_ = -1;
};

}  // namespace trueunit
