// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QTimer>

#include "app/reference_sender.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace trueunit {

// The reference sender: what to send, where to, start and stop. Stays open beside the window while it sends, and never
// starts by itself; closing it stops the sending. Window's thread.
class SenderDialog : public QDialog {
    Q_OBJECT

public:
    explicit SenderDialog(QWidget* parent = nullptr);

    SenderSettings settings() const;  // as typed
    bool sending() const { return sender_.state() == SourceState::running; }
    QString message() const;

protected:
    void showEvent(QShowEvent* event) override;
    void done(int result) override;

private:
    void fillOutputs();
    void toggle();
    void start();
    void stop(const QString& why);
    void writeFile();
    void watch();

    ReferenceSender sender_;
    QTimer timer_;
    QPlainTextEdit* text_;
    QComboBox* code_;
    QDoubleSpinBox* baud_;
    QDoubleSpinBox* stopUnits_;
    QDoubleSpinBox* bias_;
    QDoubleSpinBox* end_;
    QDoubleSpinBox* scatter_;
    QDoubleSpinBox* speed_;
    QComboBox* keying_;
    QDoubleSpinBox* tone_;
    QDoubleSpinBox* level_;
    QComboBox* output_;
    QPushButton* go_;
    QLabel* message_;
};

}  // namespace trueunit
