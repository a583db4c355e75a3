// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_dialog.h"

#include <QComboBox>
#include <QDateTime>
#include <QDoubleSpinBox>
#include <QFontDatabase>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMetaObject>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>

#include "app/help_window.h"
#include "app/portaudio_source.h"
#include "app/version.h"
#include "app/window_memory.h"
#include "widgets/told.h"

namespace trueunit {

namespace {
constexpr int kPollMs = 100;
}

CheckDialog::CheckDialog(QWidget* parent)
    : QDialog(parent),
      words_(new QPlainTextEdit),
      input_(new QComboBox),
      output_(new QComboBox),
      tone_(new QDoubleSpinBox),
      progress_(new QProgressBar),
      memory_(new QPushButton(tr("Check in &memory"))),
      cable_(new QPushButton(tr("Check through the &cable"))) {
    setWindowTitle(tr("Self-check"));
    words_->setReadOnly(true);
    words_->setLineWrapMode(QPlainTextEdit::NoWrap);
    words_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    words_->setAccessibleName(tr("Result"));
    input_->setAccessibleName(tr("Sound input"));
    output_->setAccessibleName(tr("Sound output"));
    input_->setPlaceholderText(tr("There is no sound input."));
    output_->setPlaceholderText(tr("There is no sound output."));
    tone_->setAccessibleName(tr("Reference tone"));
    tone_->setRange(0.0, 10000.0);
    tone_->setSpecialValueText(tr("none"));
    tone_->setSuffix(tr(" Hz"));
    progress_->setRange(0, 1000);
    auto* how = new QLabel(
        tr("In memory: known signals, no sound card. Through the cable: a lead from the sound output to the sound "
           "input, nothing else connected to either; take the loop's lead off first. With the frequency of a "
           "reference tone, let it play into the input for 12 s, then put the cable in."));
    how->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("&Output"), output_);
    form->addRow(tr("&Input"), input_);
    form->addRow(tr("&Reference tone"), tone_);
    auto* close = new QPushButton(tr("Close"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(makeHelpButton(this, QStringLiteral("check.md")));
    buttons->addWidget(progress_, 1);
    buttons->addStretch(1);
    for (QPushButton* button : {close, cable_, memory_}) buttons->addWidget(button);
    memory_->setDefault(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(how);
    column->addWidget(words_, 1);
    column->addLayout(form);
    column->addLayout(buttons);
    connect(memory_, &QPushButton::clicked, this, &CheckDialog::checkMemory);
    connect(cable_, &QPushButton::clicked, this, &CheckDialog::checkCard);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(&timer_, &QTimer::timeout, this, &CheckDialog::pollCard);
    progress_->setVisible(false);
    resizeOnScreen(*this, {980, 620});
}

CheckDialog::~CheckDialog() = default;

QString CheckDialog::words() const { return words_->toPlainText(); }

void CheckDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    if (running()) return;
    showLast();
    fillDevices();
}

void CheckDialog::showLast() {
    const auto last = lastCheck();
    words_->setPlainText(last ? checkText(*last, true) : tr("No self-check has been made yet."));
}

void CheckDialog::fillDevices() {
    const Result<DeviceList> all = PortAudioSource::devices();
    input_->clear();
    output_->clear();
    for (const SoundDevice& d : all ? *all : DeviceList{}) {
        if (d.inputChannels > 0) input_->addItem(QString::fromStdString(d.title()));
        if (d.inputChannels > 0 && d.defaultInput) input_->setCurrentIndex(input_->count() - 1);
        if (d.outputChannels > 0) output_->addItem(QString::fromStdString(d.title()));
        if (d.outputChannels > 0 && d.defaultOutput) output_->setCurrentIndex(output_->count() - 1);
    }
    for (QComboBox* box : {input_, output_}) box->setEnabled(box->count() > 0);
    cable_->setEnabled(input_->count() > 0 && output_->count() > 0);
}

void CheckDialog::begin() {
    memory_->setEnabled(false);
    cable_->setEnabled(false);
    progress_->setValue(0);
    progress_->setVisible(true);
}

void CheckDialog::end() {
    timer_.stop();
    card_.reset();
    if (thread_.joinable()) thread_ = {};
    memory_->setEnabled(true);
    cable_->setEnabled(input_->count() > 0 && output_->count() > 0);
    progress_->setVisible(false);
}

void CheckDialog::checkMemory() {
    if (running()) return;
    begin();
    words_->setPlainText(tr("Known signals are being read in memory\u2026"));
    thread_ = std::jthread([this](const std::stop_token& stop) {
        const auto tell = [this](double fraction) {
            QMetaObject::invokeMethod(
                this, [this, fraction] { progress_->setValue(static_cast<int>(1000 * fraction)); },
                Qt::QueuedConnection);
        };
        std::vector<CheckRow> rows = checkInMemory(tell, stop);
        if (stop.stop_requested()) return;
        QMetaObject::invokeMethod(
            this, [this, rows = std::move(rows)] { memoryDone(rows); }, Qt::QueuedConnection);
    });
}

// A check of the card that was made before stays on the record.
void CheckDialog::memoryDone(const std::vector<CheckRow>& rows) {
    if (!running()) return;  // closed meanwhile
    CheckRecord record;
    record.memory = rows;
    if (const auto last = lastCheck()) record.loopback = last->loopback;
    keep(std::move(record));
}

void CheckDialog::checkCard() {
    if (running()) return;
    const std::string names = input_->currentText().toStdString() + "," + output_->currentText().toStdString();
    const auto devices = loopbackDevices(names);
    if (!devices) return words_->setPlainText(told(devices.error().text));
    std::optional<double> tone;
    if (tone_->value() > 0.0) tone = tone_->value();
    auto check = std::make_unique<LoopbackCheck>(devices->first, devices->second, tone);
    if (const Outcome started = check->start(); !started)
        return words_->setPlainText(told(started.error().text) +
                                    tr(" If it is being listened to, choose the demonstration as input first."));
    card_ = std::move(check);
    begin();
    words_->setPlainText(tr("The sound card is being checked\u2026"));
    timer_.start(kPollMs);
}

void CheckDialog::pollCard() {
    if (!card_) return;
    progress_->setValue(static_cast<int>(1000 * card_->progress()));
    if (!card_->poll()) return;
    const Result<LoopbackResult> result = card_->result();
    if (!result) {
        end();
        return words_->setPlainText(told(result.error().text));
    }
    CheckRecord record;
    record.loopback = *result;
    if (const auto last = lastCheck()) record.memory = last->memory;
    keep(std::move(record));
}

void CheckDialog::keep(CheckRecord record) {
    end();
    record.version = kVersion;
    record.takenSecondsUtc = QDateTime::currentSecsSinceEpoch();
    const Outcome kept = keepCheck(record);
    words_->setPlainText(checkText(record, true) + (kept ? QString() : "\n" + told(kept.error().text)));
    emit checked();
}

void CheckDialog::done(int result) {
    if (running()) end();
    QDialog::done(result);
}

}  // namespace trueunit
