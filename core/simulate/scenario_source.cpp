// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_source.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <mutex>

#include "core/simulate/scenario_signal.h"

namespace trueunit {

namespace {
constexpr std::chrono::milliseconds kLongestNap{20}, kFastNap{2};
}

struct ScenarioSource::Player {
    Player(Scenario s, double atWork) : scenario(std::move(s)), atWorkSeconds(atWork) {}

    void play(const std::stop_token& stop, SampleRing& ring);
    double takeTurns();

    const Scenario scenario;
    const double atWorkSeconds;
    std::atomic<bool> fast{false};
    std::atomic<SourceState> state{SourceState::idle};
    mutable std::mutex mutex;  // guards the two below: the window turns, the thread takes
    double turned = 0.0;       // sum of all turns
    double notYetTaken = 0.0;
    std::jthread thread;  // last: joined before the rest goes
};

double ScenarioSource::Player::takeTurns() {
    const std::scoped_lock lock(mutex);
    return std::exchange(notYetTaken, 0.0);
}

void ScenarioSource::Player::play(const std::stop_token& stop, SampleRing& ring) {
    using Clock = std::chrono::steady_clock;
    ScenarioSignal signal(scenario);
    const auto toDuration = [](double seconds) {
        return std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(seconds));
    };
    const bool hurries = fast;
    const Clock::time_point began = Clock::now() - toDuration(atWorkSeconds);
    while (!stop.stop_requested()) {
        if (const double turn = takeTurns(); turn != 0.0) signal.turnEccentric(turn);
        std::optional<SampleBlock> block = signal.nextBlock();
        if (!block) {
            state.store(SourceState::finished);
            return;
        }
        // A card hands a block over when its last sample has been taken.
        const double due = static_cast<double>(block->firstSample + SampleBlock::kSamples) / signal.samplesPerSecond();
        const auto until = began + toDuration(due);
        while (!stop.stop_requested() && hurries && ring.waitingBlocks() > SampleRing::kBlocks / 2)
            std::this_thread::sleep_for(kFastNap);
        while (!stop.stop_requested() && !hurries &&
               Clock::now() < until)  // behind a gap the wait is long, a stop is not
            std::this_thread::sleep_until(std::min(until, Clock::now() + kLongestNap));
        if (stop.stop_requested()) return;
        block->stampNs = stampNow();
        ring.tryPush(*block);  // a full ring counts the loss itself
    }
}

ScenarioSource::ScenarioSource(Scenario scenario, double atWorkSeconds) {
    const double holds = static_cast<double>(SampleRing::kBlocks * SampleBlock::kSamples) / scenario.card.rateHz;
    player_ = std::make_unique<Player>(std::move(scenario), std::min(atWorkSeconds, 0.5 * holds));
}

ScenarioSource::~ScenarioSource() { stop(); }

// From the beginning each time, with the eccentric where the operator left it.
Outcome ScenarioSource::start(SampleRing& ring) {
    stop();
    {
        const std::scoped_lock lock(player_->mutex);
        player_->notYetTaken = player_->turned;
    }
    player_->state.store(SourceState::running);
    player_->thread = std::jthread([p = player_.get(), &ring](const std::stop_token& stop) { p->play(stop, ring); });
    return done();
}

void ScenarioSource::stop() {
    if (player_->thread.joinable()) {
        player_->thread.request_stop();
        player_->thread.join();
    }
    player_->state.store(SourceState::idle);
}

SourceState ScenarioSource::state() const { return player_->state.load(); }

double ScenarioSource::rateHz() const { return player_->scenario.card.rateHz; }

std::string ScenarioSource::description() const {
    const long tenths = std::lround(rateHz() / 100.0);
    std::string kilohertz = std::to_string(tenths / 10);
    if (tenths % 10 != 0) kilohertz += "." + std::to_string(tenths % 10);
    return player_->scenario.machine.name + kSimulatedInput + kilohertz + " kHz)";
}

void ScenarioSource::setFast(bool fast) { player_->fast = fast; }

void ScenarioSource::turnEccentric(double biasPercent) {
    const std::scoped_lock lock(player_->mutex);
    player_->turned += biasPercent;
    player_->notYetTaken += biasPercent;
}

double ScenarioSource::eccentricPercent() const {
    const std::scoped_lock lock(player_->mutex);
    return player_->turned;
}

}  // namespace trueunit
