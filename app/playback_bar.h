// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

class QAction;
class QLabel;
class QProgressBar;

namespace trueunit {

class Session;

// How far a recording is, how long it still runs, and what can be done with it. Hidden with any other input.
// Window's thread.
class PlaybackBar : public QWidget {
    Q_OBJECT

public:
    PlaybackBar(const Session& session, const QList<QAction*>& actions, QWidget* parent = nullptr);

    QString words() const;  // "0:12 of 0:40", "paused at 0:12 of 0:40", "ended after 0:40"
    int percentDone() const;
    static QString clock(double seconds);  // "1:05"

private:
    void follow();

    const Session& session_;
    QLabel* words_;
    QProgressBar* done_;
};

}  // namespace trueunit
