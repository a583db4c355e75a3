// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPoint>
#include <memory>

#include "core/report/frozen_frame.h"
#include "widgets/cursor_readout.h"
#include "widgets/panel.h"

class QCustomPlot;
class QMouseEvent;
class QToolButton;

namespace trueunit {

class GridDrawing;
struct GridContent;

// The line signal of the last characters over the ideal boundaries, the newest strongest, each of its instants flagged
// with its displacement. Live until showFrame(), frozen until showLive().
// Wheel zooms, drag pans, Home shows the whole character; left and right choose an older or newer character; C brings
// two cursors to drag (keys: shift or control with left and right); double click or N asks for a note.
class CharacterGrid : public Panel {
    Q_OBJECT

public:
    explicit CharacterGrid(QWidget* parent = nullptr);
    ~CharacterGrid() override;

    void showFrame(const FrozenFrame& frame);  // with its cursors and notes; stays while show() goes on
    void showLive();
    bool isFrozen() const { return frame_ != nullptr; }

    void setBefore(const SnapshotPtr& before);  // its trace stands behind, until an empty one comes

    void select(quint64 number);  // the character drawn strongest; 0 = always the newest
    quint64 selected() const { return selected_; }
    void setCursors(const Cursors& cursors);
    void setEvidence(const EvidencePlaces& places);  // of the chosen finding
    Cursors cursors() const { return cursors_; }
    QString cursorText() const;  // both places and their distance, one line each
    int flagCount() const;       // instants flagged
    double noteUnits() const;    // where a note belongs: at the cursor moved last, else at the edge furthest out
    QPoint placeOf(double units, double level) const;  // in the panel

    // The drawing without the frame, the whole character in view, at the resolution of the painter.
    static void paintFrame(const FrozenFrame& frame, QPainter& painter, const QRectF& area);

    QSize sizeHint() const override { return {960, 376}; }
    QSize minimumSizeHint() const override { return {420, 220}; }

public slots:
    void resetView();          // key: Home
    void toggleCursors();      // key: C
    void zoom(double factor);  // above 1 is closer, about the middle; keys: + and -

signals:
    void characterSelected(quint64 number);  // by key; 0 = the newest
    void cursorsChanged(const trueunit::Cursors& cursors);
    void noteRequested(double units, double level);

protected:
    void refresh(const Snapshot& snapshot) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void connectMouse();
    Cursors cursorsToBegin() const;
    double caughtAt(double units, double reach) const;
    void mousePressed(QMouseEvent* event);
    void mouseMoved(QMouseEvent* event);
    void draw();
    void step(int by);
    void nudgeCursor(std::size_t which, double units);
    const SnapshotPtr& current() const;

    QCustomPlot* plot_;
    std::unique_ptr<GridDrawing> drawing_;
    std::unique_ptr<FrozenFrame> frame_;
    quint64 selected_ = 0;
    Cursors cursors_;
    std::size_t movedLast_ = 0;  // of them
    EvidencePlaces evidence_;
    SnapshotPtr before_;
    std::optional<std::size_t> dragged_;  // the cursor under the mouse
    QToolButton *cursorsButton_, *wholeButton_;
};

}  // namespace trueunit
