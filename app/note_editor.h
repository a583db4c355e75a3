// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLineEdit;
class QPushButton;

namespace trueunit {

// The words of one note, written in a slip at the head of the grid. Blocks nothing: Enter keeps, Escape leaves all as
// it was.
class NoteEditor : public QFrame {
    Q_OBJECT

public:
    explicit NoteEditor(QWidget* parent);

    void open(const QString& text, bool isNew);
    QString text() const;

signals:
    void kept(const QString& text);
    void deleted();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void leave();

    QLineEdit* words_;
    QPushButton* delete_;
};

}  // namespace trueunit
