// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/mains_hum.h"

#include <gtest/gtest.h>

#include "core/condition/line_study.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

// RY by units of 10 ms: its marks and spaces last as long as half a period of the mains.
PlainSender fastSender(double stopUnits) {
    PlainSender sender;
    sender.unit = sender.nominal = 0.01;
    sender.stopUnits = stopUnits;
    sender.leadIn = 1.0;
    sender.snrDb = 42.0;
    sender.humPercent = 6.0;
    sender.biasPercent = 4.0;
    return sender;
}

std::vector<unsigned> reversals(int pairs) {
    std::vector<unsigned> codes;
    for (int i = 0; i < pairs; ++i) {
        codes.push_back(0b01010U);
        codes.push_back(0b10101U);
    }
    return codes;
}

TEST(MainsHum, OfALineAtRestIsNotTakenForALine) {
    for (const double hz : {50.0, 60.0})
        for (const std::vector<double>& harmonics : {std::vector<double>{}, {0.5, 0.3}, {0.0, 0.6}}) {
            PlainSender sender = fastSender(1.42);
            sender.humHz = hz;
            sender.humHarmonics = harmonics;
            const std::vector<float> heard = sender.send({}, 1.0);
            EXPECT_FALSE(studyLine(heard, sender.rateHz)) << hz << " Hz, " << harmonics.size();
            EXPECT_FALSE(studyLine(std::span(heard).first(48128), sender.rateHz)) << hz << " Hz";
        }
}

TEST(MainsHum, KeyingByHalfPeriodsOfTheMainsIsNone) {
    for (const double stop : {1.0, 1.42, 1.5, 2.0})
        for (const std::vector<unsigned>& codes : {reversals(20), std::vector<unsigned>(40, 0b10101U)}) {
            PlainSender sender = fastSender(stop);
            sender.humPercent = 0.0;
            sender.polesHz = {25.0};
            const auto fit = studyLine(sender.send(codes), sender.rateHz);
            ASSERT_TRUE(fit) << stop;
            EXPECT_NEAR(fit->swing, 0.5, 0.02) << stop;
        }
}

TEST(MainsHum, IsWaitedThroughUntilTheTapeRuns) {
    for (const double hz : {50.0, 60.0})
        for (const double percent : {1.0, 6.0, 12.0})
            for (const double pole : {5.0, 25.0, 35.0}) {
                PlainSender sender = fastSender(1.42);
                sender.humHz = hz;
                sender.humPercent = percent;
                sender.polesHz = {pole};
                const std::vector<float> heard = sender.send(reversals(50));
                const Reading r = test::measureTwice(heard, sender.rateHz).reading();
                SCOPED_TRACE(std::to_string(hz) + " Hz, " + std::to_string(percent) + " %, " + std::to_string(pole));
                EXPECT_EQ(r.text.decoded, test::printed(reversals(50)));
                ASSERT_TRUE(r.distortion.biasPercent);
                EXPECT_NEAR(r.distortion.biasPercent->value, 4.0, 0.1);
                EXPECT_NEAR(r.input.humPercent.value_or(0.0), percent, 0.1 * percent);
            }
}

}  // namespace
}  // namespace trueunit
