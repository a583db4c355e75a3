// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_before.h"

#include <algorithm>

#include "widgets/marker.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

std::shared_ptr<const CharacterTrace> GridBefore::traceFor(const GridContent& content) {
    if (!content.before || !content.chosen) return {};
    const auto& traces = content.before->traces;
    for (auto t = traces.rbegin(); t != traces.rend(); ++t)
        if ((*t)->code == content.chosen->code) return *t;
    return {};
}

// What is dashed, or why nothing is.
void GridBefore::drawWords(QCPPainter& painter, const QString& words) const {
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    const QFontMetricsF metrics(painter.font());
    const double baseline = std::min(yOf(0.0) + 16, inside().bottom() - metrics.descent());  // within a low drawing
    painter.drawText(QPointF(inside().right() - 8 - metrics.horizontalAdvance(words), baseline), words);
}

void GridBefore::draw(QCPPainter* painter) {
    if (!content().before || !content().chosen || content().before->gridUnitSeconds <= 0.0) return;
    const QString print = told(content().chosen->print);
    const auto trace = traceFor(content());
    if (!trace) return drawWords(*painter, Words::tr("before: no %1 came").arg(print));
    const double unit = content().before->gridUnitSeconds;
    QPolygonF line;
    for (std::size_t i = 0; i < trace->level.size(); ++i) {
        const double seconds = trace->firstSampleSeconds + static_cast<double>(i) * trace->sampleSeconds;
        line.push_back({xOf(seconds / unit), yOf(static_cast<double>(trace->level[i]))});
    }
    painter->setAntialiasing(true);
    QPen pen = theme::pen(theme::kSecondary, 1.4);
    pen.setDashPattern({5, 3});
    painter->setPen(pen);
    painter->setBrush(Qt::NoBrush);
    painter->drawPolyline(line);
    for (const TraceInstant& i : trace->instants) drawLozenge(*painter, {xOf(i.seconds / unit), yOf(0.5)}, 9.0);
    drawWords(*painter, Words::tr("dashed, \u25c7: before, ") + told(trace->print));
}

}  // namespace trueunit
