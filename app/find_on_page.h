// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QTextEdit;

namespace trueunit {

// Finds words on a page of text: as they are typed, then the next with Enter, and behind the last the first again.
class FindOnPage : public QWidget {
    Q_OBJECT

public:
    explicit FindOnPage(QTextEdit* page, QWidget* parent = nullptr);

    QLineEdit& field() const { return *field_; }
    QString said() const;            // "not on this page", or nothing
    void say(const QString& words);  // beside the field

private:
    void find(int from);

    QTextEdit* page_;
    QLineEdit* field_;
    QLabel* said_;
};

}  // namespace trueunit
