// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_drawing.h"

#include <algorithm>
#include <cmath>

#include "widgets/grid_boundaries.h"
#include "widgets/grid_cursors.h"
#include "widgets/grid_flags.h"
#include "widgets/grid_notes.h"
#include "widgets/plot_style.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr int kOlder = 11;         // faint lines behind the newest
constexpr double kBefore = 0.35;   // units shown before the start instant
constexpr double kAfter = 0.75;    // and after the first unit of stop
constexpr double kClosest = 0.05;  // units across at the strongest zoom
constexpr int kLeft = 56, kTop = 28, kRight = 8;

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
    QColor faint = theme::kBlue;
    faint.setAlpha(70);
    for (int i = 0; i < kOlder; ++i) {
        older_.push_back(plot.addGraph());
        older_.back()->setPen(theme::pen(faint));
        older_.back()->setAntialiased(false);
    }
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
    plot_.axisRect()->setMargins(QMargins(kLeft, kTop, kRight, GridFlags::kHeight + strip));
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

GridDrawing::Line GridDrawing::lineOf(const CharacterTrace& trace) {
    if (const auto known = lines_.constFind(trace.number); known != lines_.constEnd()) return *known;
    QVector<QCPGraphData> points;
    points.reserve(static_cast<qsizetype>(trace.level.size()));
    for (std::size_t i = 0; i < trace.level.size(); ++i) {
        const double seconds = trace.firstSampleSeconds + static_cast<double>(i) * trace.sampleSeconds;
        points.push_back({seconds / linesUnit_, static_cast<double>(trace.level[i])});
    }
    const Line line(new QCPGraphDataContainer);
    line->set(points, true);
    lines_.insert(trace.number, line);
    return line;
}

void GridDrawing::drawTraces() {
    static const Line kNothing(new QCPGraphDataContainer);
    for (QCPGraph* graph : older_) graph->setData(kNothing);
    chosen_->setData(kNothing);
    if (!content_.chosen || content_.snapshot->gridUnitSeconds <= 0.0) {
        lines_.clear();
        return;
    }
    const Snapshot& s = *content_.snapshot;
    if (linesUnit_ != s.gridUnitSeconds) lines_.clear();
    linesUnit_ = s.gridUnitSeconds;
    const std::size_t fits = std::min(s.traces.size(), static_cast<std::size_t>(kOlder) + 1);
    qsizetype next = 0;
    QHash<quint64, Line> kept;
    for (std::size_t i = s.traces.size() - fits; i < s.traces.size(); ++i) {
        const CharacterTrace& trace = *s.traces[i];
        kept.insert(trace.number, lineOf(trace));
        if (trace.number != content_.chosen->number && next < older_.size())
            older_[next++]->setData(kept[trace.number]);
    }
    kept.insert(content_.chosen->number, lineOf(*content_.chosen));
    chosen_->setData(kept[content_.chosen->number]);
    lines_ = kept;
}

}  // namespace trueunit
