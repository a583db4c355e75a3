// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sender_dialog.h"

#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/ask_file.h"
#include "app/portaudio_source.h"
#include "app/window_memory.h"
#include "core/frame/code_table.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

constexpr int kWatchMs = 200;

QDoubleSpinBox* numberBox(double least, double most, double value, double step, const QString& unit,
                          const QString& name) {
    auto* field = new QDoubleSpinBox;
    field->setRange(least, most);
    field->setValue(value);
    field->setSingleStep(step);
    field->setSuffix(u' ' + unit);
    field->setAccessibleName(name);
    return field;
}

// Two captioned fields to a row, in columns that line up.
class Fields {
public:
    explicit Fields(QGridLayout* grid) : grid_(grid) {
        grid_->setColumnStretch(1, 1);
        grid_->setColumnStretch(3, 1);
    }
    void add(const QString& caption, QWidget* field, bool wide = false) {
        auto* label = new QLabel(caption);
        label->setBuddy(field);
        grid_->addWidget(label, row_, column_);
        grid_->addWidget(field, row_, column_ + 1, 1, wide ? 3 : 1);
        column_ = wide || column_ == 2 ? 0 : 2;
        if (column_ == 0) ++row_;
    }

private:
    QGridLayout* grid_;
    int row_ = 0;
    int column_ = 0;
};

}  // namespace

SenderDialog::SenderDialog(QWidget* parent)
    : QDialog(parent),
      text_(new QPlainTextEdit),
      code_(new QComboBox),
      baud_(numberBox(20, 200, 50, 1, tr("baud"), tr("Speed"))),
      stopUnits_(numberBox(1, 2.5, 1.5, 0.1, tr("units"), tr("Stop"))),
      bias_(numberBox(-40, 40, 0, 1, QStringLiteral("%"), tr("Bias"))),
      end_(numberBox(-40, 40, 0, 1, QStringLiteral("%"), tr("End distortion"))),
      scatter_(numberBox(0, 10, 0, 0.5, tr("% rms"), tr("Scatter"))),
      speed_(numberBox(-15, 15, 0, 0.1, QStringLiteral("%"), tr("Speed error"))),
      keying_(new QComboBox),
      tone_(numberBox(300, 10000, 1000, 10, tr("Hz"), tr("Tone"))),
      level_(numberBox(-60, -1, -12, 1, tr("dBFS"), tr("Level"))),
      output_(new QComboBox),
      go_(new QPushButton(tr("&Send"))),
      message_(new QLabel) {
    setWindowTitle(tr("Reference sender"));
    const SenderSettings usual;
    text_->setPlainText(QString::fromStdString(usual.text).remove('\r').trimmed());
    text_->setTabChangesFocus(true);
    text_->setAccessibleName(tr("Text"));
    text_->setMaximumHeight(4 * text_->fontMetrics().lineSpacing());
    for (const QString& name : QString::fromStdString(codeNames()).split(QStringLiteral(", ")))
        code_->addItem(name.toUpper(), name);
    keying_->addItem(tr("as it is keyed"));
    keying_->addItem(tr("on a tone"));
    code_->setAccessibleName(tr("Code"));
    keying_->setAccessibleName(tr("Keying"));
    output_->setAccessibleName(tr("Sound output"));
    tone_->setEnabled(false);
    connect(keying_, &QComboBox::activated, this, [this](int index) { tone_->setEnabled(index == 1); });
    auto* caution = new QLabel(told(kSenderCaution));
    for (QLabel* label : {caution, message_}) label->setWordWrap(true);
    message_->setMinimumHeight(2 * message_->fontMetrics().lineSpacing());
    QFont strong = caution->font();
    strong.setWeight(QFont::DemiBold);
    caution->setFont(strong);
    auto* column = new QVBoxLayout(this);
    auto* grid = new QGridLayout;
    column->addWidget(caution);
    column->addLayout(grid);
    column->addWidget(message_, 1);
    Fields fields(grid);
    fields.add(tr("&Text"), text_, true);
    fields.add(tr("&Code"), code_);
    fields.add(tr("S&top"), stopUnits_);
    fields.add(tr("S&peed"), baud_);
    fields.add(tr("Speed &error"), speed_);
    fields.add(tr("&Bias"), bias_);
    fields.add(tr("E&nd distortion"), end_);
    fields.add(tr("Sc&atter"), scatter_);
    fields.add(tr("&Level"), level_);
    fields.add(tr("&Keying"), keying_);
    fields.add(tr("T&one"), tone_);
    fields.add(tr("O&utput"), output_, true);
    auto* file = new QPushButton(tr("&Write to a file\u2026"));
    auto* close = new QPushButton(tr("Close"));
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    for (QPushButton* button : {file, close, go_}) buttons->addWidget(button);
    column->addLayout(buttons);
    go_->setDefault(true);
    connect(go_, &QPushButton::clicked, this, &SenderDialog::toggle);
    connect(file, &QPushButton::clicked, this, &SenderDialog::writeFile);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(&timer_, &QTimer::timeout, this, &SenderDialog::watch);
    resizeOnScreen(*this, {640, 440});
}

SenderSettings SenderDialog::settings() const {
    SenderSettings s;
    s.text = text_->toPlainText().replace('\n', QStringLiteral("\r\n")).toStdString() + "\r\n";
    s.code = code_->currentData().toString().toStdString();
    s.baud = baud_->value();
    s.stopUnits = stopUnits_->value();
    s.biasPercent = bias_->value();
    s.endPercent = end_->value();
    s.scatterPercent = scatter_->value();
    s.speedPercent = speed_->value();
    s.keying = keying_->currentIndex() == 1 ? SenderSettings::Keying::tone : SenderSettings::Keying::baseband;
    s.toneHz = tone_->value();
    s.levelDbfs = level_->value();
    return s;
}

QString SenderDialog::message() const { return message_->text(); }

void SenderDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    if (!sending()) fillOutputs();
}

void SenderDialog::fillOutputs() {
    const QString before = output_->currentText();
    output_->clear();
    const Result<DeviceList> all = PortAudioSource::devices();
    if (!all) return message_->setText(told(all.error().text));
    for (const SoundDevice& d : *all) {
        if (d.outputChannels < 1) continue;
        output_->addItem(QString::fromStdString(d.title()));
        if (d.defaultOutput && before.isEmpty()) output_->setCurrentIndex(output_->count() - 1);
    }
    if (const int at = output_->findText(before); at >= 0) output_->setCurrentIndex(at);
    go_->setEnabled(output_->count() > 0);
    if (output_->count() == 0) message_->setText(tr("There is no sound output."));
}

void SenderDialog::toggle() {
    if (timer_.isActive())
        stop(tr("Stopped."));
    else
        start();
}

void SenderDialog::start() {
    const Result<SoundDevice> output = soundOutput(output_->currentText().toStdString());
    if (!output) return message_->setText(told(output.error().text));
    if (const Outcome started = sender_.start(*output, settings()); !started)
        return message_->setText(told(started.error().text));
    go_->setText(tr("&Stop"));
    timer_.start(kWatchMs);
    watch();
}

void SenderDialog::stop(const QString& why) {
    timer_.stop();
    sender_.stop();
    go_->setText(tr("&Send"));
    message_->setText(why);
}

void SenderDialog::watch() {
    if (sender_.state() == SourceState::lost) return stop(tr("The sound output has stopped taking the signal."));
    QString words =
        tr("Sending for %1 s: %2.").arg(sender_.sentSeconds(), 0, 'f', 0).arg(told(sender_.settings().words()));
    if (sender_.missedSamples() > 0)
        words =
            tr("The signal has had gaps, since the computer was too busy: it is no reference. Stop and send again.");
    message_->setText(words);
}

void SenderDialog::writeFile() {
    const QString path =
        askToSave(this, tr("Write the reference signal to"), QDir::home().filePath(QStringLiteral("reference.flac")),
                  tr("Sound files (*.flac *.wav)"));
    if (path.isEmpty()) return;
    const Outcome written = writeReference(settings(), path.toStdString(), 48000.0, SampleFormat::pcm24);
    message_->setText(written ? tr("A minute of it is in %1.").arg(QDir::toNativeSeparators(path))
                              : told(written.error().text));
}

void SenderDialog::done(int result) {
    if (timer_.isActive()) stop(tr("Stopped."));
    QDialog::done(result);
}

}  // namespace trueunit
