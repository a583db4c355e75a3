// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>

namespace trueunit {

class Session;

// A picture of the real window, so that the README shows what the program shows.
struct PictureRequest {
    QString file;               // PNG
    QSize size{1440, 900};      // of the window, logical pixels
    double afterSeconds = 8.0;  // of running before the picture is taken
};

// Opens the window on the session, lets it run, writes what it shows. 0, or 2 after one sentence on standard error.
int takeWindowPicture(Session& session, const PictureRequest& request);

}  // namespace trueunit
