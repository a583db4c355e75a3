// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <span>

#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/snapshot.h"
#include "core/result.h"

namespace trueunit {

// The sound of a frame as FLAC, 24 bits, one channel: lossless for cards of 16 bits too, and no larger, since the
// encoder leaves out bits that are never used. Through a temporary file, which libsndfile asks for.
Result<QByteArray> excerptToFlac(std::span<const float> samples, double rateHz);

// Measures it afresh with this program. Takes some tenths of a second; any thread.
Result<Snapshot> measureExcerpt(const QByteArray& flac, const Options& options, const Limits& limits);

}  // namespace trueunit
