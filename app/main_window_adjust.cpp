// SPDX-License-Identifier: GPL-3.0-or-later
// The window while somebody adjusts: the moment marked "before", the receiving margin.
#include <QAction>
#include <QMenu>

#include "app/bench_log.h"
#include "app/bench_panels.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "core/report/comparison.h"
#include "core/report/firm_moment.h"

namespace trueunit {

void MainWindow::makeAdjustActions() {
    group_ = tr("While you adjust");
    QList<QAction*> all;
    all += act(tr("Mark as before"), tr("Mark this moment as \"before\", to hold what follows against it"), {Qt::Key_B},
               [this] { markBefore(); });
    all += act(tr("Forget before"), tr("Forget the moment marked as \"before\""), {Qt::SHIFT | Qt::Key_B},
               [this] { dropBefore(); });
    margin_ = act(tr("Receiving margin"), tr("Where a receiver may sample, in the place of the displacement"),
                  {Qt::Key_M}, [this] { panels_->setMarginShown(margin_->isChecked()); });
    margin_->setCheckable(true);
    all += margin_;
    more_->menu()->addSeparator();
    more_->menu()->addActions(all);
}

// What is seen counts: the frozen moment while one is frozen.
void MainWindow::markBefore() {
    const auto& moment = keeper_.frozen() ? keeper_.frame().snapshot : live_;
    if (!moment || !moment->reading.valid())
        return messages_->say(tr("There is no reading yet that could be marked as \"before\"."));
    FrameKeeper live;
    if (!keeper_.frozen()) freezeIn(live, firmMoment(live_));
    const FrozenFrame& frame = keeper_.frozen() ? keeper_.frame() : live.frame();
    before_ = frame.snapshot;
    beforeTakenSecondsUtc_ = frame.takenSecondsUtc;
    log_->setBefore(frame);
    panels_->setBefore(before_);
    messages_->say(
        before_->windowUsed < kFirmCharacters
            ? tr("Marked as \"before\" over few characters (%1). Shift+B forgets it, K keeps it.")
                  .arg(before_->windowUsed)
            : tr("Marked as \"before\", dashed until Shift+B forgets it; K keeps it with the moment after."));
}

void MainWindow::dropBefore() {
    if (!before_) return messages_->say(tr("No moment is marked as \"before\"; B marks one."));
    forgetBefore();
    messages_->say(tr("The moment marked as \"before\" is forgotten."));
}

void MainWindow::forgetBefore() {
    before_.reset();
    log_->forgetBefore();
    panels_->setBefore({});
}

}  // namespace trueunit
