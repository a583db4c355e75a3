// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/keep_recording.h"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/pipeline.h"
#include "core/recording_run.h"
#include "core/report/reading_json.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

Scenario sender() {
    Scenario s;
    s.text.send = "RYRY THE LAMP IS LIT ";
    s.faults.biasPercent = 6.0;
    s.faults.scatterPercent = 0.5;
    s.card.couplingHz = {8.0};
    s.card.snrDb = 45.0;
    s.seconds = 12.0;
    return s;
}

std::string contentOf(const std::string& path) {
    std::ostringstream out;
    out << std::ifstream(path).rdbuf();
    return out.str();
}

std::size_t filesIn(const std::string& folder) {
    std::size_t count = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder)) ++count;
    return count;
}

// No file may grow beyond so many bytes, as on a full disk; the writer gets an error, not a signal.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit now{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &now);
    }
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

private:
    rlimit before_{};
    void (*handler_)(int);
};

class KeepRecording : public testing::Test {
protected:
    void hear(const Scenario& scenario) {
        ScenarioSignal signal(scenario);
        while (const auto block = signal.nextBlock()) {
            recent_.push(*block);
            pipeline_.push(*block);
        }
    }
    std::string file(const std::string& name) const { return folder_.file(name); }

    const TemporaryFolder folder_;
    RecentInput recent_{48000.0};
    Pipeline pipeline_{48000.0, Options{}, Limits{}};
};

}  // namespace

TEST_F(KeepRecording, ASavedOneReopensWithTheSameReadings) {
    hear(sender());
    for (const char* name : {"a.flac", "b.wav"}) {
        const Result<KeptRecording> kept = keepRecording(recent_, file(name), Options{}, Limits{});
        ASSERT_TRUE(kept) << kept.error().text;
        Result<Recording> back = Recording::open(file(name));
        ASSERT_TRUE(back);
        const Reading again = measureRecording(*back, Options{}, Limits{}).reading;
        EXPECT_EQ(readingJson(again) + "\n", contentOf(kept->readingFile)) << name;
        const Measured live = *pipeline_.reading().distortion.biasPercent;
        EXPECT_NEAR(again.distortion.biasPercent->value, live.value, live.uncertainty);
        EXPECT_NEAR(again.distortion.biasPercent->value, 6.0, 0.3);
    }
    EXPECT_EQ(contentOf(file("a.reading.json")), contentOf(file("b.reading.json")));
}

TEST_F(KeepRecording, AGapPartsTheRecordingIntoFilesOfWhichTheNewestHasTheName) {
    Scenario s = sender();
    s.card.gaps = {{4.0, 5000}};
    hear(s);
    const Result<KeptRecording> kept = keepRecording(recent_, file("a.flac"), Options{}, Limits{});
    ASSERT_TRUE(kept) << kept.error().text;
    ASSERT_EQ(kept->soundFiles.size(), 2U);
    EXPECT_EQ(kept->soundFiles[0], file("a.flac"));
    EXPECT_EQ(kept->soundFiles[1], file("a, before 1.flac"));
    EXPECT_NEAR(Recording::open(file("a, before 1.flac"))->seconds(), 4.0, 0.01);
    EXPECT_NEAR(Recording::open(file("a.flac"))->seconds(), 12.0 - 4.0 - 5000.0 / 48000.0, 0.02);
}

TEST_F(KeepRecording, AFullDiskIsOneSentenceAndNothingIsLost) {
    hear(sender());
    std::ofstream(file("a.flac")) << "what was there before";
    std::ofstream(file("a.wav")) << "what was there before";
    for (const char* name : {"a.flac", "a.wav"}) {
        const FullDisk full(100000);
        const Result<KeptRecording> kept = keepRecording(recent_, file(name), Options{}, Limits{});
        ASSERT_FALSE(kept) << name;
        EXPECT_EQ(kept.error().text.find('\n'), std::string::npos);
        EXPECT_TRUE(kept.error().text.ends_with("choose another place or free some space.")) << kept.error().text;
        EXPECT_EQ(contentOf(file(name)), "what was there before");
    }
    EXPECT_EQ(filesIn(folder_.file("")), 2U);  // nothing half written is left
    EXPECT_GT(recent_.seconds(), 11.9);
    EXPECT_TRUE(keepRecording(recent_, file("a.flac"), Options{}, Limits{}));
}

TEST_F(KeepRecording, WithoutInputOrAFolderThereIsASentence) {
    EXPECT_EQ(keepRecording(recent_, file("a.flac"), Options{}, Limits{}).error().text,
              "There is nothing to keep yet; choose an input first.");
    hear(sender());
    EXPECT_FALSE(keepRecording(recent_, file("no folder/a.flac"), Options{}, Limits{}));
    EXPECT_FALSE(keepRecording(recent_, file("a.mp9"), Options{}, Limits{}));
}
