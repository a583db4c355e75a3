// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "widgets/panel.h"

namespace trueunit {

// The input in one line for the top bar: level in segments of 3 dB, clipping and losses in words, and what has been
// found of the wiring ("loop, upright, coupling 8 Hz, noise −43 dB").
class LevelMeter : public QWidget {
    Q_OBJECT

public:
    explicit LevelMeter(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SnapshotPtr& snapshot);

    void setStill(bool still);  // nothing comes in: a dash, whatever was last

    int litSegments() const { return lit_; }
    QString levelWords() const { return levelWords_; }  // "−12 dB", "clipping"
    QString lossWords() const { return lossWords_; }    // "2 gaps, 512 samples lost"; empty: none
    QString inputWords() const { return inputWords_; }  // empty: nothing found yet

    QSize sizeHint() const override { return {430, 40}; }
    QSize minimumSizeHint() const override { return {210, 40}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void say(const Snapshot& snapshot);

    SnapshotPtr snapshot_;
    int lit_ = 0;
    bool clipping_ = false;
    bool still_ = false;
    QString levelWords_, lossWords_, inputWords_;
};

}  // namespace trueunit
