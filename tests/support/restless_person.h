// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <memory>
#include <random>
#include <string>
#include <vector>

#include "app/session.h"
#include "core/acquire/recent_input.h"
#include "tests/support/temporary_folder.h"

namespace trueunit::test {

// A person who does whatever can be done with a session, in any order and at any time, and sees that nothing runs
// backwards and that what was frozen stays as it was. Listens to the inputs as well, where there are any.
class RestlessPerson {
public:
    RestlessPerson(unsigned seed, std::vector<SoundDevice> inputs);

    // So many things; TRUEUNIT_ROUNDS=1000 makes it a long trial, worth its time under the thread sanitizer.
    void keepBusy(int rounds);

    Session session;

private:
    struct Frozen {
        std::shared_ptr<const Snapshot> snapshot;
        std::string reading;
        std::vector<KeptStretch> sound;
        std::vector<float> samples;
    };

    void doSomething();
    void listen();
    Options otherOptions();
    Limits otherLimits();
    void freeze();
    void lookAround();

    const TemporaryFolder folder_;
    unsigned seed_;
    std::vector<SoundDevice> inputs_;
    std::mt19937 random_;
    std::deque<Frozen> frozen_;
    std::uint64_t serial_ = 0;
};

// The demonstration, as exact as at the first start.
void expectMeasuring(Session& session);

}  // namespace trueunit::test
