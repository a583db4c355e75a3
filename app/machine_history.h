// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "app/logbook/frames.h"
#include "app/logbook/visits.h"

class QCPAxis;
class QCPAxisRect;
class QCPItemText;
class QCustomPlot;
class QLabel;

namespace trueunit {

struct VisitHistory {
    Visit visit;
    std::vector<FrameRow> frames;  // in the order they were taken
};

// Bias, end, gross distortion and speed of a machine over its visits, oldest at the left; each visit has a column of
// the same width, the frame marked as before an open ring, the one marked as after a filled one. Repairs are ruled and
// named. Window thread.
class MachineHistory : public QWidget {
    Q_OBJECT

public:
    explicit MachineHistory(QWidget* parent = nullptr);

    void show(const std::vector<VisitHistory>& visits);  // oldest first
    using QWidget::show;
    void change(const Visit& visit);  // its words, or whether it was a repair

private:
    struct Row;
    struct Scale {  // of an axis: from the first to the last value that is written beside it
        QCPAxis* axis;
        double from, to;
    };

    void draw();
    void drawRow(QCPAxisRect& rect, const std::vector<VisitHistory>& visits, const Row& row);
    void markRepairs(QCPAxisRect& rect, const std::vector<VisitHistory>& visits, bool named);
    void fit();
    void nameDays();
    void nameRepairs();

    std::vector<VisitHistory> visits_;
    std::vector<Scale> scales_;
    std::vector<QCPItemText*> repairs_;  // the words above the rules
    QCustomPlot* plot_;
    QLabel* legend_;  // what the rings mean
};

}  // namespace trueunit
