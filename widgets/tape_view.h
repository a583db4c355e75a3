// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "widgets/panel.h"

namespace trueunit {

// The last characters as a chadded tape, newest at the right: holes, feed holes, the print below each. A character
// without a stop is boxed and crossed; a lost mark is a ring, a filled space is crossed, a print in the wrong case is
// underlined; where the feed slipped a red line runs across (sent twice) or down (passed over). A click selects a
// character.
class TapeView : public Panel {
    Q_OBJECT

public:
    explicit TapeView(QWidget* parent = nullptr);

    void setSelected(quint64 number);                // 0: none
    void setEvidence(const EvidencePlaces& places);  // of the chosen finding
    QString wordsOf(quint64 number) const;           // what it is and what it should be; empty: not there
    QString allWordsOf(quint64 number) const;        // where its print stands as well
    QRectF cellOf(quint64 number) const;             // empty when that character is not on the visible tape
    int visibleCharacters() const;

    QSize sizeHint() const override { return {960, 120}; }
    QSize minimumSizeHint() const override { return {300, 104}; }

signals:
    void characterClicked(quint64 number);

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    QRectF strip() const;  // the paper itself
    double pitch() const;
    std::size_t firstVisible() const;
    QRectF cell(std::size_t index) const;
    std::optional<std::size_t> placeOf(quint64 number) const;  // on the tape, oldest first
    const TapeCharacter* at(QPointF position) const;
    QPoint aboveTheTape(QPoint pointer) const;  // on the screen
    void remarkOn(const Snapshot& snapshot);
    void paintLevels(QPainter& painter) const;
    void paintCharacter(QPainter& painter, const QRectF& cell, const TapeCharacter& character, bool wrongCase) const;

    void paintSlip(QPainter& painter, const QRectF& cell, const TapeCharacter& character) const;
    void paintHole(QPainter& painter, QPointF centre, double radius, bool mark, bool due, const QColor& wrong) const;

    quint64 selected_ = 0;
    EvidencePlaces evidence_;
    std::vector<TapeCharacter> drawn_;
    std::vector<std::optional<std::size_t>> causes_;  // of prints in the wrong case
};

}  // namespace trueunit
