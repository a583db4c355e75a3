// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <mutex>
#include <utility>

#include "core/report/snapshot.h"

namespace trueunit {

// Hands the newest snapshot from the analysis thread to the window. Either may call at any time; there is no
// deadline on either side, so a short mutex does.
class LatestSnapshot {
public:
    void publish(Snapshot snapshot) {
        auto next = std::make_shared<const Snapshot>(std::move(snapshot));
        const std::scoped_lock lock(mutex_);
        latest_.swap(next);
    }
    std::shared_ptr<const Snapshot> take() const {  // empty until the first is published
        const std::scoped_lock lock(mutex_);
        return latest_;
    }

private:
    mutable std::mutex mutex_;
    std::shared_ptr<const Snapshot> latest_;
};

}  // namespace trueunit
