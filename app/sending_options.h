// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <optional>
#include <string>

#include "core/result.h"

class QCommandLineParser;

namespace trueunit {

struct Command;

// The options of trueunit send: their names, their reading, their help.
QStringList sendingOptions();
void addSendingOptions(QCommandLineParser& parser);  // those that no other command has
std::optional<Error> readSending(const QCommandLineParser& parser, Command& command);
std::string sendingHelp();

}  // namespace trueunit
