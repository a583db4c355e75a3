// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/eccentric_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kDegreesPerPercent = 9.0;  // of the drawn screw; clockwise makes marks longer
constexpr int kScrewRoom = 84;              // at the left of the body, for the drawing

}  // namespace

EccentricPanel::EccentricPanel(QWidget* parent) : Panel(Words::tr("Eccentric"), parent) {
    setFocusPolicy(Qt::StrongFocus);
    setRemark(Words::tr("simulated machine"));
    auto* grid = new QGridLayout;
    grid->setContentsMargins(kScrewRoom, 0, 0, 0);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(6);
    const QString coarse = number(kCoarsePercent, 0), fine = number(kFinePercent, 1);
    grid->addWidget(button(QStringLiteral("↺ %1 %").arg(fine), -kFinePercent, QStringLiteral("Left")), 0, 0);
    grid->addWidget(button(QStringLiteral("↻ %1 %").arg(fine), kFinePercent, QStringLiteral("Right")), 0, 1);
    grid->addWidget(button(QStringLiteral("↺ %1 %").arg(coarse), -kCoarsePercent, QStringLiteral("Shift+Left")), 1, 0);
    grid->addWidget(button(QStringLiteral("↻ %1 %").arg(coarse), kCoarsePercent, QStringLiteral("Shift+Right")), 1, 1);
    grid->setRowMinimumHeight(2, 18);  // the words are painted here
    bodyLayout()->addLayout(grid);
    say();
}

QPushButton* EccentricPanel::button(const QString& text, double percent, const QString& key) {
    auto* b = new QPushButton(text, this);
    const QString way = percent > 0.0 ? Words::tr("longer") : Words::tr("shorter");
    b->setFont(theme::text(theme::kSmallPx));
    b->setAccessibleName(Words::tr("Make marks %1 by %2 percent").arg(way, number(std::abs(percent), 1)));
    b->setToolTip(Words::tr("Marks %1 by %2 % of a unit (%3)").arg(way, number(std::abs(percent), 1), key));
    b->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    b->setMinimumHeight(22);
    b->setFocusPolicy(Qt::TabFocus);
    connect(b, &QPushButton::clicked, this, [this, percent] { turn(percent); });
    return b;
}

void EccentricPanel::turn(double percent) {
    setTurnedSoFar(turned_ + percent);
    emit turned(percent);
}

void EccentricPanel::setTurnedSoFar(double percent) {
    turned_ = percent;
    say();
    update();
}

void EccentricPanel::say() {
    describe(Words::tr("Turned %1 percent so far. Clockwise makes marks longer, back makes them shorter.")
                 .arg(signedNumber(turned_, 1)));
}

void EccentricPanel::refresh(const Snapshot&) {}

void EccentricPanel::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? kCoarsePercent : kFinePercent;
    if (event->key() == Qt::Key_Right)
        turn(step);
    else if (event->key() == Qt::Key_Left)
        turn(-step);
    else
        Panel::keyPressEvent(event);
}

void EccentricPanel::paintBody(QPainter& painter, const QRectF& body) {
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    const double words = body.bottom() - 4;
    const double left = body.left() + kScrewRoom;
    const double half = (body.width() - kScrewRoom) / 2;
    drawFiguresCentred(painter, {left + half / 2, words}, Words::tr("marks shorter"));
    drawFiguresCentred(painter, {left + 1.5 * half, words}, Words::tr("marks longer"));
    painter.setPen(theme::kInk);
    drawFiguresCentred(painter, {body.left() + (kScrewRoom - 14) / 2.0, words},
                       signedNumber(turned_, 1) + QStringLiteral(" %"));

    const double radius = std::min((kScrewRoom - 14) / 2.0, (body.height() - 22) / 2) - 1;
    painter.save();
    painter.translate(body.left() + (kScrewRoom - 14) / 2.0, body.top() + radius + 1);
    painter.rotate(kDegreesPerPercent * turned_);
    painter.setBrush(theme::kTrack);
    painter.setPen(theme::pen(theme::kInk, 1.2));
    painter.drawEllipse(QPointF(0, 0), radius, radius);
    painter.setBrush(theme::kPanel);
    painter.drawEllipse(QPointF(0, -0.22 * radius), 0.6 * radius, 0.6 * radius);  // off centre: the eccentric itself
    painter.setPen(theme::pen(theme::kInk, std::max(2.0, 0.12 * radius)));
    painter.drawLine(QPointF(-0.45 * radius, -0.22 * radius), QPointF(0.45 * radius, -0.22 * radius));
    painter.restore();
}

}  // namespace trueunit
