// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_picture.h"

#include <QEventLoop>
#include <QPixmap>
#include <QSaveFile>
#include <QTimer>
#include <cstdio>

#include "app/main_window.h"

namespace trueunit {

int takeWindowPicture(Session& session, const PictureRequest& request) {
    MainWindow window(session);
    window.resize(request.size);
    window.show();
    QEventLoop running;
    QTimer::singleShot(qRound(request.afterSeconds * 1000.0), &running, &QEventLoop::quit);
    running.exec();
    QSaveFile file(request.file);
    if (file.open(QIODevice::WriteOnly) && window.grab().save(&file, "PNG") && file.commit()) return 0;
    std::fprintf(stderr, "The picture could not be written to \"%s\"; choose another file.\n",
                 qPrintable(request.file));
    return 2;
}

}  // namespace trueunit
