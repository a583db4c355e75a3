// SPDX-License-Identifier: GPL-3.0-or-later
// The program on a long recording, as a person at a terminal and as a script would run it.
#include "app/progress_line.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

#include "core/acquire/recording_writer.h"
#include "tests/support/temporary_folder.h"

using trueunit::progressWords;

namespace {

// Three hours of hum at 8 kHz: long enough to be caught at it.
std::string longRecording(const trueunit::test::TemporaryFolder& folder) {
    std::string path = folder.file("long.wav");
    auto writer = trueunit::RecordingWriter::create(path, 8000.0, 1, trueunit::SampleFormat::pcm16);
    std::vector<float> second(8000);
    for (std::size_t i = 0; i < second.size(); ++i) second[i] = i / 80 % 2 == 0 ? 0.3F : -0.3F;
    for (int i = 0; i < 3 * 3600; ++i) EXPECT_TRUE(writer->write(second));
    EXPECT_TRUE(writer->finish());
    return path;
}

struct Started {
    pid_t child;
    int err;  // what it writes to standard error
};

// Runs "trueunit measure FILE" with standard error at a terminal, or in a pipe.
Started measure(const std::string& path, bool terminal) {
    int reads = -1, writes = -1;
    if (terminal) {
        reads = posix_openpt(O_RDWR | O_NOCTTY);
        EXPECT_TRUE(reads >= 0 && grantpt(reads) == 0 && unlockpt(reads) == 0);
        writes = open(ptsname(reads), O_RDWR | O_NOCTTY);
    } else {
        int ends[2];
        EXPECT_EQ(pipe(ends), 0);
        reads = ends[0];
        writes = ends[1];
    }
    const pid_t child = fork();
    if (child == 0) {
        dup2(writes, STDERR_FILENO);
        dup2(open("/dev/null", O_WRONLY), STDOUT_FILENO);
        execl(TRUEUNIT_PROGRAM, TRUEUNIT_PROGRAM, "measure", path.c_str(), nullptr);
        _exit(127);
    }
    close(writes);
    return {child, reads};
}

// What comes until the wanted words have come, or nothing does for that long.
std::string readUntil(int from, const std::string& wanted, int ms) {
    std::string all;
    char part[512];
    pollfd ready{from, POLLIN, 0};
    while (all.find(wanted) == std::string::npos && poll(&ready, 1, ms) > 0) {
        const ssize_t got = read(from, part, sizeof part);
        if (got <= 0) break;
        all.append(part, static_cast<std::size_t>(got));
    }
    return all;
}

int exitCodeOf(pid_t child) {
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

}  // namespace

TEST(ProgressLine, TellsThePartThatIsDoneAndTheTimeLeft) {
    EXPECT_EQ(progressWords(0.0, 3.0), "  0 %");
    EXPECT_EQ(progressWords(0.25, 25.0), " 25 %, 1:15 left");
    EXPECT_EQ(progressWords(2.0, 25.0), "100 %, 0:00 left");
}

TEST(ProgressLine, ATerminalSeesItAndControlCStopsTheProgramAtOnceWithOneSentence) {
    const trueunit::test::TemporaryFolder folder;
    const Started program = measure(longRecording(folder), true);
    const std::string line = readUntil(program.err, " left", 20000);
    EXPECT_NE(line.find("measuring long.wav"), std::string::npos) << line;
    EXPECT_EQ(line.find('\n'), std::string::npos) << line;
    kill(program.child, SIGINT);
    EXPECT_EQ(exitCodeOf(program.child), 130);  // not what it ends with when it has measured all
    const std::string said = readUntil(program.err, "written.", 1000);
    EXPECT_NE(said.find("trueunit: Stopped; nothing was written."), std::string::npos) << said;
    close(program.err);
}

TEST(ProgressLine, AScriptSeesNoneAndIsStoppedAsWell) {
    const trueunit::test::TemporaryFolder folder;
    const Started program = measure(longRecording(folder), false);
    EXPECT_EQ(readUntil(program.err, "left", 1500), "");
    kill(program.child, SIGINT);
    EXPECT_EQ(exitCodeOf(program.child), 130);
    EXPECT_EQ(readUntil(program.err, "\n", 1000), "trueunit: Stopped; nothing was written.\n");
    close(program.err);
}
