// SPDX-License-Identifier: GPL-3.0-or-later
// Every sentence of the core, and every refusal of the program, has a pattern by which told() knows it: the sources are
// read, and each literal of three words or more must be found within the patterns, piece by piece.
#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QStringList>
#include <array>
#include <utility>

#include "widgets/core_sentences.h"

namespace trueunit {
namespace {

// What is not shown in the window, and why.
constexpr std::array kNeverShown = {
    std::pair{"core/report/reading_text.cpp", "the text that the command line prints"},
    std::pair{"app/main.cpp", "refusals of the command line"},
    std::pair{"app/command_line.cpp", "refusals of the command line"},
    std::pair{"app/log_arguments.cpp", "refusals of the command line"},
    std::pair{"app/commands.cpp", "refusals of the command line"},
    std::pair{"app/log_command.cpp", "refusals of the command line"},
    std::pair{"app/send_command.cpp", "refusals of the command line"},
    std::pair{"app/sending_options.cpp", "refusals of the command line"},
};

// The literals of a source, neighbours joined, without those of includes and comments.
QStringList literalsOf(const QString& source, bool refusalsOnly) {
    static const QRegularExpression token(
        R"re(//[^\n]*|/\*.*?\*/|#include[^\n]*|"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*'|\w+|\s+|.)re",
        QRegularExpression::DotMatchesEverythingOption);
    QStringList all;
    QString last;
    QString before;
    bool joined = false;  // the token before was a literal
    int depth = 0;        // of the braces since "Error{"
    for (const auto& match : token.globalMatch(source)) {
        const QString text = match.captured();
        if (text.startsWith("//") || text.startsWith("/*") || text.startsWith('#') || text.at(0).isSpace()) continue;
        if (text.startsWith('"')) {
            last = (joined ? last : QString()) + text.mid(1, text.size() - 2);
            joined = true;
        } else {
            if (joined && (depth > 0 || !refusalsOnly)) all += last;
            joined = false;
            if (text == "{" && (depth > 0 || before == "Error")) ++depth;
            if (text == "}" && depth > 0) --depth;
        }
        before = text;
    }
    static const QRegularExpression escape("(\\\\[nrt])+");
    for (QString& text : all) text.replace("\\\"", "\"").replace(escape, " ");
    return all;
}

bool isProse(const QString& text) {
    static const QRegularExpression word("[A-Za-z]{2,}");
    static const QRegularExpression small("[a-z]");
    if (!text.trimmed().contains(' ') || text.startsWith("--")) return false;  // a key; an option of the command line
    if (!text.contains(small)) return false;                                   // a text of a tape
    auto words = word.globalMatch(text);
    int count = 0;
    for (; words.hasNext(); words.next()) ++count;
    return count >= 3;
}

class Patterns {
public:
    Patterns() {
        static const QRegularExpression place("%\\d");
        for (const auto sentences : {otherSentences(), findingSentences(), signalSentences(), refusalSentences()})
            for (const char* english : sentences) {
                const QStringList pieces = QString::fromUtf8(english).split(place);
                pieces_ += pieces;
                if (pieces.size() == 2 && pieces[1].isEmpty() && !pieces[0].isEmpty()) beginnings_ += pieces[0];
            }
    }
    // Sentence by sentence; where a number of the literal is a place of the pattern, on both sides of it.
    bool hold(const QString& literal) const {
        static const QRegularExpression place("%\\d|%[-+]?[0-9.]*l?[dfgs](?![a-z])");
        static const QRegularExpression between("(?<=[.?!]) (?=[A-Z0-9])");
        static const QRegularExpression figure("[-+]?\\d+(?:\\.\\d+)?");
        for (QString piece : literal.split(place))
            for (const QString& sentence : piece.replace("%%", "%").split(between)) {
                if (found(sentence)) continue;
                for (const QString& part : sentence.split(figure))
                    if (!found(part)) return false;
            }
        return true;
    }

private:
    bool found(const QString& words) const {
        const QString wanted = words.trimmed();
        const auto holds = [](const QStringList& pieces, const QString& text) {
            return std::any_of(pieces.begin(), pieces.end(), [&text](const QString& p) { return p.contains(text); });
        };
        if (holds(pieces_, wanted)) return true;
        for (const QString& beginning : beginnings_)  // what stands in the place may be words of the table
            if (wanted.startsWith(beginning) && holds(pieces_, wanted.mid(beginning.size()))) return true;
        return false;
    }
    QStringList pieces_;
    QStringList beginnings_;  // of patterns that end with a place
};

QStringList unknownIn(const QString& folder, bool refusalsOnly, int& looked) {
    const Patterns patterns;
    QStringList unknown;
    const QString top = QStringLiteral(TRUEUNIT_SOURCE_FOLDER "/");
    QDirIterator files(top + folder, {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        const QString name = file.fileName().mid(top.size());
        if (std::any_of(kNeverShown.begin(), kNeverShown.end(), [&](const auto& e) { return name == e.first; }))
            continue;
        if (!file.open(QIODevice::ReadOnly)) return {name};
        for (const QString& literal : literalsOf(QString::fromUtf8(file.readAll()), refusalsOnly)) {
            if (!isProse(literal)) continue;
            ++looked;
            if (!patterns.hold(literal)) unknown += name + ": " + literal;
        }
    }
    return unknown;
}

TEST(CoreWords, EverySentenceOfTheCoreHasAPattern) {
    int looked = 0;
    EXPECT_EQ(unknownIn("core", false, looked).join('\n').toStdString(), "") << "a line in widgets/*_sentences.cpp";
    EXPECT_GT(looked, 250);
}

TEST(CoreWords, EveryRefusalThatTheWindowShowsHasAPattern) {
    int looked = 0;
    EXPECT_EQ(unknownIn("app", true, looked).join('\n').toStdString(), "") << "a line in widgets/*_sentences.cpp";
    EXPECT_GT(looked, 50);
}

TEST(CoreWords, AreFoundInTheSourceAsTheyStand) {
    const QString source = R"cpp(
        // "a comment of several words"
        return Error{"The stop \"" + name +
                     "\" must lie"
                     " between 1 and 2.5 units."};
        const char* other = "another literal of many words";)cpp";
    EXPECT_EQ(literalsOf(source, true), (QStringList{"The stop \"", "\" must lie between 1 and 2.5 units."}));
    EXPECT_EQ(literalsOf(source, false).size(), 3);
    const Patterns patterns;
    EXPECT_TRUE(patterns.hold("The stop must lie between 1 and 2.5 units."));
    EXPECT_TRUE(patterns.hold("Clock trimmed by %+.1f parts in a million."));
    EXPECT_FALSE(patterns.hold("The stop must lie anywhere."));
    EXPECT_FALSE(patterns.hold("Waiting for the first samples. And for others."));
}

}  // namespace
}  // namespace trueunit
