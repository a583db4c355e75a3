// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "widgets/panel.h"
#include "widgets/tape_drawing.h"

class QPushButton;

namespace trueunit {

// The last characters as a chadded tape, newest at the right: holes, feed holes, the print below each. A character
// without a stop is boxed and crossed; a lost mark is a ring, a filled space is crossed, a print in the wrong case is
// underlined; where the feed slipped a red line runs across (sent twice) or down (passed over). A click selects a
// character; the wheel and the keys go back along the tape.
class TapeView : public Panel {
    Q_OBJECT

public:
    explicit TapeView(QWidget* parent = nullptr);

    void setSelected(quint64 number);                // and brings it into view; 0: none, and the newest
    void setEvidence(const EvidencePlaces& places);  // of the chosen finding
    QString wordsOf(quint64 number) const;           // what it is and what it should be; empty: not there
    QString allWordsOf(quint64 number) const;        // where its print stands as well
    QRectF cellOf(quint64 number) const;             // empty when that character is not on the visible tape
    int visibleCharacters() const;
    void scrollBack(int characters);  // negative: on to the newest

    QSize sizeHint() const override { return {960, 120}; }
    QSize minimumSizeHint() const override { return {300, 104}; }

signals:
    void characterClicked(quint64 number);

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;
    void mousePressEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    QRectF strip() const;  // the paper itself
    double pitch() const;
    std::size_t firstVisible() const;
    std::size_t endVisible() const;
    QRectF cell(std::size_t index) const;
    std::optional<std::size_t> placeOf(quint64 number) const;  // on the tape, oldest first
    const TapeCharacter* at(QPointF position) const;
    QPoint aboveTheTape(QPoint pointer) const;  // on the screen
    void remarkOn(const Snapshot& snapshot);
    TapeEmphasis emphasisOf(std::size_t index) const;

    quint64 newest_ = 0;  // in view; 0: the newest of all
    quint64 selected_ = 0;
    QPushButton* toNewest_;
    int wheel_ = 0;  // eighths of a degree, not yet a step
    EvidencePlaces evidence_;
    std::vector<TapeCharacter> drawn_;
    std::vector<std::optional<std::size_t>> causes_;  // of prints in the wrong case
};

}  // namespace trueunit
