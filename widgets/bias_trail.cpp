// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/bias_trail.h"

#include <qcustomplot.h>

#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/report/nudge_words.h"
#include "widgets/plot_style.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/trail_nudges.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kBreakSeconds = 3.0;       // longer without a character: the line is not drawn through
constexpr double kTrailStep = 5.0;          // percent; the scale moves in these
constexpr int kTrailTop = 9;                // pixels above the drawing, without nudges
constexpr int kTrailFoot = 26;              // pixels below it: the words stand clear of the lowest figure
constexpr double kFootGap = 10.0;           // pixels between words below it
constexpr int kOneRow = 55, kMostRows = 4;  // pixels of height for each row of words above the drawing

QString spanWords(double seconds) {
    if (seconds == 60.0) return Words::tr("one minute");
    if (seconds == 120.0) return Words::tr("two minutes");
    if (std::fmod(seconds, 60.0) == 0.0) return Words::tr("%1 minutes").arg(seconds / 60.0, 0, 'f', 0);
    return Words::tr("%1 seconds").arg(seconds, 0, 'f', 0);
}

// Words below the drawing; all places and widths in seconds.
class FootWords {
public:
    FootWords(const QFontMetricsF& metrics, double secondsPerPixel)
        : metrics_(metrics), secondsPerPixel_(secondsPerPixel), ticker_(new QCPAxisTickerText) {}

    double widthOf(const QString& words) const { return metrics_.horizontalAdvance(words) * secondsPerPixel_; }
    void addCentred(double at, const QString& words) { ticker_->addTick(at, words); }
    QSharedPointer<QCPAxisTickerText> ticker() const { return ticker_; }

    // What each change of the window means, as near to it as there is room from left to right; the newest first.
    void add(const std::vector<SmoothingChange>& changes, double now, double left, double right) {
        const double gap = kFootGap * secondsPerPixel_;
        for (auto change = changes.rbegin(); change != changes.rend(); ++change) {
            const QString words = fromHereWords(change->over);
            const double half = 0.5 * widthOf(words);
            if (right - left < 2 * (half + gap)) return;
            const double at = std::clamp(change->seconds - now, left + gap + half, right - gap - half);
            addCentred(at, words);
            right = at - half;
        }
    }

private:
    const QFontMetricsF metrics_;
    const double secondsPerPixel_;
    QSharedPointer<QCPAxisTickerText> ticker_;
};

}  // namespace

BiasTrail::BiasTrail(QWidget* parent) : Panel(Words::tr("Trail of the bias"), parent), plot_(new QCustomPlot(this)) {
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
    bodyLayout()->addWidget(plot_);
    connect(plot_, &QCustomPlot::beforeReplot, this, &BiasTrail::rule);
    setSpan(span_);
}

void BiasTrail::setSpan(double seconds) {
    span_ = std::clamp(seconds, 10.0, 3600.0);
    plot_->xAxis->setRange(-span_, 0.0);
    draw(shown());
}

// What the nudges did is written above the drawing, where no line runs through it.
void BiasTrail::makeRoomForWords() {
    const Snapshot& s = shown();
    const auto inView =
        std::count_if(s.nudges.begin(), s.nudges.end(), [&](const Nudge& n) { return n.seconds > s.seconds - span_; });
    const int rows = std::min<int>(static_cast<int>(inView), std::clamp(plot_->height() / kOneRow, 1, kMostRows));
    nudges_->setRows(rows);
    const int words = static_cast<int>(std::ceil(rows * TrailNudges::rowHeight()));
    plot_->axisRect()->setMargins(QMargins(34, std::max(kTrailTop, words + 1), 2, kTrailFoot));
}

std::vector<SmoothingChange> BiasTrail::changesInView() const {
    std::vector<SmoothingChange> changes = smoothingChanges(shown().trail);
    std::erase_if(changes, [&](const SmoothingChange& c) { return c.seconds < shown().seconds - span_; });
    return changes;
}

// A rule across the drawing at each.
void BiasTrail::ruleChanges(const std::vector<SmoothingChange>& changes) {
    QVector<double> x, y;
    for (const SmoothingChange& change : changes) {
        const double at = change.seconds - shown().seconds;
        x << at << at << at;
        y << -end_ << end_ << std::numeric_limits<double>::quiet_NaN();
    }
    changes_->setData(x, y, true);
}

// The words below stand inside the ends, whatever the width.
void BiasTrail::rule() {
    makeRoomForWords();
    rulePercentAxis(*plot_, -end_, end_, drawingHeight(*plot_));
    const std::vector<SmoothingChange> changes = changesInView();
    ruleChanges(changes);
    const QString first = Words::tr("%1 ago").arg(spanWords(span_)),
                  last = frozen_ ? Words::tr("frozen") : Words::tr("now");
    const double secondsPerPixel = span_ / drawingWidth(*plot_);
    FootWords foot(QFontMetricsF(plot_->xAxis->tickLabelFont()), secondsPerPixel);
    foot.addCentred(-span_ + 0.5 * foot.widthOf(first), first);
    foot.addCentred(-0.5 * foot.widthOf(last) - 2 * secondsPerPixel, last);
    foot.add(changes, shown().seconds, -span_ + foot.widthOf(first), -foot.widthOf(last) - 2 * secondsPerPixel);
    plot_->xAxis->setTicker(foot.ticker());
}

void BiasTrail::setFrozen(bool frozen) {
    if (frozen == frozen_) return;
    frozen_ = frozen;
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

int BiasTrail::pointsShown() const {
    int count = 0;
    for (auto it = line_->data()->constBegin(); it != line_->data()->constEnd(); ++it) count += !std::isnan(it->value);
    return count;
}

void BiasTrail::refresh(const Snapshot& snapshot) {
    // "Now" moves all the time; without a new point the line waits until it would move by half a pixel.
    const TrailPoint newest = snapshot.trail.empty() ? TrailPoint{} : snapshot.trail.back();
    const double moved = std::abs(snapshot.seconds - drawnSeconds_) * drawingWidth(*plot_) / span_;
    const double limit = snapshot.limits.biasPercent;
    const bool same = newest.number == newest_.number && newest.biasPercent == newest_.biasPercent;
    if (same && moved < 0.5 && limit == drawnLimit_ && snapshot.nudges.size() == drawnNudges_) return;
    drawnNudges_ = snapshot.nudges.size();
    newest_ = newest;
    drawnSeconds_ = snapshot.seconds;
    drawnLimit_ = limit;
    draw(snapshot);
}

void BiasTrail::draw(const Snapshot& snapshot) {
    fillLine(snapshot);
    nudges_->setSnapshot(snapshotPtr());
    setLimitBand(*band_, snapshot.limits.biasPercent);
    chooseRange(snapshot);
    say(snapshot);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void BiasTrail::fillLine(const Snapshot& s) {
    QVector<double> x, y, low, high;
    least_ = most_ = 0.0;
    for (const TrailPoint& p : s.trail) {
        const double at = p.seconds - s.seconds;
        if (at < -span_) continue;
        if (!x.isEmpty() && at - x.back() > kBreakSeconds) {
            x.push_back(at - 1e-3);
            for (QVector<double>* v : {&y, &low, &high}) v->push_back(std::numeric_limits<double>::quiet_NaN());
        }
        x.push_back(at);
        y.push_back(p.biasPercent);
        low.push_back(p.biasPercent - p.uncertainty);
        high.push_back(p.biasPercent + p.uncertainty);
        least_ = std::min(least_, p.biasPercent);
        most_ = std::max(most_, p.biasPercent);
    }
    line_->setData(x, y, true);
    lower_->setData(x, low, true);
    upper_->setData(x, high, true);
}

void BiasTrail::chooseRange(const Snapshot& s) {
    const double limit = s.limits.biasPercent;
    const double furthest = std::max({1.2 * limit, most_ + 1.0, 1.0 - least_});
    const double wanted = kTrailStep * std::ceil(furthest / kTrailStep);
    // Taken over at once when the line would leave the scale, back only by a whole step more.
    if (wanted > end_ || wanted < end_ - kTrailStep) end_ = wanted;
}

void BiasTrail::say(const Snapshot& s) {
    const QString learning = told(learningWords(s));
    if (learning.isEmpty())
        setRemark(Words::tr("last %1").arg(spanWords(span_)), Tone::quiet,
                  {Words::tr("last %1 s").arg(span_, 0, 'f', 0)});
    else
        setRemark(learning, Tone::quiet, {learning.section(QLatin1Char(':'), 1).trimmed()});
    if (s.trail.empty()) {
        describe(whyNothing(s));
        return;
    }
    const std::vector<SmoothingChange> changes = changesInView();
    describe(Words::tr("Between %1 and %2 percent in the last %3, now %4")
                 .arg(signedNumber(least_, 1), signedNumber(most_, 1), spanWords(span_),
                      signedNumber(s.trail.back().biasPercent, 1)) +
             (changes.empty() ? QString() : QStringLiteral(", ") + overWords(changes.back().over)) +
             (s.nudges.empty() ? QString() : QStringLiteral("; ") + told(adviceAfter(s).did)));
}

}  // namespace trueunit
