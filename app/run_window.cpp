// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/run_window.h"

#include <QApplication>
#include <QIcon>
#include <QTimer>

#include "app/commands.h"
#include "app/limit_sets.h"
#include "app/main_window.h"
#include "app/session.h"
#include "app/settings.h"
#include "app/window_memory.h"
#include "app/window_picture.h"

namespace trueunit {

namespace {

// What the command line says counts for this run; what it does not say stays as it was.
Options merged(Options kept, const Command& command) {
    const Options& said = command.options;
    const auto take = [&](const char* name, auto member) {
        if (command.given.contains(QLatin1String(name))) kept.*member = said.*member;
    };
    take("baud", &Options::baud);
    take("stop", &Options::stopUnits);
    take("code", &Options::code);
    take("input", &Options::input);
    take("tones", &Options::tonesHz);
    take("window", &Options::windowCharacters);
    take("slice", &Options::slicePercent);
    take("clock-ppm", &Options::clockPpm);
    kept.expect = said.expect;
    if (said.card) kept.card = said.card;
    return kept;
}

// The input of last time, if it is there; without one the window begins with the demonstration.
void listenAsBefore(Session& session, const Settings& settings) {
    if (settings.deviceName.empty()) return;
    const Result<DeviceList> inputs = session.soundInputs();
    if (!inputs) return;
    if (const auto device = findDevice(*inputs, settings.deviceName, settings.deviceHostApi))
        (void)static_cast<bool>(session.listen(*device, settings.channel));
}

// A set of the last time that is not there any more gives way to the usual one.
Result<Limits> chosenLimits(const Command& command, const Settings& settings) {
    if (!command.limits.empty()) return limitSetNamed(command.limits);
    Result<Limits> kept = limitSetNamed(settings.limits);
    return kept ? kept : Limits{};
}

void keep(const Session& session) {
    Settings settings;
    settings.options = session.options();
    settings.limits = session.limits().name;
    if (const auto device = session.soundInput()) {
        settings.deviceName = device->name;
        settings.deviceHostApi = device->hostApi;
        settings.channel = session.channel();
    }
    saveSettings(settings);
}

Outcome playFile(Session& session, const std::string& file) {
    if (file.empty()) return session.playDemonstration();
    if (file.ends_with(".json")) return session.playScenario(file);
    return session.playRecording(file);
}

}  // namespace

int runWindow(const Command& given) {
    Command command = given;
    if (const Outcome taken = takeCard(command); !taken) return refuse(taken.error());
    const Settings settings = loadSettings();
    const Result<Limits> limits = chosenLimits(command, settings);
    if (!limits) return refuse(limits.error());
    Session session(merged(settings.options, command), *limits);
    if (command.file.empty())
        listenAsBefore(session, settings);
    else if (const Outcome playing = playFile(session, command.file); !playing)
        return refuse(playing.error());
    MainWindow window(session);
    QApplication::setWindowIcon(QIcon(":/icons/trueunit.png"));
    QApplication::setDesktopFileName("org.trueunit.Trueunit");
    restorePlace(window);
    window.startLog(QString::fromStdString(command.logbook));
    window.show();
    if (!firstStepsSeen() && session.hasEccentric())
        QTimer::singleShot(600, &window, [&window] { window.startFirstSteps(); });
    const int code = QApplication::exec();
    rememberPlace(window);
    keep(session);
    return code;
}

int runPicture(const Command& given) {
    Command command = given;
    if (const Outcome taken = takeCard(command); !taken) return refuse(taken.error());
    Options bench;
    bench.windowCharacters = 32;  // fills the panels
    const Result<Limits> limits = chosenLimits(command, {});
    if (!limits) return refuse(limits.error());
    Session session(merged(bench, command), *limits);
    if (const Outcome playing = playFile(session, command.file); !playing) return refuse(playing.error());
    PictureRequest request;
    request.file = QString::fromStdString(command.out);
    if (command.seconds) request.afterSeconds = *command.seconds;
    if (command.size) request.size = QSize(command.size->first, command.size->second);
    return takeWindowPicture(session, request);
}

}  // namespace trueunit
