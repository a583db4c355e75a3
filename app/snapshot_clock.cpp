// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/snapshot_clock.h"

#include "app/session.h"

namespace trueunit {

namespace {
constexpr int kBeatMs = 33;
}

SnapshotClock::SnapshotClock(const Session& session, QObject* parent) : QObject(parent), session_(session) {
    timer_.setTimerType(Qt::PreciseTimer);
    connect(&timer_, &QTimer::timeout, this, &SnapshotClock::beat);
    timer_.start(kBeatMs);
}

void SnapshotClock::beat() {
    auto latest = session_.latest();
    if (!latest || latest == last_) return;
    last_ = std::move(latest);
    emit tick(last_);
}

}  // namespace trueunit
