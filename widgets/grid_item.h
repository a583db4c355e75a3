// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include <memory>
#include <utility>
#include <vector>

#include "core/report/frozen_frame.h"
#include "widgets/cursor_readout.h"
#include "widgets/panel.h"

namespace trueunit {

// What the character grid draws. Horizontal: grid units after the start instant; vertical: 0 = space, 1 = mark.
struct GridContent {
    SnapshotPtr snapshot;
    std::shared_ptr<const CharacterTrace> chosen;  // drawn strongest and flagged; empty: nothing to draw
    Cursors cursors;
    std::vector<Note> notes;
    EvidencePlaces evidence;  // of the chosen finding
    SnapshotPtr before = {};  // the moment to hold it against; empty: none
};

// The trace of that number, or the newest for 0; empty when it is no longer (or not yet) there.
inline std::shared_ptr<const CharacterTrace> traceOf(const Snapshot& snapshot, std::uint64_t number) {
    if (snapshot.traces.empty()) return {};
    if (number == 0) return snapshot.traces.back();
    for (const auto& trace : snapshot.traces)
        if (trace->number == number) return trace;
    return {};
}

inline GridContent contentOf(const FrozenFrame& frame) {
    auto chosen = frame.snapshot ? traceOf(*frame.snapshot, frame.characterNumber) : nullptr;
    return {frame.snapshot, std::move(chosen), frame.cursors, frame.notes, {}, frame.before};
}

// A part of the grid's drawing, placed by the plot's axes. The content is the drawing's; it outlives the item.
class GridItem : public QCPAbstractItem {
public:
    GridItem(QCustomPlot* plot, const GridContent& content) : QCPAbstractItem(plot), content_(content) {
        setSelectable(false);
        setClipToAxisRect(false);
    }
    double selectTest(const QPointF&, bool, QVariant*) const override { return -1.0; }

protected:
    const GridContent& content() const { return content_; }
    QRectF inside() const { return parentPlot()->axisRect()->rect(); }
    double xOf(double units) const { return parentPlot()->xAxis->coordToPixel(units); }
    double yOf(double level) const { return parentPlot()->yAxis->coordToPixel(level); }
    bool isVisibleX(double x) const { return x >= inside().left() - 0.5 && x <= inside().right() + 0.5; }

private:
    const GridContent& content_;
};

}  // namespace trueunit
