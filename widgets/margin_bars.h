// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "core/report/reading.h"

class QPainter;

namespace trueunit {

// The bars of the receiving margin on one unit from 0 to 100 %, top to bottom: level 1 .., then all.
class MarginBars {
public:
    MarginBars(const MarginReading& margin, const QRectF& area) : margin_(margin), area_(area) {}
    void paint(QPainter& painter) const;

private:
    double xOf(double percent) const;
    double rowHeight() const;
    QRectF row(std::size_t index) const;
    void paintScale(QPainter& painter) const;
    void paintLevel(QPainter& painter, const LevelMargin& level) const;
    void paintBound(QPainter& painter, const QRectF& bar, const std::optional<MarginBound>& bound, bool low) const;
    void paintAll(QPainter& painter) const;

    const MarginReading& margin_;
    QRectF area_;
};

}  // namespace trueunit
