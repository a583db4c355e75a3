// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/theme.h"

#include <QString>
#include <QStringList>

namespace trueunit::theme {

namespace {

QFont sized(const QStringList& families, double px, QFont::Weight weight) {
    QFont font;
    font.setFamilies(families);
    font.setPixelSize(std::max(1, qRound(px)));
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

}  // namespace

QFont text(double px, QFont::Weight weight) { return sized({"Inter", "DejaVu Sans"}, px, weight); }

QFont display(double px) { return sized({"Inter Display", "Inter", "DejaVu Sans"}, px, QFont::DemiBold); }

QPen pen(const QColor& color, double width) {
    QPen p(color, width);
    p.setCapStyle(Qt::FlatCap);
    return p;
}

QString styleSheet() {
    return QStringLiteral(
        "QPushButton, QToolButton { background: #FFFDF8; color: #1E2A32; border: 1px solid #D8D6CE;"
        " border-radius: 5px; padding: 3px 10px; }"
        "QToolButton { padding: 0px 7px; }"
        "QPushButton:hover, QToolButton:hover { border-color: #5F6B74; }"
        "QPushButton:focus, QToolButton:focus { border-color: #0B5E8A; }"
        "QPushButton:pressed, QToolButton:pressed { background: #ECE9E1; }"
        "QPushButton:checked, QToolButton:checked { background: #1E2A32; color: #FFFDF8; border-color: #1E2A32; }"
        "QPushButton:disabled, QToolButton:disabled { color: #A9AEB1; }"
        "QToolTip { background: #FFFDF8; color: #1E2A32; border: 1px solid #D8D6CE; padding: 4px; }");
}

}  // namespace trueunit::theme
