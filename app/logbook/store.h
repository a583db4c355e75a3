// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QString>
#include <memory>

#include "app/logbook/trouble.h"

namespace trueunit {

// An open logbook: one SQLite file in write-ahead mode, every change on the disk before it is acknowledged, foreign
// keys kept. Several programs may have it open. One thread; another thread opens a Store of its own.
class Store {
public:
    // Makes the file and its folder when they are not there, brings an older one forward, falls back to reading only.
    // why: the kind of a refusal, if asked for.
    static Result<std::unique_ptr<Store>> open(const QString& path, Trouble* why = nullptr);
    // Of a damaged file: nothing is checked or changed.
    static Result<std::unique_ptr<Store>> openAsItIs(const QString& path);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    const QString& path() const { return path_; }
    bool readOnly() const { return readOnly_; }
    QSqlDatabase database() const { return QSqlDatabase::database(connection_, false); }

    Error refusal(const QSqlError& error) const;  // in one sentence
    Outcome check() const;                        // the whole file, integrity_check; takes its time

    // The platform's place for the program's data: "logbook.sqlite" there.
    static QString defaultPath();

    // A mended logbook that has not taken its place yet, because the program was killed just then, takes it now.
    static void takeUpMended(const QString& path);
    static QString mendedName(const QString& path) { return path + QStringLiteral(".mended"); }

private:
    explicit Store(QString path);
    bool connect(const QString& options, const QString& name);
    Outcome prepare(Trouble& why);
    Outcome judge(Trouble& why);
    bool looksLikeDatabase() const;

    QString path_;
    QString connection_;
    bool readOnly_ = false;
};

}  // namespace trueunit
