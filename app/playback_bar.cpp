// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/playback_bar.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QToolButton>
#include <cmath>

#include "app/session.h"
#include "widgets/theme.h"

namespace trueunit {

QString PlaybackBar::clock(double seconds) {
    const auto whole = static_cast<int>(std::lround(seconds));
    return QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

PlaybackBar::PlaybackBar(const Session& session, const QList<QAction*>& actions, QWidget* parent)
    : QWidget(parent), session_(session), words_(new QLabel), done_(new QProgressBar) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(5);
    words_->setFont(theme::text(theme::kTextPx));
    row->addWidget(words_);
    row->addSpacing(5);
    done_->setTextVisible(false);  // the words say it
    done_->setFixedSize(90, 8);
    done_->setAccessibleName(tr("Part of the recording that has been measured"));
    row->addWidget(done_);
    row->addSpacing(5);
    for (QAction* action : actions) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setFont(theme::text(theme::kSmallPx));
        button->setAccessibleDescription(action->statusTip());
        button->setFixedHeight(24);
        row->addWidget(button);
    }
    connect(&session_, &Session::sourceChanged, this, &PlaybackBar::follow);
    connect(&session_, &Session::sourceEnded, this, &PlaybackBar::follow);
    connect(&session_, &Session::playbackMoved, this, &PlaybackBar::follow);
    follow();
}

QString PlaybackBar::words() const { return words_->text(); }

int PlaybackBar::percentDone() const { return done_->value(); }

void PlaybackBar::follow() {
    const auto playback = session_.playback();
    setVisible(playback.has_value());
    if (!playback) return;
    const double part = playback->seconds > 0.0 ? playback->played / playback->seconds : 1.0;
    done_->setValue(static_cast<int>(std::lround(100.0 * (session_.ended() ? 1.0 : part))));
    const QString of = clock(playback->seconds), at = clock(playback->played);
    words_->setText(session_.ended() ? tr("ended after %1").arg(of)
                    : playback->paused
                        ? tr("paused at %1 of %2").arg(at, of)
                        : tr("%1 of %2, %3 left").arg(at, of, clock(playback->seconds - playback->played)));
}

}  // namespace trueunit
