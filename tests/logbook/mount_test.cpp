// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that is full and a folder that may only be read, made by mounts of our own. Built where the system lets us.
#include <QDir>
#include <QFile>
#include <QProcess>

#include "app/logbook/frame_search.h"
#include "tests/logbook/trouble_rig.h"

using namespace trueunit;
using test::opened;

namespace {

class LogbookMount : public test::LogbookTrouble {
protected:
    // The writer in a mount namespace of its own, after the given preparation of the folder "$1".
    std::pair<int, QString> inPrivateMount(const QString& preparation, const QString& mode) {
        QDir().mkpath(file("mount"));
        QProcess shell;
        shell.start("unshare", {"-rm", "sh", "-c", preparation + " && exec \"$2\" " + mode + " \"$1/book.sqlite\" 1",
                                "sh", file("mount"), TRUEUNIT_LOGBOOK_WRITER});
        shell.waitForFinished(60000);
        return {shell.exitCode(), QString::fromUtf8(shell.readAllStandardError())};
    }
};

}  // namespace

TEST_F(LogbookMount, AFullDiskIsSaidAndWhatWasKeptStays) {
    const auto [code, said] = inPrivateMount(
        "mount -t tmpfs -o size=2m tmpfs \"$1\" && (\"$2\" keep \"$1/book.sqlite\" 1; \"$2\" migrate "
        "\"$1/book.sqlite\" && cp \"$1\"/book.sqlite* \"$1/..\") >/dev/null",
        "keep");
    EXPECT_EQ(code, 2);
    const QStringList lines = said.trimmed().split('\n');
    for (const QString& line : lines) EXPECT_TRUE(line.contains("is full")) << said.toStdString();
    EXPECT_EQ(lines.size(), 2) << said.toStdString();  // of both keepers; the one that only opened said nothing
    const auto store = opened(file("book.sqlite"));    // the copy, made while the disk was full
    ASSERT_TRUE(store);
    EXPECT_TRUE(store->check());
    EXPECT_GT(findFrames(*store, {})->all, 3);
}

TEST_F(LogbookMount, AFolderThatMayOnlyBeReadIsReadAndWritingIsRefused) {
    fill(3);
    QDir().mkpath(file("mount"));
    ASSERT_TRUE(QFile::copy(book(), file("mount/book.sqlite")));
    const auto [code, said] = inPrivateMount("mount --bind \"$1\" \"$1\" && mount -o remount,ro,bind \"$1\"", "keep");
    EXPECT_EQ(code, 2);
    expectSentence(Error{said.trimmed().toStdString()}, "may only be read here");
    const auto [opens, silent] =
        inPrivateMount("mount --bind \"$1\" \"$1\" && mount -o remount,ro,bind \"$1\"", "migrate");
    EXPECT_EQ(opens, 0) << silent.toStdString();
}
