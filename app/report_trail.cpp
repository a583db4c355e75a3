// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_trail.h"

#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "app/page_flow.h"
#include "app/report_ink.h"
#include "core/report/smoothing.h"
#include "core/report/trail_line.h"
#include "widgets/trail_nudges.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

constexpr int kRows = 3;      // of words above, where nudges follow quickly
constexpr double kRow = 3.2;  // mm
constexpr double kTrailHeight = 30.0, kWithHeading = 47.0 + kRow * (kRows - 1);
constexpr double kFollows = 42.0;       // mm: instrument and caution, which come after it
constexpr double kLeastSeconds = 60.0;  // less of a bias that nobody turned shows nothing
constexpr double kSoonSeconds = 15.0;   // a turned eccentric does, and a speed that is off
const QColor kBand(0xe3, 0xef, 0xe7), kFrame(0x8a, 0x97, 0xa1);

class PaperTrail {
public:
    PaperTrail(PageFlow& page, const FrozenFrame& frame, TrailOf of, const TrailLine& line)
        : page_(page),
          frame_(frame),
          ofBias_(of == TrailOf::bias),
          line_(line),
          area_(page.area(12.0, PageFlow::kTextWidth - 12.0, kTrailHeight)) {
        const double step = trailStep(of);
        most_ = std::max(line_.limit, 0.2 * step);
        for (const TrailLine::Point& p : line_.points) most_ = std::max(most_, std::abs(p.percent));
        most_ = step * std::ceil(1.1 * most_ / step);
    }

    void draw() const {
        QPainter& p = page_.painter();
        p.save();
        drawScale(p);
        drawFoot(p);
        drawLine(p);
        if (ofBias_) drawMoments(p);
        p.restore();
    }

private:
    double x(double seconds) const {
        const double first = line_.points.front().seconds;
        return area_.left() + (seconds - first) / (line_.points.back().seconds - first) * area_.width();
    }
    double y(double percent) const { return area_.center().y() - percent / most_ * area_.height() / 2.0; }

    void drawScale(QPainter& p) const {
        p.fillRect(QRectF(QPointF(area_.left(), y(line_.limit)), QPointF(area_.right(), y(-line_.limit))), kBand);
        p.setFont(PageFlow::font(7.5));
        for (const double percent : {-most_, 0.0, most_}) {
            p.setPen(QPen(kFrame, page_.dots(0.15)));
            p.drawLine(QPointF(area_.left(), y(percent)), QPointF(area_.right(), y(percent)));
            p.setPen(kFaint);
            p.drawText(QRectF(area_.left() - page_.dots(14.0), y(percent) - page_.dots(2.0), page_.dots(12.5),
                              page_.dots(4.0)),
                       Qt::AlignRight | Qt::AlignVCenter, signedNumber(percent, 0));
        }
    }

    void drawFoot(QPainter& p) const {
        const QRectF below(area_.left(), area_.bottom() + page_.dots(0.8), area_.width(), page_.dots(4.0));
        const double minutes = (line_.points.back().seconds - line_.points.front().seconds) / 60.0;
        QRectF first, last;
        p.setPen(kFaint);
        p.drawText(below, Qt::AlignLeft | Qt::AlignTop, Words::tr("%1 min before").arg(number(minutes, 1)), &first);
        p.drawText(below, Qt::AlignRight | Qt::AlignTop, Words::tr("this moment"), &last);
        if (ofBias_) drawChanges(p, QRectF(QPointF(first.right(), below.top()), QPointF(last.left(), below.bottom())));
    }

    // Where the window was changed: a rule across, and in the room below, as near as it can be, what holds from there
    // on; the newest first.
    void drawChanges(QPainter& p, QRectF room) const {
        const std::vector<SmoothingChange> changes = smoothingChanges(frame_.snapshot->trail);
        const bool all = frame_.snapshot->options.windowCharacters == 0;
        const double gap = page_.dots(2.0);
        for (auto change = changes.rbegin(); change != changes.rend(); ++change) {
            const double at = x(change->seconds);
            p.setPen(QPen(kFaint, page_.dots(0.2)));
            p.drawLine(QPointF(at, area_.top()), QPointF(at, area_.bottom()));
            const QString words = fromHereWords(change->over, all && change == changes.rbegin());
            const double half = QFontMetricsF(p.font(), p.device()).horizontalAdvance(words) / 2.0 + gap;
            if (room.width() < 2.0 * half) continue;
            const double centre = std::clamp(at + half, room.left() + half, room.right() - half);
            p.drawText(QRectF(centre - half, room.top(), 2.0 * half, room.height()), Qt::AlignHCenter | Qt::AlignTop,
                       words);
            room.setRight(centre - half + gap);
        }
    }

    // Each nudge as an arrow head the way it went; above, where there is room, from what to what, and where "before"
    // is.
    void drawMoments(QPainter& p) const {
        p.setFont(PageFlow::font(7.5));
        std::vector<NudgeWords> all;
        const auto add = [&](double seconds, const QString& words) {
            all.push_back({x(seconds), words, QFontMetricsF(p.font(), p.device()).horizontalAdvance(words)});
        };
        for (const Nudge& n : frame_.snapshot->nudges) {
            if (!isShown(n.seconds)) continue;
            drawHead(p, n);
            add(n.seconds, Words::tr("%1 to %2").arg(signedNumber(n.before.value, 1), signedNumber(n.after.value, 1)));
        }
        if (frame_.before && isShown(frame_.before->seconds)) add(frame_.before->seconds, Words::tr("before"));
        std::sort(all.begin(), all.end(), [](const NudgeWords& a, const NudgeWords& b) { return a.x > b.x; });
        for (const NudgePlace& place : placeNudgeWords(all, area_.left(), area_.right(), kRows)) {
            p.setPen(QPen(kFaint, page_.dots(0.2), Qt::DashLine));
            const double top = area_.top() - page_.dots(place.row > 0 ? kRow * place.row : 0.0);
            p.drawLine(QPointF(place.words->x, top), QPointF(place.words->x, area_.bottom()));
            p.setPen(kFaint);
            p.drawText(QPointF(place.left, area_.top() - page_.dots(1.2 + kRow * place.row)), place.words->words);
        }
    }

    bool isShown(double seconds) const {
        return seconds >= line_.points.front().seconds && seconds <= line_.points.back().seconds;
    }

    void drawHead(QPainter& p, const Nudge& n) const {
        const double half = page_.dots(0.9), way = n.step.value > 0.0 ? -half : half;
        const QPointF at(x(n.seconds), y(0.5 * (n.before.value + n.after.value)));
        p.setPen(Qt::NoPen);
        p.setBrush(kInk);
        p.drawPolygon(QPolygonF({at + QPointF(-half, -way), at + QPointF(half, -way), at + QPointF(0.0, way)}));
    }

    void drawLine(QPainter& p) const {
        p.setPen(QPen(kInk, page_.dots(0.35)));
        QPolygonF run;
        double last = line_.points.front().seconds;
        for (const TrailLine::Point& point : line_.points) {
            if (point.seconds - last > kTrailBreakSeconds) {
                p.drawPolyline(run);
                run.clear();
            }
            run << QPointF(x(point.seconds), y(point.percent));
            last = point.seconds;
        }
        p.drawPolyline(run);
    }

    PageFlow& page_;
    const FrozenFrame& frame_;
    const bool ofBias_;
    const TrailLine& line_;
    QRectF area_;
    double most_ = 0.0;  // percent, at the ends of the scale
};

// The speed is shown where a fault rests on it.
bool speedMatters(const Reading& r) {
    const auto& findings = r.findings;
    return r.speed.wanderPercent || (findings && std::any_of(findings->begin(), findings->end(), [](const Finding& f) {
                                         return f.seenAt.speed && isSureFault(f) && !f.minor;
                                     }));
}

QString trailHeading(TrailOf of, const TrailLine& line) {
    if (of == TrailOf::bias) return Words::tr("Bias until this moment, percent of a unit");
    return (line.aboutMean ? Words::tr("Speed until this moment, percent off its mean, over %1 characters")
                           : Words::tr("Speed until this moment, percent off nominal, over %1 characters"))
        .arg(kTrailSpeedOver);
}

void drawTrailOf(PageFlow& page, const FrozenFrame& frame, TrailOf of) {
    const TrailLine line = trailLine(*frame.snapshot, of);
    const bool nudged = of == TrailOf::bias && !frame.snapshot->nudges.empty();
    const double least = nudged || of == TrailOf::speed ? kSoonSeconds : kLeastSeconds;
    if (line.points.empty() || line.points.back().seconds - line.points.front().seconds <= least) return;
    if (page.room() < kWithHeading + kFollows) return;
    page.heading(trailHeading(of, line));
    page.space(nudged && frame.snapshot->nudges.size() > 1 ? 4.0 + kRow * (kRows - 1) : 4.0);
    PaperTrail(page, frame, of, line).draw();
    page.space(kTrailHeight + 6.0);
}

}  // namespace

void drawTrail(PageFlow& page, const FrozenFrame& frame) {
    if (speedMatters(frame.snapshot->reading)) drawTrailOf(page, frame, TrailOf::speed);
    drawTrailOf(page, frame, TrailOf::bias);
}

}  // namespace trueunit
