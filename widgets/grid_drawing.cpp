// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_drawing.h"

#include <algorithm>
#include <cmath>

#include "widgets/grid_before.h"
#include "widgets/grid_boundaries.h"
#include "widgets/grid_cursors.h"
#include "widgets/grid_flags.h"
#include "widgets/grid_notes.h"
#include "widgets/grid_older.h"
#include "widgets/plot_style.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr int kOlder = 11;         // faint lines behind the newest
constexpr double kBefore = 0.35;   // units shown before the start instant
constexpr double kAfter = 0.75;    // and after the first unit of stop
constexpr double kClosest = 0.05;  // units across at the strongest zoom
constexpr int kLeft = 62, kTop = 28, kRightSide = 8;

}  // namespace

GridDrawing::GridDrawing(QCustomPlot& plot) : plot_(plot) {
    dressPlot(plot);
    plot.axisRect()->setAutoMargins(QCP::msNone);
    for (QCPAxis* axis : {plot.xAxis, plot.yAxis}) {
        axis->setTicks(false);
        axis->setTickLabels(false);
        axis->grid()->setVisible(false);
    }
    plot.yAxis->setRange(-0.16, 1.16);
    new GridBoundaries(&plot, content_);  // the plot owns its items
    older_ = new GridOlder(&plot, content_);
    new GridBefore(&plot, content_);
    chosen_ = plot.addGraph();
    chosen_->setPen(theme::pen(theme::kInk, 1.6));
    chosen_->setAntialiased(true);
    new GridFlags(&plot, content_);
    cursors_ = new GridCursors(&plot, content_);
    new GridNotes(&plot, content_);
    showWhole();
}

void GridDrawing::setContent(GridContent content) {
    content_ = std::move(content);
    const bool reading = content_.cursors[0] || content_.cursors[1];
    const int strip = reading ? GridCursors::stripHeight(plot_.width()) : 0;
    plot_.axisRect()->setMargins(QMargins(kLeft, kTop, kRightSide, GridFlags::kHeight + strip));
    drawTraces();
}

QCPRange GridDrawing::whole() const {
    const int levels = content_.snapshot ? content_.snapshot->levels : 5;
    return {-kBefore, levels + 2.0 + kAfter};
}

void GridDrawing::showWhole() { plot_.xAxis->setRange(whole()); }

bool GridDrawing::isWhole() const {
    const QCPRange now = plot_.xAxis->range();
    return std::abs(now.lower - whole().lower) < 1e-6 && std::abs(now.upper - whole().upper) < 1e-6;
}

void GridDrawing::keepInRange() {
    QCPRange range = plot_.xAxis->range();
    const QCPRange all = whole();
    const double size = std::clamp(range.size(), kClosest, all.size());
    const double centre = std::clamp(range.center(), all.lower + size / 2, all.upper - size / 2);
    plot_.xAxis->setRange(centre - size / 2, centre + size / 2);
}

std::optional<std::size_t> GridDrawing::cursorAt(double x) const { return cursors_->hit(x); }

const QPolygonF& GridDrawing::lineOf(const CharacterTrace& trace) {
    const auto known = lines_.constFind(trace.number);
    if (known != lines_.constEnd()) return *known;
    QPolygonF line;
    line.reserve(static_cast<qsizetype>(trace.level.size()));
    for (std::size_t i = 0; i < trace.level.size(); ++i) {
        const double seconds = trace.firstSampleSeconds + static_cast<double>(i) * trace.sampleSeconds;
        line.push_back({seconds / linesUnit_, static_cast<double>(trace.level[i])});
    }
    return *lines_.insert(trace.number, line);
}

void GridDrawing::forgetAllBut(const std::vector<quint64>& numbers) {
    lines_.removeIf([&](const QHash<quint64, QPolygonF>::iterator& line) {
        return std::find(numbers.begin(), numbers.end(), line.key()) == numbers.end();
    });
}

void GridDrawing::drawTraces() {
    std::vector<QPolygonF> behind;
    QVector<QCPGraphData> points;
    if (content_.chosen && content_.snapshot->gridUnitSeconds > 0.0) {
        const Snapshot& s = *content_.snapshot;
        if (linesUnit_ != s.gridUnitSeconds) lines_.clear();
        linesUnit_ = s.gridUnitSeconds;
        const CharacterTrace& chosen = *content_.chosen;
        std::vector<quint64> used{chosen.number};
        const std::size_t ofWindow = std::max<std::size_t>(s.windowUsed, 1);  // what was before speaks of before
        const std::size_t fits = std::min({s.traces.size(), ofWindow, static_cast<std::size_t>(kOlder) + 1});
        for (std::size_t i = s.traces.size() - fits; i < s.traces.size(); ++i) {
            if (s.traces[i]->number == chosen.number) continue;
            behind.push_back(lineOf(*s.traces[i]));
            used.push_back(s.traces[i]->number);
        }
        for (const QPointF& p : lineOf(chosen)) points.push_back({p.x(), p.y()});
        forgetAllBut(used);
    }
    older_->setLines(std::move(behind));
    chosen_->data()->set(points, true);
}

}  // namespace trueunit
