// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/displacement_plot.h"

#include <qcustomplot.h>

#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/report/judge.h"
#include "core/report/shown_instants.h"
#include "widgets/displacement_marks.h"
#include "widgets/plot_style.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kRangeStep = 5.0;  // percent
constexpr double kWordRoom = 1.15;  // beyond a dot, for the word "out"
constexpr double kLargestRange = 60.0;

}  // namespace

DisplacementPlot::DisplacementPlot(QWidget* parent)
    : Panel(Words::tr("Displacement by instant"), parent), plot_(new QCustomPlot(this)) {
    dressPlot(*plot_);
    plot_->setAttribute(Qt::WA_TransparentForMouseEvents);
    plot_->axisRect()->setAutoMargins(QCP::msNone);
    plot_->axisRect()->setMargins(QMargins(34, 24, 2, 20));
    band_ = addLimitBand(*plot_);
    marks_ = new DisplacementMarks(plot_);
    bodyLayout()->addWidget(plot_);
    connect(plot_, &QCustomPlot::beforeReplot, this,
            [this] { rulePercentAxis(*plot_, -range_, range_, drawingHeight(*plot_)); });
    setToolTip(
        withOutRule(Words::tr("Measured at the sender's own speed, so that a wrong speed moves nothing here; where a "
                              "fault pulls at the speed as read, at the speed without it. The "
                              "grid takes the nominal unit instead.")) +
        QStringLiteral("<p>%1</p>")
            .arg(Words::tr(
                "A lozenge is the mean at the moment before (B). From it a stroke leads to the mean of now; where "
                "there is none, the two do not differ by more than chance.")) +
        QStringLiteral("<p>%1</p>")
            .arg(
                Words::tr("Of a long window the dots are its newest characters; short strokes are the earliest and the "
                          "latest of all.")));
    refresh(shown());
}

void DisplacementPlot::setEvidence(const EvidencePlaces& places) {
    marks_->setEvidence(places);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void DisplacementPlot::refresh(const Snapshot& snapshot) {
    marks_->setSnapshot(snapshotPtr());
    nameColumns(snapshot.levels);
    setLimitBand(*band_, snapshot.limits.biasPercent);
    chooseRange(snapshot);
    say(snapshot);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void DisplacementPlot::setBefore(const SnapshotPtr& before) {
    marks_->setBefore(before);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void DisplacementPlot::chooseRange(const Snapshot& s) {
    double furthest = 1.2 * s.limits.biasPercent;
    for (const DisplacementDot& dot : s.dots) furthest = std::max(furthest, kWordRoom * std::abs(dot.percent) + 1.0);
    for (const InstantReading& i : shownInstants(s.reading).instants)
        furthest = std::max({furthest, i.maxPercent + 1.0, 1.0 - i.minPercent});
    const double wanted = std::min(kLargestRange, kRangeStep * std::ceil(furthest / kRangeStep));
    // Widens at once, narrows only by more than a step, so that one stray dot does not make it breathe.
    if (wanted > range_ || wanted < range_ - kRangeStep) range_ = wanted;
}

void DisplacementPlot::nameColumns(int levels) {
    if (levels == levels_) return;
    levels_ = levels;
    const QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    for (int k = 1; k <= levels + 1; ++k) ticker->addTick(k, elementName(k, levels));
    plot_->xAxis->setTicker(ticker);
    plot_->xAxis->setRange(0.5, levels + 1.5);
}

// At what speed, the longest words first.
QStringList DisplacementPlot::speedWords(const Snapshot& s) {
    if (shownInstants(s.reading).withoutTheFault)
        return {Words::tr("% late (up) at the speed without the fault"), Words::tr("% late, fault set aside"),
                Words::tr("fault set aside")};
    const JudgedReading* speed = judged(s.reading.verdict, "error_percent");
    const bool out = speed && speed->judgement == Judgement::out;  // which the grid shows, and this does not
    const QString brief = out ? Words::tr("% late, own speed (out)") : Words::tr("% late, own speed");
    const auto n = static_cast<long>(s.windowUsed);
    const bool wider = n > 0 && n < s.reading.speed.over;
    return {wider ? Words::tr("% late (up) at the speed over the last %1").arg(s.reading.speed.over)
            : out ? Words::tr("% late (up) at the sender's own speed, which is out")
                  : Words::tr("% late (up) at the sender's own speed"),
            brief, Words::tr("own speed")};
}

void DisplacementPlot::say(const Snapshot& s) {
    const auto n = static_cast<long>(s.windowUsed);
    QStringList speed = speedWords(s);
    const QString count = QStringLiteral(", ") + counted(n, Words::tr("character"), Words::tr("characters"));
    setRemark(n == 0 ? speed.front() : speed.front() + count, Tone::quiet, speed);
    QStringList said;
    for (const InstantReading& i : shownInstants(s.reading).instants)
        said << Words::tr("%1 %2 mean %3 spread %4%5")
                    .arg(elementName(i.k, s.levels), toWords(i.to), signedNumber(i.meanPercent, 1),
                         number(i.rmsPercent, 1),
                         meanIsOut(i, s)    ? Words::tr(", out of limits")
                         : meanIsOpen(i, s) ? Words::tr(", cannot be told")
                                            : QString());
    describe(said.isEmpty() ? whyNothing(s) : said.join(QStringLiteral("; ")));
}

}  // namespace trueunit
