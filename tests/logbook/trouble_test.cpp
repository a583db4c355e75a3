// SPDX-License-Identifier: GPL-3.0-or-later
// What the world may refuse a logbook: each time one sentence, and nothing lost.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>

#include "app/logbook/frame_search.h"
#include "app/logbook/salvage.h"
#include "app/logbook/schema.h"
#include "app/logbook/statement.h"
#include "tests/logbook/trouble_rig.h"

using namespace trueunit;
using test::keepingOf;
using test::kMorning;
using test::LogbookTrouble;
using test::opened;

TEST_F(LogbookTrouble, AFullDiskIsSaidByAnOpenLogbookToo) {
    const auto store = opened(book());
    ASSERT_TRUE(Statement(*store, "PRAGMA max_page_count = 60").number(0));  // SQLite's own way to be full
    for (int i = 0; i < 20; ++i) {
        const auto kept = keepFrame(*store, keepingOf("Skerry 2", kMorning + i, {}, 60000));
        if (!kept) return expectSentence(kept.error(), "is full");
    }
    FAIL() << "never full";
}

TEST_F(LogbookTrouble, ALogbookThatAnotherProgramWritesIsSaidToBeSo) {
    fill(1);
    QProcess other;
    other.start(TRUEUNIT_LOGBOOK_WRITER, {"hold", book()});
    ASSERT_TRUE(other.waitForReadyRead(10000));
    const auto store = opened(book());
    ASSERT_TRUE(store);
    EXPECT_EQ(findFrames(*store, {})->all, 1) << "reading goes on";
    const auto kept = keepFrame(*store, keepingOf("Skerry 2", kMorning + 9));
    ASSERT_FALSE(kept);
    expectSentence(kept.error(), "written by another program");
    other.kill();
    other.waitForFinished();
    EXPECT_TRUE(keepFrame(*store, keepingOf("Skerry 2", kMorning + 9)));
}

TEST_F(LogbookTrouble, ALaterSchemaIsRefusedAndLeftAlone) {
    fill(1);
    {
        const auto store = opened(book());
        ASSERT_TRUE(Statement(*store, QString("PRAGMA user_version = %1").arg(kSchemaVersion + 1)).run());
    }
    const QByteArray before = bytes();
    Trouble why = Trouble::none;
    const auto store = Store::open(book(), &why);
    ASSERT_FALSE(store);
    EXPECT_EQ(why, Trouble::newer);
    expectSentence(store.error(), "later version");
    EXPECT_EQ(bytes(), before);
    std::optional<Mended> mended;
    EXPECT_FALSE(openOrMend(book(), mended));
    EXPECT_FALSE(mended);
}

TEST_F(LogbookTrouble, ADatabaseOfAnotherProgramIsLeftAlone) {
    {
        const auto other = Store::openAsItIs(book());
        ASSERT_TRUE(other);
        ASSERT_TRUE(Statement(**other, "CREATE TABLE recipes (id INTEGER)").run());
    }
    const QByteArray before = bytes();
    const auto store = Store::open(book());
    ASSERT_FALSE(store);
    expectSentence(store.error(), "no logbook");
    EXPECT_EQ(bytes(), before);
}

TEST_F(LogbookTrouble, ADamagedLogbookIsSetAsideAndSalvaged) {
    fill(40);
    const QByteArray good = bytes();
    struct Damage {
        const char* name;
        qsizetype at, length;
        int atLeast;  // frames that come back
    };
    for (const Damage d :
         {Damage{"its head", 0, 100, 0}, Damage{"a page of bulk", good.size() / 2, 4096, 36},
          Damage{"its end cut off", good.size() * 3 / 4, -1, 20}, Damage{"a page in every ten", -10, 4096, 0}}) {
        SCOPED_TRACE(d.name);
        QByteArray bad = good;
        if (d.at < 0)
            for (qsizetype p = 9 * 4096; p + 4096 <= bad.size(); p += 40960)
                bad.replace(p, 4096, QByteArray(4096, 'z'));
        else if (d.length < 0)
            bad.truncate(d.at);
        else
            bad.replace(d.at, d.length, QByteArray(d.length, 'z'));
        write(bad);
        QFile::remove(book() + "-wal");
        QFile::remove(book() + "-shm");
        const auto mended = mendLogbook(book());
        ASSERT_TRUE(mended) << mended.error().text;
        EXPECT_GE(mended->frames, d.atLeast) << mended->sentence().toStdString();
        expectSentence(Error{mended->sentence().toStdString()}, "set aside");
        QFile aside(mended->setAside);
        ASSERT_TRUE(aside.open(QIODevice::ReadOnly));
        EXPECT_TRUE(d.at != 0 || aside.readAll() == bad) << "what was damaged is kept as it was";
        const auto store = opened(book());
        ASSERT_TRUE(store);
        EXPECT_TRUE(store->check());
        EXPECT_EQ(findFrames(*store, {})->all, mended->frames);
        EXPECT_TRUE(keepFrame(*store, keepingOf("Skerry 2", kMorning + 99)));
    }
}

TEST_F(LogbookTrouble, ASoundLogbookIsNotMended) {
    fill(1);
    const auto mended = mendLogbook(book());
    ASSERT_FALSE(mended);
    expectSentence(mended.error(), "in order");
}

TEST_F(LogbookTrouble, AFolderThatCannotBeMadeIsSaid) {
    QFile inTheWay(file("file"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    const auto store = Store::open(file("file") + "/book.sqlite");
    ASSERT_FALSE(store);
    expectSentence(store.error(), "cannot be opened or made");
}
