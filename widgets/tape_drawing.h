// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "core/report/snapshot.h"

class QPainter;

namespace trueunit {

// The tape as ink on paper: where its rows are, what a character looks like.

struct TapePaper {
    QRectF strip;
    int levels = 5;
};

struct TapeEmphasis {
    bool selected = false;
    bool evident = false;  // the chosen finding rests on it
    bool wrongCase = false;
};

// Level numbers between left and the paper; chosen: a level to be picked out, 0: none.
void drawTapeLevels(QPainter& painter, const TapePaper& paper, double left, int chosen);

void drawTapeCharacter(QPainter& painter, const TapePaper& paper, const QRectF& cell, const TapeCharacter& character,
                       const TapeEmphasis& emphasis);

}  // namespace trueunit
