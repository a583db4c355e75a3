// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/trouble.h"

#include <QDir>
#include <QSqlError>

namespace trueunit {

namespace {

// SQLite's result codes (sqlite.org/rescode.html); extended codes carry them in their low byte.
constexpr int kBusy = 5, kLocked = 6, kReadOnly = 8, kIoError = 10, kCorrupt = 11, kFull = 13, kCantOpen = 14,
              kNotADatabase = 26;
constexpr int kShortRead = 2;  // kIoError | 2 << 8: the file is shorter than it says

}  // namespace

Trouble troubleOf(const QSqlError& error) {
    if (!error.isValid()) return Trouble::none;
    const int code = error.nativeErrorCode().toInt();
    switch (code & 0xff) {
        case kBusy:
        case kLocked:
            return Trouble::locked;
        case kReadOnly:
            return Trouble::readOnly;
        case kFull:
            return Trouble::full;
        case kCorrupt:
        case kNotADatabase:
            return Trouble::damaged;
        case kCantOpen:
            return Trouble::noPlace;
        case kIoError:
            return code >> 8 == kShortRead ? Trouble::damaged : Trouble::other;
        default:
            return Trouble::other;
    }
}

Error troubleSentence(Trouble trouble, const QString& path, const QString& detail) {
    const QString name = QStringLiteral("\"%1\"").arg(QDir::toNativeSeparators(path));
    const auto said = [&](const char* words) { return Error{QString::fromUtf8(words).arg(name).toStdString()}; };
    switch (trouble) {
        case Trouble::locked:
            return said("The logbook %1 is being written by another program; try again in a moment.");
        case Trouble::full:
            return said("The disk of the logbook %1 is full and nothing was changed; free some space and try again.");
        case Trouble::readOnly:
            return said(
                "The logbook %1 may only be read here; choose another file or get leave to write to its folder.");
        case Trouble::damaged:
            return said("The logbook %1 is damaged; \"trueunit log mend\" sets it aside and saves what can be read.");
        case Trouble::newer:
            return said("The logbook %1 was written by a later version of Trueunit; use that one, or another file.");
        case Trouble::foreign:
            return said("%1 is no logbook of Trueunit; choose another file.");
        case Trouble::noPlace:
            return said("The logbook %1 cannot be opened or made; choose another file or look at its folder.");
        case Trouble::none:
        case Trouble::other:
            break;
    }
    return Error{QStringLiteral("The logbook %1 failed (%2); nothing was changed, look at its disk and try again.")
                     .arg(name, detail.trimmed())
                     .toStdString()};
}

}  // namespace trueunit
