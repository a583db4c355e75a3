// SPDX-License-Identifier: GPL-3.0-or-later
// Two levers out of place, from the samples of an independent sender to the findings.
#include <gtest/gtest.h>

#include <set>
#include <string>
#include <vector>

#include "core/frame/code_table.h"
#include "core/pipeline.h"
#include "tests/support/plain_sender.h"

using namespace trueunit;
using trueunit::test::PlainSender;

namespace {

// Which findings there are; of a level, which level.
std::multiset<std::string> told(const Reading& r) {
    std::multiset<std::string> all;
    for (const Finding& f : r.findings.value_or(std::vector<Finding>{}))
        all.insert(f.id == "level-late" ? f.title.substr(0, f.title.find(" comes")) : f.id);
    return all;
}

}  // namespace

// Least squares spreads them over speed, bias and end, so that neither stands out alone.
TEST(TwoLevers, AreTwoLeversAndNoWrongSpeedBiasOrEnd) {
    std::vector<unsigned> codes;
    for (int round = 0; round < 4; ++round)
        for (const unsigned char c : encode(*findCode("ita2"), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG "))
            codes.push_back(c);
    struct Sizes {
        double first, second, bias;
    };
    for (const Sizes& by : {Sizes{6.0, 6.0, 0.0}, {8.0, 5.0, 0.0}, {-6.0, -6.0, 7.0}})
        for (int one = 1; one < 5; ++one)
            for (int other = one + 1; other <= 5; ++other) {
                SCOPED_TRACE(testing::Message() << one << " by " << by.first << ", " << other << " by " << by.second
                                                << ", bias " << by.bias);
                PlainSender sender;
                sender.snrDb = 40.0;
                sender.polesHz = {8.0};
                sender.scatterPercent = 0.3;
                sender.biasPercent = by.bias;
                sender.extraPercent = [&](int k, bool, double) {
                    return k == one ? by.first : k == other ? by.second : 0.0;
                };
                Pipeline pipeline(sender.rateHz, {}, {});
                pipeline.push(sender.send(codes));
                pipeline.finish();
                const Reading r = pipeline.reading();
                std::multiset<std::string> truth{"Level " + std::to_string(one), "Level " + std::to_string(other)};
                if (by.bias != 0.0) truth.insert("contact-offset");
                EXPECT_EQ(told(r), truth);
                ASSERT_TRUE(r.setAside && r.setAside->errorPercent);
                EXPECT_NEAR(*r.setAside->errorPercent, 0.0, 0.1);
                EXPECT_NEAR(r.setAside->biasPercent, by.bias, 0.3);
                EXPECT_NEAR(r.setAside->endPercent, 0.0, 0.3);
            }
}
