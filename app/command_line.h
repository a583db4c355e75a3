// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <optional>
#include <string>
#include <utility>

#include "core/acquire/recording_writer.h"
#include "core/options.h"
#include "core/result.h"
#include "core/simulate/reference_signal.h"

namespace trueunit {

// What the person asked for on the command line; a plain value.
struct Command {
    enum class Kind { window, measure, report, render, clock, check, limits, send, inputs, picture, help, version };

    Kind kind = Kind::window;
    std::string file;     // recording or scenario
    std::string out;      // file to write
    std::string logbook;  // window: its file; empty: the usual place
    std::string machine;  // report: its owner's name of it
    bool json = false;
    Options options;
    QStringList given;              // names of the options that were given, their usual values too
    std::string card;               // name or file of a machine card; empty: none
    std::string limits;             // name of a set; empty: the one chosen in the window, or the usual one
    SenderSettings sender;          // send
    std::string output;             // send: name of the sound output; empty: the system's own
    std::string loopback;           // check: "INPUT,OUTPUT"; empty: in memory only
    double toneHz = 0.0;            // clock, check: of the reference tone
    std::optional<double> seconds;  // render: length; picture: of running before it is taken
    std::optional<double> rateHz;   // render: sample rate
    SampleFormat format = SampleFormat::float32;
    std::optional<std::pair<int, int>> size;  // picture: of the window, pixels
};

// The arguments without the program's name. Unusable ones give one sentence; nothing is printed.
Result<Command> parseCommandLine(const QStringList& arguments);

QStringList measuringOptions();  // names of those that every command that measures takes
std::string helpText();

}  // namespace trueunit
