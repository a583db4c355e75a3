// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <nlohmann/json.hpp>
#include <random>

#include "app/logbook/draft.h"
#include "app/logbook/excerpt_flac.h"
#include "app/logbook/frame_search.h"
#include "app/logbook/machines.h"
#include "app/logbook/readings_export.h"
#include "app/logbook/schema.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "core/acquire/recording.h"
#include "core/report/frame_json.h"
#include "tests/logbook/logbook_rig.h"
#include "tests/support/frame_builder.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using test::keepingOf;
using test::kMorning;
using test::opened;

namespace {

constexpr qint64 kDay = 86400;

void expectEnd(const FrameRow& row, const FrozenFrame& frame) {
    const auto& end = frame.snapshot->reading.distortion.endPercent;
    ASSERT_TRUE(row.end && row.endUncertainty && end);
    EXPECT_DOUBLE_EQ(*row.end, end->value);
    EXPECT_DOUBLE_EQ(*row.endUncertainty, end->uncertainty);
}

// Level by level, as its findings have them.
void expectLevels(const FrameRow& row, const FrozenFrame& frame) {
    ASSERT_EQ(row.findings.size(), row.findingLevels.size());
    ASSERT_FALSE(row.findings.isEmpty());
    for (const Finding& f : *frame.snapshot->reading.findings) {
        const qsizetype at = row.findings.indexOf(QString::fromStdString(f.id));
        ASSERT_GE(at, 0) << f.id;
        EXPECT_EQ(row.findingLevels[at].toInt(), f.seenAt.level) << f.id;
    }
}

class LogbookTest : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }
    Kept keep(const Keeping& keeping) {
        const auto kept = keepFrame(*store_, keeping);
        EXPECT_TRUE(kept) << kept.error().text;
        return kept ? *kept : Kept{};
    }
    FoundFrames found(const FrameFilter& filter) const {
        const auto frames = findFrames(*store_, filter);
        EXPECT_TRUE(frames) << frames.error().text;
        return frames ? *frames : FoundFrames{};
    }

    const test::TemporaryFolder folder_;
    std::unique_ptr<Store> store_ = opened(file("book.sqlite"));
};

}  // namespace

TEST_F(LogbookTest, AKeptFrameIsReadAsItWas) {
    const Keeping keeping = keepingOf("Skerry 2", kMorning);
    const Kept kept = keep(keeping);
    const auto back = readFrame(*store_, kept.frame);
    ASSERT_TRUE(back);
    EXPECT_EQ(frameJson(back->frame), frameJson(keeping.kept.frame));
    EXPECT_EQ(back->excerptFlac, keeping.kept.excerptFlac);
}

TEST_F(LogbookTest, TheMomentBeforeIsKeptOnceWithTheFirstFrameAndMarked) {
    const Keeping before = keepingOf("Skerry 2", kMorning, "was"), now = keepingOf("Skerry 2", kMorning, "is");
    const auto kept = keepFrame(*store_, now, &before);
    ASSERT_TRUE(kept);
    EXPECT_GT(kept->before, 0);
    const auto later = keepFrame(*store_, keepingOf("Skerry 2", kMorning + 60), &before);
    ASSERT_TRUE(later);
    EXPECT_EQ(later->before, 0);
    const auto rows = framesOf(*store_, kept->visit);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ(rows->at(0).uid, "was") << "though both were taken in the same second";
    EXPECT_EQ(rows->at(0).role, FrameRole::before);
    EXPECT_EQ(rows->at(1).role, FrameRole::none);
}

TEST_F(LogbookTest, TheMarkOfTheMomentAfterGoesOnToTheFrameKeptLast) {
    const auto after = [](qint64 taken, const char* uid) {
        Keeping keeping = keepingOf("Skerry 2", taken, uid);
        keeping.role = FrameRole::after;
        return keeping;
    };
    const Keeping before = keepingOf("Skerry 2", kMorning, "was");
    const auto first = keepFrame(*store_, after(kMorning + 60, "first"), &before);
    const auto second = keepFrame(*store_, after(kMorning + 120, "second"), &before);
    ASSERT_TRUE(first && second);
    EXPECT_TRUE(first->after && second->after);
    const auto roles = [&] {
        std::vector<FrameRole> all;
        const auto rows = framesOf(*store_, first->visit);
        for (const FrameRow& row : *rows) all.push_back(row.role);
        return all;
    };
    EXPECT_EQ(roles(), (std::vector{FrameRole::before, FrameRole::none, FrameRole::after}));
    const auto again = keepFrame(*store_, after(kMorning + 60, "first"), &before);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->again && again->after);
    EXPECT_EQ(roles(), (std::vector{FrameRole::before, FrameRole::after, FrameRole::none}));
    const auto was = keepFrame(*store_, after(kMorning, "was"), nullptr);
    ASSERT_TRUE(was);
    EXPECT_FALSE(was->after) << "what was before stays before";
}

TEST_F(LogbookTest, AFrameThatIsMarkedAsBeforeAndThenKeptIsOneFrame) {
    const Keeping frame = keepingOf("Skerry 2", kMorning, "was");
    const auto kept = keepFrame(*store_, frame, &frame);
    ASSERT_TRUE(kept);
    const auto rows = framesOf(*store_, kept->visit);
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ(rows->front().role, FrameRole::before);

    const Keeping other = keepingOf("Skerry 2", kMorning + 60, "other");
    ASSERT_TRUE(keepFrame(*store_, other, &other));
    EXPECT_EQ(framesOf(*store_, kept->visit)->at(1).role, FrameRole::none) << "the visit has one already";
}

TEST_F(LogbookTest, FramesOfOneDayBelongToOneVisitUntilItHasAResult) {
    const Kept first = keep(keepingOf("Skerry 2", kMorning));
    EXPECT_TRUE(first.newVisit);
    const Kept second = keep(keepingOf("  skerry  2 ", kMorning + 3600));
    EXPECT_EQ(second.visit, first.visit);
    EXPECT_EQ(second.machine, first.machine);
    EXPECT_NE(keep(keepingOf("Skerry 2", kMorning + 3 * kDay)).visit, first.visit);
    EXPECT_NE(keep(keepingOf("Holm 1", kMorning)).machine, first.machine);

    Visit done = **findVisit(*store_, first.visit);
    done.result = "in limits";
    ASSERT_TRUE(saveVisit(*store_, done));
    EXPECT_NE(keep(keepingOf("Skerry 2", kMorning + 3700)).visit, first.visit);
}

TEST_F(LogbookTest, KeepingAFrameAgainChangesItsNotesOnly) {
    Keeping keeping = keepingOf("Skerry 2", kMorning, "one");
    const Kept first = keep(keeping);
    keeping.kept.frame.notes.push_back({2.0, 0.5, "late lever"});
    const Kept second = keep(keeping);
    EXPECT_TRUE(second.again);
    EXPECT_EQ(second.frame, first.frame);
    EXPECT_EQ(found({}).all, 1);
    FrameFilter filter;
    filter.text = "LATE lever";
    EXPECT_EQ(found(filter).all, 1);
}

TEST_F(LogbookTest, SearchNarrowsByMachineDateFindingAndTextInAnyScript) {
    Keeping a = keepingOf("Skerry 2", kMorning);
    a.kept.frame.remarks = "H\u00c4NGT bei \u0416";
    auto s = std::make_shared<Snapshot>(*a.kept.frame.snapshot);
    s->reading.findings = std::vector<Finding>{{"contact-offset", 0.9, "", "", "", ""}};
    a.kept.frame.snapshot = s;
    const Kept kept = keep(a);
    keep(keepingOf("Holm 1", kMorning - 10 * kDay));

    const auto count = [&](auto change) {
        FrameFilter filter;
        change(filter);
        return found(filter).all;
    };
    EXPECT_EQ(count([](FrameFilter&) {}), 2);
    EXPECT_EQ(count([&](FrameFilter& f) { f.machine = kept.machine; }), 1);
    EXPECT_EQ(count([&](FrameFilter& f) { f.fromUtc = kMorning; }), 1);
    EXPECT_EQ(count([&](FrameFilter& f) { f.beforeUtc = kMorning; }), 1);
    EXPECT_EQ(count([](FrameFilter& f) { f.finding = "contact-offset"; }), 1);
    EXPECT_EQ(count([](FrameFilter& f) { f.finding = "contact"; }), 0);
    EXPECT_EQ(count([](FrameFilter& f) { f.text = QString::fromUtf8("h\u00e4ngt \u0436 skerry"); }), 1);
    EXPECT_EQ(count([](FrameFilter& f) { f.text = "north 100%"; }), 0);
    const auto machines = listMachines(*store_, "holm");
    ASSERT_TRUE(machines);
    ASSERT_EQ(machines->size(), 1U);
    EXPECT_EQ(machines->front().frames, 1);
}

TEST_F(LogbookTest, AnArchiveCarriesAVisitToAnotherLogbookOnce) {
    const Kept kept = keep(keepingOf("Skerry 2", kMorning, "one"));
    keep(keepingOf("Skerry 2", kMorning + 60, "two"));
    Visit visit = **findVisit(*store_, kept.visit);
    visit.complaint = QString::fromUtf8("garbles \u2014 \u96e8");
    visit.repaired = true;
    visit.changed = kMorning + 100;
    ASSERT_TRUE(saveVisit(*store_, visit));
    ASSERT_TRUE(writeVisitArchive(*store_, kept.visit, file("visit.zip")));

    const auto other = opened(file("other.sqlite"));
    const auto first = importVisitArchive(*other, file("visit.zip"));
    ASSERT_TRUE(first) << first.error().text;
    EXPECT_EQ(first->framesNew, 2);
    EXPECT_EQ((*findVisit(*other, first->visit))->complaint, visit.complaint);
    EXPECT_TRUE((*findVisit(*other, first->visit))->repaired);
    const auto id = findFrameByUid(*other, "one");
    ASSERT_TRUE(id && *id);
    EXPECT_EQ(readFrame(*other, **id)->excerptFlac, readFrame(*store_, kept.frame)->excerptFlac);
    expectEnd((*findFrame(*other, **id))->row, readFrame(*store_, kept.frame)->frame);

    const auto again = importVisitArchive(*other, file("visit.zip"));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->framesNew, 0);
    EXPECT_EQ(again->framesThere, 2);
    EXPECT_FALSE(again->visitNew);
}

TEST_F(LogbookTest, AnArchiveThatIsCutShortChangesNothing) {
    const Kept kept = keep(keepingOf("Skerry 2", kMorning, {}, 50000));
    ASSERT_TRUE(writeVisitArchive(*store_, kept.visit, file("visit.zip")));
    QFile zip(file("visit.zip"));
    ASSERT_TRUE(zip.open(QIODevice::ReadWrite));
    const QByteArray whole = zip.readAll();
    const auto other = opened(file("other.sqlite"));
    for (const double part : {0.0, 0.1, 0.5, 0.9}) {
        zip.resize(static_cast<qint64>(part * double(whole.size())));
        EXPECT_FALSE(importVisitArchive(*other, file("visit.zip"))) << part;
        zip.seek(0);
        zip.write(whole);
        zip.flush();
    }
    EXPECT_EQ(findFrames(*other, {})->all, 0);
    EXPECT_FALSE(importVisitArchive(*other, file("none.zip")));
}

// RFC 4180: lines end in CR LF, fields with quotes, commas or line ends are quoted and quotes doubled.
TEST_F(LogbookTest, TheTableOfReadingsIsQuotedAsTheStandardSays) {
    Keeping keeping = keepingOf("Skerry \"2\", north", kMorning);
    keeping.kept.frame.remarks = "=1+1\nsecond";
    keep(keeping);
    const auto csv = readingsCsv(*store_, found({}).frames);
    ASSERT_TRUE(csv);
    EXPECT_NE(csv->find("\"Skerry \"\"2\"\", north\""), std::string::npos) << *csv;
    EXPECT_NE(csv->find("\" =1+1\nsecond\""), std::string::npos) << "a formula would be run by a spreadsheet";
    EXPECT_EQ(csv->substr(csv->size() - 2), "\r\n");
    const auto json = readingsJson(*store_, found({}).frames);
    ASSERT_TRUE(json);
    const auto parsed = nlohmann::json::parse(*json);
    EXPECT_NEAR(parsed["frames"][0]["reading"]["distortion"]["bias_percent"].get<double>(), 7.3, 1e-9);
}

TEST_F(LogbookTest, AnOldLogbookIsBroughtForwardAndItsTextsAreFound) {
    test::makeOldLogbook(file("old.sqlite"), 3);
    const auto old = opened(file("old.sqlite"));
    ASSERT_TRUE(old);
    FrameFilter filter;
    filter.text = QString::fromUtf8("stra\u00dfe garbles skerry");  // case folding: sharp s is ss
    EXPECT_EQ(findFrames(*old, filter)->all, 3);
    EXPECT_EQ(*Statement(*old, "PRAGMA user_version").number(0), kSchemaVersion);
    const auto rows = framesOf(*old, 1);
    ASSERT_TRUE(rows);
    for (const FrameRow& row : *rows) {
        expectEnd(row, test::frameOfLongMarks());
        EXPECT_EQ(row.findingLevels, QStringList("4"));
    }
}

TEST_F(LogbookTest, AFrameIsListedWithTheLevelOfItsFinding) {
    Keeping keeping = keepingOf("Skerry 2", kMorning);
    auto s = std::make_shared<Snapshot>(*keeping.kept.frame.snapshot);
    Finding late, end;
    late.id = "level-late";
    late.seenAt.level = 4;
    end.id = "end-offset";
    s->reading.findings = {end, late, late};
    keeping.kept.frame.snapshot = s;
    keep(keeping);
    const FrameRow row = found({}).frames.front().row;
    expectLevels(row, keeping.kept.frame);
    EXPECT_EQ(row.findings, QStringList({"end-offset", "level-late"}));
}

TEST_F(LogbookTest, AFrameOfAnOldLogbookThatCannotBeReadHasNoEndDistortionAndHoldsNothingUp) {
    test::makeOldLogbook(file("old.sqlite"), 2);
    const auto before = Store::openAsItIs(file("old.sqlite"));
    ASSERT_TRUE(before && Statement(**before, "UPDATE contents SET frame = x'00' WHERE frame_id = 1").run());
    const auto old = opened(file("old.sqlite"));
    ASSERT_TRUE(old);
    const auto rows = framesOf(*old, 1);
    ASSERT_EQ(rows->size(), 2U);
    EXPECT_FALSE(rows->at(0).end);
    EXPECT_TRUE(rows->at(1).end);
}

TEST_F(LogbookTest, TwoProgramsWriteToOneLogbook) {
    const auto other = opened(file("book.sqlite"));
    ASSERT_TRUE(other);
    keep(keepingOf("Skerry 2", kMorning));
    ASSERT_TRUE(keepFrame(*other, keepingOf("Skerry 2", kMorning + 1)));
    keep(keepingOf("Skerry 2", kMorning + 2));
    EXPECT_EQ(found({}).all, 3);
    EXPECT_EQ(findFrames(*other, {})->all, 3);
}

TEST_F(LogbookTest, ADraftOfARunningProgramIsLeftAlone) {
    Draft running(file("drafts"));
    ASSERT_TRUE(running.write(keepingOf("Skerry 2", kMorning).kept.frame, "uid"));
    Draft mine(file("drafts"));
    EXPECT_FALSE(mine.takeOver());
}

TEST_F(LogbookTest, TheSoundOfAFrameIsLosslessAndThatOfACardOf16BitsNoLarger) {
    std::vector<float> sound(96000);
    std::mt19937 random(5);
    for (float& s : sound) s = static_cast<float>(static_cast<int>(random() % 65536) - 32768) / 32768.0F;  // noise
    const auto flac = excerptToFlac(sound, 48000.0);
    ASSERT_TRUE(flac) << flac.error().text;
    EXPECT_LT(double(flac->size()), 1.02 * 2.0 * double(sound.size()));  // noise of 16 bits cannot be packed
    QFile kept(QString::fromStdString(folder_.file("kept.flac")));
    ASSERT_TRUE(kept.open(QIODevice::WriteOnly));
    kept.write(*flac);
    kept.close();
    auto back = Recording::open(folder_.file("kept.flac"));
    ASSERT_TRUE(back);
    std::vector<float> out(sound.size());
    ASSERT_EQ(back->read(out), sound.size());
    EXPECT_EQ(out, sound);
}
