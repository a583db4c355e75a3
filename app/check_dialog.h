// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QTimer>
#include <memory>
#include <thread>

#include "app/check_record.h"

class QComboBox;
class QDoubleSpinBox;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

namespace trueunit {

// The self-check: the last result, and a new one, in memory or through a loop-back cable. The window goes on meanwhile;
// closing ends a check that runs. Window's thread; the check in memory runs on a thread inside.
class CheckDialog : public QDialog {
    Q_OBJECT

public:
    explicit CheckDialog(QWidget* parent = nullptr);
    ~CheckDialog() override;

    bool running() const { return thread_.joinable() || card_ != nullptr; }
    QString words() const;  // what is shown
    void checkMemory();
    void checkCard();

signals:
    void checked();  // a new result has been kept

protected:
    void showEvent(QShowEvent* event) override;
    void done(int result) override;

private:
    void fillDevices();
    void begin();
    void end();
    void pollCard();
    void memoryDone(const std::vector<CheckRow>& rows);
    void keep(CheckRecord record);
    void showLast();

    QPlainTextEdit* words_;
    QComboBox* input_;
    QComboBox* output_;
    QDoubleSpinBox* tone_;
    QProgressBar* progress_;
    QPushButton* memory_;
    QPushButton* cable_;
    QTimer timer_;
    std::unique_ptr<LoopbackCheck> card_;
    std::jthread thread_;  // last: it ends before what it reports to
};

}  // namespace trueunit
