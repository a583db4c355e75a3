// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QWidget>
#include <string>
#include <vector>

#include "core/report/finding.h"

namespace trueunit {

QString sureText(const Finding& finding);  // "97 % sure", "minor, 97 % sure", or empty
QString sureMeans();                       // what these words mean

// Findings under each other, each beside its bar; or plain sentences while there are none. As high as its width makes
// it, so it stands in a scroll area. Painted, not laid out as rich text: the numbers in the evidence change with every
// character, and this is ten times as quick. A click, or Up and Down, chooses one; another click lets go.
class FindingList : public QWidget {
    Q_OBJECT

public:
    static constexpr const char* kRemarkId = "remark";  // of an entry that is no finding: no bar, no confidence

    explicit FindingList(QWidget* parent = nullptr);

    void setFindings(const std::vector<Finding>& findings);
    void setSentences(const QStringList& sentences);  // the first in ink, the others quiet
    QString text() const;
    void setChosen(int index);  // -1: none
    int chosen() const { return chosen_; }
    int topOf(int index) const;  // of its frame, pixels

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return {300, heightForWidth(300)}; }
    QSize minimumSizeHint() const override { return {120, 20}; }

signals:
    void wanted(int index);             // -1: none
    void shownAt(int top, int bottom);  // of the chosen one, for the scroll area

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    struct Piece {
        QString text;
        QFont font;
        QColor color;
    };
    struct Entry {
        std::vector<Piece> pieces;  // one paragraph each
        QString aside;              // at the right of the first line
        QColor bar;                 // invalid: none
        bool hollow = false;        // the bar: not beyond its limit
        std::string id{};           // of the finding
    };
    void take(std::vector<Entry> entries);
    static void drawBar(QPainter& painter, const QRectF& bar, const Entry& entry);
    double layOut(double width, QPainter* painter, std::vector<double>* tops = nullptr) const;  // height; may paint
    void explainedBy(int index);  // F1 opens the help for that finding; -1: for all
    int findingCount() const;
    int findingAt(double y) const;                     // -1: none
    QRectF wholeLines(double top, double line) const;  // of a paragraph that begins at top: what may be painted
    double paragraph(const Piece& piece, double left, double top, double width, QPainter* painter) const;

    std::vector<Entry> entries_;
    int chosen_ = -1;
};

}  // namespace trueunit
