// SPDX-License-Identifier: GPL-3.0-or-later
// The window and the frozen frame: freezing, cursors, notes and the report.
#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <cmath>

#include "app/bench_log.h"
#include "app/bench_panels.h"
#include "app/busy.h"
#include "app/check_record.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/note_editor.h"
#include "app/report_dialog.h"
#include "app/report_page.h"
#include "app/session.h"
#include "app/top_bar.h"
#include "core/report/comparison.h"
#include "core/report/firm_moment.h"
#include "widgets/character_grid.h"
#include "widgets/findings_panel.h"
#include "widgets/tape_view.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

void MainWindow::connectGrid() {
    CharacterGrid& grid = panels_->grid();
    connect(&grid, &CharacterGrid::noteRequested, this, &MainWindow::startNote);
    connect(&grid, &CharacterGrid::cursorsChanged, &keeper_, &FrameKeeper::setCursors);
    connect(&grid, &CharacterGrid::characterSelected, &keeper_, &FrameKeeper::chooseCharacter);
    connect(&panels_->findings(), &FindingsPanel::cardWanted, this, &MainWindow::askMachineCard);
    connect(&panels_->tape(), &TapeView::characterClicked, this, [this](quint64 number) {
        panels_->grid().select(number);
        panels_->grid().setFocus();  // the arrow keys go on from there
        panels_->tape().setSelected(number);
        messages_->say(tr("On the grid: %1").arg(panels_->tape().wordsOf(number)));
        keeper_.chooseCharacter(number);
    });
    connect(editor_, &NoteEditor::kept, this, [this](const QString& text) {
        if (editedNote_)
            keeper_.editNote(*editedNote_, text);
        else
            keeper_.addNote(noteUnits_, noteLevel_, text);
        carryNotes();
    });
    connect(editor_, &NoteEditor::deleted, this, [this] {
        if (editedNote_) keeper_.editNote(*editedNote_, {});
        carryNotes();
    });
}

// What is in the logbook already has its notes there, too.
void MainWindow::carryNotes() {
    if (log_->holdsFrame() && !log_->kept()) (void)static_cast<bool>(keepInLog());
}

void MainWindow::signFrame() {
    if (frameIsOfThisInput_) keeper_.sign(bar_->machine().machine(), QString::fromStdString(keeper_.frame().remarks));
}

void MainWindow::freezeNow(const std::shared_ptr<const Snapshot>& moment) {
    freezeIn(keeper_, moment);
    frameIsOfThisInput_ = true;
    signFrame();
}

void MainWindow::freezeIn(FrameKeeper& keeper, const std::shared_ptr<const Snapshot>& moment) const {
    const CharacterGrid& grid = panels_->grid();
    keeper.freeze(moment, QString::fromStdString(session_.sourceDescription()), grid.selected(), grid.cursors());
    if (session_.playback())
        keeper.dateFile(QFileInfo(QString::fromStdString(session_.origin())).lastModified().toSecsSinceEpoch());
}

void MainWindow::toggleFreeze() {
    if (!keeper_.frozen() && !live_) return messages_->say(tr("There is nothing to freeze yet."));
    messages_->dropNews();
    if (keeper_.frozen()) return keeper_.release();
    freezeNow(live_);
    messages_->say(live_->windowUsed < kFirmCharacters
                       ? tr("N writes a note, K keeps it. For a firmer proof let go first: K then takes %1 characters.")
                             .arg(kFirmCharacters)
                       : tr("N writes a note, K keeps it, Ctrl+R writes a report."));
}

void MainWindow::freezeAsProof() {
    if (!live_) return messages_->say(tr("There is nothing to freeze yet."));
    messages_->dropNews();
    freezeNow(firmMoment(live_));
}

void MainWindow::frameChanged() {
    const bool frozen = keeper_.frozen();
    freeze_->setChecked(frozen);
    freeze_->setText(frozen ? tr("Let go") : tr("Freeze"));
    panels_->setFrozen(frozen);
    panels_->show(frozen ? keeper_.frame().snapshot : live_);
    panels_->tape().setSelected(frozen ? keeper_.frame().characterNumber : 0);
    if (frozen)
        panels_->grid().showFrame(keeper_.frame());
    else
        panels_->grid().showLive();
    if (!frozen) editor_->hide();
    tellFrozen();
}

std::optional<std::size_t> MainWindow::noteNear(double units, double level) const {
    constexpr double kUnits = 0.12, kLevel = 0.12;  // about a finger's width on the grid
    const auto& notes = keeper_.frame().notes;
    for (std::size_t i = 0; i < notes.size(); ++i)
        if (std::abs(notes[i].units - units) < kUnits && std::abs(notes[i].level - level) < kLevel) return i;
    return std::nullopt;
}

// At a note that is there already, that one is opened.
void MainWindow::startNote(double units, double level) {
    if (!keeper_.frozen()) toggleFreeze();
    if (!keeper_.frozen()) return;
    if (const auto near = noteNear(units, level)) return openNote(*near);
    const bool moved = editor_->isVisible() && !editedNote_;  // another place for what is being written
    editedNote_.reset();
    noteUnits_ = units;
    noteLevel_ = level;
    editor_->open(
        moved ? editor_->text() : QString(), true,
        tr("Will stand at %1 units. Double click elsewhere on the grid to move it, or set a cursor (C) first.")
            .arg(number(units, 2)));
}

void MainWindow::openNote(std::size_t index) {
    if (!keeper_.frozen() || index >= keeper_.frame().notes.size()) return;
    editedNote_ = index;
    const Note& note = keeper_.frame().notes[index];
    editor_->pointAt(panels_->grid().placeOf(note.units, note.level));
    editor_->open(QString::fromStdString(note.text), false, tr("Stands at %1 units.").arg(number(note.units, 2)));
}

void MainWindow::openNextNote() {
    const std::size_t count = keeper_.frozen() ? keeper_.frame().notes.size() : 0;
    if (count == 0) return messages_->say(tr("There is no note on a frozen frame; N writes one."));
    openNote(editedNote_ ? (*editedNote_ + 1) % count : 0);
}

Outcome MainWindow::writeReportTo(const QString& path) {
    signFrame();
    FrozenFrame frame = keeper_.frame();
    if (!keeper_.frozen()) {
        FrameKeeper moment;
        freezeIn(moment, firmMoment(live_));
        moment.sign(bar_->machine().machine(), {});
        frame = moment.frame();
    }
    if (!frame.snapshot) return Error{"There is nothing to report yet; choose an input first."};
    frame.selfCheck = lastCheckLine();
    frame.before = before_;
    frame.beforeTakenSecondsUtc = beforeTakenSecondsUtc_;
    messages_->say(tr("The report is being written\u2026"));
    const Busy busy;
    const Result<QStringList> files = writeReport(frame, path);
    if (!files) {
        messages_->warn(told(files.error().text));
        return files.error();
    }
    messages_->sayWritten(*files);
    return done();
}

// Freezes first, so that what is reported is what is seen.
void MainWindow::askReport() {
    const bool wasLive = !keeper_.frozen();
    if (wasLive) freezeAsProof();
    if (!keeper_.frozen()) return;
    if (wasLive)
        messages_->say(session_.ended() ? tr("Frozen for the report.")
                                        : tr("Frozen for the report; nothing that comes meanwhile is lost."));
    signFrame();
    const QString machine = QString::fromStdString(keeper_.frame().machine);
    ReportDialog dialog(machine, QString::fromStdString(keeper_.frame().remarks),
                        QDir::toNativeSeparators(ReportDialog::freshPath(machine, keeper_.frame().takenSecondsUtc)),
                        !before_             ? ReportDialog::Visit::none
                        : log_->beforeKept() ? ReportDialog::Visit::kept
                                             : ReportDialog::Visit::notKept,
                        this);
    const int wanted = dialog.exec();
    if (wanted != QDialog::Rejected) {
        keeper_.sign(dialog.machine(), dialog.remarks());
        if (frameIsOfThisInput_) bar_->machine().setMachine(dialog.machine());
    }
    if (wanted == ReportDialog::kVisitWanted) {
        if (!log_->beforeKept() && !keepInLog()) return;
    } else if (wanted == QDialog::Accepted) {
        if (!writeReportTo(dialog.path())) return;  // the sentence is said; the frame stays for another try
    }
    if (wanted != QDialog::Rejected)
        if (const Outcome carried = log_->carryRemarks(); !carried) messages_->warn(told(carried.error().text));
    if (wanted == ReportDialog::kVisitWanted) openLogbook();
    if (!wasLive) return;
    keeper_.release();
    if (wanted == QDialog::Rejected) messages_->dropNews();
}

}  // namespace trueunit
