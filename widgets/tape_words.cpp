// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/tape_words.h"

#include <QStringList>

#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr std::size_t kSpoken = 20;

// Combinations of five levels that stand for the same in letters and figures (ITU-T Recommendation S.1); level 1 is
// bit 0.
constexpr unsigned kToLetters = 31, kToFigures = 27, kSpaceCode = 4;
constexpr unsigned kLineFeedCode = 2, kReturnCode = 8, kBlankCode = 0;

bool isShift(unsigned code) { return code == kToLetters || code == kToFigures; }

bool hasCase(unsigned code) {
    return !isShift(code) && code != kSpaceCode && code != kLineFeedCode && code != kReturnCode && code != kBlankCode;
}

bool printsLetter(const std::string& print) { return print.size() == 1 && print[0] >= 'A' && print[0] <= 'Z'; }

// Which case a combination sets; none: it leaves the case as it is.
std::optional<unsigned> caseSetBy(unsigned code, bool unshiftOnSpace) {
    if (isShift(code)) return code;
    if (code == kSpaceCode && unshiftOnSpace) return kToLetters;
    return std::nullopt;
}

QString caseWords(const std::vector<TapeCharacter>& tape, std::size_t i, std::size_t cause) {
    const QString before = counted(static_cast<long>(i - cause), Words::tr("character"), Words::tr("characters"));
    const bool letter = printsLetter(tape[i].print);
    if (std::any_of(tape[cause].passed.begin(), tape[cause].passed.end(), isShift))
        return letter ? Words::tr(", prints as a letter because the feed passed over the shift to figures")
                      : Words::tr(", prints as a figure because the feed passed over the shift to letters");
    if (isShift(tape[cause].due.value_or(0)))
        return (letter ? Words::tr(", prints as a letter because the shift to figures %1 before was lost")
                       : Words::tr(", prints as a figure because the shift to letters %1 before was lost"))
            .arg(before);
    return (letter ? Words::tr(", prints as a letter because the one %1 before came as the shift to letters")
                   : Words::tr(", prints as a figure because the one %1 before came as the shift to figures"))
        .arg(before);
}

QString levelsWords(const TapeCharacter& c) {
    QStringList words;
    for (int i = 0; i < 8; ++i) {
        const bool mark = (c.code >> i & 1u) != 0;
        const bool due = (*c.due >> i & 1u) != 0;
        if (mark != due)
            words << Words::tr("level %1 %2").arg(i + 1).arg(due ? Words::tr("lost") : Words::tr("filled"));
    }
    return words.join(QStringLiteral(", "));
}

}  // namespace

// A text that is given or forgotten changes what was due at every place of the tape, not at its end alone.
bool drawnAlike(const TapeCharacter& a, const TapeCharacter& b) {
    return a.number == b.number && a.code == b.code && a.print == b.print && a.stopPresent == b.stopPresent &&
           a.due == b.due && a.presumed == b.presumed && a.again == b.again && a.passed == b.passed &&
           a.instead == b.instead;
}

std::vector<std::optional<std::size_t>> wrongCase(const Snapshot& s) {
    std::vector<std::optional<std::size_t>> causes(s.tape.size());
    if (s.levels != 5) return causes;
    const bool unshift = s.options.code.find("unshift") != std::string::npos;
    std::optional<unsigned> due;       // the case the tape is in
    std::optional<std::size_t> cause;  // since when it may print in the other
    for (std::size_t i = 0; i < s.tape.size(); ++i) {
        const TapeCharacter& c = s.tape[i];
        for (const unsigned hole : c.passed)
            if (const auto sets = caseSetBy(hole, unshift)) {
                due = sets;
                cause = i;
            }
        if (cause && due && hasCase(c.code) && !isWrong(c) && printsLetter(c.print) != (*due == kToLetters))
            causes[i] = cause;
        const auto sets = caseSetBy(c.code, unshift), should = caseSetBy(c.due.value_or(c.code), unshift);
        if (should) due = should;
        if (sets != should)
            cause = i;
        else if (sets)
            cause.reset();
    }
    return causes;
}

QString dueWords(const TapeCharacter& c) {
    if (c.duePrint.empty() || c.duePrint == c.print) return {};
    return Words::tr(", due \u201c%1\u201d").arg(told(c.duePrint));
}

// Where the holes lie that are so many further on along the paper, which the feed did not move with each character.
std::optional<std::size_t> holesOn(const std::vector<TapeCharacter>& tape, std::size_t i, int further) {
    int on = 0;
    while (on < further && ++i < tape.size()) on += tape[i].again ? 0 : 1 + static_cast<int>(tape[i].passed.size());
    while (on > further && i > 0) {
        on -= tape[i].again ? 0 : 1 + static_cast<int>(tape[i].passed.size());
        --i;
    }
    return on == further && i < tape.size() ? std::optional(i) : std::nullopt;
}

QString slipWords(const TapeCharacter& c) {
    QString words;
    if (c.again) words += Words::tr(", sent once before: the tape did not move");
    if (c.passed.empty()) return words;
    QStringList names;
    for (const std::string& name : c.passedPrint)
        if (!name.empty()) names << Words::tr("\u201c%1\u201d").arg(told(name));
    if (names.size() == static_cast<qsizetype>(c.passed.size()))
        return words + Words::tr(", passed over before it: ") + names.join(QStringLiteral(", "));
    return words +
           Words::tr(", %1 passed over before it")
               .arg(counted(static_cast<long>(c.passed.size()), Words::tr("character"), Words::tr("characters")));
}

// Signs that print; the others are known by names.
bool printsSign(const std::string& print) { return print.size() == 1 && print != " "; }

QString characterWords(const std::vector<TapeCharacter>& tape, std::size_t i,
                       const std::vector<std::optional<std::size_t>>& causes) {
    const TapeCharacter& c = tape[i];
    QString words = told(c.print);
    if (!c.stopPresent) words += Words::tr(", no stop");
    if (isWrong(c)) words += (c.presumed ? Words::tr(", probably wrong: ") : Words::tr(", wrong: ")) + levelsWords(c);
    if (i < causes.size() && causes[i]) words += caseWords(tape, i, *causes[i]);
    words += dueWords(c);
    if (c.instead) words += Words::tr(", not what the text has here, but too close to a slip to say why");
    return words + slipWords(c);
}

// A tape printed as it is punched carries the print six characters behind the holes (common practice).
QString printWords(const std::vector<TapeCharacter>& tape, std::size_t i) {
    constexpr int kBehind = 6;
    QStringList behind;
    if (const auto at = holesOn(tape, i, -kBehind); at && printsSign(tape[*at].print))
        behind << Words::tr("\u201c%1\u201d is printed beside these holes").arg(told(tape[*at].print));
    if (const auto at = holesOn(tape, i, kBehind); at && printsSign(tape[i].print))
        behind << Words::tr("this is printed beside the holes of \u201c%1\u201d").arg(told(tape[*at].print));
    if (behind.isEmpty()) return {};
    return Words::tr(". On a tape that prints six behind, ") + behind.join(QStringLiteral(", "));
}

QString tapeWords(const Snapshot& s) {
    QStringList words;
    const std::size_t first = s.tape.size() > kSpoken ? s.tape.size() - kSpoken : 0;
    for (std::size_t i = first; i < s.tape.size(); ++i) {
        words << told(s.tape[i].print);
        if (!s.tape[i].stopPresent) words.back() += Words::tr(" without a stop");
    }
    return Words::tr("The last characters: ") + words.join(u' ');
}

}  // namespace trueunit
