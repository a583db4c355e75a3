// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are opened or dropped, the help, the first steps, and what is remembered.
#include <QAction>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QMessageBox>
#include <QMimeData>
#include <QUrl>

#include "app/bench_panels.h"
#include "app/first_steps.h"
#include "app/help_window.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "app/settings.h"
#include "app/source_picker.h"
#include "app/top_bar.h"
#include "app/window_memory.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/displacement_plot.h"
#include "widgets/eccentric_panel.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/trail_view.h"

namespace trueunit {

namespace {

QString localFile(const QMimeData* data) {
    for (const QUrl& url : data->urls())
        if (url.isLocalFile()) return url.toLocalFile();
    return {};
}

}  // namespace

void MainWindow::makeHelpActions() {
    group_ = tr("Help and settings");
    help_ = act(tr("Help"), tr("Help: on the reading under the pointer, else the contents with guide and glossary"),
                {Qt::Key_F1}, [this] { showHelp(HelpWindow::pageWanted(*this)); });
    act(tr("Connecting"), tr("How to connect a loop safely"), {Qt::CTRL | Qt::Key_F1},
        [this] { showHelp(QStringLiteral("connect.md")); });
    act(tr("First steps"), tr("Show the first steps again, on the demonstration"), {Qt::ALT | Qt::Key_F1}, [this] {
        if (!session_.hasEccentric()) bar_->source().playDemonstration();
        startFirstSteps();
    });
    act(tr("Forget settings"), tr("Forget all settings and begin with the usual ones"),
        {Qt::CTRL | Qt::SHIFT | Qt::Key_Backspace}, [this] { askForget(); });
}

void MainWindow::showHelp(const QString& page) { openHelpBeside(this, page); }

void MainWindow::startFirstSteps() {
    if (firstSteps_ || !panels_->eccentric().isVisible()) return;
    firstSteps_ = new FirstSteps(
        {{&panels_->grid(), tr("<b>What you see:</b> each character the simulated sender sends, over the grid of ideal "
                               "units. An edge that comes early or late carries a flag.")},
         {&panels_->eccentric(),
          tr("<b>Turn this:</b> the eccentric of the contact, with the buttons, or with the keys: "
             "comma for marks shorter, full stop for longer. B first keeps how it was, to compare with.")},
         {&panels_->gauge(), tr("<b>Watch that:</b> the bias. At zero the marks are as long as the spaces. F1 explains "
                                "every reading and how to connect a real loop.")}},
        {&panels_->trail(), &panels_->displacement()}, this);
    connect(firstSteps_, &FirstSteps::ended, this, [] { rememberFirstSteps(); });
}

void MainWindow::askForget() {
    QMessageBox box(QMessageBox::Question, tr("Forget settings"),
                    tr("Forget speed, code, window of characters, limits, sound input, recent files and the place of "
                       "the window? Logbook and reports stay."),
                    QMessageBox::NoButton, this);
    auto* forget = box.addButton(tr("Forget"), QMessageBox::AcceptRole);
    box.addButton(tr("Keep"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == forget) forgetSettings();
}

void MainWindow::forgetSettings() {
    forgetAll();
    const Settings usual = loadSettings();
    (void)static_cast<bool>(session_.setOptions(usual.options));  // defaults are never refused
    session_.setLimits(Limits{});
    messages_->say(tr("All settings are the usual ones again."));
}

void MainWindow::openFile(const QString& path) {
    const bool scenario = path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
    const std::string file = path.toStdString();
    const Outcome playing = scenario ? session_.playScenario(file) : session_.playRecording(file);
    if (playing)
        rememberFile(path);
    else if (session_.sourceKind() == SourceKind::none)
        messages_->warn(told(playing.error().text));
    else
        messages_->warn(
            tr("%1 %2 goes on as before.").arg(told(playing.error().text), told(session_.sourceDescription())));
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!localFile(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = localFile(event->mimeData());
    if (path.isEmpty()) return;
    event->acceptProposedAction();
    openFile(path);
}

}  // namespace trueunit
