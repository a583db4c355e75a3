// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QCPItemRect;
class QCustomPlot;

namespace trueunit {

// The common dress of our plots: panel ground, hairline rules, small secondary text, no frame.
void dressPlot(QCustomPlot& plot);

// The ground between -limit and +limit, over the whole width, behind everything.
QCPItemRect* addLimitBand(QCustomPlot& plot);
void setLimitBand(QCPItemRect& band, double limit);

// Rules and labels of the percent axis, "+10", "0", "−5", at round steps that fit the given height in pixels.
void rulePercentAxis(QCustomPlot& plot, double bottom, double top, double height);

// Height and width of the drawing, known before the plot lays itself out. Only for plots of fixed margins.
double drawingHeight(const QCustomPlot& plot);
double drawingWidth(const QCustomPlot& plot);

}  // namespace trueunit
