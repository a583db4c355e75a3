// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/plot_style.h"

#include <qcustomplot.h>

#include <cmath>

#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kLeastRuleGap = 30.0;  // pixels

}  // namespace

void dressPlot(QCustomPlot& plot) {
    plot.setBackground(QBrush(theme::kPanel));
    plot.setPlottingHint(QCP::phFastPolylines);
    plot.setNoAntialiasingOnDrag(true);
    plot.setFocusPolicy(Qt::NoFocus);
    plot.setMinimumSize(60, 40);
    plot.plotLayout()->setRowSpacing(0);
    for (QCPAxis* axis : {plot.xAxis, plot.yAxis}) {
        axis->setBasePen(Qt::NoPen);
        axis->setTickPen(Qt::NoPen);
        axis->setSubTickPen(Qt::NoPen);
        axis->setTickLabelFont(theme::text(theme::kSmallPx));
        axis->setTickLabelColor(theme::kSecondary);
        axis->grid()->setPen(theme::pen(theme::kHairline));
        axis->grid()->setZeroLinePen(theme::pen(theme::kSecondary));
    }
    plot.xAxis->grid()->setVisible(false);
}

QCPItemRect* addLimitBand(QCustomPlot& plot) {
    auto* band = new QCPItemRect(&plot);
    band->setLayer(QStringLiteral("background"));
    band->setBrush(theme::kBand);
    band->setPen(theme::pen(theme::kBandEdge));
    band->setSelectable(false);
    for (QCPItemPosition* position : {band->topLeft, band->bottomRight}) {
        position->setTypeX(QCPItemPosition::ptAxisRectRatio);
        position->setTypeY(QCPItemPosition::ptPlotCoords);
        position->setAxes(plot.xAxis, plot.yAxis);
        position->setAxisRect(plot.axisRect());
    }
    return band;
}

void setLimitBand(QCPItemRect& band, double limit) {
    band.topLeft->setCoords(-0.01, limit);
    band.bottomRight->setCoords(1.01, -limit);
}

double drawingHeight(const QCustomPlot& plot) {
    const QMargins margins = plot.axisRect()->margins();
    return std::max(20, plot.height() - margins.top() - margins.bottom());
}

double drawingWidth(const QCustomPlot& plot) {
    const QMargins margins = plot.axisRect()->margins();
    return std::max(20, plot.width() - margins.left() - margins.right());
}

void rulePercentAxis(QCustomPlot& plot, double bottom, double top, double height) {
    double step = 1.0;
    for (const double candidate : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
        step = candidate;
        if (height * candidate / (top - bottom) >= kLeastRuleGap) break;  // pixels between rules
    }
    const QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    for (double v = std::ceil(bottom / step) * step; v <= top + 1e-9; v += step) ticker->addTick(v, signedNumber(v, 0));
    plot.yAxis->setTicker(ticker);
    plot.yAxis->setRange(bottom, top);
}

}  // namespace trueunit
