// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/draft.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "app/logbook/program_lock.h"
#include "app/logbook/uid.h"
#include "core/report/frame_json.h"

namespace trueunit {

namespace {

Outcome writeWhole(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return Error{QStringLiteral("The frozen frame cannot be saved against a crash (%1); keep it soon.")
                         .arg(file.errorString())
                         .toStdString()};
    return done();
}

QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// "uid\n" and then the frame.
std::optional<Draft::Left> readDraft(const QString& stem) {
    const QByteArray bytes = contentOf(stem + QStringLiteral(".frame"));
    const qsizetype end = bytes.indexOf('\n');
    if (end < 0) return std::nullopt;
    Result<FrozenFrame> frame = frameFromJson(bytes.mid(end + 1).toStdString());
    if (!frame) return std::nullopt;
    return Draft::Left{{std::move(*frame), contentOf(stem + QStringLiteral(".flac"))},
                       QString::fromUtf8(bytes.left(end))};
}

}  // namespace

Draft::Draft(const QString& folder) : folder_(folder), name_(freshUid()) {
    QDir().mkpath(folder_);
    lock_ = std::make_unique<QLockFile>(file(".lock"));
    takeLock(*lock_);
}

Draft::~Draft() { clear(); }

QString Draft::file(const char* ending) const { return QDir(folder_).filePath(name_ + QLatin1String(ending)); }

Outcome Draft::write(const FrozenFrame& frame, const QString& uid) {
    return writeWhole(file(".frame"), uid.toUtf8() + '\n' + QByteArray::fromStdString(frameJson(frame)));
}

Outcome Draft::writeExcerpt(const QByteArray& flac) { return writeWhole(file(".flac"), flac); }

void Draft::clear() {
    QFile::remove(file(".frame"));
    QFile::remove(file(".flac"));
}

// One at a time, the newest first; others wait for the next call.
std::optional<Draft::Left> Draft::takeOver() {
    const QFileInfoList files = QDir(folder_).entryInfoList({QStringLiteral("*.frame")}, QDir::Files, QDir::Time);
    for (const QFileInfo& info : files) {
        const QString stem = info.dir().filePath(info.completeBaseName());
        if (info.completeBaseName() == name_) continue;
        QLockFile lock(stem + QStringLiteral(".lock"));
        if (!takeLock(lock)) continue;  // its program runs
        const auto left = readDraft(stem);
        if (!left) {
            QFile::rename(stem + QStringLiteral(".frame"), stem + QStringLiteral(".unreadable"));
            continue;
        }
        if (!write(left->kept.frame, left->uid)) return left;  // the old file stays, for there is no other
        if (!left->kept.excerptFlac.isEmpty() && !writeExcerpt(left->kept.excerptFlac)) return left;
        QFile::remove(stem + QStringLiteral(".frame"));
        QFile::remove(stem + QStringLiteral(".flac"));
        return left;
    }
    return std::nullopt;
}

}  // namespace trueunit
