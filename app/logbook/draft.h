// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>

#include "app/logbook/frames.h"

namespace trueunit {

// The frozen frame that is not in the logbook yet, saved beside it after every change, so that it comes back when the
// program was killed. Each running program has a draft of its own, marked as its own by a lock that dies with it.
class Draft {
public:
    explicit Draft(const QString& folder);
    ~Draft();  // an orderly end leaves none

    // Whole or not at all; a disk that refuses is told once more with the next change.
    Outcome write(const FrozenFrame& frame, const QString& uid);
    Outcome writeExcerpt(const QByteArray& flac);
    void clear();

    struct Left {
        KeptFrame kept;
        QString uid;
    };
    // The newest draft that a program which no longer runs has left; it becomes this program's own. What cannot be read
    // is set aside under another name.
    std::optional<Left> takeOver();

private:
    QString file(const char* ending) const;

    QString folder_;
    QString name_;
    std::unique_ptr<QLockFile> lock_;
};

}  // namespace trueunit
