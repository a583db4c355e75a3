// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_library.h"

#include <alsa/asoundlib.h>
#include <dlfcn.h>

#include <chrono>
#include <memory>

#include "app/quiet_stderr.h"
#include "app/time_limit.h"

#ifdef __SANITIZE_ADDRESS__
#include <sanitizer/lsan_interface.h>
#endif

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kOpenLimit{15000};  // a machine with many cards probes them all

void keepQuiet(const char*, int, const char*, int, const char*, ...) {}
void keepQuietJack(const char*) {}

// Probing prints about a hundred lines about devices that are not there; none of them helps the person.
void silenceDrivers() {
    snd_lib_error_set_handler(&keepQuiet);
    using Setter = void (*)(void (*)(const char*));
    for (const char* name : {"jack_set_error_function", "jack_set_info_function"})
        if (void* found = dlsym(RTLD_DEFAULT, name)) reinterpret_cast<Setter>(found)(&keepQuietJack);
}

// What the drivers that it loads and unloads keep to themselves is no leak of ours.
PaError initialize() {
#ifdef __SANITIZE_ADDRESS__
    const __lsan::ScopedDisabler theirs;
#endif
    return Pa_Initialize();
}

DeviceList listDevices() {
    DeviceList list;
    for (PaDeviceIndex i = 0; i < Pa_GetDeviceCount(); ++i) {
        const PaDeviceInfo* info = Pa_GetDeviceInfo(i);
        if (!info) continue;
        const PaHostApiInfo* api = Pa_GetHostApiInfo(info->hostApi);
        list.push_back({i, info->name, api ? api->name : "", info->maxInputChannels, info->maxOutputChannels,
                        info->defaultSampleRate, i == Pa_GetDefaultInputDevice(), i == Pa_GetDefaultOutputDevice()});
    }
    return list;
}

}  // namespace

SoundLibrary& SoundLibrary::instance() {
    static SoundLibrary library;
    return library;
}

SoundLibrary::~SoundLibrary() {
    if (state_ != State::open || openStreams_ > 0) return;  // closing would wait for a stream that hangs
    Pa_Terminate();
    snd_config_update_free_global();
}

Outcome SoundLibrary::open() {
    if (state_ == State::open) return done();
    if (state_ == State::silent) return Error{"The sound system does not answer; restart the program to try again."};
    silenceDrivers();
    const QuietStderr quiet;
    auto error = std::make_shared<PaError>(paNoError);
    if (!finishesWithin(kOpenLimit, [error] { *error = initialize(); })) {
        state_ = State::silent;
        return Error{"The sound system does not answer."};
    }
    if (*error != paNoError) return Error{"The sound system cannot be used: " + errorText(*error) + "."};
    state_ = State::open;
    devices_ = listDevices();
    return done();
}

Result<DeviceList> SoundLibrary::devices() {
    if (const Outcome opened = open(); !opened) return opened.error();
    return devices_;
}

Result<DeviceList> SoundLibrary::relist() {
    if (openStreams_ > 0) return Error{"The inputs cannot be listed afresh while one of them is in use."};
    if (state_ == State::open) {
        Pa_Terminate();
        snd_config_update_free_global();  // or the driver's configuration of the first time is used again
        state_ = State::closed;
    }
    return devices();
}

std::string SoundLibrary::errorText(PaError error) {
    if (error == paUnanticipatedHostError)
        if (const PaHostErrorInfo* info = Pa_GetLastHostErrorInfo(); info && info->errorText && *info->errorText)
            return info->errorText;
    return Pa_GetErrorText(error);
}

}  // namespace trueunit
