// SPDX-License-Identifier: GPL-3.0-or-later
// The window and a recording that is played: pause, haste, from the beginning, its end.
#include <QAction>

#include "app/main_window.h"
#include "app/message_line.h"
#include "app/playback_bar.h"
#include "app/session.h"
#include "app/top_bar.h"
#include "widgets/told.h"

namespace trueunit {

void MainWindow::makePlaybackActions() {
    group_ = tr("A recording that plays");
    pause_ = act(tr("Pause"), tr("Pause the recording, or let it go on"), {Qt::CTRL | Qt::Key_P}, [this] {
        if (const auto playing = session_.playback()) session_.setPaused(!playing->paused);
    });
    again_ =
        act(tr("From the beginning"), tr("Play the recording from its beginning"), {Qt::CTRL | Qt::Key_Home}, [this] {
            if (const Outcome playing = session_.replay(); !playing) messages_->warn(told(playing.error().text));
        });
    fast_ = act(tr("Fast"), tr("Play recordings as fast as they can be measured, or in real time"),
                {Qt::CTRL | Qt::SHIFT | Qt::Key_P}, [this] {
                    session_.setFast(fast_->isChecked());
                    if (session_.ended())
                        messages_->say(tr("The recording has ended; from the beginning is Ctrl+Home."));
                });
    pause_->setCheckable(true);
    fast_->setCheckable(true);
    playback_ = new PlaybackBar(session_, {pause_, again_, fast_});
    messages_->addTool(playback_);
    connect(&session_, &Session::playbackMoved, this, &MainWindow::playbackMoved);
    connect(&session_, &Session::measuredAgain, this, [this](const QString& sentence) {
        messages_->say(told(sentence.toStdString()));
        playbackMoved();
    });
    connect(&session_, &Session::sourceEnded, this, &MainWindow::sourceEnded);
}

void MainWindow::playbackMoved() {
    const auto playing = session_.playback();
    const bool runs = playing && !session_.ended();
    pause_->setChecked(runs && playing->paused);
    pause_->setEnabled(runs);
    again_->setEnabled(playing.has_value());
    bar_->showPlayback();
}

// No fault, so no warning: what was measured last stays.
void MainWindow::sourceEnded(const QString& sentence) {
    const QString end = told(sentence.toStdString());
    const bool silent = live_ && live_->state == SignalState::silent;
    messages_->say(!session_.playback() ? end
                   : silent             ? tr("%1 It is silent throughout.").arg(end)
                                        : tr("%1 Ctrl+Home plays it again.").arg(end));
    playbackMoved();
}

}  // namespace trueunit
