// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ask_file.h"

#include <QFileDialog>
#include <QListView>

namespace trueunit {

namespace {

// The toolkit's own dialog remembers how wide its list of places is; where that is too narrow it cuts their names.
void widenPlaces(QFileDialog& dialog) {
    if (auto* places = dialog.findChild<QListView*>(QStringLiteral("sidebar")))  // none in a dialog of the desktop's
        places->setMinimumWidth(places->sizeHintForColumn(0) + 2 * places->frameWidth());
}

QString chosenIn(QFileDialog& dialog) {
    widenPlaces(dialog);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

}  // namespace

QString askToOpen(QWidget* parent, const QString& title, const QString& at, const QString& kinds) {
    QFileDialog dialog(parent, title, at, kinds);
    dialog.setFileMode(QFileDialog::ExistingFile);
    return chosenIn(dialog);
}

QString askToSave(QWidget* parent, const QString& title, const QString& at, const QString& kinds, QString* kind) {
    QFileDialog dialog(parent, title, at, kinds);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    const QString path = chosenIn(dialog);
    if (kind) *kind = dialog.selectedNameFilter();
    return path;
}

}  // namespace trueunit
