// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

class QLabel;
class QScrollArea;
class QToolButton;

namespace trueunit {

class FindingList;

// What the signal says about the machine, worst first. While nothing has been looked for, the state and the notes;
// always the standing caution.
class FindingsPanel : public Panel {
    Q_OBJECT

public:
    explicit FindingsPanel(QWidget* parent = nullptr);

    QString shownText() const;        // all that is on the list, as plain text
    void chooseNext();                // the next finding, after the last none
    int fullHeight() const;           // that shows all of it
    void setExercise(bool exercise);  // on a simulated sender, where only the eccentric can be turned
    void toggleTall();                // more height and back; only while there is something out of sight

    bool hasHeightForWidth() const override { return false; }  // it scrolls inside; a column may squeeze it
    QSize sizeHint() const override { return {378, 260}; }
    QSize minimumSizeHint() const override { return {220, 178}; }  // the first finding and its evidence

signals:
    void cardWanted();                                            // the machine card
    void evidenceChosen(const trueunit::EvidencePlaces& places);  // empty: none is chosen
    void tallWanted(bool tall);                                   // the height of the readings too

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    void choose(int index);
    void bringInto(int top, int bottom);
    void keepChosen(const std::vector<Finding>& findings);
    void setTall(bool tall);
    void beTall(bool tall);
    void weighHeight();  // is anything out of sight?

    double seconds_ = 0.0;  // of the last snapshot; a step back means another input
    std::string chosen_;    // id; stays while the numbers change
    EvidencePlaces places_;
    QScrollArea* scroll_;
    FindingList* list_;
    QLabel* caution_;
    QToolButton* taller_;
    bool wished_ = false;  // by the person
    bool tall_ = false;    // as it is
    int usualRoom_ = 0;    // height of the list while not tall
};

}  // namespace trueunit
