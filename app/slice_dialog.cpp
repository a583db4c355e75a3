// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/slice_dialog.h"

#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "app/help_window.h"
#include "core/options.h"

namespace trueunit {

namespace {
constexpr double kLeast = 30.0, kMost = 70.0;  // beyond, noise near the levels counts as edges
}

SliceDialog::SliceDialog(double percent, QWidget* parent) : QDialog(parent), percent_(new QDoubleSpinBox) {
    setWindowTitle(tr("Slice level"));
    percent_->setRange(std::min(kLeast, percent), std::max(kMost, percent));  // the command line may have gone further
    percent_->setDecimals(1);
    percent_->setSuffix(tr(" % of the swing"));
    percent_->setValue(percent);
    percent_->setAccessibleName(tr("An instant is taken at"));
    percent_->selectAll();
    auto* words =
        new QLabel(tr("The middle, 50 %, is right for a signal that reaches the input as it is. An isolating "
                      "stage that starts late in the loop's current wants a lower one. The measurement begins "
                      "anew; the slice is kept from run to run and written into every report."));
    words->setWordWrap(true);
    auto* middle = new QPushButton(tr("&Middle"));
    middle->setAutoDefault(false);  // Enter uses what was typed
    auto* row = new QHBoxLayout;
    row->addWidget(percent_, 1);
    row->addWidget(middle);
    auto* label = new QLabel(tr("An instant is &taken at"));
    label->setBuddy(percent_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole)->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("connect.md")), QDialogButtonBox::HelpRole);
    auto* form = new QFormLayout(this);
    form->addRow(label, row);
    form->addRow(words);
    form->addRow(buttons);
    connect(middle, &QPushButton::clicked, this, [this] { percent_->setValue(Options{}.slicePercent); });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(520, 150);
}

double SliceDialog::percent() const { return percent_->value(); }

}  // namespace trueunit
