// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/excerpt_flac.h"

#include <QFile>
#include <QTemporaryDir>

#include "core/acquire/recording_writer.h"
#include "core/recording_run.h"

namespace trueunit {

namespace {

const Error kNoPlace{"The sound of the frame cannot be packed: the folder for temporary files is full or missing."};

}  // namespace

Result<QByteArray> excerptToFlac(std::span<const float> samples, double rateHz) {
    if (samples.empty()) return QByteArray();
    const QTemporaryDir folder;
    if (!folder.isValid()) return kNoPlace;
    const QString path = folder.filePath(QStringLiteral("excerpt.flac"));
    Result<RecordingWriter> writer = RecordingWriter::create(path.toStdString(), rateHz, 1, SampleFormat::pcm24);
    if (!writer) return kNoPlace;
    if (!writer->write(samples) || !writer->finish()) return kNoPlace;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return kNoPlace;
    return file.readAll();
}

Result<Snapshot> measureExcerpt(const QByteArray& flac, const Options& options, const Limits& limits) {
    if (flac.isEmpty()) return Error{"No sound was kept with this frame, so it cannot be measured again."};
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("excerpt.flac")));
    if (!folder.isValid() || !file.open(QIODevice::WriteOnly) || file.write(flac) != flac.size()) return kNoPlace;
    file.close();
    Result<Recording> recording = Recording::open(file.fileName().toStdString());
    if (!recording) return Error{"The sound kept with this frame cannot be read; its readings stand as they were."};
    return measureRecording(*recording, options, limits);
}

}  // namespace trueunit
