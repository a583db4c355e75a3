// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <cstdio>

#include "app/appearance.h"
#include "app/check_command.h"
#include "app/commands.h"
#include "app/limits_command.h"
#include "app/log_command.h"
#include "app/run_window.h"
#include "app/send_command.h"
#include "app/version.h"

using namespace trueunit;

namespace {

bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

// Draws, but shows nothing; nor are there messages of missing desktops.
void drawWithoutDisplay() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
}

int runWithoutWindow(const Command& command) {
    switch (command.kind) {
        case Command::Kind::measure:
            return runMeasure(command);
        case Command::Kind::render:
            return runRender(command);
        case Command::Kind::clock:
            return runClock(command);
        case Command::Kind::check:
            return runCheck(command);
        case Command::Kind::send:
            return runSend(command);
        case Command::Kind::limits:
            return runLimits();
        case Command::Kind::inputs:
            return runInputs();
        case Command::Kind::help:
            std::fputs(helpText().c_str(), stdout);
            return 0;
        case Command::Kind::version:
            std::printf("trueunit %s\n", kVersion);
            return 0;
        default:
            return 2;
    }
}

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication::setApplicationName("Trueunit");
    QCoreApplication::setOrganizationName("Trueunit");
    QCoreApplication::setApplicationVersion(kVersion);
    QStringList arguments;
    speakPlainly();
    for (int i = 1; i < argc; ++i) arguments << QString::fromLocal8Bit(argv[i]);

    if (arguments.value(0) == QLatin1String("log")) {
        arguments.removeFirst();
        if (!logNeedsFonts(arguments)) {
            const QCoreApplication application(argc, argv);
            return runLog(arguments);
        }
        drawWithoutDisplay();
        const QApplication application(argc, argv);
        return runLog(arguments);
    }
    const Result<Command> command = parseCommandLine(arguments);
    if (!command) return refuse(command.error());
    if (command->kind == Command::Kind::report || command->kind == Command::Kind::picture) {
        drawWithoutDisplay();
        const QApplication application(argc, argv);
        return command->kind == Command::Kind::report ? runReport(*command) : runPicture(*command);
    }
    if (command->kind != Command::Kind::window) {
        const QCoreApplication application(argc, argv);
        return runWithoutWindow(*command);
    }
    if (!hasDisplay())
        return refuse(Error{"There is no display for the window; the commands in trueunit --help need none."});
    const Appearance appearance = loadAppearance();
    takeSize(appearance);
    QApplication application(argc, argv);
    takeLanguage(application, appearance.language);
    takeGround(appearance);
    return runWindow(*command);
}
