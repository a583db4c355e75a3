// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/finding_ids.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

namespace trueunit {
namespace {

// What the rules write into a finding, read from their sources: "f.id = ..." and the two names of a rule for levels.
std::set<std::string> idsOfTheRules() {
    std::set<std::string> ids;
    const std::filesystem::path folder = std::filesystem::path(TRUEUNIT_SOURCE_FOLDER) / "core" / "report";
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        const std::string name = file.path().filename().string();
        if (!name.starts_with("find")) continue;
        std::ostringstream text;
        text << std::ifstream(file.path()).rdbuf();
        static const std::regex id(R"(\bid = ([^;]*);)"), literal(R"~("([a-z-]+)")~");
        const std::string source = text.str();
        for (std::sregex_iterator i(source.begin(), source.end(), id), end; i != end; ++i) {
            const std::string value = (*i)[1];
            for (std::sregex_iterator l(value.begin(), value.end(), literal); l != end; ++l) ids.insert((*l)[1]);
        }
    }
    return ids;
}

TEST(FindingIds, AreThoseThatTheRulesTell) {
    EXPECT_EQ(idsOfTheRules(), (std::set<std::string>(kFindingIds.begin(), kFindingIds.end())));
}

}  // namespace
}  // namespace trueunit
