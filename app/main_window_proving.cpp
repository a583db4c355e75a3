// SPDX-License-Identifier: GPL-3.0-or-later
// The window and what proves a reading: limits, self-check, reference sender, recording, clock.
#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>

#include "app/ask_file.h"
#include "app/check_dialog.h"
#include "app/clock_dialog.h"
#include "app/keep_recording.h"
#include "app/limits_dialog.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/report_dialog.h"
#include "app/sender_dialog.h"
#include "app/session.h"
#include "app/slice_dialog.h"
#include "app/tape_text_dialog.h"
#include "app/top_bar.h"
#include "widgets/level_row.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// Beside the reports, but among the music where there is a folder for it.
QString freshSoundPath(const QString& machine) {
    QFileInfo page(ReportDialog::freshPath(machine, QDateTime::currentSecsSinceEpoch()));
    const QString music = QStandardPaths::writableLocation(QStandardPaths::MusicLocation);
    const QString folder = QFileInfo(music).isDir() ? music : page.path();
    return QDir(folder).filePath(page.completeBaseName() + QStringLiteral(".flac"));
}

}  // namespace

void MainWindow::makeProvingActions() {
    group_ = tr("Proving it");
    QList<QAction*> all;
    all += act(tr("Limits"), tr("Choose or change the limits"), {Qt::CTRL | Qt::SHIFT | Qt::Key_L},
               [this] { askLimits(); });
    all += act(tr("Self-check"), tr("Check the instrument itself"), {Qt::CTRL | Qt::SHIFT | Qt::Key_K},
               [this] { openCheck(); });
    all += act(tr("Reference sender"), tr("Send a known signal out of the sound output"),
               {Qt::CTRL | Qt::SHIFT | Qt::Key_S}, [this] { openSender(); });
    all += act(tr("Keep the recording"), tr("Keep the last ten minutes of the input as a sound file"),
               {Qt::CTRL | Qt::Key_S}, [this] { askRecording(); });
    all += act(tr("Clock trim"), tr("Trim the clock of the sound card"), {Qt::CTRL | Qt::SHIFT | Qt::Key_T},
               [this] { askClock(); });
    all += act(tr("Slice level"), tr("Set the part of the swing at which an instant is taken"),
               {Qt::CTRL | Qt::SHIFT | Qt::Key_E}, [this] { askSlice(); });
    all.prepend(act(tr("Text of the tape"), tr("Give the text of the tape, so that lost marks can be counted"),
                    {Qt::CTRL | Qt::Key_H}, [this] { askTapeText(); }));
    more_ =
        act(tr("More"),
            tr("Note, logbook, limits, self-check, reference sender, recording, clock, slice, before, margin, tone"),
            {Qt::Key_F10},
            [this] { more_->menu()->popup(bar_->mapToGlobal(QPoint(bar_->width() - 260, bar_->height()))); });
    auto* menu = new QMenu(this);
    menu->addActions({note_, keep_, book_});
    menu->addSeparator();
    menu->addActions(all);
    more_->setMenu(menu);
}

void MainWindow::askLimits() {
    LimitsDialog dialog(session_.limits(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    session_.setLimits(dialog.chosen());
    messages_->say(tr("Judged by %1.").arg(told(dialog.chosen().title)));
}

void MainWindow::openCheck() {
    if (!check_) check_ = new CheckDialog(this);
    check_->show();
    check_->raise();
    check_->activateWindow();
}

void MainWindow::openSender() {
    if (!sender_) sender_ = new SenderDialog(this);
    sender_->show();
    sender_->raise();
    sender_->activateWindow();
}

void MainWindow::askRecording() {
    if (!session_.recentInput()) return messages_->say(tr("There is nothing to keep yet; choose an input first."));
    const QString path = askToSave(this, tr("Keep the last ten minutes as"), freshSoundPath(bar_->machine().machine()),
                                   tr("Sound files (*.flac *.wav)"));
    if (!path.isEmpty()) keepRecordingTo(path);
}

// What is at hand is taken on the window's side; writing and measuring it takes seconds and has a thread of its own.
void MainWindow::keepRecordingTo(const QString& path) {
    if (!keepingEnded_) return messages_->say(tr("A recording is being kept already."));
    const auto recent = session_.recentInput();
    if (!recent) return messages_->say(tr("There is nothing to keep yet; choose an input first."));
    keepingEnded_ = false;
    messages_->say(tr("The recording is being kept\u2026"));
    keeping_ = std::jthread(
        [this, recent, file = path.toStdString(), options = session_.options(), limits = session_.limits()] {
            const Result<KeptRecording> kept = keepRecording(*recent, file, options, limits);
            QMetaObject::invokeMethod(
                this, [this, kept] { recordingKept(kept); }, Qt::QueuedConnection);
        });
}

void MainWindow::recordingKept(const Result<KeptRecording>& kept) {
    keepingEnded_ = true;
    if (!kept) return messages_->warn(told(kept.error().text));
    const QString file = QString::fromStdString(kept->soundFiles.front());
    messages_->sayFiled(tr("The recording was kept: %1.").arg(QFileInfo(file).fileName()), file);
}

QString MainWindow::textFound() const {
    if (!live_ || !live_->options.expect.empty() || !live_->reading.valid()) return {};
    return !live_->reading.levels          ? tr("None was found so far.")
           : textIsLearned(live_->reading) ? tr("It was learned from the rounds of the tape.")
                                           : tr("RY or the fox sentence was recognised.");
}

void MainWindow::askTapeText() {
    const QString how = textFound();
    const std::string round = how.isEmpty() || !live_->reading.levels ? std::string() : live_->reading.text.round;
    TapeTextDialog dialog(session_.options().expect, session_.options().code, {how, round}, this);
    if (dialog.exec() != QDialog::Accepted) return;
    Options options = session_.options();
    options.expect = dialog.text();
    if (const Outcome set = session_.setOptions(options); !set) return messages_->warn(told(set.error().text));
    const QString what = options.expect.empty() ? tr("The text of the tape is looked for in the signal.")
                                                : tr("The tape is held against its text.");
    messages_->say(keeper_.frozen() ? tr("%1 What is frozen stays as it was read.").arg(what) : what);
}

void MainWindow::forgetTapeText() {
    Options options = session_.options();
    if (options.expect.empty()) return;
    options.expect.clear();
    (void)static_cast<bool>(session_.setOptions(options));  // an empty text is never refused
}

void MainWindow::askClock() {
    ClockDialog dialog(session_.options().clockPpm, session_.recentInput(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    Options options = session_.options();
    options.clockPpm = dialog.ppm();
    if (const Outcome set = session_.setOptions(options); !set) return messages_->warn(told(set.error().text));
    messages_->say(tr("The clock is trimmed by %1 parts in a million.").arg(options.clockPpm, 0, 'f', 2));
}

void MainWindow::askSlice() {
    SliceDialog dialog(session_.options().slicePercent, this);
    if (dialog.exec() != QDialog::Accepted) return;
    Options options = session_.options();
    options.slicePercent = dialog.percent();
    if (const Outcome set = session_.setOptions(options); !set) return messages_->warn(told(set.error().text));
    messages_->say(tr("Instants are taken at %1 % of the swing.").arg(limitNumber(options.slicePercent)));
}

}  // namespace trueunit
