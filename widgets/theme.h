// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QPen>

// Colours, fonts and pens of the whole window: ink for what is, one colour for what is out of limits. The colours are
// those of a light window until useDark(), which is called before the first widget is made or not at all; a report is
// ink on paper either way. Window's thread.
namespace trueunit::theme {

inline QColor kPaper(0xF4, 0xF2, 0xEC);
inline QColor kPanel(0xFF, 0xFD, 0xF8);
inline QColor kBorder(0xD8, 0xD6, 0xCE);
inline QColor kHairline(0xE6, 0xE3, 0xDB);  // rules inside a panel
inline QColor kTrack(0xEC, 0xE9, 0xE1);     // the empty part of a scale
inline QColor kInk(0x1E, 0x2A, 0x32);
inline QColor kSecondary(0x5F, 0x6B, 0x74);
inline QColor kBlue(0x0B, 0x5E, 0x8A);
inline QColor kChosen(0x0B, 0x5E, 0x8A, 0x1C);  // ground of what the chosen finding rests on
inline QColor kOut(0xB8, 0x43, 0x1A);           // out of limits, and nothing else
inline QColor kInOrder(0x1F, 0x6F, 0x54);       // in limits
inline QColor kBand(0xEE, 0xF3, 0xEF);          // within limits, as ground
inline QColor kBandEdge(0xCF, 0xE3, 0xD8);
inline QColor kTape(0xF3, 0xE7, 0xC4);
inline QColor kTapeEdge(0xDC, 0xC8, 0x8E);
inline QColor kHole(0x3B, 0x2E, 0x1A);
inline QColor kBoundary(0xB4, 0xBA, 0xBC);  // of an ideal unit
inline QColor kHandle(0xC9, 0xC6, 0xBB);    // of a scroll bar
inline QColor kDisabled(0xA9, 0xAE, 0xB1);
inline QColor kFieldEdge(0x8F, 0x92, 0x90);  // of a field to be filled in

void useDark();  // for a dim workshop

// Sizes in logical pixels.
inline constexpr double kTitlePx = 14;
inline constexpr double kTextPx = 13;
inline constexpr double kSmallPx = 12;
inline constexpr int kMargin = 14;  // between a panel's frame and its contents

inline constexpr const char* kHelpPage = "helpPage";  // property of a widget: the page that explains it

QFont text(double px, QFont::Weight weight = QFont::Normal);
QFont display(double px);  // for digits to be read from across the room
QPen pen(const QColor& color, double width = 1.0);
QString styleSheet();  // buttons and fields of the same look, for the application

}  // namespace trueunit::theme
