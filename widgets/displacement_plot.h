// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

class QCPItemRect;
class QCustomPlot;

namespace trueunit {

class DisplacementMarks;

// Every instant of the window as a dot over its place in the character, to mark and to space apart by shape and side,
// oldest at the left of each cluster; bars for mean and spread; the limit band behind.
class DisplacementPlot : public Panel {
    Q_OBJECT

public:
    explicit DisplacementPlot(QWidget* parent = nullptr);

    void setEvidence(const EvidencePlaces& places);  // of the chosen finding
    void setBefore(const SnapshotPtr& before);       // its means stand beside; empty: none

    QSize sizeHint() const override { return {470, 300}; }
    QSize minimumSizeHint() const override { return {262, 150}; }

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    void chooseRange(const Snapshot& snapshot);
    void nameColumns(int levels);
    static QStringList speedWords(const Snapshot& snapshot);
    void say(const Snapshot& snapshot);

    QCustomPlot* plot_;
    QCPItemRect* band_;
    DisplacementMarks* marks_;
    int levels_ = 0;
    double range_ = 0.0;  // the scale runs from minus to plus this
};

}  // namespace trueunit
