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

// Rules and labels of the percent axis: "+10", "0", "−5", at steps of a fitting round size.
void rulePercentAxis(QCustomPlot& plot, double bottom, double top);

}  // namespace trueunit
