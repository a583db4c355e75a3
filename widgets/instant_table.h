// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

namespace trueunit {

// Synchronous displacement of every instant over the window, as a table: how often, mean, scatter, extremes.
class InstantTable : public Panel {
    Q_OBJECT

public:
    explicit InstantTable(QWidget* parent = nullptr);

    // The bare table, for a page of paper too. Returns the height used.
    static double paintTable(QPainter& painter, const QRectF& area, const Snapshot& snapshot, double textPx);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {330, 216}; }

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;
};

}  // namespace trueunit
