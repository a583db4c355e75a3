// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/panel.h"

class QPushButton;

namespace trueunit {

// The simulated eccentric under the contact box, for the demonstration: turns under the person's hand and says which
// way makes marks longer. Emits what was turned; changes nothing itself.
class EccentricPanel : public Panel {
    Q_OBJECT

public:
    static constexpr double kFinePercent = 0.2;  // of a unit
    static constexpr double kCoarsePercent = 2.0;

    explicit EccentricPanel(QWidget* parent = nullptr);

    double turnedSoFar() const { return turned_; }  // percent, since the demonstration began

    QSize sizeHint() const override { return {378, 118}; }
    QSize minimumSizeHint() const override { return {280, 110}; }

public slots:
    void turn(double percent);            // marks longer is positive; keys: right, left; with shift coarse
    void setTurnedSoFar(double percent);  // the picture only, as after a restart

signals:
    void turned(double percent);

protected:
    void refresh(const Snapshot& snapshot) override;
    void paintBody(QPainter& painter, const QRectF& body) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QPushButton* button(const QString& text, double percent, const QString& key);
    void say();

    double turned_ = 0.0;
};

}  // namespace trueunit
