// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <string>

class QLabel;
class QPlainTextEdit;

namespace trueunit {

// What the signal itself tells of the text.
struct FoundText {
    QString how;        // a sentence; may be empty
    std::string round;  // what the tape prints once round; empty: not known
};

// The text of the tape that runs: typed, or from a file. With it lost marks and filled spaces are counted. Window's
// thread.
class TapeTextDialog : public QDialog {
    Q_OBJECT

public:
    TapeTextDialog(const std::string& text, const std::string& code, FoundText found, QWidget* parent = nullptr);

    std::string text() const;        // lines end with carriage return and line feed; empty: not known
    QString message() const;         // how many characters of the code it makes, or why a file was not taken
    void take(const QString& path);  // the text of a file
    void setText(const std::string& text);

private:
    void askFile();
    void count();
    QString foundWords() const;

    std::string code_;
    FoundText found_;
    QPlainTextEdit* text_;
    QLabel* message_;
};

}  // namespace trueunit
