// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/clock_dialog.h"

#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "app/help_window.h"
#include "core/measure/clock_trim.h"
#include "widgets/told.h"

namespace trueunit {

namespace {
constexpr double kSeconds = 60.0;  // of the newest input, at most
}

ClockDialog::ClockDialog(double ppm, std::shared_ptr<const RecentInput> input, QWidget* parent)
    : QDialog(parent),
      input_(std::move(input)),
      ppm_(new QDoubleSpinBox),
      tone_(new QDoubleSpinBox),
      message_(new QLabel(tr("Let a tone of exactly known frequency play into the input for at least ten seconds, then "
                             "measure. The trim holds for this card at this sample rate, and is noted with every "
                             "reading."))) {
    setWindowTitle(tr("Clock trim"));
    ppm_->setRange(-1000.0, 1000.0);
    ppm_->setDecimals(2);
    ppm_->setSuffix(tr(" parts in a million"));
    ppm_->setValue(ppm);
    ppm_->setAccessibleName(tr("The card's clock is fast by"));
    tone_->setRange(100.0, 10000.0);
    tone_->setDecimals(3);
    tone_->setSuffix(tr(" Hz"));
    tone_->setValue(1000.0);
    tone_->setAccessibleName(tr("Reference tone"));
    message_->setWordWrap(true);
    message_->setMinimumHeight(3 * message_->fontMetrics().lineSpacing());
    auto* listen = new QPushButton(tr("&Measure"));
    listen->setAutoDefault(false);  // Enter uses what was typed
    auto* row = new QHBoxLayout;
    row->addWidget(tone_, 1);
    row->addWidget(listen);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole)->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("check.md")), QDialogButtonBox::HelpRole);
    auto* form = new QFormLayout(this);
    form->addRow(tr("The card's clock is &fast by"), ppm_);
    auto* toneLabel = new QLabel(tr("Reference &tone"));
    toneLabel->setBuddy(tone_);
    form->addRow(toneLabel, row);
    form->addRow(message_);
    form->addRow(buttons);
    connect(listen, &QPushButton::clicked, this, &ClockDialog::measure);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(520, 240);
}

double ClockDialog::ppm() const { return ppm_->value(); }
QString ClockDialog::message() const { return message_->text(); }
void ClockDialog::setTone(double hz) { tone_->setValue(hz); }

// Of the newest stretch only: a gap would be taken for a turn of the phase.
void ClockDialog::measure() {
    const auto stretches = input_ ? input_->stretches() : std::vector<KeptStretch>{};
    if (stretches.empty()) return message_->setText(tr("There is no input yet; choose one first."));
    const KeptStretch& newest = stretches.back();
    const auto most = static_cast<std::uint64_t>(kSeconds * input_->rateHz());
    const std::uint64_t from = newest.samples() > most ? newest.samples() - most : 0;
    std::vector<float> samples(newest.samples() - from);
    samples.resize(newest.read(from, samples));
    ClockMeter meter(input_->rateHz(), tone_->value());
    meter.push(samples);
    const Result<ClockTrim> trim = meter.result();
    if (!trim) return message_->setText(told(trim.error().text));
    ppm_->setValue(trim->ppm.value);
    message_->setText(tr("The clock is %1 by %2 \u00b1 %3 parts in a million, by %4 s of the tone.")
                          .arg(trim->ppm.value < 0.0 ? tr("slow") : tr("fast"))
                          .arg(std::abs(trim->ppm.value), 0, 'f', 2)
                          .arg(trim->ppm.uncertainty, 0, 'f', 2)
                          .arg(trim->seconds, 0, 'f', 0));
}

}  // namespace trueunit
