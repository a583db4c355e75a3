// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_page.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFileInfo>
#include <QImageReader>
#include <QTemporaryDir>
#include <cmath>

#include "app/page_flow.h"
#include "app/report_output.h"
#include "app/report_received.h"
#include "app/report_text.h"
#include "app/version.h"
#include "core/simulate/scenario_source.h"
#include "tests/support/frame_builder.h"

namespace trueunit {
namespace {

using test::frameOfLongMarks;

// Anything but white between two heights of the page, in the given millimetres from the left.
bool inked(const QImage& page, double leftMm, double rightMm) {
    const double dots = page.width() / 210.0;
    for (int y = 0; y < page.height(); ++y)
        for (int x = int(leftMm * dots); x < int(rightMm * dots); ++x)
            if (page.pixelColor(x, y).lightness() < 250) return true;
    return false;
}

TEST(ReportPage, IsA4AtPrintingResolutionAndSaysSoInTheFile) {
    // ISO 216: A4 is 210 mm x 297 mm.
    QTemporaryDir folder;
    const QString path = folder.filePath("report.png");
    ASSERT_TRUE(writeReport(frameOfLongMarks(), path));
    const QImage page(path);
    const double dotsPerMm = page.dotsPerMeterX() / 1000.0;
    EXPECT_NEAR(page.width() / dotsPerMm, 210.0, 0.2);
    EXPECT_NEAR(page.height() / dotsPerMm, 297.0, 0.2);
    EXPECT_GE(dotsPerMm * 25.4, 150.0);
}

TEST(ReportPage, CarriesTitleDateAndVersionAsText) {
    QTemporaryDir folder;
    const QString path = folder.filePath("report.png");
    ASSERT_TRUE(writeReport(frameOfLongMarks(), path));
    const QImage page(path);
    EXPECT_EQ(page.text("Title"), "Skerry 2, timing report");
    EXPECT_EQ(page.text("Software"), QStringLiteral("Trueunit ") + kVersion);
    EXPECT_EQ(page.text("Creation Time"), "25 Nov 2026 14:03:22 +0000");  // RFC 2822, as the PNG specification advises
}

TEST(ReportPage, AnOrdinaryFrameFillsOnePage) { EXPECT_EQ(reportPages(frameOfLongMarks()).size(), 1U); }

TEST(ReportPage, NothingReachesTheMarginsHoweverLongTheWords) {
    FrozenFrame frame = frameOfLongMarks();
    frame.machine = std::string(300, 'W');
    frame.remarks = std::string(900, 'M') + " and then words with spaces between them, " + std::string(200, 'x');
    frame.notes.push_back({2.0, 1.0, std::string(500, 'Q')});
    for (const QImage& page : reportPages(frame)) {
        EXPECT_FALSE(inked(page, 0.0, 15.0));
        EXPECT_FALSE(inked(page, 195.0, 210.0));
    }
}

TEST(ReportPage, ManyNotesGoOnToAFurtherPageAndAreAllWritten) {
    FrozenFrame frame = frameOfLongMarks();
    for (int i = 0; i < 60; ++i) frame.notes.push_back({0.1 * i, 0.5, "a note with a few words in it"});
    QTemporaryDir folder;
    const auto files = writeReport(frame, folder.filePath("report.png"));
    ASSERT_TRUE(files);
    EXPECT_GE(reportPages(frame).size(), 2U);
    EXPECT_EQ(files->value(1), folder.filePath("report, page 2.png"));
    for (const QString& file : *files) EXPECT_TRUE(QFileInfo::exists(file)) << file.toStdString();
}

TEST(ReportPage, AParagraphIsNotBrokenAcrossPages) {
    PageFlow page;
    page.moveTo(297.0 - PageFlow::kFoot - 8.0);  // room for two lines
    const QString words = QStringLiteral("a caution of several words ").repeated(20);
    page.paragraph(words, PageFlow::font(8.5), Qt::black);
    EXPECT_NEAR(page.y(), PageFlow::kTop + page.paragraphHeight(words, PageFlow::font(8.5)), 1.0);
    EXPECT_EQ(page.finish({}).size(), 2U);
}

TEST(ReportPage, AFindingStaysOnOnePageUnderItsHeading) {
    const QString words = QStringLiteral("what the finding rests on ").repeated(20);
    const std::vector<PageParagraph> parts(3, {words, PageFlow::font(8.5), Qt::black});
    const double each = PageFlow().paragraphHeight(words, PageFlow::font(8.5));
    PageFlow page;
    page.moveTo(297.0 - PageFlow::kFoot - 14.0 - 2.5 * each);
    page.together(parts, "Findings");
    EXPECT_GT(page.y(), PageFlow::kTop + 3.0 * each) << "all of it on the second page";
    EXPECT_EQ(page.finish({}).size(), 2U);
}

TEST(ReportPage, AFewLinesNeedNoPageOfTheirOwn) {
    const auto lines = [](int count) {
        return [count](PageFlow& page) {
            for (int i = 0; i < count; ++i) page.paragraph("one line", PageFlow::font(9.0), Qt::black);
        };
    };
    int fit = 1;
    PageFlow usual;
    for (lines(1)(usual); usual.y() < 297.0 - PageFlow::kFoot - 4.5; ++fit) lines(1)(usual);
    EXPECT_EQ(composedPages(lines(fit + 2), {}, Paper::a4).size(), 1U);
    EXPECT_EQ(composedPages(lines(fit + 30), {}, Paper::a4).size(), 2U);
}

TEST(ReportText, ASimulatedSenderIsKnownByItsSource) {
    FrozenFrame frame = frameOfLongMarks();
    frame.inputDescription = ScenarioSource(Scenario{}).description();
    EXPECT_TRUE(isSimulated(frame));
    frame.inputDescription = "holm.wav";
    EXPECT_FALSE(isSimulated(frame));
}

TEST(ReportText, ACharacterThatWouldBeASpeckBetweenQuotesIsNamed) {
    EXPECT_EQ(printName("E"), u"\u201cE\u201d");
    EXPECT_EQ(printName("'"), "apostrophe");
    EXPECT_EQ(printName("letters"), "letters");
    EXPECT_EQ(printName(""), "a character without print");
}

TEST(ReportText, SlipsOfTheFeedStandInTheTextReceived) {
    const auto sent = [](const char* print) {
        TapeCharacter c;
        c.print = print;
        return c;
    };
    std::vector<TapeCharacter> tape{sent("letters"), sent("T"),       sent("E"), sent("E"),
                                    sent("space"),   sent("figures"), sent("1")};
    EXPECT_TRUE(textWithSlips(tape).isEmpty());
    tape[2].passed = {20U};
    tape[2].passedPrint = {"H"};
    tape[3].again = true;
    tape[6].passed = {27U, 0U};
    tape[6].passedPrint = {"figures", ""};
    EXPECT_EQ(textWithSlips(tape), u"T(H)E[E] (fig)(?)1");
}

TEST(ReportText, ARecordingIsDatedByItsFileAndSaysSo) {
    FrozenFrame frame = frameOfLongMarks();
    EXPECT_TRUE(whenText(frame).startsWith("Taken 2026-11-25 ")) << whenText(frame).toStdString();
    frame.fileSecondsUtc = frame.takenSecondsUtc - 86400;
    EXPECT_TRUE(whenText(frame).startsWith("From a recording, its file of 2026-11-24 "))
        << whenText(frame).toStdString();
    EXPECT_TRUE(whenText(frame).contains("; measured 2026-11-25 "));
    EXPECT_EQ(fromText(frame), u"Line in, left (48 kHz) \u00b7 last 32 characters, 32 characters used");
}

TEST(ReportPage, ANoteChangesThePage) {
    FrozenFrame frame = frameOfLongMarks();
    const QImage without = reportPages(frame).front();
    frame.notes.push_back({2.4, 0.2, "rounded by the filter"});
    EXPECT_NE(without, reportPages(frame).front());
}

TEST(ReportPage, AFolderThatIsNotThereGivesOneSentenceAndNoFile) {
    QTemporaryDir folder;
    const QString path = folder.filePath("missing/report.png");
    const auto outcome = writeReport(frameOfLongMarks(), path);
    ASSERT_FALSE(outcome);
    const QString sentence = QString::fromStdString(outcome.error().text);
    EXPECT_TRUE(sentence.contains("missing/report.png"));
    EXPECT_TRUE(sentence.endsWith('.'));
    EXPECT_FALSE(sentence.contains('\n'));
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(ReportPage, AReportThatCannotBeReplacedIsLeftAsItWas) {
    QTemporaryDir folder;
    ASSERT_TRUE(QDir(folder.path()).mkdir("report.png"));  // a folder stands where the file should go
    EXPECT_FALSE(writeReport(frameOfLongMarks(), folder.filePath("report.png")));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot), QStringList{"report.png"});
}

TEST(ReportPage, AFrameWithoutASingleCharacterIsStillAReport) {
    FrozenFrame frame;
    auto empty = std::make_shared<Snapshot>();
    empty->reading.notes = {"No signal was found on the input."};
    frame.snapshot = empty;
    EXPECT_EQ(reportPages(frame).size(), 1U);
}

TEST(ReportText, TheVerdictNamesWhatIsOutAndWhichWay) {
    const VerdictText v = verdictText(*frameOfLongMarks().snapshot);
    EXPECT_EQ(v.headline, "Out of limits");
    EXPECT_TRUE(v.detail.startsWith(u"Marks too long: bias +7.30\u00a0% (limit\u00a0\u00b15.00\u00a0%)"))
        << v.detail.toStdString();
}

TEST(ReportText, LostMarksThatPutASenderOutOfLimitsAreMarkedInTheirRowAndToldInNumbers) {
    Snapshot s = *frameOfLongMarks().snapshot;
    s.reading.levels.emplace();
    for (int level = 1; level <= 5; ++level) s.reading.levels->push_back({level, 100, level == 3 ? 20 : 0, 100, 0});
    s.reading.verdict.within = false;
    s.reading.verdict.exceeded.emplace_back("marks_missed");
    for (const ReportRow& row : reportRows(s)) {
        const bool lost = row.name == "Lost marks, of 500";
        EXPECT_EQ(row.judged == "OUT" && row.limit.isEmpty(), lost) << row.name.toStdString();
        EXPECT_TRUE(!lost || (row.out && row.value == "4.00"));
    }
    EXPECT_EQ(verdictText(s).detail.count("ost marks"), 0);
    EXPECT_EQ(verdictText(s).detail.count("20 of 100 marks of level 3 lost"), 1);
}

TEST(ReportText, TheHeadNamesTheSureFindingsAndALevelThatPullsTheBias) {
    Snapshot s = *frameOfLongMarks().snapshot;
    s.reading.findings = {{"level-late", 0.95, "Level 2 comes 12.0 % early", {}, {}, {}},
                          {"contact-offset", 0.97, "Marks too long by 5.0 %", {}, {}, {}}};
    VerdictText v = verdictText(s);
    EXPECT_EQ(v.fault, "Found, 95 % sure: Level 2 comes 12.0 % early; Marks too long by 5.0 %.");
    EXPECT_TRUE(v.detail.startsWith(u"Bias +7.30\u00a0% (limit\u00a0\u00b15.00\u00a0%), partly a level"))
        << v.detail.toStdString();
    EXPECT_TRUE(v.beyond);
    EXPECT_TRUE(v.lookAt.isEmpty());
    s.reading.setAside = SetAsideReading{s.reading.distortion.biasPercent->value + 0.1, 0.0, {}};
    EXPECT_FALSE(verdictText(s).detail.contains("partly")) << "without the level it is the same";
    s.reading.findings->at(1).confidence = 0.6;
    EXPECT_EQ(verdictText(s).fault, "Found, 95 % sure: Level 2 comes 12.0 % early.");
    s.reading.findings->front().lookAt = "Contact: dirt.";
    EXPECT_EQ(verdictText(s).lookAt, "Look at: Contact: dirt.");
    s.reading.findings->front().minor = true;
    EXPECT_FALSE(verdictText(s).beyond) << "and so not in the colour of what is out";
}

Snapshot inLimitsWith(const char* id, double confidence) {
    Snapshot s = *frameOfLongMarks().snapshot;
    s.reading.verdict.within = true;
    s.reading.findings = {{id, confidence, "The trip is late", {}, {}, {}}};
    return s;
}

TEST(ReportText, AFaultThatIsNextToCertainStandsBesideLimitsThatWereKept) {
    const VerdictText v = verdictText(inLimitsWith("trip-late", 0.97));
    EXPECT_EQ(v.within, std::optional(true));
    EXPECT_EQ(v.fault, "Found, 97 % sure: The trip is late.");
    EXPECT_TRUE(inOneLine(v).contains(v.fault));
    EXPECT_TRUE(v.headline.endsWith(", yet with a fault")) << "whoever reads the headline alone";
    EXPECT_TRUE(verdictText(inLimitsWith("trip-late", 0.89)).fault.isEmpty());
    EXPECT_TRUE(verdictText(inLimitsWith("in-order", 0.97)).fault.isEmpty());
}

// A page with the moment before, measured over a short window, that may be looked at with TRUEUNIT_PICTURES=folder.
TEST(ReportPage, HoldsTheMomentBeforeOnTheFirstPage) {
    FrozenFrame frame = frameOfLongMarks();
    auto before = std::make_shared<Snapshot>(*frame.snapshot);
    before->reading.distortion.biasPercent->value = 17.0;
    before->windowUsed = 8;
    for (InstantReading& i : before->reading.instants) i.meanPercent -= 9.7;
    if (!before->reading.instants.empty()) before->reading.instants.front().count = 1;
    const std::size_t without = reportPages(frame).size();
    auto now = std::make_shared<Snapshot>(*frame.snapshot);
    now->trail.clear();
    for (std::uint64_t n = 1; n <= 1200; ++n)
        now->trail.push_back({n, double(n) * 0.163,
                              n < 500   ? 17.0
                              : n < 900 ? 12.0 + 0.3 * std::sin(double(n))
                                        : 7.3,
                              0.4, n < 950 ? 8U : 128U});
    now->seconds = 196.0;
    before->seconds = 60.0;
    frame.snapshot = now;
    frame.before = before;
    frame.beforeTakenSecondsUtc = frame.takenSecondsUtc - 600;
    const auto pages = reportPages(frame);
    EXPECT_LE(pages.size(), without + 1);
    now->trail.resize(300);  // less than a minute of it is not drawn
    EXPECT_NE(reportPages(frame).back(), pages.back());
    if (const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES"); !folder.isEmpty())
        for (std::size_t i = 0; i < pages.size(); ++i)
            pages[i].save(QDir(folder).filePath(QStringLiteral("report-before-%1.png").arg(i + 1)));
}

int decimalsOf(const QString& figure) {
    const qsizetype point = figure.indexOf('.');
    return point < 0 ? 0 : int(figure.size() - point - 1);
}

TEST(ReportText, AllFiguresOfARowHaveTheSameDecimalsInBothMoments) {
    const Snapshot fine = *frameOfLongMarks().snapshot;
    Snapshot coarse = fine;
    coarse.reading.distortion.biasPercent->uncertainty = 0.6;
    coarse.reading.distortion.endPercent->uncertainty = 0.6;
    coarse.reading.speed.errorPercent->uncertainty = 0.3;
    for (JudgedReading& j : coarse.reading.verdict.judged)
        if (j.key == "end_percent") j.limit = 2.125;
    const auto was = reportRows(coarse, &fine), is = reportRows(fine, &coarse);
    ASSERT_EQ(was.size(), is.size());
    for (std::size_t i = 0; i < was.size(); ++i)
        for (const QString& figure : {was[i].uncertainty, is[i].value, is[i].uncertainty, was[i].limit, is[i].limit})
            if (!figure.isEmpty() && was[i].value.back().isDigit()) {
                EXPECT_EQ(decimalsOf(figure), decimalsOf(was[i].value)) << was[i].name.toStdString();
            }
    EXPECT_EQ(reportRows(coarse)[1].limit, u"\u00b12.125") << "a limit is never shown rounded";
}

TEST(ReportText, AMissingReadingIsADashAndNeverANumber) {
    const Snapshot nothing;
    for (const ReportRow& row : reportRows(nothing)) {
        EXPECT_EQ(row.value, u"\u2014") << row.name.toStdString();
        EXPECT_TRUE(row.judged.isEmpty()) << row.name.toStdString();
    }
    EXPECT_EQ(verdictText(nothing).headline, "Not judged");
}

TEST(ReportText, ACursorOneCharacterAwayIsOneTurnOfTheCam) {
    // The drawn sender's character lasts 163.27 ms, 7.4214 units.
    EXPECT_EQ(cursorText(*frameOfLongMarks().snapshot, 163.27 / 22.0),
              u"163.27 ms, 7.421 units, 360.0\u00b0 of the cam");
}

// Millimetres from the left margin to the first ink of what was written at the top of a page.
double inkBegins(PageFlow& page, const QString& text) {
    page.paragraph(text, PageFlow::font(9.0), Qt::black);
    const QImage image = page.finish({}).front();
    const double margin = (210.0 - PageFlow::kTextWidth) / 2.0;
    for (int x = 0; x < image.width(); ++x)
        for (int y = 0; y < image.height() / 2; ++y)
            if (qGray(image.pixel(x, y)) < 128) return x * 25.4 / PageFlow::kDotsPerInch - margin;
    return -1.0;
}

TEST(PageFlow, WhatIsWrittenFromRightToLeftBeginsAtTheRight) {
    PageFlow left, right;
    EXPECT_LT(inkBegins(left, "In limits."), 2.0);
    EXPECT_GT(inkBegins(right, QString::fromUtf8("\u05d1\u05d2\u05d1\u05d5\u05dc\u05d5\u05ea.")),
              PageFlow::kTextWidth - 20.0);
}

TEST(PageFlow, ACharacterThatNoFontHasIsNoticedAndAnEmptyLineKeepsItsPlace) {
    PageFlow page;
    page.paragraph("One.", PageFlow::font(9.0), Qt::black);
    const double line = page.y() - PageFlow::kTop;
    page.paragraph("One.\n\nTwo.", PageFlow::font(9.0), Qt::black);
    EXPECT_NEAR(page.y() - PageFlow::kTop, 4.0 * line, 0.2);
    EXPECT_FALSE(page.boxes());
    page.paragraph(QString::fromUtf8("\U0010fffd"), PageFlow::font(9.0), Qt::black);  // for private use
    EXPECT_TRUE(page.boxes());
}

}  // namespace
}  // namespace trueunit
