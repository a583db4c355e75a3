// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

class QLabel;
class QScrollArea;

namespace trueunit {

class FindingList;

// What the signal says about the machine, worst first. While nothing has been looked for, the state and the notes;
// always the standing caution.
class FindingsPanel : public Panel {
    Q_OBJECT

public:
    explicit FindingsPanel(QWidget* parent = nullptr);

    QString shownText() const;  // all that is on the list, as plain text

    bool hasHeightForWidth() const override { return false; }  // it scrolls inside; a column may squeeze it
    QSize sizeHint() const override { return {378, 230}; }
    QSize minimumSizeHint() const override { return {220, 110}; }

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    QScrollArea* scroll_;
    FindingList* list_;
    QLabel* caution_;
};

}  // namespace trueunit
