// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/bench_panels.h"

#include <QBoxLayout>
#include <QScrollArea>

#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/comparison_panel.h"
#include "widgets/displacement_plot.h"
#include "widgets/eccentric_panel.h"
#include "widgets/findings_panel.h"
#include "widgets/margin_view.h"
#include "widgets/readings_panel.h"
#include "widgets/tape_view.h"
#include "widgets/theme.h"
#include "widgets/trail_view.h"

namespace trueunit {

namespace {

constexpr int kGap = 12;
constexpr int kMargin = 16;
constexpr int kNarrowPanels = 1000;  // below this the plots stand under each other
constexpr int kRoomy = 1150;         // below this the right column yields
constexpr int kRightWidth = 392;
constexpr int kRightMedium = 350;
constexpr int kRightNarrow = 320;
constexpr int kRightLeast = 278;
constexpr int kSmall = 800;  // below this the right column has the least width
constexpr int kLeastGrid = 400;
constexpr int kLeastApart = 480;    // height; below this the findings scroll with the rest,
constexpr int kAllFits = 720;       // from here on nothing has to,
constexpr int kComparedFits = 800;  // and from here on not with a "before" either

QScrollArea* scrolling(QWidget* content) {
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->viewport()->setAutoFillBackground(false);
    content->setAutoFillBackground(false);
    return area;
}

}  // namespace

BenchPanels::BenchPanels(QWidget* parent)
    : QWidget(parent),
      grid_(new CharacterGrid),
      gauge_(new BiasGauge),
      eccentric_(new EccentricPanel),
      tape_(new TapeView),
      panels_{grid_, gauge_, eccentric_, tape_} {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(kMargin, 4, kMargin, kMargin - 4);
    row->setSpacing(kGap);
    left_ = scrolling(makeLeft());
    rightColumn_ = makeRight();
    row->addWidget(left_, 1);
    row->addWidget(rightColumn_);
    eccentric_->hide();
    grid_->setMinimumWidth(kLeastGrid);
}

QWidget* BenchPanels::makeLeft() {
    displacement_ = new DisplacementPlot;
    margin_ = new MarginView;
    margin_->hide();
    trail_ = new TrailView;
    panels_.insert(panels_.end(), {displacement_, margin_, trail_});
    for (QWidget* panel : {static_cast<QWidget*>(grid_), static_cast<QWidget*>(displacement_)})
        panel->setProperty(theme::kHelpPage, QStringLiteral("instants.md"));
    for (QWidget* panel : {static_cast<QWidget*>(trail_), static_cast<QWidget*>(eccentric_)})
        panel->setProperty(theme::kHelpPage, QStringLiteral("adjusting.md"));
    gauge_->setProperty(theme::kHelpPage, QStringLiteral("bias.md"));
    margin_->setProperty(theme::kHelpPage, QStringLiteral("margin.md"));
    tape_->setProperty(theme::kHelpPage, QStringLiteral("tape.md"));
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kGap);
    plots_ = new QBoxLayout(QBoxLayout::LeftToRight);
    plots_->setSpacing(kGap);
    plots_->addWidget(displacement_, 1);
    plots_->addWidget(margin_, 1);
    plots_->addWidget(trail_, 1);
    feet_ = new QBoxLayout(QBoxLayout::LeftToRight);
    feet_->setSpacing(kGap);
    feet_->addWidget(tape_, 5);
    feet_->addWidget(eccentric_, 2);
    column->addWidget(grid_, 9);
    column->addLayout(plots_, 7);
    column->addLayout(feet_, 0);
    return content;
}

QWidget* BenchPanels::makeRight() {
    readings_ = new ReadingsPanel;
    comparison_ = new ComparisonPanel;
    comparison_->hide();
    comparison_->setProperty(theme::kHelpPage, QStringLiteral("adjusting.md"));
    findings_ = new FindingsPanel;
    findings_->setProperty(theme::kHelpPage, QStringLiteral("findings.md"));
    connect(comparison_, &ComparisonPanel::rowsChosen, this, &BenchPanels::leaveOutCompared);
    connect(findings_, &FindingsPanel::evidenceChosen, this, &BenchPanels::pickOut);
    connect(findings_, &FindingsPanel::tallWanted, this, &BenchPanels::setFindingsTall);
    panels_.insert(panels_.end(), {readings_, comparison_, findings_});
    auto* below = new QWidget;
    rightList_ = new QVBoxLayout(below);
    rightList_->setContentsMargins(0, 0, 0, 0);
    rightList_->setSpacing(kGap);
    rightList_->addWidget(comparison_, 0);
    rightList_->addWidget(readings_, 0);
    rightList_->addWidget(findings_, 1);
    right_ = scrolling(below);
    auto* column = new QWidget;
    rightAll_ = new QVBoxLayout(column);
    rightAll_->setContentsMargins(0, 0, 0, 0);
    rightAll_->setSpacing(kGap);
    rightAll_->addWidget(gauge_, 2);
    rightAll_->addWidget(right_, 4);
    column->setMinimumHeight(1);  // so that it can become small enough for the findings to scroll with the rest
    return column;
}

// Where the right column is longer than the screen it scrolls with the readings, while the findings and their caution
// stay in sight below.
void BenchPanels::placeFindings() {
    const bool tight = !comparison_->isHidden() || height() < kAllFits;
    const bool apart = tight && !gaugeAlone_ && height() >= kLeastApart;
    if (apart != findingsApart_) {
        findingsApart_ = apart;
        (apart ? rightAll_ : rightList_)->addWidget(findings_, 1);
        findings_->show();
    }
    rightList_->setSpacing(apart ? kGap / 2 : kGap);  // before and now belong to the readings
    readings_->setBrief(findingsTall_);
    leaveOutCompared();
    if (apart && findingsTall_)
        rightAll_->insertWidget(1, readings_);
    else
        rightList_->insertWidget(1, readings_);
    right_->setVisible(!gaugeAlone_ && !(apart && findingsTall_));
    const bool keepsThird = apart && height() >= kAllFits && !findingsTall_;  // as the gauge has it beside two others
    rightAll_->setStretchFactor(gauge_, keepsThird ? 3 : 2);
    if (apart) rightAll_->setStretchFactor(findings_, findingsTall_ ? 6 : 2);
    spaceColumn();
}

// Where room is short, what stands in "before and now" does not stand again below it.
void BenchPanels::leaveOutCompared() {
    const bool compared = !comparison_->isHidden() && height() < kComparedFits;
    readings_->leaveOut(compared ? comparison_->keys() : std::set<std::string>{});
}

void BenchPanels::setFindingsTall(bool tall) {
    findingsTall_ = tall;
    placeFindings();
}

// Where even the findings scroll they have their full height, and all that is judged stands close below the gauge.
void BenchPanels::spaceColumn() {
    const bool allScrolls = height() < kLeastApart;
    findings_->setMinimumHeight(findingsTall_ && allScrolls ? findings_->fullHeight() : 0);
    rightAll_->setSpacing(allScrolls || findingsApart_ ? kGap / 2 : kGap);
}

void BenchPanels::show(const SnapshotPtr& snapshot) {
    shown_ = snapshot;
    for (Panel* panel : panels_) panel->show(snapshot);
    spaceColumn();
}

void BenchPanels::pickOut(const EvidencePlaces& places) {
    grid_->setEvidence(places);
    displacement_->setEvidence(places);
    tape_->setEvidence(places);
    trail_->setEvidence(places);
}

void BenchPanels::setSimulated(bool simulated) {
    eccentric_->setVisible(simulated);
    findings_->setExercise(simulated);
}

void BenchPanels::setGaugeAlone(bool alone) {
    gaugeAlone_ = alone;
    left_->setVisible(!alone);
    right_->setVisible(!alone);
    gauge_->setAlone(alone);
    rightColumn_->setMaximumWidth(alone ? QWIDGETSIZE_MAX : kRightWidth);
    rightColumn_->setMinimumWidth(0);
    resizeEvent(nullptr);
}

void BenchPanels::setFrozen(bool frozen) { trail_->setFrozen(frozen); }

void BenchPanels::setMarginShown(bool shown) {
    margin_->setVisible(shown);
    displacement_->setVisible(!shown);
}

bool BenchPanels::marginShown() const { return !margin_->isHidden(); }

void BenchPanels::setBefore(const SnapshotPtr& before) {
    grid_->setBefore(before);
    displacement_->setBefore(before);
    comparison_->setBefore(before);
    comparison_->setVisible(before != nullptr);
    placeFindings();
}

void BenchPanels::resizeEvent(QResizeEvent*) {
    const bool narrow = width() < kNarrowPanels;
    const auto direction = narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (plots_->direction() != direction) {
        plots_->setDirection(direction);
        feet_->setDirection(direction);
    }
    const int side = narrow ? kMargin / 2 : kMargin;
    placeFindings();
    layout()->setContentsMargins(side, 4, side, side - 4);
    layout()->setSpacing(narrow ? kGap / 2 : kGap);
    if (!gaugeAlone_)
        rightColumn_->setFixedWidth(width() < kSmall   ? kRightLeast
                                    : narrow           ? kRightNarrow
                                    : width() < kRoomy ? kRightMedium
                                                       : kRightWidth);
}

}  // namespace trueunit
