// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

namespace trueunit {

// Where an ideal receiver may sample: one bar for each level and one for all of them, over one unit. At either end
// stands the character that bounds it, which would misread first; the bounds of the whole are marked.
class MarginView : public Panel {
    Q_OBJECT

public:
    explicit MarginView(QWidget* parent = nullptr);

    QString lowWords() const { return lowWords_; }    // "sampled before 7 %: level 3 of R would read as level 2"
    QString highWords() const { return highWords_; }  // likewise after

    QSize sizeHint() const override { return {470, 300}; }
    QSize minimumSizeHint() const override { return {240, 140}; }

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;

private:
    void say(const Snapshot& snapshot);

    QString lowWords_, highWords_;
};

}  // namespace trueunit
