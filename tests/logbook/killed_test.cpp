// SPDX-License-Identifier: GPL-3.0-or-later
// Kills a writing program 200 times at random moments and looks for every frame it had acknowledged.
#include <gtest/gtest.h>

#include <QFile>
#include <QLockFile>
#include <QProcess>
#include <QSet>
#include <QThread>
#include <random>

#include "app/logbook/draft.h"
#include "app/logbook/frame_search.h"
#include "app/logbook/program_lock.h"
#include "app/logbook/salvage.h"
#include "app/logbook/schema.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using test::keepingOf;
using test::opened;

namespace {

constexpr unsigned kSeed = 20261125;
constexpr int kKeeping = 120, kImporting = 30, kMigrating = 30, kMending = 10, kDrafting = 10;  // 200 in all

class Killed : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }

    // Lets the writer run, kills it (signal 9) within the given time, and returns what it had acknowledged.
    QStringList runAndKill(const QStringList& arguments, int mostMs, bool onceItWrites = false) {
        QProcess writer;
        writer.start(TRUEUNIT_LOGBOOK_WRITER, arguments);
        EXPECT_TRUE(writer.waitForStarted());
        EXPECT_TRUE(!onceItWrites || writer.waitForReadyRead());
        QThread::usleep(std::uniform_int_distribution<unsigned>(0, 1000U * unsigned(mostMs))(random_));
        writer.kill();
        writer.waitForFinished();
        EXPECT_EQ(writer.readAllStandardError(), QByteArray());
        QStringList lines = QString::fromUtf8(writer.readAllStandardOutput()).split('\n');
        lines.removeLast();  // empty, or a word that was cut off
        return lines;
    }

    static void expectSound(const Store& store) {
        EXPECT_TRUE(store.check());  // PRAGMA integrity_check
        Statement keys(store, "PRAGMA foreign_key_check");
        int broken = 0;
        EXPECT_TRUE(keys.forEach([&] { ++broken; }));
        EXPECT_EQ(broken, 0);
    }

    static void expectWhole(const Store& store, const QString& uid) {
        const auto id = findFrameByUid(store, uid);
        ASSERT_TRUE(id && *id) << "lost: " << uid.toStdString();
        const auto kept = readFrame(store, **id);
        ASSERT_TRUE(kept) << kept.error().text;
        EXPECT_FALSE(kept->frame.snapshot->traces.empty());
    }

    const test::TemporaryFolder folder_;
    std::mt19937 random_{kSeed};
};

}  // namespace

TEST_F(Killed, EveryFrameThatWasAcknowledgedIsThere) {
    SCOPED_TRACE("seed=" + std::to_string(kSeed));
    const QString book = file("book.sqlite");
    QStringList acknowledged;
    for (int i = 0; i < kKeeping; ++i) {
        acknowledged += runAndKill({"keep", book, QString::number(i)}, 60, i % 4 != 0);
        if (i % 20 == 0) {
            const auto store = opened(book);
            ASSERT_TRUE(store);
            expectSound(*store);
        }
    }
    const auto store = opened(book);
    ASSERT_TRUE(store);
    expectSound(*store);
    EXPECT_GT(acknowledged.size(), kKeeping) << "the writer hardly came to write";
    for (const QString& uid : acknowledged) expectWhole(*store, uid);
}

TEST_F(Killed, AnArchiveIsTakenInWholeOrNotAtAll) {
    constexpr int kArchives = 8, kFrames = 5;
    QStringList archives;
    {
        const auto from = opened(file("from.sqlite"));
        for (int a = 0; a < kArchives; ++a) {
            qint64 visit = 0;
            for (int f = 0; f < kFrames; ++f) {
                const auto kept = keepFrame(*from, keepingOf("Skerry 2", 1000000 * (a + 1) + f));
                ASSERT_TRUE(kept);
                visit = kept->visit;
            }
            archives += file("visit" + std::to_string(a) + ".zip");
            ASSERT_TRUE(writeVisitArchive(*from, visit, archives.back()));
        }
    }
    const QString book = file("book.sqlite");
    qsizetype done = 0;
    for (int i = 0; i < kImporting; ++i) {
        if (i % 6 == 0) {
            QFile::remove(book);
            QFile::remove(book + "-wal");
            QFile::remove(book + "-shm");
            done = 0;
        }
        done = std::max(done, runAndKill(QStringList{"import", book} + archives, 120).size());
        const auto store = opened(book);
        ASSERT_TRUE(store);
        expectSound(*store);
        const auto frames = findFrames(*store, {});
        ASSERT_TRUE(frames);
        EXPECT_EQ(frames->all % kFrames, 0) << "a part of a visit";
        EXPECT_GE(frames->all, done * kFrames) << "an acknowledged visit is missing";
    }
}

TEST_F(Killed, AnOldLogbookIsBroughtForwardWholeOrStaysAsItWas) {
    constexpr int kFrames = 60;
    test::makeOldLogbook(file("old.sqlite"), kFrames);
    for (int i = 0; i < kMigrating; ++i) {
        const QString book = file("book" + std::to_string(i) + ".sqlite");
        ASSERT_TRUE(QFile::copy(file("old.sqlite"), book));
        runAndKill({"migrate", book}, 40);
        const auto store = opened(book);
        ASSERT_TRUE(store);
        expectSound(*store);
        const auto frames = findFrames(*store, {});
        ASSERT_TRUE(frames);
        EXPECT_EQ(frames->all, kFrames);
    }
}

TEST_F(Killed, ADamagedLogbookIsNeverWithoutItsFrames) {
    constexpr int kFrames = 30;
    {
        const auto store = opened(file("good.sqlite"));
        for (int f = 0; f < kFrames; ++f) ASSERT_TRUE(keepFrame(*store, keepingOf("Skerry 2", 1000000 + f)));
    }
    QFile good(file("good.sqlite"));
    ASSERT_TRUE(good.open(QIODevice::ReadOnly));
    QByteArray bytes = good.readAll();
    bytes.replace(bytes.size() / 2, 4096, QByteArray(4096, 'x'));  // a page of some frame's bulk
    for (int i = 0; i < kMending; ++i) {
        const QString book = file("bad" + std::to_string(i) + ".sqlite");
        QFile bad(book);
        ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
        bad.write(bytes);
        bad.close();
        runAndKill({"mend", book}, 80);
        auto store = Store::open(book);
        ASSERT_TRUE(store);
        if (!(*store)->check()) {
            store->reset();
            const auto mended = mendLogbook(book);
            ASSERT_TRUE(mended) << mended.error().text;
            store = Store::open(book);
            ASSERT_TRUE(store);
        }
        const auto frames = findFrames(**store, {});
        ASSERT_TRUE(frames);
        EXPECT_GE(frames->all, kFrames - 3);
    }
}

TEST_F(Killed, ALockThatNobodySignedBarsNoOneAndOneOfALivingProgramDoes) {
    const QString path = file("made.lock");
    QFile empty(path);
    ASSERT_TRUE(empty.open(QIODevice::WriteOnly));  // its program was killed before it could write its name
    empty.close();
    QLockFile first(path), second(path);
    EXPECT_TRUE(takeLock(first));
    EXPECT_FALSE(takeLock(second));
    first.unlock();
    EXPECT_TRUE(takeLock(second));
}

TEST_F(Killed, TheFrozenFrameThatWasNotKeptComesBack) {
    for (int i = 0; i < kDrafting; ++i) {
        const QString drafts = file("drafts" + std::to_string(i));
        const QStringList said = runAndKill({"draft", drafts}, 120);
        Draft mine(drafts);
        const auto left = mine.takeOver();
        if (said.isEmpty()) continue;  // killed before the first was written
        ASSERT_TRUE(left);
        EXPECT_EQ(left->uid, "a-draft");
        EXPECT_GE(std::stoi(left->kept.frame.remarks), said.back().toInt());
        EXPECT_FALSE(mine.takeOver()) << "brought back twice";
    }
}
