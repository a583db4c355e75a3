// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/report/comparison.h"
#include "widgets/panel.h"

class QFontMetricsF;

namespace trueunit {

QString seenWords(Seen seen);  // "changed", "none seen"

// The marked moment against the present one: what it was, what it is, the difference with its uncertainty, and whether
// that is more than chance, in words.
class ComparisonPanel : public Panel {
    Q_OBJECT

public:
    explicit ComparisonPanel(QWidget* parent = nullptr);

    void setBefore(const SnapshotPtr& before);  // empty: nothing to hold against
    const Comparison& comparison() const { return comparison_; }

    QSize sizeHint() const override { return {378, 142}; }
    QSize minimumSizeHint() const override { return {242, 142}; }

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;

private:
    struct Columns {  // widths in pixels
        double before = 0.0, after = 0.0, change = 0.0, verdict = 0.0;
        bool withValues = true;  // what was and is
    };
    Columns columnsFor(const QFontMetricsF& metrics, double room) const;
    void paintRow(QPainter& painter, const QRectF& row, const Difference& difference, const Columns& columns) const;

    SnapshotPtr before_;
    Comparison comparison_;
};

}  // namespace trueunit
