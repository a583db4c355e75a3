// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <tuple>

#include "widgets/panel.h"

class QToolButton;

namespace trueunit {

// How far the marks are off, and which way: digits and words to be read from two metres, a scale with the limits and
// the peaks held since the last reset. Scales with its size; the view across the bench is this widget alone.
class BiasGauge : public Panel {
    Q_OBJECT

public:
    explicit BiasGauge(QWidget* parent = nullptr);

    QString digits() const { return digits_; }      // "+7.3" or a dash
    QString words() const { return words_; }        // "marks too long", "in limits", "cannot tell yet", or why nothing
    QString otherWords() const { return others_; }  // "end out", "end ?": what else is not in; or empty
    QString smallWords() const { return small_; }   // uncertainty and window
    QString lastNudge() const { return did_; }      // "last nudge: +7.8 to +5.1"; when alone also how long it learns
    QString nextNudge() const { return next_; }     // what the hand should do now
    double digitHeight() const { return digitHeight_; }             // of a capital, as last painted, logical pixels
    void setAlone(bool alone);                                      // fills the window, to be read across the bench
    std::optional<double> lowestHeld() const { return lowest_; }    // percent
    std::optional<double> highestHeld() const { return highest_; }  // percent
    double scaleEnd() const { return scaleEnd_; }                   // the scale runs from minus to plus this, percent

    QSize sizeHint() const override { return {378, 290}; }
    QSize minimumSizeHint() const override { return {242, 190}; }

public slots:
    void resetPeaks();  // key: P

signals:
    void peaksReset();

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    // What peaks have in common: window, slice, speed, input.
    using Ground = std::tuple<int, double, std::optional<double>, InputKind>;
    void say(const Snapshot& snapshot);
    void forgetOthers(const Snapshot& snapshot);
    void holdPeaks(const Snapshot& snapshot);
    void holdPeak(double bias);
    void chooseScale();
    void paintWords(QPainter& painter, const QRectF& row, double wordPx, bool out) const;
    void paintDigits(QPainter& painter, const QRectF& area, double wordPx);
    void paintAdvice(QPainter& painter, const QRectF& area, double px) const;
    double adviceHeight(double px, double room) const;
    void paintReason(QPainter& painter, const QRectF& area, double px);

    std::optional<Measured> bias_;
    double limit_ = 0.0;
    bool open_ = false;     // in or out cannot be told
    bool resting_ = false;  // the line rests: the reading is of the last characters, not of now
    double seconds_ = 0.0;  // of the last snapshot; a step back means another input
    QString digits_, words_, others_, small_, did_, next_;
    bool othersOut_ = false;  // not merely open
    bool foreign_ = false;    // out, and nothing for the eccentric: another fault alone pulls it there
    bool alone_ = false;
    double digitHeight_ = 0.0;
    std::optional<double> lowest_, highest_;
    std::uint64_t heldFrom_ = 0;  // number of the first character that is not among them yet
    std::optional<Ground> ground_;
    double scaleEnd_;
    QToolButton* reset_;
};

}  // namespace trueunit
