// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <thread>

#include "app/frame_keeper.h"
#include "app/snapshot_clock.h"
#include "core/report/snapshot.h"
#include "core/result.h"

class QAction;

namespace trueunit {

class BenchLog;
class BenchPanels;
class FirstSteps;
class CheckDialog;
class ContactTone;
class Ear;
class LogbookWindow;
class MessageLine;
class NoteEditor;
class PlaybackBar;
class SenderDialog;
class Session;
struct KeptRecording;
class TopBar;

// The one window: connects the session, the clock, the panels and the frozen frame. Starts on the demonstration when
// the session has no source. No arithmetic on signals here. Window's thread; the session outlives it.
class MainWindow : public QWidget {
    Q_OBJECT

public:
    explicit MainWindow(Session& session, QWidget* parent = nullptr);

    FrameKeeper& keeper() { return keeper_; }
    BenchPanels& panels() { return *panels_; }
    TopBar& bar() { return *bar_; }
    const PlaybackBar& playback() const { return *playback_; }
    const MessageLine& messages() const { return *messages_; }
    Ear& ear() { return *ear_; }

    void toggleFreeze();
    void openFile(const QString& path);  // a recording, or a scenario by its ending
    void showHelp(const QString& page);
    void startFirstSteps();  // where there is an eccentric to turn
    void forgetSettings();
    BenchLog& log() { return *log_; }
    void startLog(const QString& path);          // empty: the usual place; from now on frozen frames survive a crash
    Outcome keepInLog();                         // the frozen frame, or this moment; says what came of it
    Outcome writeReportTo(const QString& path);  // of the frozen frame, or of this moment
    void keepRecordingTo(const QString& path);   // the last ten minutes; said when it is done

    QSize sizeHint() const override { return {1440, 900}; }
    QSize minimumSizeHint() const override { return {680, 420}; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QAction* act(const QString& name, const QString& what, const QList<QKeySequence>& keys, std::function<void()> slot);
    void makeFrameActions();
    void makeLogActions();
    void openLogbook();
    void makeInputActions();
    void makePlaybackActions();
    void playbackMoved();
    void sourceEnded(const QString& sentence);
    void makeBenchActions();
    void makeHelpActions();
    void askForget();
    void makeProvingActions();
    void makeAdjustActions();
    void makeEarActions();
    QAction* makeContactTone();
    void makeAppearanceActions();
    void askAppearance();
    void chooseEarOutput();
    void markBefore();
    void dropBefore();
    void forgetBefore();
    void connectSession();
    void connectGrid();

    void takeTick(const std::shared_ptr<const Snapshot>& snapshot);
    void tellLosses(const Snapshot& snapshot);
    void tellFrozen();
    QString inputFound() const;
    void sourceChanged();
    void newInput();
    void freezeNow(const std::shared_ptr<const Snapshot>& moment);
    void freezeAsProof();  // over more characters than a window for adjusting has
    void freezeIn(FrameKeeper& keeper, const std::shared_ptr<const Snapshot>& moment) const;
    void signFrame();  // with the machine of the input, where the frame is of this one
    void frameChanged();
    void startNote(double units, double level);
    void carryNotes();
    std::optional<std::size_t> noteNear(double units, double level) const;
    void openNote(std::size_t index);
    void openNextNote();
    void askReport();
    void askLimits();
    void openCheck();
    void openSender();
    void askRecording();
    void recordingKept(const Result<KeptRecording>& kept);
    void askClock();
    void askSlice();
    QString textFound() const;  // what the signal itself told of it
    void askTapeText();
    void forgetTapeText();  // it was of another input
    void askMachineCard();
    void leaveView();  // Escape: the gauge alone, then the message

    Session& session_;
    FrameKeeper keeper_;
    SnapshotClock clock_;
    TopBar* bar_ = nullptr;
    MessageLine* messages_;
    BenchPanels* panels_;
    NoteEditor* editor_;
    BenchLog* log_;
    LogbookWindow* logbook_ = nullptr;  // made when first opened
    QAction *pause_ = nullptr, *fast_ = nullptr, *again_ = nullptr;
    PlaybackBar* playback_ = nullptr;
    QAction* freeze_ = nullptr;
    QAction* report_ = nullptr;
    QAction *note_ = nullptr, *keep_ = nullptr, *book_ = nullptr;
    QAction* alone_ = nullptr;
    QAction* help_ = nullptr;
    QString group_;  // of the actions that are made just now, in the list of keys
    QPointer<FirstSteps> firstSteps_;
    QAction* more_ = nullptr;
    CheckDialog* check_ = nullptr;  // made when it is first asked for, as is the next
    SenderDialog* sender_ = nullptr;
    QAction* margin_ = nullptr;
    QAction* hear_ = nullptr;
    Ear* ear_;
    ContactTone* contactTone_;
    std::shared_ptr<const Snapshot> live_;
    std::shared_ptr<const Snapshot> before_;  // what is held against the present; empty: nothing
    std::int64_t beforeTakenSecondsUtc_ = 0;
    std::optional<std::size_t> editedNote_;  // empty: a new one at noteUnits_
    double noteUnits_ = 0.0, noteLevel_ = 0.5;
    std::uint64_t lostBefore_ = 0;
    std::string origin_;               // of the input that the name speaks of
    bool frameIsOfThisInput_ = false;  // not of one before; then it keeps the name it was signed with
    bool keepingEnded_ = true;
    std::jthread keeping_;  // writes a recording; last: it ends before what it reports to
};

}  // namespace trueunit
