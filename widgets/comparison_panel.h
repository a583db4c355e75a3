// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/report/comparison.h"
#include "widgets/panel.h"

class QFontMetricsF;

namespace trueunit {

QString seenWords(Seen seen);  // "changed", "none seen"

// The marked moment against the present one: what it was, what it is, the difference with its uncertainty, and whether
// that is more than chance, in words. Bias and end distortion always; the others while they have changed, so that
// the readings below keep their room.
class ComparisonPanel : public Panel {
    Q_OBJECT

public:
    explicit ComparisonPanel(QWidget* parent = nullptr);

    void setBefore(const SnapshotPtr& before);  // empty: nothing to hold against
    const Comparison& comparison() const { return comparison_; }

    const std::vector<Difference>& rows() const { return rows_; }  // those that are shown
    std::set<std::string> keys() const;                            // of those

    QSize sizeHint() const override { return {378, heightOfRows()}; }
    QSize minimumSizeHint() const override { return {242, heightOfRows()}; }

signals:
    void rowsChosen();  // other rows than before

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;

private:
    struct Columns {  // widths in pixels
        double before = 0.0, after = 0.0, change = 0.0, verdict = 0.0;
        bool withValues = true;  // what was and is
    };
    Columns columnsFor(const QFontMetricsF& metrics, double room) const;
    void chooseRows();
    int heightOfRows() const;
    void paintRow(QPainter& painter, const QRectF& row, const Difference& difference, const Columns& columns) const;

    SnapshotPtr before_;
    Comparison comparison_;
    std::set<std::string> changed_;  // keys; one that is merely unsure keeps its row, so that none flutters
    std::vector<Difference> rows_;
};

}  // namespace trueunit
