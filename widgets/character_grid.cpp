// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/character_grid.h"

#include <qcustomplot.h>

#include <QKeyEvent>
#include <QPicture>
#include <QToolButton>
#include <QVBoxLayout>

#include "widgets/grid_drawing.h"
#include "widgets/grid_flags.h"
#include "widgets/grid_heading.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kCursorStep = 0.01;  // units, by key
constexpr double kCatch = 5.0;        // pixels, of a cursor near an edge
constexpr double kZoomStep = 1.25;

QToolButton* tool(QWidget* parent, const QString& text, const QString& tip) {
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setToolTip(tip);
    button->setAccessibleName(tip);
    button->setFont(theme::text(theme::kSmallPx));
    button->setFocusPolicy(Qt::TabFocus);
    return button;
}

}  // namespace

CharacterGrid::CharacterGrid(QWidget* parent)
    : Panel(Words::tr("Character on the grid"), parent), plot_(new QCustomPlot(this)) {
    setFocusPolicy(Qt::StrongFocus);
    drawing_ = std::make_unique<GridDrawing>(*plot_);
    plot_->setObjectName(QStringLiteral("plot"));
    plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    plot_->axisRect()->setRangeDrag(Qt::Horizontal);
    plot_->axisRect()->setRangeZoom(Qt::Horizontal);
    bodyLayout()->addWidget(plot_);
    cursorsButton_ = tool(this, Words::tr("Cursors"),
                          Words::tr("Show or hide the two cursors (C); one that is dragged catches on edges, or "
                                    "where none is on boundaries; with Ctrl it does not"));
    cursorsButton_->setCheckable(true);
    wholeButton_ = tool(this, Words::tr("Whole"), Words::tr("Show the whole character (Home)"));
    addTool(cursorsButton_);
    addTool(wholeButton_);
    connect(cursorsButton_, &QToolButton::clicked, this, &CharacterGrid::toggleCursors);
    connect(wholeButton_, &QToolButton::clicked, this, &CharacterGrid::resetView);
    connectMouse();
    setToolTip(withOutRule(
        Words::tr("Measured against the nominal unit: at a wrong speed the later instants are further off. The plot of "
                  "displacement takes the sender's own speed instead.")));
    draw();
}

CharacterGrid::~CharacterGrid() = default;

void CharacterGrid::connectMouse() {
    connect(plot_, &QCustomPlot::mousePress, this, &CharacterGrid::mousePressed);
    connect(plot_, &QCustomPlot::mouseMove, this, &CharacterGrid::mouseMoved);
    connect(plot_, &QCustomPlot::mouseRelease, this, [this] {
        dragged_.reset();
        plot_->setInteraction(QCP::iRangeDrag, true);
    });
    connect(plot_, &QCustomPlot::mouseDoubleClick, this, [this](QMouseEvent* event) {
        const QPointF at = event->position();
        if (!drawing_->content().chosen || !plot_->axisRect()->rect().contains(at.toPoint())) return;
        emit noteRequested(plot_->xAxis->pixelToCoord(at.x()), plot_->yAxis->pixelToCoord(at.y()));
    });
    connect(plot_->xAxis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this, [this] {
        drawing_->keepInRange();
        wholeButton_->setEnabled(!drawing_->isWhole());
    });
    wholeButton_->setEnabled(false);
}

const SnapshotPtr& CharacterGrid::current() const {
    return frame_ ? frame_->snapshot : snapshotPtr();  // NOLINT(clang-analyzer-core*): loses sight of the unique_ptr
}

void CharacterGrid::refresh(const Snapshot& snapshot) {
    if (frame_) return;
    const auto& drawn = drawing_->content();
    const auto next = traceOf(snapshot, selected_);
    const bool sameTrace = drawn.chosen == next && drawn.snapshot && !drawn.snapshot->traces.empty() &&
                           !snapshot.traces.empty() && drawn.snapshot->traces.back() == snapshot.traces.back();
    if (sameTrace && drawn.snapshot->gridUnitSeconds == snapshot.gridUnitSeconds) return;  // no new character
    if (!next && selected_ != 0) selected_ = 0;                                            // it has left the window
    draw();
}

void CharacterGrid::showFrame(const FrozenFrame& frame) {
    frame_ = std::make_unique<FrozenFrame>(frame);
    if (!frame_->snapshot) frame_->snapshot = snapshotPtr();
    selected_ = frame.characterNumber;
    cursors_ = frame.cursors;
    draw();
}

void CharacterGrid::showLive() {
    if (!frame_) return;
    frame_.reset();
    selected_ = 0;
    draw();
}

void CharacterGrid::select(quint64 number) {
    if (number == selected_) return;
    selected_ = traceOf(*current(), number) ? number : 0;
    if (frame_) frame_->characterNumber = selected_;
    draw();
}

void CharacterGrid::setBefore(const SnapshotPtr& before) {
    before_ = before;
    draw();
}

void CharacterGrid::setCursors(const Cursors& cursors) {
    if (cursors == cursors_) return;
    movedLast_ = cursors[1] && cursors[1] != cursors_[1] ? 1 : 0;
    cursors_ = cursors;
    draw();
    emit cursorsChanged(cursors_);
}

void CharacterGrid::setEvidence(const EvidencePlaces& places) {
    evidence_ = places;
    draw();
}

void CharacterGrid::draw() {
    GridContent content{current(), traceOf(*current(), selected_), cursors_, {}, evidence_, before_};
    if (frame_) content.notes = frame_->notes;
    const GridHeading heading = headingOf(content, isFrozen());
    setRemark(heading.remark, Tone::quiet, heading.shorter);
    describe(heading.description);
    drawing_->setContent(std::move(content));
    cursorsButton_->setChecked(cursors_[0] || cursors_[1]);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

QString CharacterGrid::cursorText() const {
    QStringList lines;
    for (const QString& line : cursorLines(cursors_, *current()))
        if (!line.isEmpty()) lines << line;
    return lines.join(u'\n');
}

double CharacterGrid::noteUnits() const {
    const auto &last = cursors_[movedLast_], &other = cursors_[1 - movedLast_];
    return last ? *last : other ? *other : furthestOut(drawing_->content(), plot_->xAxis->range().center());
}

QPoint CharacterGrid::placeOf(double units, double level) const {
    return plot_->pos() + QPointF(plot_->xAxis->coordToPixel(units), plot_->yAxis->coordToPixel(level)).toPoint();
}

int CharacterGrid::flagCount() const { return static_cast<int>(flagsOf(drawing_->content()).size()); }

void CharacterGrid::resetView() {
    drawing_->showWhole();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void CharacterGrid::zoom(double factor) {
    plot_->xAxis->scaleRange(1.0 / factor);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void CharacterGrid::toggleCursors() { setCursors(cursors_[0] || cursors_[1] ? Cursors{} : cursorsToBegin()); }

// Where they read something: B at the edge furthest out, A at its ideal boundary, or a unit before it where these meet.
Cursors CharacterGrid::cursorsToBegin() const {
    constexpr double kMeet = 0.03;  // units
    const QCPRange range = plot_->xAxis->range();
    const double edge = furthestOut(drawing_->content(), range.upper + 1.0);
    const double boundary = std::round(edge) - (std::abs(edge - std::round(edge)) < kMeet ? 1.0 : 0.0);
    if (range.contains(edge) && range.contains(boundary)) return {boundary, edge};
    return {range.lower + range.size() / 3, range.upper - range.size() / 3};
}

void CharacterGrid::mousePressed(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    dragged_ = drawing_->cursorAt(event->position().x());
    plot_->setInteraction(QCP::iRangeDrag, !dragged_);
}

void CharacterGrid::mouseMoved(QMouseEvent* event) {
    const double x = event->position().x();
    if (!dragged_) {
        plot_->setCursor(drawing_->cursorAt(x) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        return;
    }
    const QCPRange range = plot_->xAxis->range();
    Cursors next = cursors_;
    const double reach =
        event->modifiers() & Qt::ControlModifier ? 0.0 : range.size() * kCatch / plot_->axisRect()->width();
    next[*dragged_] = caughtAt(std::clamp(plot_->xAxis->pixelToCoord(x), range.lower, range.upper), reach);
    setCursors(next);
}

// A cursor brought near an instant of the chosen character stands on it; away from all of them, on a boundary.
double CharacterGrid::caughtAt(double units, double reach) const {
    std::optional<double> edge;
    for (const InstantFlag& flag : flagsOf(drawing_->content()))
        if (std::abs(flag.units - units) < std::min(reach, edge ? std::abs(*edge - units) : reach)) edge = flag.units;
    const double boundary = std::round(units);
    return edge ? *edge : std::abs(boundary - units) < reach ? boundary : units;
}

void CharacterGrid::nudgeCursor(std::size_t which, double units) {
    if (!cursors_[which]) return;
    Cursors next = cursors_;
    next[which] = *next[which] + units;
    setCursors(next);
}

void CharacterGrid::step(int by) {
    const auto& traces = current()->traces;
    if (traces.empty()) return;
    const auto chosen = std::find(traces.begin(), traces.end(), traceOf(*current(), selected_));
    const auto last = static_cast<long>(traces.size()) - 1;
    const long index = std::clamp(static_cast<long>(chosen - traces.begin()) + by, 0L, last);
    const quint64 number = index == last && !frame_ ? 0 : traces[static_cast<std::size_t>(index)]->number;
    if (number == selected_) return;
    select(number);
    emit characterSelected(number);
}

void CharacterGrid::keyPressEvent(QKeyEvent* event) {
    const bool left = event->key() == Qt::Key_Left;
    const int way = left ? -1 : 1;
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Right:
            if (event->modifiers() & Qt::ShiftModifier)
                nudgeCursor(0, way * kCursorStep);
            else if (event->modifiers() & Qt::ControlModifier)
                nudgeCursor(1, way * kCursorStep);
            else
                step(way);
            return;
        case Qt::Key_C:
            toggleCursors();
            return;
        case Qt::Key_Home:
            resetView();
            return;
        case Qt::Key_Plus:
            zoom(kZoomStep);
            return;
        case Qt::Key_Minus:
            zoom(1.0 / kZoomStep);
            return;
        case Qt::Key_N:
            if (drawing_->content().chosen) emit noteRequested(noteUnits(), 0.5);
            return;
        default:
            Panel::keyPressEvent(event);
    }
}

void CharacterGrid::resizeEvent(QResizeEvent* event) {
    Panel::resizeEvent(event);
    draw();
}

void CharacterGrid::paintFrame(const FrozenFrame& frame, QPainter& painter, const QRectF& area) {
    QCustomPlot plot;
    plot.resize(area.size().toSize());
    GridDrawing drawing(plot);
    plot.setBackground(QBrush(Qt::NoBrush));  // the paper's own
    drawing.setContent(contentOf(frame));
    drawing.showWhole();
    QPicture picture;
    QCPPainter recorder(&picture);
    recorder.setMode(QCPPainter::pmVectorized);
    plot.toPainter(&recorder, static_cast<int>(area.width()), static_cast<int>(area.height()));
    recorder.end();
    // A picture is played back in its own resolution; the area is meant in the painter's.
    const double ratio = double(picture.logicalDpiX()) / painter.device()->logicalDpiX();
    painter.save();
    painter.translate(area.topLeft());
    painter.scale(ratio, ratio);
    painter.drawPicture(QPointF(0, 0), picture);
    painter.restore();
}

}  // namespace trueunit
