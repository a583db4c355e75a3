// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QPoint>
#include <optional>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace trueunit {

// The words of one note, written in a slip below the grid, so that what it speaks of stays in sight. Blocks nothing:
// Enter keeps, Escape leaves all as it was.
class NoteEditor : public QFrame {
    Q_OBJECT

public:
    NoteEditor(QWidget* grid, QWidget* parent);  // the grid is a part of the parent

    void pointAt(QPoint place) { place_ = place; }  // on the grid: what the next one opened speaks of
    // In the middle, unless a place was pointed at; where: the line that says what it will stand at.
    void open(const QString& text, bool isNew, const QString& where);
    QString text() const;

signals:
    void kept(const QString& text);
    void deleted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void keep();
    void leave();
    void placeBelow(int x);
    void grow();

    QWidget* grid_;
    QLabel* where_;
    QPlainTextEdit* words_;
    std::optional<QPoint> place_;
    QPoint at_;  // of the one that is open
    QPushButton* delete_;
};

}  // namespace trueunit
