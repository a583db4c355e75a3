// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

// Colours of a report: darker than those of the window, since ink on paper looks lighter than on a screen.
namespace trueunit::report_ink {

inline constexpr QColor kInk(0x1d, 0x2b, 0x36);
inline constexpr QColor kFaint(0x5d, 0x67, 0x6f);
inline constexpr QColor kIn(0x1d, 0x6b, 0x45);   // in limits
inline constexpr QColor kOut(0xb5, 0x3d, 0x17);  // out of limits

}  // namespace trueunit::report_ink
