// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/main_window.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDateTime>
#include <QFileInfo>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/bench_log.h"
#include "app/bench_panels.h"
#include "app/contact_tone.h"
#include "app/ear.h"
#include "app/first_steps.h"
#include "app/help_window.h"
#include "app/machine_bar.h"
#include "app/message_line.h"
#include "app/note_editor.h"
#include "app/playback_bar.h"
#include "app/report_dialog.h"
#include "app/report_page.h"
#include "app/session.h"
#include "app/source_picker.h"
#include "app/top_bar.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/eccentric_panel.h"
#include "widgets/tape_view.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// Slim scroll bars, so that a panel keeps its width.
QString scrollBars() {
    return QStringLiteral(
               "QScrollBar:vertical { width: 10px; background: transparent; }"
               "QScrollBar::handle:vertical { background: %1; border-radius: 3px; min-height: 30px;"
               " margin: 1px 0 1px 3px; }"
               "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }"
               "QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }")
        .arg(theme::kHandle.name());
}

// Fields and menus on the same paper as the panels, whatever the desktop's colours are.
QPalette paper() {
    QPalette colors;
    colors.setColor(QPalette::Window, theme::kPaper);
    colors.setColor(QPalette::Base, theme::kPanel);
    colors.setColor(QPalette::AlternateBase, theme::kPaper);
    colors.setColor(QPalette::Button, theme::kPanel);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
        colors.setColor(role, theme::kInk);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        colors.setColor(QPalette::Disabled, role, theme::kDisabled);
    colors.setColor(QPalette::Light, theme::kHairline);
    colors.setColor(QPalette::Midlight, theme::kHairline);
    colors.setColor(QPalette::Mid, theme::kBorder);
    colors.setColor(QPalette::Dark, theme::kSecondary);
    colors.setColor(QPalette::PlaceholderText, theme::kSecondary);
    colors.setColor(QPalette::Highlight, theme::kBlue);
    colors.setColor(QPalette::HighlightedText, theme::kPanel);
    colors.setColor(QPalette::Link, theme::kBlue);
    return colors;
}

// Qt's own style draws the edge of a field as a darker shade of the window's ground, which a dark one has not.
void edgeFields() {
    constexpr int kDarkerByStyle = 140;  // percent
    QPalette colors = paper();
    colors.setColor(QPalette::Window, theme::kFieldEdge.lighter(kDarkerByStyle));
    for (const char* kind : {"QComboBox", "QLineEdit", "QAbstractSpinBox", "QPlainTextEdit"})
        QApplication::setPalette(colors, kind);
}

}  // namespace

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      clock_(session),
      messages_(new MessageLine),
      panels_(new BenchPanels),
      editor_(new NoteEditor(&panels_->grid(), panels_)),
      log_(new BenchLog(keeper_, session_, this)),
      ear_(new Ear(session, this)),
      contactTone_(new ContactTone(session, this)) {
    setWindowTitle(QStringLiteral("Trueunit"));
    QApplication::setPalette(paper());  // dialogs too
    edgeFields();
    QApplication::setFont(theme::text(theme::kTextPx));
    for (const char* kind : {"QToolButton", "QComboBox", "QLineEdit", "QMenu"})  // the desktop has its own for these
        QApplication::setFont(theme::text(theme::kTextPx), kind);
    setStyleSheet(theme::styleSheet() + scrollBars());
    makeFrameActions();
    makeLogActions();
    makeInputActions();
    makePlaybackActions();
    makeBenchActions();
    makeHelpActions();
    setAcceptDrops(true);
    makeProvingActions();
    makeAdjustActions();
    makeEarActions();
    makeAppearanceActions();
    bar_ = new TopBar(session_, {freeze_, report_, alone_, more_, help_});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(bar_);
    column->addWidget(messages_);
    column->addWidget(panels_, 1);
    connectSession();
    connect(&panels_->grid(), &CharacterGrid::noteRequested, editor_, [this](double units, double level) {
        editor_->pointAt(panels_->grid().placeOf(units, level));  // before it is opened
    });
    connectGrid();
    connect(&clock_, &SnapshotClock::tick, this, &MainWindow::takeTick);
    connect(&keeper_, &FrameKeeper::changed, this, &MainWindow::frameChanged);
    panels_->grid().setFocus();
    if (session_.sourceKind() == SourceKind::none)
        bar_->source().playDemonstration();
    else
        sourceChanged();
}

void MainWindow::connectSession() {
    connect(&session_, &Session::sourceChanged, this, &MainWindow::sourceChanged);
    connect(&session_, &Session::sourceLost, this,
            [this](const QString& why) { messages_->warn(told(why.toStdString())); });
    connect(&session_, &Session::strongerChannel, this, [this](int channel) {
        messages_->warn(tr("The signal seems to be on the %1 side; choose that side under Input.")
                            .arg(channel == 0 ? tr("left") : tr("right")));
    });
    MachineBar& machine = bar_->machine();
    machine.show(session_.options());
    connect(&session_, &Session::optionsChanged, this, [this] { bar_->machine().show(session_.options()); });
    connect(&machine, &MachineBar::refused, messages_, &MessageLine::warn);
    connect(&machine, &MachineBar::wanted, this, [this](const Options& options) {
        if (const Outcome outcome = session_.setOptions(options); !outcome) {
            messages_->warn(told(outcome.error().text));
            bar_->machine().show(session_.options());
        }
    });
    connect(&bar_->source(), &SourcePicker::refused, messages_, &MessageLine::warn);
    connect(&bar_->source(), &SourcePicker::fileChosen, this, &MainWindow::openFile);
    connect(&bar_->source(), &SourcePicker::said, messages_, &MessageLine::say);
    connect(&panels_->eccentric(), &EccentricPanel::turned, this,
            [this](double percent) { session_.turnEccentric(percent); });
}

// Name and remarks speak of what was connected: another input begins without them. The same sound input, on another
// side or found again, is the same machine.
void MainWindow::newInput() {
    const SourceKind kind = session_.sourceKind();
    if (kind == SourceKind::none || (kind == SourceKind::soundInput && session_.origin() == origin_)) return;
    signFrame();
    frameIsOfThisInput_ = false;
    keeper_.release();
    if (!origin_.empty() && origin_ != session_.origin()) {  // another machine
        forgetTapeText();
        forgetBefore();
    }
    origin_ = session_.origin();
    const Scenario* scenario = session_.scenario();
    bar_->machine().setMachine(scenario ? QString::fromStdString(scenario->machine.name)
                               : kind == SourceKind::recording
                                   ? QFileInfo(QString::fromStdString(origin_)).completeBaseName()
                                   : QString());
}

void MainWindow::sourceChanged() {
    newInput();
    messages_->clear();
    lostBefore_ = 0;
    panels_->setSimulated(session_.hasEccentric());
    panels_->eccentric().setTurnedSoFar(session_.eccentricPercent());
    if (const Scenario* scenario = session_.scenario()) messages_->say(told(scenario->story));
    playbackMoved();
}

void MainWindow::takeTick(const std::shared_ptr<const Snapshot>& snapshot) {
    live_ = snapshot;
    bar_->show(live_);
    if (live_->state == SignalState::silent && session_.playback())  // no loop to connect
        messages_->showState(tr("This recording is silent."));
    else
        messages_->showState(live_->stateText.empty() ? inputFound() : told(live_->stateText));
    tellLosses(*live_);
    ear_->follow(*live_);
    contactTone_->watch();
    if (keeper_.frozen())
        tellFrozen();
    else
        panels_->show(live_);
}

void MainWindow::tellLosses(const Snapshot& snapshot) {
    const std::uint64_t lost = snapshot.lostSamples + static_cast<std::uint64_t>(snapshot.reading.input.gaps);
    if (lost > lostBefore_)
        messages_->warn(
            tr("Part of the input was lost and the framing began anew; close other programs that use the sound card."));
    lostBefore_ = lost;
}

QString MainWindow::inputFound() const {
    const QString words = bar_->inputWords();
    return words.isEmpty() ? words : tr("Found on the input: %1").arg(words);
}

// What is frozen stands still; this says when it was taken and that the input goes on.
void MainWindow::tellFrozen() {
    if (!keeper_.frozen()) return messages_->showFrozen({});
    const FrozenFrame& frame = keeper_.frame();
    const QDateTime taken = QDateTime::fromSecsSinceEpoch(frame.takenSecondsUtc);
    QString words = frameIsOfThisInput_ && session_.playback()
                        ? tr("Frozen at %1").arg(PlaybackBar::clock(frame.snapshot->seconds))
                        : tr("Frozen %1").arg(taken.toString(QStringLiteral("HH:mm:ss")));
    if (live_ && !session_.playback()) {  // a recording has its own bar here

        const auto& bias = live_->reading.distortion.biasPercent;
        words += tr(" \u00b7 live %1")
                     .arg(bias ? signedNumber(bias->value, 1) + QStringLiteral(" %") : QStringLiteral("\u2014"));
    }
    messages_->showFrozen(words + tr(" \u00b7 space lets go"));
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // The space bar freezes wherever the focus is; Enter presses the button that has it.
    auto* button = qobject_cast<QAbstractButton*>(focusWidget());
    if (button && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter))
        button->animateClick();
    else
        QWidget::keyPressEvent(event);
}

void MainWindow::paintEvent(QPaintEvent*) { QPainter(this).fillRect(rect(), theme::kPaper); }

void MainWindow::leaveView() {
    if (firstSteps_)
        firstSteps_->end();
    else if (panels_->gaugeAlone())
        alone_->trigger();
    else
        messages_->clear();
}

}  // namespace trueunit
