// SPDX-License-Identifier: GPL-3.0-or-later
// The window and the logbook: one key keeps the frozen frame, another opens the book.
#include <QAction>

#include "app/bench_log.h"
#include "app/logbook_window.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/top_bar.h"
#include "widgets/told.h"

namespace trueunit {

void MainWindow::makeLogActions() {
    group_ = tr("Logbook");
    keep_ = act(tr("Keep"), tr("Keep the frozen frame, or this moment, in the logbook"), {Qt::Key_K},
                [this] { (void)static_cast<bool>(keepInLog()); });
    book_ = act(tr("Logbook"), tr("Open the logbook: machines, visits, frames"), {Qt::CTRL | Qt::Key_L},
                [this] { openLogbook(); });
    connect(log_, &BenchLog::troubled, messages_, &MessageLine::warn);
}

void MainWindow::startLog(const QString& path) {
    log_->setPath(path);
    if (const auto recovered = log_->guardAndRecover()) messages_->warn(*recovered);
}

Outcome MainWindow::keepInLog() {
    const bool wasLive = !keeper_.frozen();
    if (wasLive) freezeAsProof();
    if (!keeper_.frozen()) return Error{"There is nothing to keep yet."};
    signFrame();
    const FrozenFrame& frame = keeper_.frame();
    const Result<Kept> kept = log_->keep(QString::fromStdString(frame.machine), QString::fromStdString(frame.remarks));
    if (wasLive && kept) keeper_.release();
    if (!kept) {
        messages_->warn(told(kept.error().text));
        return kept.error();
    }
    if (const auto mended = log_->takeMendedSentence())
        messages_->warn(*mended);
    else
        messages_->say(
            kept->before && kept->after ? tr("Kept with the moment before: frames %1 (before) and %2 (after) of visit "
                                             "%3; Ctrl+L opens the logbook.")
                                              .arg(kept->before)
                                              .arg(kept->frame)
                                              .arg(kept->visit)
            : kept->after && !kept->again
                ? tr("Kept as frame %1 of visit %2, which is the moment after from now on; Ctrl+L opens the logbook.")
                      .arg(kept->frame)
                      .arg(kept->visit)
            : kept->again ? tr("The notes of frame %1 in the logbook were brought up to date.").arg(kept->frame)
            : kept->newVisit
                ? tr("Kept as frame %1, the first of a new visit; Ctrl+L opens the logbook.").arg(kept->frame)
                : tr("Kept as frame %1 of visit %2; Ctrl+L opens the logbook.").arg(kept->frame).arg(kept->visit));
    return done();
}

void MainWindow::openLogbook() {
    const Result<Store*> store = log_->store();
    if (!store) return messages_->warn(told(store.error().text));
    if (const auto mended = log_->takeMendedSentence()) messages_->warn(*mended);
    if (logbook_ && logbook_->path() != log_->path()) {
        delete logbook_;
        logbook_ = nullptr;
    }
    if (!logbook_) {
        logbook_ = new LogbookWindow(log_->path(), this);
        connect(log_, &BenchLog::keptFrame, logbook_, &LogbookWindow::reload);
    }
    logbook_->chooseMachine(bar_->machine().machine());
    logbook_->show();
    logbook_->raise();
    logbook_->activateWindow();
}

}  // namespace trueunit
