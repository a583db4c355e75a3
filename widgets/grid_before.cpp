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

// What is dashed, or why nothing is; in a low drawing, where they stand across the trace, the brief words.
void GridBefore::drawWords(QCPPainter& painter, const QString& full, const QString& brief) const {
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    const QFontMetricsF metrics(painter.font());
    const double below = yOf(0.0) + 16, lowest = inside().bottom() - metrics.descent();
    const double baseline = std::min(below, lowest);
    const QString& words = below > lowest ? brief : full;
    painter.drawText(QPointF(inside().right() - 8 - metrics.horizontalAdvance(words), baseline), words);
}

void GridBefore::draw(QCPPainter* painter) {
    if (!content().before || !content().chosen || content().before->gridUnitSeconds <= 0.0) return;
    const QString print = told(content().chosen->print);
    const auto trace = traceFor(content());
    const QString none = Words::tr("before: no %1 came").arg(print);
    if (!trace) return drawWords(*painter, none, none);
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
    drawWords(*painter, Words::tr("dashed, \u25c7: before"), QStringLiteral("\u25c7 ") + Words::tr("before"));
}

}  // namespace trueunit
