// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of the window: every action, its keys and the words that the list of keys shows.
#include <QAction>
#include <utility>

#include "app/bench_panels.h"
#include "app/keys_help.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/note_editor.h"
#include "app/session.h"
#include "app/source_picker.h"
#include "app/top_bar.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/eccentric_panel.h"
#include "widgets/findings_panel.h"

namespace trueunit {

namespace {

// Keys of a panel count while it has the focus.
QList<std::pair<QString, QString>> panelKeys() {
    return {
        {MainWindow::tr("Left, Right"), MainWindow::tr("On the grid: an older or a newer character")},
        {MainWindow::tr("C"), MainWindow::tr("On the grid: show or hide the two cursors")},
        {MainWindow::tr("Shift+Left, Shift+Right"), MainWindow::tr("On the grid: move cursor A")},
        {MainWindow::tr("Ctrl+Left, Ctrl+Right"), MainWindow::tr("On the grid: move cursor B")},
        {MainWindow::tr("+, -, Home"), MainWindow::tr("On the grid: closer, farther, the whole character")},
        {MainWindow::tr("Left, Right"), MainWindow::tr("On the eccentric: turn it a little; with Shift a lot")},
        {MainWindow::tr("Left, Right"), MainWindow::tr("On the tape: back along it and on; Page Up and Down by more")},
        {MainWindow::tr("Home, End"), MainWindow::tr("On the tape: the oldest and the newest characters")},
        {MainWindow::tr("Up, Down"), MainWindow::tr("On the findings: choose one")},
        {MainWindow::tr("Enter"), MainWindow::tr("On a button: press it")}};
}

}  // namespace

QAction* MainWindow::act(const QString& name, const QString& what, const QList<QKeySequence>& keys,
                         std::function<void()> slot) {
    auto* action = new QAction(name, this);
    action->setStatusTip(what);
    action->setToolTip(QStringLiteral("%1 (%2)").arg(what, keys.front().toString(QKeySequence::NativeText)));
    action->setShortcuts(keys);
    action->setProperty(KeysHelp::kGroup, group_);
    connect(action, &QAction::triggered, this, std::move(slot));
    addAction(action);
    return action;
}

void MainWindow::makeFrameActions() {
    group_ = tr("A moment: freeze, notes, report");
    freeze_ = act(tr("Freeze"), tr("Freeze the display, or let it go; measuring goes on"), {Qt::Key_Space},
                  [this] { toggleFreeze(); });
    freeze_->setCheckable(true);
    act(tr("Bring back"), tr("Bring back the frame that was let go, with its notes"), {Qt::SHIFT | Qt::Key_Space},
        [this] {
            if (!keeper_.bringBack()) messages_->say(tr("There is no earlier frame; the space bar freezes one."));
        });
    note_ = act(tr("Note"), tr("Write a note on the frozen frame: at a cursor, else at the edge furthest out"),
                {Qt::Key_N}, [this] {
                    const double units = panels_->grid().noteUnits();
                    editor_->pointAt(panels_->grid().placeOf(units, 0.5));
                    startNote(units, 0.5);
                });
    act(tr("Next note"), tr("Open the next note to change or delete it"), {Qt::SHIFT | Qt::Key_N},
        [this] { openNextNote(); });
    report_ =
        act(tr("Report"), tr("Write the report page of this moment"), {Qt::CTRL | Qt::Key_R}, [this] { askReport(); });
}

void MainWindow::makeInputActions() {
    group_ = tr("Input and machine");
    act(tr("Input"), tr("Choose what to listen to"), {Qt::CTRL | Qt::Key_I}, [this] { bar_->source().showMenu(); });
    act(tr("Demonstration"), tr("Play the demonstration from its beginning"), {Qt::CTRL | Qt::Key_D},
        [this] { bar_->source().playDemonstration(); });
    act(tr("Recording"), tr("Open a recording"), {Qt::CTRL | Qt::Key_O}, [this] { bar_->source().openRecording(); });
    act(tr("Scenario"), tr("Open a scenario file"), {Qt::CTRL | Qt::SHIFT | Qt::Key_O},
        [this] { bar_->source().openScenario(); });
    act(tr("Look again"), tr("Look for sound inputs again"), {Qt::Key_F5}, [this] { bar_->source().rescan(); });
    act(tr("Machine"), tr("To the machine's name"), {Qt::CTRL | Qt::Key_M}, [this] { bar_->machine().focusMachine(); });
    act(tr("Machine card"), tr("Motor and gears of the machine, and what they make of the speed"),
        {Qt::CTRL | Qt::Key_K}, [this] { askMachineCard(); });
    act(tr("Code"), tr("To the code"), {Qt::CTRL | Qt::Key_E}, [this] { bar_->machine().focusCode(); });
    act(tr("Speed"), tr("To the speed"), {Qt::CTRL | Qt::Key_B}, [this] { bar_->machine().focusSpeed(); });
    act(tr("Stop"), tr("To the stop"), {Qt::CTRL | Qt::Key_T}, [this] { bar_->machine().focusStop(); });
    act(tr("Longer window"), tr("Next longer window of characters, then from the shortest"), {Qt::Key_W},
        [this] { bar_->machine().stepWindow(1); });
    act(tr("Shorter window"), tr("Next shorter window of characters"), {Qt::SHIFT | Qt::Key_W},
        [this] { bar_->machine().stepWindow(-1); });
}

void MainWindow::makeBenchActions() {
    group_ = tr("Window and simulated machine");
    const auto turn = [this](double percent) {
        return [this, percent] {
            if (session_.hasEccentric()) panels_->eccentric().turn(percent);
        };
    };
    act(tr("Longer"), tr("Turn the simulated eccentric a little: marks longer"), {Qt::Key_Period},
        turn(EccentricPanel::kFinePercent));
    act(tr("Shorter"), tr("Turn the simulated eccentric a little: marks shorter"), {Qt::Key_Comma},
        turn(-EccentricPanel::kFinePercent));
    act(tr("Much longer"), tr("Turn the simulated eccentric a lot: marks longer"), {Qt::CTRL | Qt::Key_Period},
        turn(EccentricPanel::kCoarsePercent));
    act(tr("Much shorter"), tr("Turn the simulated eccentric a lot: marks shorter"), {Qt::CTRL | Qt::Key_Comma},
        turn(-EccentricPanel::kCoarsePercent));
    act(tr("Grid"), tr("To the grid"), {Qt::CTRL | Qt::Key_G}, [this] { panels_->grid().setFocus(); });
    act(tr("Finding"), tr("Choose the next finding; what it rests on is picked out on grid, plot and tape"),
        {Qt::Key_F}, [this] { panels_->findings().chooseNext(); });
    act(tr("Taller findings"), tr("The findings in the height of the readings, and back, while they do not fit"),
        {Qt::SHIFT | Qt::Key_F}, [this] { panels_->findings().toggleTall(); });
    act(tr("Peaks"), tr("Forget the held peaks of the gauge"), {Qt::Key_P}, [this] { panels_->gauge().resetPeaks(); });
    alone_ = act(tr("Gauge only"), tr("The gauge alone, to be read across the bench"), {Qt::Key_G}, [this] {
        panels_->setGaugeAlone(alone_->isChecked());
        bar_->setVisible(!alone_->isChecked());
        if (alone_->isChecked())
            messages_->say(tr("The gauge alone; G or Escape brings the other panels back."));
        else
            messages_->dropNews();
    });
    alone_->setCheckable(true);
    act(tr("Back"), tr("Leave the gauge-only view, or clear the message"), {Qt::Key_Escape}, [this] { leaveView(); });
    act(tr("Keys"), tr("List all keys"), {Qt::SHIFT | Qt::Key_F1},
        [this] { KeysHelp(actions(), panelKeys(), this).exec(); });
    act(tr("Quit"), tr("Quit"), {Qt::CTRL | Qt::Key_Q}, [this] { close(); });
}

}  // namespace trueunit
