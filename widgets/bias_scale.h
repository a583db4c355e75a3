// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <optional>

class QPainter;

namespace trueunit {

// The horizontal scale under the gauge's digits. Percent of a unit; positive is to the right, marks long.
struct BiasScale {
    double end = 20.0;  // runs from -end to +end
    double limit = 5.0;
    std::optional<double> value;
    std::optional<double> lowest, highest;  // peaks held
    bool live = true;                       // false: the value is of a line that now rests
    bool open = false;                      // whether the value is out cannot be told

    void paint(QPainter& painter, const QRectF& area) const;
    static double heightFor(double textPx) { return 5.2 * textPx; }

private:
    double xOf(double percent, const QRectF& track) const;
    void paintWords(QPainter& painter, const QRectF& row) const;
    void paintTrack(QPainter& painter, const QRectF& track) const;
    void paintLimits(QPainter& painter, const QRectF& track) const;
    void paintPeaks(QPainter& painter, const QRectF& track) const;
    void paintNumbers(QPainter& painter, const QRectF& track, double baseline) const;
};

}  // namespace trueunit
