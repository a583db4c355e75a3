// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <future>
#include <thread>
#include <utility>

namespace trueunit {

// Runs work on a helper thread and waits for it no longer than the limit. False: it did not come back; the helper is
// left to itself, so work must own all that it touches.
template <class Work>
bool finishesWithin(std::chrono::milliseconds limit, Work work) {
    std::packaged_task<void()> task(std::move(work));
    std::future<void> finished = task.get_future();
    std::thread(std::move(task)).detach();
    return finished.wait_for(limit) == std::future_status::ready;
}

}  // namespace trueunit
