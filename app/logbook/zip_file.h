// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <functional>
#include <map>
#include <memory>

#include "core/result.h"

struct archive;

namespace trueunit {

// Writes a ZIP file, entry by entry. The file takes its name when finish() has succeeded; before that there is none,
// and one of the same name stays as it was.
class ZipWriter {
public:
    explicit ZipWriter(const QString& path);
    ~ZipWriter();

    Outcome add(const QString& name, const QByteArray& bytes, bool squeeze = true);
    Outcome finish();

private:
    Error refusal() const;
    struct File;

    QString path_;
    std::unique_ptr<File> file_;  // outlives archive_
    archive* archive_;
};

// Gives every entry of a ZIP file to take(name, bytes), in order, until it refuses. Refuses what is no ZIP file, is
// cut short, fails its checksum, or unpacks to more than is sensible.
Outcome readZip(const QString& path, const std::function<Outcome(const QString&, const QByteArray&)>& take);

}  // namespace trueunit
