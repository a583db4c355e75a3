// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/appearance_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace trueunit {

AppearanceDialog::AppearanceDialog(const Appearance& now, QWidget* parent)
    : QDialog(parent), language_(new QComboBox), size_(new QComboBox), ground_(new QComboBox) {
    setWindowTitle(tr("Language, size and colours"));
    language_->setAccessibleName(tr("Language"));
    language_->addItem(tr("as the desktop"), QString());
    for (const QString& code : languages()) language_->addItem(languageName(code), code);
    language_->setCurrentIndex(std::max(0, language_->findData(now.language)));
    size_->setAccessibleName(tr("Size"));
    for (const int percent : {100, 125, 150, 175, 200}) size_->addItem(tr("%1 %").arg(percent), percent);
    size_->setCurrentIndex(std::max(0, size_->findData(now.sizePercent)));
    ground_->setAccessibleName(tr("Colours"));
    ground_->addItem(tr("as the desktop"), QString());
    ground_->addItem(tr("light"), QStringLiteral("light"));
    ground_->addItem(tr("dark, for a dim workshop"), QStringLiteral("dark"));
    ground_->setCurrentIndex(std::max(0, ground_->findData(now.ground)));
    auto* when = new QLabel(tr("They are taken up when the program starts the next time. Reports are always light."));
    when->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole)->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Language"), language_);
    form->addRow(tr("&Size of everything"), size_);
    form->addRow(tr("&Colours"), ground_);
    form->addRow(when);
    form->addRow(buttons);
    resize(420, sizeHint().height());
}

Appearance AppearanceDialog::chosen() const {
    return {language_->currentData().toString(), size_->currentData().toInt(), ground_->currentData().toString()};
}

}  // namespace trueunit
