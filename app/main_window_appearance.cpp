// SPDX-License-Identifier: GPL-3.0-or-later
// The window and how it looks: language, size and colours.
#include <QAction>
#include <QMenu>

#include "app/appearance_dialog.h"
#include "app/main_window.h"
#include "app/message_line.h"

namespace trueunit {

void MainWindow::makeAppearanceActions() {
    group_ = tr("Help and settings");
    QAction* look = act(tr("Language, size, colours"), tr("Language, size and colours of the window"),
                        {Qt::CTRL | Qt::SHIFT | Qt::Key_G}, [this] { askAppearance(); });
    more_->menu()->addSeparator();
    more_->menu()->addAction(look);
}

void MainWindow::askAppearance() {
    AppearanceDialog dialog(loadAppearance(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    saveAppearance(dialog.chosen());
    messages_->say(tr("Language, size and colours are taken up when the program starts the next time."));
}

}  // namespace trueunit
