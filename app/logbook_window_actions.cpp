// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of the logbook's window, and what leaves and enters it: reports, exports, imports.
#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/ask_file.h"
#include "app/busy.h"
#include "app/frame_window.h"
#include "app/help_window.h"
#include "app/keys_help.h"
#include "app/logbook/readings_export.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "app/logbook_window.h"
#include "app/message_line.h"
#include "app/report_dialog.h"
#include "app/save_text.h"
#include "app/visit_form.h"
#include "app/visit_report.h"

namespace trueunit {

QAction* LogbookWindow::act(const QString& name, const QString& what, const QKeySequence& key,
                            void (LogbookWindow::*slot)()) {
    auto* action = new QAction(name, this);
    action->setStatusTip(what);
    action->setToolTip(QStringLiteral("%1 (%2)").arg(what, key.toString(QKeySequence::NativeText)));
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    return action;
}

void LogbookWindow::makeActions() {
    act(tr("Search"), tr("To the search"), {Qt::CTRL | Qt::Key_F}, &LogbookWindow::focusSearch);
    const QList<QAction*> buttons = {
        act(tr("Open frame"), tr("Open the chosen frame as it was, and measure it again"), {Qt::CTRL | Qt::Key_Return},
            &LogbookWindow::openFrame),
        act(tr("Mark as before"), tr("The chosen frame shows the machine before the repair"), {Qt::CTRL | Qt::Key_1},
            &LogbookWindow::markBefore),
        act(tr("Mark as after"), tr("The chosen frame shows the machine after the repair"), {Qt::CTRL | Qt::Key_2},
            &LogbookWindow::markAfter),
        act(tr("Report\u2026"), tr("Write the report of the chosen visit, PNG or PDF"), {Qt::CTRL | Qt::Key_R},
            &LogbookWindow::askReport),
        act(tr("Export\u2026"), tr("Export the chosen visit: archive, CSV or JSON"), {Qt::CTRL | Qt::Key_E},
            &LogbookWindow::askExport),
        act(tr("Import\u2026"), tr("Take in the archive of a visit"), {Qt::CTRL | Qt::Key_I},
            &LogbookWindow::askImport),
        act(tr("Help"), tr("How the logbook is kept"), {Qt::Key_F1}, &LogbookWindow::showHelp),
        act(tr("Keys"), tr("List the keys of this window"), {Qt::SHIFT | Qt::Key_F1}, &LogbookWindow::showKeys)};
    auto* row = new QHBoxLayout;
    for (QAction* action : buttons) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setAccessibleName(action->statusTip());
        row->addWidget(button);
    }
    row->addStretch(1);
    static_cast<QVBoxLayout*>(layout())->insertLayout(1, row);
    connect(act(tr("Close"), tr("Close the logbook; what was typed is saved"), {Qt::Key_Escape},
                &LogbookWindow::focusSearch),
            &QAction::triggered, this, &QWidget::close);
}

void LogbookWindow::showHelp() { openHelpBeside(this, QStringLiteral("logbook.md")); }
void LogbookWindow::focusSearch() { search_->setFocus(); }
void LogbookWindow::markBefore() { mark(FrameRole::before); }
void LogbookWindow::markAfter() { mark(FrameRole::after); }

// One frame of a visit is before, one after; the same mark again takes it away.
void LogbookWindow::mark(FrameRole role) {
    const auto frame = chosenFrame();
    const auto visit = chosenVisit();
    if (!store_ || !frame || !visit) return say(tr("Choose a frame first."));
    const auto rows = framesOf(*store_, *visit);
    if (failed(rows)) return;
    FrameRole now = FrameRole::none;
    WriteTransaction transaction(*store_);
    if (failed(transaction.begun())) return;
    for (const FrameRow& row : *rows) {
        if (row.role != role && row.id != *frame) continue;
        const FrameRole given = row.id == *frame && row.role != role ? role : FrameRole::none;
        if (row.id == *frame) now = given;
        if (failed(setRole(*store_, row.id, given))) return;
    }
    if (failed(transaction.commit())) return;
    fillVisits();
    say(now == FrameRole::before  ? tr("The chosen frame now shows the machine before the repair: an open ring.")
        : now == FrameRole::after ? tr("The chosen frame now shows the machine after the repair: a filled ring.")
                                  : tr("The chosen frame carries no mark now."));
}

void LogbookWindow::openFrame() {
    const auto id = chosenFrame();
    if (!store_ || !id) return;
    auto kept = readFrame(*store_, *id);
    if (failed(kept)) return;
    auto* window = new FrameWindow(std::move(*kept), this);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->show();
}

Result<QStringList> LogbookWindow::writeReportTo(const QString& path, bool letter) {
    const auto visit = chosenVisit();
    if (!store_ || !visit) return Error{"Choose a visit first."};
    form_->saveNow();
    const auto story = readVisitStory(*store_, *visit);
    if (!story) return story.error();
    return writeVisitReport(*story, letter ? Paper::letter : Paper::a4, path);
}

// Machine and day of the visit, in the folder of the other reports.
QString LogbookWindow::suggestedPath(const QString& suffix) const {
    const QDateTime opened = QDateTime::fromSecsSinceEpoch(form_->visit().opened);
    return ReportDialog::freshPath(form_->machine().name,
                                   tr(", visit of %1").arg(opened.toString(QStringLiteral("yyyy-MM-dd"))), suffix);
}

void LogbookWindow::askReport() {
    if (!chosenVisit()) return say(tr("Choose a visit first."));
    const QString pdfA4 = tr("PDF, A4 (*.pdf)"), pngA4 = tr("PNG, A4 (*.png)");
    const QString pdfLetter = tr("PDF, Letter (*.pdf)"), pngLetter = tr("PNG, Letter (*.png)");
    QString kind;
    QString path =
        askToSave(this, tr("The report of the visit: its place, PDF or PNG"), suggestedPath(QStringLiteral(".pdf")),
                  QStringList{pdfA4, pngA4, pdfLetter, pngLetter}.join(QStringLiteral(";;")), &kind);
    if (path.isEmpty()) return;
    const QString suffix = kind == pngA4 || kind == pngLetter ? QStringLiteral(".png") : QStringLiteral(".pdf");
    if (suffix == QStringLiteral(".png") && path.endsWith(QStringLiteral(".pdf"))) path.chop(suffix.size());
    if (!path.endsWith(QStringLiteral(".png")) && !path.endsWith(QStringLiteral(".pdf"))) path += suffix;
    say(tr("The report is being written\u2026"));
    const Busy busy;
    if (const auto files = writeReportTo(path, kind == pdfLetter || kind == pngLetter); !failed(files))
        foot_->sayWritten(*files);
}

void LogbookWindow::askExport() {
    const auto visit = chosenVisit();
    if (!store_ || !visit) return say(tr("Choose a visit first."));
    const QString path =
        askToSave(this, tr("Export the visit to"), suggestedPath(QStringLiteral(".zip")),
                  tr("The whole visit (*.zip);;Readings as a table (*.csv);;Readings as JSON (*.json)"));
    if (path.isEmpty()) return;
    form_->saveNow();
    Outcome written = done();
    if (path.endsWith(QStringLiteral(".csv")) || path.endsWith(QStringLiteral(".json"))) {
        FrameFilter all;
        all.visit = visit;
        all.limit = 1000000;
        const auto found = findFrames(*store_, all);
        if (failed(found)) return;
        const auto text = path.endsWith(QStringLiteral(".csv")) ? readingsCsv(*store_, found->frames)
                                                                : readingsJson(*store_, found->frames);
        if (failed(text)) return;
        written = saveText(path, *text);
    } else {
        written = writeVisitArchive(*store_, *visit, path);
    }
    if (!failed(written)) foot_->sayFiled(tr("The visit is in %1.").arg(QDir::toNativeSeparators(path)), path);
}

void LogbookWindow::askImport() {
    if (!store_) return;
    const QString path =
        askToOpen(this, tr("Take in the archive of a visit"), {}, tr("Archives of visits (*.zip);;All files (*)"));
    if (path.isEmpty()) return;
    const auto imported = importVisitArchive(*store_, path);
    if (failed(imported)) return;
    reload();
    chooseMachine(imported->machine);
    say(tr("%1 new frames of %2; %3 were here already.")
            .arg(imported->framesNew)
            .arg(imported->machine)
            .arg(imported->framesThere));
}

void LogbookWindow::showKeys() {
    KeysHelp(actions(),
             {{QStringLiteral("Enter"), tr("On a frame: open it")},
              {QStringLiteral("Tab"), tr("From the machines to the visits and their words")}},
             this)
        .exec();
}

}  // namespace trueunit
