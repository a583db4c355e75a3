// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <thread>

#include "app/logbook/frames.h"

class QLabel;
class QTableWidget;

namespace trueunit {

// A frame of the logbook reopened: grid with notes and cursors, readings, findings, displacements as they were, and
// the table of all quantities with what this program measures from the kept sound beside them. Changes nothing.
// Window thread; the measuring has a thread of its own.
class FrameWindow : public QWidget {
    Q_OBJECT

public:
    explicit FrameWindow(KeptFrame kept, QWidget* parent = nullptr);
    ~FrameWindow() override;

    bool measured() const { return measured_; }  // the second reading is there, or will not come
    const QTableWidget& table() const { return *table_; }

    QSize sizeHint() const override { return {1240, 820}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QWidget* notes() const;
    void fill(const Snapshot* now);
    void measureAgain();

    KeptFrame kept_;
    QTableWidget* table_;
    QLabel* again_;
    bool measured_ = false;
    std::jthread measuring_;
};

}  // namespace trueunit
