// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include <vector>

#include "core/report/smoothing.h"

namespace trueunit {

// The words below the trail; all places and widths in seconds.
class TrailFoot {
public:
    TrailFoot(const QFontMetricsF& metrics, double secondsPerPixel)
        : metrics_(metrics), secondsPerPixel_(secondsPerPixel), ticker_(new QCPAxisTickerText) {}

    double widthOf(const QString& words) const { return metrics_.horizontalAdvance(words) * secondsPerPixel_; }
    void addCentred(double at, const QString& words) { ticker_->addTick(at, words); }
    // What each change of the window means, beginning at it or as near as there is room from left to right; the newest
    // first.
    // `all`: the window is now *all*.
    void add(const std::vector<SmoothingChange>& changes, bool all, double now, double left, double right);
    QSharedPointer<QCPAxisTickerText> ticker() const { return ticker_; }

private:
    const QFontMetricsF metrics_;
    const double secondsPerPixel_;
    QSharedPointer<QCPAxisTickerText> ticker_;
};

}  // namespace trueunit
