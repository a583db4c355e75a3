// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_grid.h"

#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <span>

#include "app/page_flow.h"
#include "app/report_ink.h"
#include "app/report_text.h"
#include "core/report/shown_trace.h"
#include "widgets/figures.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {
const QColor kOlder(0xa9, 0xb9, 0xc4);
const QColor kBoundary(0x8a, 0x97, 0xa1);
const QColor kCursor(0x14, 0x5f, 0x8c);
constexpr double kFlagTop = 8.6, kFlagWidth = 4.0, kFlagHeight = 3.4;  // mm; of a cursor, above the drawing
// "to mark", or for all of them shorter where a unit has no room for that.
QString endWords(Condition to, const QFontMetricsF& metrics, double room) {
    for (const Condition each : {Condition::mark, Condition::space})
        if (metrics.horizontalAdvance(toWords(each) + Words::tr(", out")) > room)
            return to == Condition::mark ? Words::tr("mark") : Words::tr("space");
    return toWords(to);
}

}  // namespace

ReportGrid::ReportGrid(const FrozenFrame& frame, QRectF area, double dotsPerMm)
    : frame_(frame), snapshot_(*frame.snapshot), area_(area), mm_(dotsPerMm) {
    plot_ = area.adjusted(15.0 * mm_, 9.0 * mm_, -3.0 * mm_, -13.0 * mm_);
    right_ = snapshot_.levels + 1 + std::clamp(snapshot_.options.stopUnits.value_or(1.5), 1.0, 2.0) + 0.2;
}

double ReportGrid::x(double units) const { return plot_.left() + (units - left_) / (right_ - left_) * plot_.width(); }
double ReportGrid::y(double level) const { return plot_.bottom() - (level + 0.16) / 1.32 * plot_.height(); }

void ReportGrid::drawBoundaries(QPainter& p) const {
    p.setFont(PageFlow::font(8.0, QFont::DemiBold));
    const int last = snapshot_.levels + 1;
    for (int k = 0; k <= last; ++k) {
        p.setPen(QPen(kBoundary, 0.2 * mm_));
        p.drawLine(QPointF(x(k), plot_.top()), QPointF(x(k), plot_.bottom()));
        const QString name = elementName(k, snapshot_.levels);
        p.setPen(kFaint);
        const double end = k == last ? right_ : k + 1;
        p.drawText(QRectF(x(k), plot_.top() - 5.5 * mm_, x(end) - x(k), 5.0 * mm_), Qt::AlignCenter, name);
    }
    const double slice = snapshot_.reading.input.slicePercent / 100.0;
    p.setPen(QPen(kBoundary, 0.15 * mm_, Qt::DotLine));
    p.drawLine(QPointF(plot_.left(), y(slice)), QPointF(plot_.right(), y(slice)));
    p.setFont(PageFlow::font(8.0));
    p.setPen(kFaint);
    const auto side = [&](double at, const QString& text) {
        p.drawText(QRectF(area_.left() + 1.0 * mm_, at - 2.5 * mm_, plot_.left() - area_.left() - 2.5 * mm_, 5.0 * mm_),
                   Qt::AlignRight | Qt::AlignVCenter, text);
    };
    side(y(1.0), Words::tr("mark"));
    side(y(0.0), Words::tr("space"));
    side(plot_.bottom() + 3.5 * mm_, Words::tr("% late +"));
    side(plot_.bottom() + 8.0 * mm_, Words::tr("early \u2212"));
}

void ReportGrid::drawTrace(QPainter& p, const CharacterTrace& trace, const QPen& pen) const {
    drawTrace(p, trace, pen, snapshot_.gridUnitSeconds);
}

void ReportGrid::drawTrace(QPainter& p, const CharacterTrace& trace, const QPen& pen, double unitSeconds) const {
    if (unitSeconds <= 0.0 || trace.sampleSeconds <= 0.0) return;
    QPolygonF line;
    for (std::size_t i = 0; i < trace.level.size(); ++i) {
        const double t = trace.firstSampleSeconds + static_cast<double>(i) * trace.sampleSeconds;
        const double units = t / unitSeconds;
        if (units < left_ || units > right_) continue;
        line.append({x(units), y(std::clamp(static_cast<double>(trace.level[i]), -0.15, 1.15))});
    }
    p.setPen(pen);
    p.drawPolyline(line);
}

// The same combination as it came at the moment marked "before", dashed on the grid of its own time.
void ReportGrid::drawBefore(QPainter& p, const CharacterTrace& chosen) const {
    if (!frame_.before) return;
    for (auto t = frame_.before->traces.rbegin(); t != frame_.before->traces.rend(); ++t) {
        if ((*t)->code != chosen.code) continue;
        drawTrace(p, **t, QPen(kFaint, 0.3 * mm_, Qt::DashLine), frame_.before->gridUnitSeconds);
        p.setFont(PageFlow::font(7.5));
        p.drawText(QRectF(plot_.left(), plot_.bottom() + 3.0 * mm_, plot_.width() - 1.0 * mm_, 4.0 * mm_),
                   Qt::AlignRight | Qt::AlignTop, Words::tr("dashed: before"));
        return;
    }
}

void ReportGrid::drawTraces(QPainter& p) const {
    const auto chosen = shownTrace(frame_);
    p.save();
    p.setClipRect(plot_);
    const std::size_t ofWindow = std::max<std::size_t>(snapshot_.windowUsed, 1);
    for (const auto& trace : std::span(snapshot_.traces).last(std::min(ofWindow, snapshot_.traces.size())))
        if (trace != chosen) drawTrace(p, *trace, QPen(kOlder, 0.18 * mm_));
    if (chosen) drawBefore(p, *chosen);
    if (chosen) drawTrace(p, *chosen, QPen(kInk, 0.4 * mm_, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.restore();
}

// Early and late are told by sign and by the side on which the bar lies, not by colour.
void ReportGrid::drawFlags(QPainter& p, const CharacterTrace& trace) const {
    const double row = plot_.bottom() + 3.5 * mm_, unit = x(1.0) - x(0.0);
    for (const TraceInstant& instant : trace.instants) {
        const double at = x(instant.k);
        if (instant.k > snapshot_.levels + 1) continue;
        const bool out = instantIsOut(instant.to, instant.displacementPercent, snapshot_);
        const QColor color = out ? kOut : kInk;
        const double shift = x(instant.k + instant.displacementPercent / 100.0) - at;
        p.fillRect(QRectF(std::min(at, at + shift), plot_.bottom() - 0.9 * mm_, std::abs(shift), 0.9 * mm_), color);
        const QFont font = PageFlow::font(8.5, out ? QFont::Bold : QFont::DemiBold);
        p.setFont(font);
        p.setPen(color);
        const QString text = signedNumber(instant.displacementPercent, 1);
        const QFontMetricsF metrics(font);
        drawFiguresCentred(p, {at, row + metrics.capHeight() / 2.0}, text);
        p.setFont(PageFlow::font(7.0));
        p.setPen(kFaint);
        const QString words = endWords(instant.to, QFontMetricsF(p.font()), unit);
        p.drawText(QRectF(at - 0.5 * unit, row + 2.4 * mm_, unit, 4.0 * mm_), Qt::AlignCenter | Qt::TextDontClip,
                   out ? words + Words::tr(", out") : words);
    }
}

void ReportGrid::drawCursors(QPainter& p) const {
    p.setFont(PageFlow::font(8.0, QFont::Bold));
    for (std::size_t i = 0; i < frame_.cursors.size(); ++i) {
        if (!frame_.cursors[i]) continue;
        const double units = *frame_.cursors[i];
        if (units < left_ || units > right_) continue;
        p.setPen(QPen(kCursor, 0.3 * mm_, i == 0 ? Qt::DashLine : Qt::DashDotLine));
        p.drawLine(QPointF(x(units), plot_.top()), QPointF(x(units), plot_.bottom()));
        // A flag above the drawing, where it hides no trace; those of two cursors fly apart.
        const auto& other = frame_.cursors[1 - i];
        const double side = other && (units < *other || (units == *other && i == 0)) ? -kFlagWidth * mm_ : 0.0;
        const double top = plot_.top() - kFlagTop * mm_;
        const QRectF flag(x(units) + side, top, kFlagWidth * mm_, kFlagHeight * mm_);
        p.drawLine(QPointF(x(units), top), QPointF(x(units), plot_.top()));
        p.fillRect(flag, kCursor);
        p.setPen(Qt::white);
        p.drawText(flag, Qt::AlignCenter, i == 0 ? QStringLiteral("A") : QStringLiteral("B"));
    }
}

void ReportGrid::drawNotes(QPainter& p) const {
    p.setFont(PageFlow::font(7.5, QFont::Bold));
    for (std::size_t i = 0; i < frame_.notes.size(); ++i) {
        const Note& note = frame_.notes[i];
        const QPointF at(x(std::clamp(note.units, left_, right_)), y(std::clamp(note.level, -0.1, 1.1)));
        const QPointF centre = at + QPointF(3.2 * mm_, -3.2 * mm_);  // beside its point, so the signal stays visible
        p.setPen(QPen(kCursor, 0.25 * mm_));
        p.drawLine(at, centre);
        p.setBrush(kCursor);
        p.drawEllipse(at, 0.6 * mm_, 0.6 * mm_);
        p.setBrush(Qt::white);
        p.drawEllipse(centre, 2.3 * mm_, 2.3 * mm_);
        p.drawText(QRectF(centre.x() - 2.3 * mm_, centre.y() - 2.3 * mm_, 4.6 * mm_, 4.6 * mm_), Qt::AlignCenter,
                   QString::number(i + 1));
    }
    p.setBrush(Qt::NoBrush);
}

void ReportGrid::draw(QPainter& p) const {
    p.save();
    p.setPen(QPen(kBoundary, 0.2 * mm_));
    p.drawRoundedRect(area_, 1.2 * mm_, 1.2 * mm_);
    const auto trace = shownTrace(frame_);
    if (!trace || snapshot_.gridUnitSeconds <= 0.0) {
        p.setFont(PageFlow::font(9.0));
        p.setPen(kFaint);
        p.drawText(area_, Qt::AlignCenter, Words::tr("No character had been received when this frame was taken."));
        p.restore();
        return;
    }
    drawBoundaries(p);
    drawTraces(p);
    drawCursors(p);
    drawFlags(p, *trace);
    drawNotes(p);
    p.restore();
}

}  // namespace trueunit
