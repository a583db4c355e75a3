// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/told.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QRegularExpression>
#include <optional>
#include <vector>

#include "widgets/core_sentences.h"

namespace trueunit {

namespace {

constexpr int kMostRemembered = 2000;

QString translated(const char* english) { return QCoreApplication::translate("Core", english); }

struct Pattern {
    QRegularExpression form;
    const char* english;
};

QRegularExpression formOf(const char* english) {
    QString form = QRegularExpression::escape(QString::fromUtf8(english));
    static const QRegularExpression place(QStringLiteral("\\\\%\\d"));
    form.replace(place, QStringLiteral("((?:(?![.?!] [A-Z]).)+?)"));
    return QRegularExpression(QRegularExpression::anchoredPattern(form));
}

const std::vector<Pattern>& patterns() {
    static const std::vector<Pattern> all = [] {
        std::vector<Pattern> made;
        for (const auto sentences :
             {otherSentences(), findingSentences(), signalSentences(), refusalSentences(), earlierSentences()})
            for (const char* english : sentences) made.push_back({formOf(english), english});
        return made;
    }();
    return all;
}

std::optional<QString> asWhole(const QString& english);

// What stands in a place of a pattern: a number with the decimal mark of the country, or words of the table.
QString partTold(const QString& part) {
    if (const auto words = asWhole(part)) return *words;
    static const QRegularExpression point(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    return QString(part).replace(point, QLocale().decimalPoint());
}

std::optional<QString> asWhole(const QString& english) {
    for (const Pattern& pattern : patterns()) {
        const QRegularExpressionMatch match = pattern.form.match(english);
        if (!match.hasMatch()) continue;
        QString words = translated(pattern.english);
        for (int i = match.lastCapturedIndex(); i >= 1; --i)
            words.replace(QStringLiteral("%") + QString::number(i), partTold(match.captured(i)));
        return words;
    }
    return std::nullopt;
}

QString bySentences(const QString& english) {
    if (const auto whole = asWhole(english)) return *whole;
    static const QRegularExpression between(QStringLiteral("(?<=[.?!]) (?=[A-Z0-9])"));
    QStringList sentences = english.split(between);
    for (QString& sentence : sentences) sentence = asWhole(sentence).value_or(sentence);
    return sentences.join(u' ');
}

// Without a translation there is nothing to look for.
bool isTranslated() {
    const char* first = otherSentences().front();
    return translated(first) != QString::fromUtf8(first);
}

// The core writes plain text; what is shown has a minus that is as wide as the plus.
QString withMinus(QString words) {
    static const QRegularExpression hyphen(QStringLiteral("(?<= )-(?=\\d+(?:[.,]\\d+)? (?:%|dB))"));
    return words.replace(hyphen, QStringLiteral("\u2212"));
}

}  // namespace

QString told(const std::string& english) {
    const QString words = withMinus(QString::fromStdString(english));
    if (words.isEmpty() || !isTranslated()) return words;
    static QHash<QString, QString> remembered;
    static QString language;
    if (const QString now = translated(otherSentences().front()) + QLocale().name(); now != language) {
        language = now;
        remembered.clear();
    }
    if (const auto known = remembered.constFind(words); known != remembered.constEnd()) return *known;
    if (remembered.size() >= kMostRemembered) remembered.clear();
    return remembered[words] = bySentences(words);
}

}  // namespace trueunit
