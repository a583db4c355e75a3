// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/options.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace trueunit {
namespace {

std::string refusalOf(const std::function<void(Options&)>& set) {
    Options options;
    set(options);
    const std::optional<Error> problem = options.problem();
    return problem ? problem->text : "";
}

TEST(Options, AsTheyComeTheyAreInOrder) { EXPECT_FALSE(Options{}.problem()); }

TEST(Options, EveryRangeIncludesItsEndsAndNothingBeyond) {
    EXPECT_EQ(refusalOf([](Options& o) { o.baud = 20.0; }), "");
    EXPECT_EQ(refusalOf([](Options& o) { o.baud = 200.0; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.baud = 19.9; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.baud = 200.1; }), "");
    EXPECT_EQ(refusalOf([](Options& o) { o.stopUnits = 1.0; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.stopUnits = 0.99; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.stopUnits = 2.51; }), "");
    EXPECT_EQ(refusalOf([](Options& o) { o.slicePercent = 90.0; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.slicePercent = 9.0; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.slicePercent = 90.5; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.windowCharacters = -1; }), "");
    EXPECT_EQ(refusalOf([](Options& o) { o.clockPpm = -1000.0; }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.clockPpm = 1000.5; }), "");
}

TEST(Options, ANumberThatIsNoneIsRefused) {
    EXPECT_NE(refusalOf([](Options& o) { o.baud = std::nan(""); }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.slicePercent = std::nan(""); }), "");
    EXPECT_NE(refusalOf([](Options& o) { o.clockPpm = INFINITY; }), "");
}

TEST(Options, AnUnknownCodeIsRefusedByNameAndTheKnownOnesAreOffered) {
    const std::string text = refusalOf([](Options& o) { o.code = "ita9"; });
    EXPECT_NE(text.find("ita9"), std::string::npos);
    EXPECT_NE(text.find("ita2-us"), std::string::npos);
}

TEST(Options, ARefusalIsOneSentence) {
    const std::string text = refusalOf([](Options& o) { o.baud = 5.0; });
    ASSERT_FALSE(text.empty());
    EXPECT_EQ(text.find('\n'), std::string::npos);
    EXPECT_EQ(text.find('.'), text.size() - 1);
    EXPECT_TRUE(std::isupper(static_cast<unsigned char>(text.front())));
}

TEST(Options, OfTwoProblemsTheFirstIsTold) {
    EXPECT_EQ(refusalOf([](Options& o) {
                  o.slicePercent = 0.0;
                  o.baud = 5.0;
              }),
              refusalOf([](Options& o) { o.baud = 5.0; }));
}

}  // namespace
}  // namespace trueunit
