// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <cstdint>
#include <memory>

#include "core/report/snapshot.h"

namespace trueunit {

class Session;

// The window's beat: takes the latest snapshot thirty times a second and hands the same one to everybody, so that no
// two panels show different moments. Silent while nothing new was published. Window's thread.
class SnapshotClock : public QObject {
    Q_OBJECT

public:
    explicit SnapshotClock(const Session& session, QObject* parent = nullptr);

signals:
    void tick(const std::shared_ptr<const trueunit::Snapshot>& snapshot);

private:
    void beat();

    const Session& session_;
    QTimer timer_;
    std::shared_ptr<const Snapshot> last_;
};

}  // namespace trueunit
