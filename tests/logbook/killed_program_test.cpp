// SPDX-License-Identifier: GPL-3.0-or-later
// Kills the program itself, not a helper, while "trueunit log" keeps and imports. A few times in the ordinary run; as
// often as TRUEUNIT_KILLS says in the endurance run (200).
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QThread>
#include <random>

#include "app/logbook/frame_search.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;

namespace {

constexpr unsigned kProgramSeed = 20261126;
constexpr const char* kScenario = R"({"title": "A test", "story": "", "seconds": 3, "seed": 3,
    "machine": {"name": "Skerry", "code": "ita2", "baud": 50, "stop_units": 1.5},
    "text": {"send": "RYRY THE LAMP IS LIT ", "repeat": true},
    "card": {"rate_hz": 44100, "coupling_hz": [10], "snr_db": 45}, "faults": {"bias_percent": 7}})";

class KilledProgram : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }
    int kills() const { return std::max(8, qEnvironmentVariableIntValue("TRUEUNIT_KILLS") / 2); }

    // Runs it, kills it (signal 9) somewhere within the time given, and returns the lines it had said by then.
    QStringList runFor(const QStringList& arguments, double mostMs) {
        QProcess program;
        program.start(TRUEUNIT_PROGRAM, QStringList{"log"} + arguments);
        EXPECT_TRUE(program.waitForStarted());
        QThread::usleep(static_cast<unsigned long>(std::uniform_real_distribution<>(0.0, 1000.0 * mostMs)(random_)));
        program.kill();
        program.waitForFinished();
        QStringList lines = QString::fromUtf8(program.readAllStandardOutput()).split('\n');
        lines.removeLast();  // empty, or a line that was cut off
        return lines;
    }

    // How long it takes when nobody kills it.
    static double wholeRunMs(const QStringList& arguments) {
        QElapsedTimer timer;
        timer.start();
        EXPECT_EQ(QProcess::execute(TRUEUNIT_PROGRAM, QStringList{"log"} + arguments), 0);
        return double(timer.elapsed());
    }

    static void expectGood(const Store& store) {
        EXPECT_TRUE(store.check());  // PRAGMA integrity_check
        EXPECT_EQ(*Statement(store, "SELECT count(*) FROM pragma_foreign_key_check").number(-1), 0);
    }

    const test::TemporaryFolder folder_;
    std::mt19937 random_{kProgramSeed};
};

}  // namespace

TEST_F(KilledProgram, EveryFrameItSaidItKeptIsThere) {
    SCOPED_TRACE("seed=" + std::to_string(kProgramSeed));
    QFile json(file("a.json"));
    ASSERT_TRUE(json.open(QIODevice::WriteOnly));
    json.write(kScenario);
    json.close();
    ASSERT_EQ(QProcess::execute(TRUEUNIT_PROGRAM, {"render", file("a.json"), "--out", file("a.wav")}), 0);
    const QStringList keep = {"keep",   file("a.wav"), "--machine", "Skerry 2",
                              "--baud", "50",          "--logbook", file("book.sqlite")};
    const double whole = wholeRunMs(keep);
    qint64 acknowledged = 1;
    for (int i = 0; i < kills(); ++i)
        for (const QString& line : runFor(keep, 1.3 * whole)) {
            ASSERT_TRUE(line.startsWith("Kept as frame ")) << line.toStdString();
            ++acknowledged;
            const auto store = test::opened(file("book.sqlite"));
            ASSERT_TRUE(store);
            const auto kept = readFrame(*store, line.split(' ')[3].toLongLong());
            ASSERT_TRUE(kept) << kept.error().text;
            EXPECT_FALSE(kept->excerptFlac.isEmpty());
        }
    const auto store = test::opened(file("book.sqlite"));
    ASSERT_TRUE(store);
    expectGood(*store);
    const auto frames = findFrames(*store, {});
    ASSERT_TRUE(frames);
    EXPECT_GE(frames->all, acknowledged);
    for (const FoundFrame& f : frames->frames) EXPECT_TRUE(readFrame(*store, f.row.id));
}

TEST_F(KilledProgram, EveryVisitItSaidItTookInIsThereAndNoneInPart) {
    SCOPED_TRACE("seed=" + std::to_string(kProgramSeed));
    constexpr int kArchives = 8, kFrames = 5;
    const QString book = file("book.sqlite");
    QStringList import = {"import", "--logbook", book};
    {
        const auto from = test::opened(file("from.sqlite"));
        for (int a = 0; a < kArchives; ++a) {
            qint64 visit = 0;
            for (int f = 0; f < kFrames; ++f) {
                const auto kept = keepFrame(*from, test::keepingOf("Skerry 2", 1000000 * (a + 1) + f));
                ASSERT_TRUE(kept);
                visit = kept->visit;
            }
            import += file("visit" + std::to_string(a) + ".zip");
            ASSERT_TRUE(writeVisitArchive(*from, visit, import.back()));
        }
    }
    const double whole = wholeRunMs(import);
    qsizetype taken = kArchives;
    for (int i = 0; i < kills(); ++i) {
        if (i % 2 == 0) {
            for (const char* ending : {"", "-wal", "-shm"}) QFile::remove(book + ending);
            taken = 0;
        }
        taken = std::max(taken, runFor(import, 1.2 * whole).size());
        const auto store = test::opened(book);
        ASSERT_TRUE(store);
        expectGood(*store);
        const auto frames = findFrames(*store, {});
        ASSERT_TRUE(frames);
        EXPECT_EQ(frames->all % kFrames, 0) << "a part of a visit";
        EXPECT_GE(frames->all, taken * kFrames) << "a visit that was acknowledged is missing";
    }
}
