// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/trail_view.h"

#include <qcustomplot.h>

#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/report/nudge_words.h"
#include "widgets/plot_style.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/trail_foot.h"
#include "widgets/trail_nudges.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr int kTrailTop = 9;                // pixels above the drawing, without nudges
constexpr int kTrailFoot = 26;              // pixels below it: the words stand clear of the lowest figure
constexpr int kOneRow = 55, kMostRows = 4;  // pixels of height for each row of words above the drawing

QString spanWords(double seconds) {
    if (seconds == 60.0) return Words::tr("one minute");
    if (seconds == 120.0) return Words::tr("two minutes");
    if (std::fmod(seconds, 60.0) == 0.0) return Words::tr("%1 minutes").arg(seconds / 60.0, 0, 'f', 0);
    return Words::tr("%1 seconds").arg(seconds, 0, 'f', 0);
}

QString trailTitle(TrailOf of) {
    return of == TrailOf::bias ? Words::tr("Trail of the bias") : Words::tr("Trail of the speed");
}

}  // namespace

TrailView::TrailView(QWidget* parent)
    : Panel(trailTitle(TrailOf::bias), parent), plot_(new QCustomPlot(this)), speedButton_(new QToolButton(this)) {
    dress();
    makeTool();
    bodyLayout()->addWidget(plot_);
    connect(plot_, &QCustomPlot::beforeReplot, this, &TrailView::rule);
    setSpan(span_);
}

void TrailView::dress() {
    dressPlot(*plot_);
    plot_->setAttribute(Qt::WA_TransparentForMouseEvents);
    plot_->axisRect()->setAutoMargins(QCP::msNone);
    plot_->axisRect()->setMargins(QMargins(34, kTrailTop, 2, kTrailFoot));
    plot_->xAxis->setTickLabelPadding(kTrailFoot - 16);
    band_ = addLimitBand(*plot_);
    nudges_ = new TrailNudges(plot_);
    QColor haze = theme::kBlue;
    haze.setAlpha(40);
    upper_ = plot_->addGraph();
    lower_ = plot_->addGraph();
    changes_ = plot_->addGraph();
    line_ = plot_->addGraph();
    upper_->setPen(Qt::NoPen);
    lower_->setPen(Qt::NoPen);
    upper_->setBrush(haze);
    upper_->setChannelFillGraph(lower_);
    upper_->setAntialiasedFill(false);  // half the cost of the whole plot otherwise
    changes_->setPen(theme::pen(theme::kSecondary));
    changes_->setAdaptiveSampling(false);
    line_->setPen(theme::pen(theme::kInk));
    line_->setAntialiased(true);
}

void TrailView::makeTool() {
    const QString tip = Words::tr(
                            "Show the speed in place of the bias: its error in percent, each point taken over "
                            "the last %1 characters")
                            .arg(kTrailSpeedOver);
    speedButton_->setText(Words::tr("Speed"));
    speedButton_->setToolTip(tip);
    speedButton_->setAccessibleName(tip);
    speedButton_->setFont(theme::text(theme::kSmallPx));
    speedButton_->setFocusPolicy(Qt::TabFocus);
    speedButton_->setCheckable(true);
    addTool(speedButton_);
    connect(speedButton_, &QToolButton::clicked, this, [this](bool on) { setOf(on ? TrailOf::speed : TrailOf::bias); });
}

void TrailView::setOf(TrailOf of) {
    ofFinding_ = false;
    speedButton_->setChecked(of == TrailOf::speed);
    if (of == of_) return;
    of_ = of;
    end_ = 0.0;  // another scale
    setTitle(trailTitle(of));
    draw(shown());
}

void TrailView::setEvidence(const EvidencePlaces& places) {
    if (places.speed && of_ == TrailOf::bias) {
        setOf(TrailOf::speed);
        ofFinding_ = true;
    } else if (!places.speed && ofFinding_) {
        setOf(TrailOf::bias);
    }
}

void TrailView::setSpan(double seconds) {
    span_ = std::clamp(seconds, 10.0, 3600.0);
    plot_->xAxis->setRange(-span_, 0.0);
    draw(shown());
}

// What the nudges did is written above the drawing, where no line runs through it.
void TrailView::makeRoomForWords() {
    const Snapshot& s = shown();
    const auto inView =
        std::count_if(s.nudges.begin(), s.nudges.end(), [&](const Nudge& n) { return n.seconds > s.seconds - span_; });
    const int most = of_ == TrailOf::bias ? std::clamp(plot_->height() / kOneRow, 1, kMostRows) : 0;
    const int rows = std::min(static_cast<int>(inView), most);
    nudges_->setRows(rows);
    const int words = static_cast<int>(std::ceil(rows * TrailNudges::rowHeight()));
    plot_->axisRect()->setMargins(QMargins(34, std::max(kTrailTop, words + 1), 2, kTrailFoot));
}

// The speed is always taken over as many.
std::vector<SmoothingChange> TrailView::changesInView() const {
    if (of_ == TrailOf::speed) return {};
    std::vector<SmoothingChange> changes = smoothingChanges(shown().trail);
    std::erase_if(changes, [&](const SmoothingChange& c) { return c.seconds < shown().seconds - span_; });
    return changes;
}

// A rule across the drawing at each.
void TrailView::ruleChanges(const std::vector<SmoothingChange>& changes) {
    QVector<double> x, y;
    for (const SmoothingChange& change : changes) {
        const double at = change.seconds - shown().seconds;
        x << at << at << at;
        y << -end_ << end_ << std::numeric_limits<double>::quiet_NaN();
    }
    changes_->setData(x, y, true);
}

// The words below stand inside the ends, whatever the width.
void TrailView::rule() {
    makeRoomForWords();
    rulePercentAxis(*plot_, -end_, end_, drawingHeight(*plot_));
    const std::vector<SmoothingChange> changes = changesInView();
    ruleChanges(changes);
    const QString first = Words::tr("%1 ago").arg(spanWords(span_)),
                  last = frozen_ ? Words::tr("frozen") : Words::tr("now");
    const double secondsPerPixel = span_ / drawingWidth(*plot_);
    TrailFoot foot(QFontMetricsF(plot_->xAxis->tickLabelFont()), secondsPerPixel);
    foot.addCentred(-span_ + 0.5 * foot.widthOf(first), first);
    foot.addCentred(-0.5 * foot.widthOf(last) - 2 * secondsPerPixel, last);
    foot.add(changes, shown().options.windowCharacters == 0, shown().seconds, -span_ + foot.widthOf(first),
             -foot.widthOf(last) - 2 * secondsPerPixel);
    plot_->xAxis->setTicker(foot.ticker());
}

void TrailView::setFrozen(bool frozen) {
    if (frozen == frozen_) return;
    frozen_ = frozen;
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

int TrailView::pointsShown() const {
    int count = 0;
    for (auto it = line_->data()->constBegin(); it != line_->data()->constEnd(); ++it) count += !std::isnan(it->value);
    return count;
}

void TrailView::refresh(const Snapshot& snapshot) {
    // "Now" moves all the time; without a new point the line waits until it would move by half a pixel.
    const TrailPoint newest = snapshot.trail.empty() ? TrailPoint{} : snapshot.trail.back();
    const double moved = std::abs(snapshot.seconds - drawnSeconds_) * drawingWidth(*plot_) / span_;
    const Ground ground{newest.number,
                        newest.biasPercent,
                        snapshot.limits.biasPercent,
                        snapshot.limits.speedPercent,
                        snapshot.reading.speed.nominalBaud,
                        snapshot.nudges.size()};
    if (ground == ground_ && moved < 0.5) return;
    ground_ = ground;
    drawnSeconds_ = snapshot.seconds;
    draw(snapshot);
}

void TrailView::draw(const Snapshot& snapshot) {
    drawn_ = trailLine(snapshot, of_, snapshot.seconds - span_);
    fillLine(snapshot.seconds);
    nudges_->setSnapshot(snapshotPtr());
    nudges_->setVisible(of_ == TrailOf::bias);
    setLimitBand(*band_, drawn_.limit);
    chooseRange();
    say(snapshot);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void TrailView::fillLine(double now) {
    QVector<double> x, y, low, high;
    for (const TrailLine::Point& p : drawn_.points) {
        const double at = p.seconds - now;
        if (!x.isEmpty() && at - x.back() > kTrailBreakSeconds) {
            x.push_back(at - 1e-3);
            for (QVector<double>* v : {&y, &low, &high}) v->push_back(std::numeric_limits<double>::quiet_NaN());
        }
        x.push_back(at);
        y.push_back(p.percent);
        low.push_back(p.percent - p.uncertainty);
        high.push_back(p.percent + p.uncertainty);
    }
    line_->setData(x, y, true);
    lower_->setData(x, low, true);
    upper_->setData(x, high, true);
}

void TrailView::chooseRange() {
    const double step = trailStep(of_);
    double furthest = std::max(1.2 * drawn_.limit, 0.2 * step);
    for (const TrailLine::Point& p : drawn_.points) furthest = std::max(furthest, std::abs(p.percent) + 0.2 * step);
    const double wanted = step * std::ceil(furthest / step);
    // Taken over at once when the line would leave the scale, back only by a whole step more.
    if (wanted > end_ || wanted < end_ - step) end_ = wanted;
}

QStringList TrailView::remarks() const {
    if (of_ == TrailOf::bias)
        return {Words::tr("last %1").arg(spanWords(span_)), Words::tr("last %1 s").arg(span_, 0, 'f', 0)};
    const QString over = Words::tr("over %1 characters").arg(kTrailSpeedOver);
    if (drawn_.aboutMean)
        return {Words::tr("about its mean, % of it, over %1 characters").arg(kTrailSpeedOver),
                Words::tr("% of its mean"), over};
    return {Words::tr("% of nominal, over %1 characters").arg(kTrailSpeedOver), over};
}

void TrailView::say(const Snapshot& s) {
    const QString learning = of_ == TrailOf::bias ? told(learningWords(s)) : QString();
    QStringList words = remarks();
    if (!learning.isEmpty()) words = {learning, learning.section(QLatin1Char(':'), 1).trimmed()};
    setRemark(words.takeFirst(), Tone::quiet, words);
    describe(drawn_.points.empty() ? whyNothing(s) : described(s));
}

QString TrailView::described(const Snapshot& s) const {
    const auto lower = [](const TrailLine::Point& a, const TrailLine::Point& b) { return a.percent < b.percent; };
    const auto [least, most] = std::minmax_element(drawn_.points.begin(), drawn_.points.end(), lower);
    const QString between = Words::tr("Between %1 and %2 percent in the last %3, now %4")
                                .arg(signedNumber(least->percent, 1), signedNumber(most->percent, 1), spanWords(span_),
                                     signedNumber(drawn_.points.back().percent, 1));
    if (of_ == TrailOf::speed) return title() + QStringLiteral(". ") + between;
    const std::vector<SmoothingChange> changes = changesInView();
    return between + (changes.empty() ? QString() : QStringLiteral(", ") + overWords(changes.back().over)) +
           (s.nudges.empty() ? QString() : QStringLiteral("; ") + told(adviceAfter(s).did));
}

}  // namespace trueunit
