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
#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using test::keepingOf;
using test::opened;

namespace {

constexpr qint64 kMorning = 1795600000;

class LogbookTrouble : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }
    QString book() const { return file("book.sqlite"); }
    void fill(int frames) {
        const auto store = opened(book());
        for (int i = 0; i < frames; ++i) ASSERT_TRUE(keepFrame(*store, keepingOf("Skerry 2", kMorning + i)));
    }
    QByteArray bytes() const {
        QFile f(book());
        return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
    }
    void write(const QByteArray& to) const {
        QFile f(book());
        ASSERT_TRUE(f.open(QIODevice::WriteOnly));
        f.write(to);
    }
    static void expectSentence(const Error& error, const char* words) {
        EXPECT_NE(error.text.find(words), std::string::npos) << error.text;
        EXPECT_EQ(error.text.back(), '.') << error.text;
        EXPECT_EQ(error.text.find('\n'), std::string::npos) << error.text;
    }

    // The writer in a mount namespace of its own, after the given preparation of the folder "$1".
    std::pair<int, QString> inPrivateMount(const QString& preparation, const QString& mode) {
        QDir().mkpath(file("mount"));
        QProcess shell;
        shell.start("unshare", {"-rm", "sh", "-c", preparation + " && exec \"$2\" " + mode + " \"$1/book.sqlite\" 1",
                                "sh", file("mount"), TRUEUNIT_LOGBOOK_WRITER});
        shell.waitForFinished(60000);
        return {shell.exitCode(), QString::fromUtf8(shell.readAllStandardError())};
    }

    const test::TemporaryFolder folder_;
};

}  // namespace

TEST_F(LogbookTrouble, AFullDiskIsSaidAndWhatWasKeptStays) {
    const auto [code, said] = inPrivateMount(
        "mount -t tmpfs -o size=2m tmpfs \"$1\" && (\"$2\" keep \"$1/book.sqlite\" 1; \"$2\" migrate "
        "\"$1/book.sqlite\" && cp \"$1\"/book.sqlite* \"$1/..\") >/dev/null",
        "keep");
    if (said.contains("unshare")) GTEST_SKIP() << "no private mounts here: " << said.toStdString();
    EXPECT_EQ(code, 2);
    const QStringList lines = said.trimmed().split('\n');
    for (const QString& line : lines) EXPECT_TRUE(line.contains("is full")) << said.toStdString();
    EXPECT_EQ(lines.size(), 2) << said.toStdString();  // of both keepers; the one that only opened said nothing
    const auto store = opened(file("book.sqlite"));    // the copy, made while the disk was full
    ASSERT_TRUE(store);
    EXPECT_TRUE(store->check());
    EXPECT_GT(findFrames(*store, {})->all, 3);
}

TEST_F(LogbookTrouble, AFullDiskIsSaidByAnOpenLogbookToo) {
    const auto store = opened(book());
    ASSERT_TRUE(Statement(*store, "PRAGMA max_page_count = 60").number(0));  // SQLite's own way to be full
    for (int i = 0; i < 20; ++i) {
        const auto kept = keepFrame(*store, keepingOf("Skerry 2", kMorning + i, {}, 60000));
        if (!kept) return expectSentence(kept.error(), "is full");
    }
    FAIL() << "never full";
}

TEST_F(LogbookTrouble, AFolderThatMayOnlyBeReadIsReadAndWritingIsRefused) {
    fill(3);
    QDir().mkpath(file("mount"));
    ASSERT_TRUE(QFile::copy(book(), file("mount/book.sqlite")));
    const auto [code, said] = inPrivateMount("mount --bind \"$1\" \"$1\" && mount -o remount,ro,bind \"$1\"", "keep");
    if (said.contains("unshare")) GTEST_SKIP() << "no private mounts here: " << said.toStdString();
    EXPECT_EQ(code, 2);
    expectSentence(Error{said.trimmed().toStdString()}, "may only be read here");
    const auto [opens, silent] =
        inPrivateMount("mount --bind \"$1\" \"$1\" && mount -o remount,ro,bind \"$1\"", "migrate");
    EXPECT_EQ(opens, 0) << silent.toStdString();
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
