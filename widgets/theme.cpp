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

// Of the same hues, and as far from their ground: orange and blue-green keep apart for colour-blind eyes as well.
void useDark() {
    kPaper = QColor(0x16, 0x1B, 0x1F);
    kPanel = QColor(0x1F, 0x26, 0x2B);
    kBorder = QColor(0x3A, 0x44, 0x4B);
    kHairline = QColor(0x2D, 0x36, 0x3C);
    kTrack = QColor(0x2F, 0x38, 0x3E);
    kInk = QColor(0xEC, 0xEA, 0xE2);
    kSecondary = QColor(0xA3, 0xAD, 0xB3);
    kBlue = QColor(0x6D, 0xB8, 0xE3);
    kChosen = QColor(0x6D, 0xB8, 0xE3, 0x2E);
    kOut = QColor(0xF2, 0x8C, 0x50);
    kInOrder = QColor(0x6F, 0xCB, 0xA5);
    kBand = QColor(0x22, 0x33, 0x2E);
    kBandEdge = QColor(0x3B, 0x5C, 0x50);
    kTape = QColor(0x4A, 0x42, 0x2C);
    kTapeEdge = QColor(0x74, 0x67, 0x42);
    kHole = QColor(0xF0, 0xE4, 0xBE);
    kBoundary = QColor(0x5A, 0x65, 0x6C);
    kHandle = QColor(0x56, 0x61, 0x68);
    kDisabled = QColor(0x6C, 0x76, 0x7C);
    kFieldEdge = QColor(0x7A, 0x85, 0x8C);
}

QString styleSheet() {
    return QStringLiteral(
               "QPushButton, QToolButton { background: %1; color: %2; border: 1px solid %3;"
               " border-radius: 5px; padding: 3px 10px; }"
               "QToolButton { padding: 0px 7px; }"
               "QPushButton:hover, QToolButton:hover { border-color: %4; }"
               "QPushButton:focus, QToolButton:focus { border-color: %5; }"
               "QPushButton:pressed, QToolButton:pressed { background: %6; }"
               "QPushButton:checked, QToolButton:checked { background: %2; color: %1; border-color: %2; }"
               "QPushButton:disabled, QToolButton:disabled { color: %7; }"
               "QPlainTextEdit { border: 1px solid %8; border-radius: 3px; }"
               "QPlainTextEdit:focus { border-color: %5; }"
               "QToolTip { background: %1; color: %2; border: 1px solid %3; padding: 4px; }")
        .arg(kPanel.name(), kInk.name(), kBorder.name(), kSecondary.name(), kBlue.name(), kTrack.name(),
             kDisabled.name(), kFieldEdge.name());
}

}  // namespace trueunit::theme
