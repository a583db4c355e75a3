// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstddef>
#include <thread>
#include <vector>

namespace trueunit::bench {

// result[i] = work(i), on two threads; the order of the results is that of the numbers.
template <class F>
auto onTwoThreads(std::size_t n, F work) {
    std::vector<decltype(work(std::size_t{}))> results(n);
    std::atomic<std::size_t> next{0};
    const auto run = [&] {
        for (std::size_t i = next++; i < n; i = next++) results[i] = work(i);
    };
    std::jthread second(run);
    run();
    second.join();
    return results;
}

}  // namespace trueunit::bench
