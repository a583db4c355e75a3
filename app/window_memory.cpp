// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_memory.h"

#include <QFileInfo>
#include <QScreen>
#include <QSettings>
#include <QWidget>
#include <algorithm>

namespace trueunit {

namespace {
constexpr int kMostFiles = 8;
constexpr int kFrame = 40;  // of the desktop around a window, pixels
}  // namespace

QStringList recentFiles() {
    QStringList files = QSettings().value("window/recentFiles").toStringList();
    files.erase(std::remove_if(files.begin(), files.end(), [](const QString& f) { return !QFileInfo::exists(f); }),
                files.end());
    return files;
}

void rememberFile(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList files = recentFiles();
    files.removeAll(whole);
    files.prepend(whole);
    QSettings().setValue("window/recentFiles", files.mid(0, kMostFiles));
}

void rememberPlace(const QWidget& window) { QSettings().setValue("window/place", window.saveGeometry()); }

// Without a place of its own a window would be given two thirds of the screen, which holds not half of the bench.
void restorePlace(QWidget& window) {
    if (window.restoreGeometry(QSettings().value("window/place").toByteArray())) return;
    const QSize room = window.screen()->availableSize();
    const QSize wanted = window.sizeHint();
    window.resize(wanted.boundedTo(room));
    if (room.width() < wanted.width() + kFrame || room.height() < wanted.height() + kFrame)
        window.setWindowState(Qt::WindowMaximized);
}

void resizeOnScreen(QWidget& window, QSize wanted) {
    window.resize(wanted.boundedTo(window.screen()->availableSize() - QSize(kFrame, kFrame)));
}

bool firstStepsSeen() { return QSettings().value("window/firstStepsSeen", false).toBool(); }

void rememberFirstSteps() { QSettings().setValue("window/firstStepsSeen", true); }

void forgetAll() { QSettings().clear(); }

}  // namespace trueunit
