// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/layering.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace trueunit::test {
namespace {

namespace fs = std::filesystem;

struct Source {
    std::string path;  // from the project's top
    std::string text;
};

std::vector<Source> sourcesUnder(const char* folder) {
    const fs::path top = TRUEUNIT_SOURCE_FOLDER;
    std::vector<Source> sources;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(top / folder)) {
        const std::string end = entry.path().extension().string();
        if (end != ".h" && end != ".cpp") continue;
        std::ostringstream text;
        text << std::ifstream(entry.path()).rdbuf();
        sources.push_back({entry.path().lexically_relative(top).generic_string(), text.str()});
    }
    return sources;
}

std::size_t faultsOf(const char* path, const char* text) { return layeringFaults(path, text).size(); }

TEST(Layering, NoIncludeOfTheCoreOrTheWidgetsPointsDownstream) {
    std::size_t seen = 0;
    for (const char* folder : {"core", "widgets"})
        for (const Source& source : sourcesUnder(folder)) {
            ++seen;
            for (const std::string& fault : layeringFaults(source.path, source.text)) ADD_FAILURE() << fault;
        }
    EXPECT_GT(seen, 30U) << "the sources were not found";
}

TEST(LayeringChecker, FindsIncludesHoweverTheyAreSpaced) {
    const auto found = includesOf("#include <vector>\n  #  include\t\"core/units.h\"\nint x; // #include <no>\n");
    EXPECT_EQ(found, (std::vector<std::string>{"vector", "core/units.h"}));
}

TEST(LayeringChecker, AStageMayUseWhatLiesUpstreamAndItsOwn) {
    EXPECT_EQ(faultsOf("core/frame/made_up.cpp",
                       "#include \"core/frame/made_up.h\"\n#include <vector>\n#include \"core/detect/edge.h\"\n"
                       "#include \"core/acquire/sample_block.h\"\n#include \"core/units.h\"\n"),
              0U);
    EXPECT_EQ(faultsOf("core/pipeline.cpp", "#include \"core/report/reading.h\"\n"), 0U);
}

TEST(LayeringChecker, EveryStepDownstreamIsAFault) {
    const std::vector<std::string> flow = {"core/units.h",    "core/acquire/a.h", "core/condition/a.h",
                                           "core/detect/a.h", "core/frame/a.h",   "core/measure/a.h",
                                           "core/report/a.h", "core/pipeline.h",  "core/recording_run.h"};
    for (std::size_t from = 0; from < flow.size(); ++from)
        for (std::size_t to = 0; to < flow.size(); ++to)
            EXPECT_EQ(layeringFaults(flow[from], "#include \"" + flow[to] + "\"\n").size(), to > from ? 1U : 0U)
                << flow[from] << " includes " << flow[to];
}

TEST(LayeringChecker, OneBadIncludeAmongGoodOnesIsNamed) {
    const auto faults = layeringFaults("core/condition/hum.cpp",
                                       "// text\n#include \"core/units.h\"\n#include \"core/frame/character.h\"\n");
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_NE(faults[0].find("core/condition/hum.cpp"), std::string::npos);
    EXPECT_NE(faults[0].find("core/frame/character.h"), std::string::npos);
}

TEST(LayeringChecker, NothingInThePathMayKnowTheSimulation) {
    for (const char* path : {"core/acquire/a.cpp", "core/report/a.h", "core/pipeline.cpp", "core/recording_run.cpp"})
        EXPECT_EQ(faultsOf(path, "#include \"core/simulate/truth.h\"\n"), 1U) << path;
    EXPECT_EQ(faultsOf("core/simulate/a.cpp", "#include \"core/simulate/truth.h\"\n#include \"core/units.h\"\n"), 0U);
    EXPECT_EQ(faultsOf("core/simulate/a.cpp", "#include \"core/pipeline.h\"\n"), 1U);
}

TEST(LayeringChecker, TheCoreKnowsNeitherWindowNorSoundDevice) {
    for (const char* include : {"<QString>", "<QtCore/QString>", "<qcustomplot.h>", "<portaudio.h>",
                                "\"widgets/gauge.h\"", "\"app/session.h\"", "\"tests/support/plain_sender.h\""})
        EXPECT_EQ(faultsOf("core/report/a.cpp", (std::string("#include ") + include + "\n").c_str()), 1U) << include;
}

TEST(LayeringChecker, WidgetsKnowReportsAndTheirToolkitOnly) {
    EXPECT_EQ(faultsOf("widgets/a.cpp",
                       "#include \"widgets/a.h\"\n#include <QPainter>\n#include <qcustomplot.h>\n#include <cmath>\n"
                       "#include \"core/report/snapshot.h\"\n#include \"core/units.h\"\n#include \"core/options.h\"\n"),
              0U);
    for (const char* include : {"\"core/pipeline.h\"", "\"core/measure/timing.h\"", "\"core/frame/code_table.h\"",
                                "\"app/session.h\"", "<portaudio.h>", "<sndfile.h>", "<fftw3.h>"})
        EXPECT_EQ(faultsOf("widgets/a.cpp", (std::string("#include ") + include + "\n").c_str()), 1U) << include;
}

TEST(LayeringChecker, AShortcutBesideTheTreeIsAFault) {
    EXPECT_EQ(faultsOf("core/detect/a.cpp", "#include \"edge.h\"\n"), 1U);
    EXPECT_EQ(faultsOf("core/newcomer/a.cpp", "#include \"core/units.h\"\n"), 1U);
}

}  // namespace
}  // namespace trueunit::test
