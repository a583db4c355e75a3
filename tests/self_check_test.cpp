// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/self_check.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include "app/check_record.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

class CheckRecordTest : public testing::Test {
protected:
    CheckRecordTest() {
        qputenv("XDG_DATA_HOME", QByteArray::fromStdString(folder_.file("data")));
        QCoreApplication::setOrganizationName("Trueunit test");
        QCoreApplication::setApplicationName("Trueunit test");
    }
    const TemporaryFolder folder_;
};

CheckRecord record(std::int64_t seconds) {
    CheckRecord r;
    r.takenSecondsUtc = seconds;
    r.version = "0.1.0";
    r.memory = {{"50 baud", -10.0, {-10.02, 0.05}}, {"50 baud", 10.0, {10.04, 0.05}}};
    r.loopback = LoopbackResult{};
    r.loopback->input = "Line in";
    r.loopback->output = "Line out";
    r.loopback->rateHz = 48000.0;
    r.loopback->couplingHz = {1.8};
    r.loopback->snrDb = 61.0;
    r.loopback->delayMs = 87.0;
    r.loopback->clock = ClockTrim{{12.5, 0.2}, 12.0};
    r.loopback->rows = {{"card", 0.0, {0.01, 0.02}}, {"card", 15.0, {14.98, 0.02}}};
    return r;
}

}  // namespace

// Mean and standard deviation by hand: residuals -0.02 and +0.04, mean 0.01, s 0.0424, 2 s / sqrt(2) = 0.06.
TEST(SelfCheck, TheSummaryIsTheMeanResidualItsUncertaintyAndTheWorst) {
    const CheckSummary s = summaryOf(record(0).memory);
    EXPECT_NEAR(s.residualPercent.value, 0.01, 1e-9);
    EXPECT_NEAR(s.residualPercent.uncertainty, 0.06, 1e-9);
    EXPECT_NEAR(s.worstPercent, 0.04, 1e-9);
    EXPECT_TRUE(s.passed());
}

TEST(SelfCheck, OneRowThatIsTooFarOrWasNotReadFailsIt) {
    std::vector<CheckRow> rows = record(0).memory;
    rows.push_back({"50 baud", 0.0, {0.2, 0.05}});
    EXPECT_FALSE(summaryOf(rows).passed());
    rows.back().read = {0.0, -1.0};
    EXPECT_FALSE(summaryOf(rows).passed());
    EXPECT_FALSE(summaryOf({}).passed());
    EXPECT_FALSE(CheckRecord{}.passed());
}

TEST(SelfCheck, TheInstrumentReadsTheKnownSignalsInMemory) {
    double progress = 0.0;
    const std::vector<CheckRow> rows = checkInMemory([&](double fraction) { progress = fraction; }, {});
    EXPECT_EQ(progress, 1.0);
    for (const CheckRow& row : rows)
        EXPECT_TRUE(row.good()) << row.condition << " set " << row.set << " read " << row.read.value << " +- "
                                << row.read.uncertainty;
    const CheckSummary s = summaryOf(rows);
    EXPECT_GE(s.rows, 30);
    EXPECT_LT(std::abs(s.residualPercent.value), 0.02);
    RecordProperty("residual", std::to_string(s.residualPercent.value));
}

TEST(SelfCheck, StopsWhenItIsToldTo) {
    std::stop_source source;
    const auto rows = checkInMemory([&](double) { source.request_stop(); }, source.get_token());
    EXPECT_EQ(rows.size(), 1U);
}

TEST_F(CheckRecordTest, IsKeptWithItsDateAndTheLastOneComesBack) {
    EXPECT_FALSE(lastCheck());
    ASSERT_TRUE(keepCheck(record(1700000000)));
    CheckRecord newer = record(1700086400);
    newer.loopback.reset();
    ASSERT_TRUE(keepCheck(newer));
    EXPECT_EQ(QDir(checkFolder()).entryList(QDir::Files).size(), 2);
    ASSERT_TRUE(lastCheck());
    EXPECT_EQ(lastCheck()->takenSecondsUtc, 1700086400);
    EXPECT_FALSE(lastCheck()->loopback);
    ASSERT_TRUE(keepCheck(record(1700172800)));
    EXPECT_EQ(checkJson(*lastCheck()), checkJson(record(1700172800)));
    QFile broken(QDir(checkFolder()).filePath("2999-01-01 000000.json"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly) && broken.write("{") == 1);
    broken.close();
    EXPECT_EQ(lastCheck()->takenSecondsUtc, 1700172800);
}

TEST_F(CheckRecordTest, SaysInWordsWhatWasFound) {
    const std::string text = checkText(record(1700000000), true).toStdString();
    for (const char* part : {"high-pass at 1.8 Hz", "61.0 dB", "about 87 ms", "fast by 12.50 +- 0.20", "PASSED",
                             "residual bias +0.0100 +- 0.0600 %"})
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    CheckRecord bad = record(1700000000);
    bad.loopback->gaps = 1;
    EXPECT_TRUE(checkText(bad, false).contains("NOT PASSED"));
    EXPECT_TRUE(checkLine(record(1700000000)).contains("in memory residual bias +0.010"));
    EXPECT_TRUE(checkLine(record(1700000000)).contains("clock +12.5 parts in a million"));
}
