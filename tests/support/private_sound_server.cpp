// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/private_sound_server.h"

#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <thread>

namespace trueunit::test {

namespace {

using namespace std::chrono_literals;

// A child with its output thrown away; ended with its parent's test only through its own process number.
pid_t start(const std::vector<std::string>& words) {
    std::vector<char*> arguments;
    arguments.reserve(words.size() + 1);
    for (const std::string& w : words) arguments.push_back(const_cast<char*>(w.c_str()));
    arguments.push_back(nullptr);
    const pid_t child = fork();
    if (child != 0) return child;
    const int nowhere = open("/dev/null", O_RDWR);
    dup2(nowhere, STDIN_FILENO);
    dup2(nowhere, STDOUT_FILENO);
    dup2(nowhere, STDERR_FILENO);
    execvp(arguments[0], arguments.data());
    _exit(127);
}

bool succeeds(const std::vector<std::string>& words) {
    int status = 0;
    return waitpid(start(words), &status, 0) > 0 && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

void end(pid_t& process) {
    if (process <= 0) return;
    ::kill(process, SIGKILL);  // wakes a frozen one, too
    waitpid(process, nullptr, 0);
    process = -1;
}

}  // namespace

PrivateSoundServer::PrivateSoundServer() {
    std::filesystem::create_directories(folder_.file("home"));
    std::filesystem::create_directories(folder_.file("xdg"));
    std::filesystem::permissions(folder_.file("xdg"), std::filesystem::perms::owner_all);
    setenv("HOME", folder_.file("home").c_str(), 1);
    setenv("XDG_RUNTIME_DIR", folder_.file("xdg").c_str(), 1);
    setenv("PULSE_RUNTIME_PATH", folder_.file("xdg/pulse").c_str(), 1);
    setenv("PULSE_STATE_PATH", folder_.file("state").c_str(), 1);
    setenv("PULSE_COOKIE", folder_.file("cookie").c_str(), 1);
    setenv("PULSE_SERVER", ("unix:" + folder_.file("xdg/pulse/native")).c_str(), 1);
    setenv("ALSA_CONFIG_PATH", folder_.file("asound.conf").c_str(), 1);
    writeAlsaConfiguration("");
    startServer(48000);
}

void PrivateSoundServer::startServer(int rateHz) {
    const std::string socket = folder_.file("xdg/pulse/native");
    ready_ = false;
    // norewinds: without it the first samples come more than a second late.
    server_ =
        start({"pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--use-pid-file=no", "--realtime=no",
               "--high-priority=no", "-L", "module-native-protocol-unix socket=" + socket + " auth-anonymous=1", "-L",
               "module-null-sink sink_name=bench rate=" + std::to_string(rateHz) +
                   " channels=1 format=float32le norewinds=1"});
    for (int tries = 0; tries < 100 && !ready_; ++tries) {
        std::this_thread::sleep_for(100ms);
        ready_ = succeeds({"pactl", "info"});
    }
}

PrivateSoundServer::~PrivateSoundServer() {
    end(player_);
    end(server_);
}

// "default" must be there, or the sound library's start-up fails an assertion.
void PrivateSoundServer::writeAlsaConfiguration(const std::string& further) const {
    std::ofstream(folder_.file("asound.conf"))
        << "pcm.benchmon { type pulse device \"bench.monitor\" hint { show on description \"bench monitor\" } }\n"
        << "pcm.!default { type pulse hint { show on description \"default\" } }\n"
        << "ctl.!default { type pulse }\n"
        << further;
}

void PrivateSoundServer::kill() { end(server_); }

void PrivateSoundServer::freeze() { ::kill(server_, SIGSTOP); }

void PrivateSoundServer::thaw() { ::kill(server_, SIGCONT); }

bool PrivateSoundServer::restart(int rateHz) {
    end(server_);
    startServer(rateHz);
    return ready_;
}

bool PrivateSoundServer::suspend(bool suspended) {
    return succeeds({"pactl", "suspend-sink", "bench", suspended ? "1" : "0"});
}

bool PrivateSoundServer::loadAnotherInput(const std::string& name) {
    writeAlsaConfiguration("pcm." + name + " { type pulse device \"" + name +
                           ".monitor\" hint { show on description \"another\" } }\n");
    return succeeds({"pactl", "load-module", "module-null-sink", "sink_name=" + name, "rate=48000", "channels=1",
                     "format=float32le", "norewinds=1"});
}

bool PrivateSoundServer::play(const std::string& path) {
    end(player_);
    player_ = start({"paplay", "--device=bench", path});
    return player_ > 0;
}

bool PrivateSoundServer::waitForPlayer() {
    int status = 0;
    const bool ended = waitpid(player_, &status, 0) == player_;
    player_ = -1;
    return ended && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

}  // namespace trueunit::test
