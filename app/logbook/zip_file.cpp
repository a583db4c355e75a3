// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/zip_file.h"

#include <archive.h>
#include <archive_entry.h>

#include <QDir>
#include <QFile>
#include <QSaveFile>

namespace trueunit {

namespace {

constexpr qint64 kEntryLimit = 256LL << 20;  // bytes; a frame with a minute of sound is a hundredth of it
constexpr qint64 kTotalLimit = 4LL << 30;
constexpr std::size_t kReadBlock = 65536;

Error broken(const QString& path) {
    return Error{QStringLiteral("\"%1\" is no archive of a visit, or it is damaged; nothing was taken from it.")
                     .arg(QDir::toNativeSeparators(path))
                     .toStdString()};
}

struct Reader {
    Reader() : handle(archive_read_new()) {
        archive_read_support_format_zip(handle);
        archive_read_support_filter_none(handle);
    }
    ~Reader() { archive_read_free(handle); }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;
    archive* handle;
};

}  // namespace

struct ZipWriter::File {
    explicit File(const QString& path) : save(path) {}
    QSaveFile save;
};

ZipWriter::ZipWriter(const QString& path)
    : path_(path), file_(std::make_unique<File>(path)), archive_(archive_write_new()) {
    archive_write_set_format_zip(archive_);
    archive_write_set_bytes_per_block(archive_, 0);
    const auto write = [](archive* a, void* file, const void* bytes, std::size_t size) -> la_ssize_t {
        const qint64 written = static_cast<File*>(file)->save.write(static_cast<const char*>(bytes), qint64(size));
        if (written < 0) archive_set_error(a, EIO, "%s", "write failed");
        return written;
    };
    if (file_->save.open(QIODevice::WriteOnly)) archive_write_open(archive_, file_.get(), nullptr, write, nullptr);
}

ZipWriter::~ZipWriter() { archive_write_free(archive_); }

Error ZipWriter::refusal() const {
    return Error{QStringLiteral("\"%1\" could not be written (%2); choose another folder or free some space.")
                     .arg(QDir::toNativeSeparators(path_), file_->save.errorString())
                     .toStdString()};
}

Outcome ZipWriter::add(const QString& name, const QByteArray& bytes, bool squeeze) {
    if (!file_->save.isOpen()) return refusal();
    archive_entry* entry = archive_entry_new();
    archive_entry_set_pathname_utf8(entry, name.toUtf8().constData());
    archive_entry_set_size(entry, bytes.size());
    archive_entry_set_filetype(entry, AE_IFREG);
    archive_entry_set_perm(entry, 0644);
    if (squeeze)
        archive_write_zip_set_compression_deflate(archive_);
    else
        archive_write_zip_set_compression_store(archive_);
    const bool written = archive_write_header(archive_, entry) == ARCHIVE_OK &&
                         archive_write_data(archive_, bytes.constData(), static_cast<std::size_t>(bytes.size())) ==
                             static_cast<la_ssize_t>(bytes.size());
    archive_entry_free(entry);
    if (!written) return refusal();
    return done();
}

Outcome ZipWriter::finish() {
    if (!file_->save.isOpen() || archive_write_close(archive_) != ARCHIVE_OK || !file_->save.commit()) return refusal();
    return done();
}

Outcome readZip(const QString& path, const std::function<Outcome(const QString&, const QByteArray&)>& take) {
    if (!QFile::exists(path))
        return Error{QStringLiteral("There is no file \"%1\".").arg(QDir::toNativeSeparators(path)).toStdString()};
    Reader reader;
    if (archive_read_open_filename(reader.handle, QFile::encodeName(path).constData(), kReadBlock) != ARCHIVE_OK)
        return broken(path);
    qint64 total = 0;
    for (;;) {
        archive_entry* entry = nullptr;
        const int next = archive_read_next_header(reader.handle, &entry);
        if (next == ARCHIVE_EOF) break;
        if (next != ARCHIVE_OK) return broken(path);
        const char* name = archive_entry_pathname_utf8(entry);
        QByteArray bytes;
        QByteArray block(static_cast<qsizetype>(kReadBlock), Qt::Uninitialized);
        for (;;) {
            const la_ssize_t got = archive_read_data(reader.handle, block.data(), kReadBlock);
            if (got == 0) break;
            if (got < 0) return broken(path);
            bytes.append(block.constData(), static_cast<qsizetype>(got));
            total += got;
            if (bytes.size() > kEntryLimit || total > kTotalLimit) return broken(path);
        }
        if (Outcome taken = take(QString::fromUtf8(name ? name : ""), bytes); !taken) return taken;
    }
    if (total == 0) return broken(path);
    return done();
}

}  // namespace trueunit
