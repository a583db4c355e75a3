// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/store.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlError>
#include <QSqlQuery>
#include <QStandardPaths>
#include <QThread>
#include <QUrl>
#include <QUuid>

#include "app/logbook/schema.h"
#include "app/logbook/statement.h"

namespace trueunit {

namespace {

const QString kBusyWait = QStringLiteral("QSQLITE_BUSY_TIMEOUT=3000");  // ms: longer than any of our writes
constexpr int kWalTries = 30;
constexpr int kWalPauseMs = 100;

Error refused(Trouble trouble, const QString& path, Trouble* why) {
    if (why) *why = trouble;
    return troubleSentence(trouble, path);
}

// The mode of journal cannot be changed while another program has the new file open; it soon has done so itself.
bool useWriteAheadLog(const QSqlDatabase& database) {
    for (int i = 0; i < kWalTries; ++i) {
        QSqlQuery query(database);
        if (query.exec(QStringLiteral("PRAGMA journal_mode = WAL")) && query.next() &&
            query.value(0).toString() == QLatin1String("wal"))
            return true;
        if (troubleOf(query.lastError()) != Trouble::locked) return false;
        QThread::msleep(kWalPauseMs);
    }
    return false;
}

}  // namespace

Store::Store(QString path) : path_(std::move(path)), connection_(QUuid::createUuid().toString()) {}

Store::~Store() { QSqlDatabase::removeDatabase(connection_); }

QString Store::defaultPath() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("logbook.sqlite"));
}

Error Store::refusal(const QSqlError& error) const {
    return troubleSentence(troubleOf(error), path_, error.databaseText());
}

bool Store::connect(const QString& options, const QString& name) {
    if (QSqlDatabase::contains(connection_)) QSqlDatabase::removeDatabase(connection_);
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection_);
    database.setConnectOptions(options);
    database.setDatabaseName(name);
    return database.open();
}

bool Store::looksLikeDatabase() const {
    QFile file(path_);
    if (!file.open(QIODevice::ReadOnly)) return true;  // the opening itself will say why not
    const QByteArray head = file.read(16);
    return head.isEmpty() || head == QByteArray("SQLite format 3", 16);
}

// Reads what the file says it is; changes nothing.
Outcome Store::judge(Trouble& why) {
    QSqlQuery query(database());
    const auto number = [&](const char* sql) { return query.exec(QLatin1String(sql)) && query.next(); };
    const auto failed = [&] {
        why = troubleOf(query.lastError());
        return refusal(query.lastError());
    };
    if (!number("SELECT count(*) FROM sqlite_master")) return failed();
    const bool empty = query.value(0).toInt() == 0;
    if (!number("PRAGMA application_id")) return failed();
    if (!empty && query.value(0).toLongLong() != kLogbookId) return refused(Trouble::foreign, path_, &why);
    if (!number("PRAGMA user_version")) return failed();
    if (query.value(0).toInt() > kSchemaVersion) return refused(Trouble::newer, path_, &why);
    if (empty) return done();
    for (const char* table : {"machines", "visits", "frames"}) {  // small ones; contents are checked as they are read
        if (!query.exec(QStringLiteral("PRAGMA quick_check(%1)").arg(QLatin1String(table))) || !query.next())
            return failed();
        if (query.value(0).toString() != QLatin1String("ok")) return refused(Trouble::damaged, path_, &why);
    }
    return done();
}

Outcome Store::prepare(Trouble& why) {
    if (Outcome judged = judge(why); !judged) return judged;
    if (!readOnly_ && !useWriteAheadLog(database())) readOnly_ = true;
    QSqlQuery query(database());
    query.exec(QStringLiteral("PRAGMA synchronous = FULL"));
    query.exec(QStringLiteral("PRAGMA foreign_keys = ON"));
    query.exec(QStringLiteral("PRAGMA cache_size = -32768"));  // KiB: what lists and searches read of 20,000 frames
    query.finish();
    if (Outcome migrated = migrate(*this, &why); !migrated) return migrated;
    return done();
}

void Store::takeUpMended(const QString& path) {
    if (!QFile::exists(path) && QFile::exists(mendedName(path))) QFile::rename(mendedName(path), path);
}

Result<std::unique_ptr<Store>> Store::open(const QString& path, Trouble* why) {
    Trouble trouble = Trouble::none;
    Trouble& kind = why ? *why : trouble;
    kind = Trouble::none;
    takeUpMended(path);
    std::unique_ptr<Store> store(new Store(path));
    const QFileInfo info(path);
    if (!info.exists() && !info.dir().mkpath(QStringLiteral("."))) return refused(Trouble::noPlace, path, why);
    if (!store->looksLikeDatabase()) return refused(Trouble::damaged, path, why);
    store->readOnly_ = info.exists() && !(info.isWritable() && QFileInfo(info.path()).isWritable());
    const QString readOnly = kBusyWait + QStringLiteral(";QSQLITE_OPEN_READONLY");
    bool opened = store->connect(store->readOnly_ ? readOnly : kBusyWait, path);
    Outcome prepared = opened ? store->prepare(kind) : Outcome(store->refusal(store->database().lastError()));
    if (!opened) kind = troubleOf(store->database().lastError());
    if (!prepared && info.exists() && (kind == Trouble::noPlace || kind == Trouble::readOnly)) {
        // A folder without leave to write has no room for the log's files either: read the file as it lies there.
        store->readOnly_ = true;
        const QString address =
            QUrl::fromLocalFile(info.absoluteFilePath()).toString(QUrl::FullyEncoded) + QStringLiteral("?immutable=1");
        opened = store->connect(readOnly + QStringLiteral(";QSQLITE_OPEN_URI"), address);
        kind = Trouble::none;
        prepared = opened ? store->prepare(kind) : Outcome(store->refusal(store->database().lastError()));
        if (!opened) kind = Trouble::noPlace;
    }
    if (!prepared) return prepared.error();
    return store;
}

Result<std::unique_ptr<Store>> Store::openAsItIs(const QString& path) {
    std::unique_ptr<Store> store(new Store(path));
    if (!store->connect(kBusyWait, path)) return store->refusal(store->database().lastError());
    // Lets SQLite read on where the file is shorter than its head says.
    QSqlQuery(store->database()).exec(QStringLiteral("PRAGMA writable_schema = ON"));
    return store;
}

Outcome Store::check() const {
    Statement all(*this, QStringLiteral("PRAGMA integrity_check(1)"));
    QString said;
    if (Outcome ran = all.forEach([&] { said = all.text(0); }); !ran) return ran;
    if (said != QLatin1String("ok")) return troubleSentence(Trouble::damaged, path_);
    return done();
}

}  // namespace trueunit
