// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include <QByteArray>

namespace trueunit {

// Text as it lies in the logbook: its length in four bytes, big end first, and a zlib stream (RFC 1950).
QByteArray squeezed(const std::string& text);
std::optional<std::string> unsqueezed(const QByteArray& bytes);  // empty: damaged

}  // namespace trueunit
