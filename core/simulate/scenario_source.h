// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>
#include <string>
#include <thread>

#include "core/acquire/sample_source.h"
#include "core/simulate/scenario.h"

namespace trueunit {

inline constexpr const char* kSimulatedInput = ", simulated (";  // stands in the description of this source alone

// Plays a scenario into the ring at its own pace, as a sound input would; of a machine that has been at work for a
// while when it starts, so much comes at once. Push thread owned by this object. The operator's eccentric adds to the
// scenario's bias from the next character on; any thread may turn it.
class ScenarioSource : public SampleSource {
public:
    explicit ScenarioSource(Scenario scenario, double atWorkSeconds = 0.0);  // at most half of what the ring holds
    ~ScenarioSource() override;

    Outcome start(SampleRing& ring) override;
    void stop() override;
    SourceState state() const override;
    double rateHz() const override;
    std::string description() const override;

    void setFast(bool fast);  // from the next start on: as fast as the other end takes it, so that nothing is lost

    void turnEccentric(double biasPercent);  // relative turn, marking positive
    double eccentricPercent() const;         // sum of all turns so far

private:
    struct Player;
    std::unique_ptr<Player> player_;
};

}  // namespace trueunit
