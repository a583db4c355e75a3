// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "core/report/snapshot.h"

namespace trueunit::test {

// Draws the snapshot a sender of known faults would give, for tests of what is shown. Nothing is measured: instants
// are placed by the imposed bias, end and scatter, and the readings state them. Seeded; the same calls give the same.
class SnapshotBuilder {
public:
    SnapshotBuilder& bias(double percent) { return bias_ = percent, *this; }
    SnapshotBuilder& end(double percent) { return end_ = percent, *this; }
    SnapshotBuilder& scatter(double rmsPercent) { return scatter_ = rmsPercent, *this; }
    SnapshotBuilder& characters(int count) { return characters_ = count, *this; }
    SnapshotBuilder& window(int count) { return window_ = count, *this; }
    SnapshotBuilder& text(std::string letters) { return text_ = std::move(letters), *this; }
    SnapshotBuilder& serial(std::uint64_t n) { return serial_ = n, *this; }
    SnapshotBuilder& framingErrorAt(int fromNewest) { return error_ = fromNewest, *this; }
    SnapshotBuilder& biasBefore(double percent, double secondsAgo) {  // the bias was this until then
        return steps_.emplace_back(secondsAgo, percent), *this;
    }
    SnapshotBuilder& withoutStop() { return stop_ = false, *this; }  // pauses: no period, no shaft, no degrees
    SnapshotBuilder& slowEdges(double seconds) { return rise_ = seconds, *this; }

    std::shared_ptr<const Snapshot> build() const;
    Snapshot value() const;

    static std::shared_ptr<const Snapshot> silent();  // samples, but no signal among them

    static constexpr double kUnit = 0.022;      // seconds; 45.45 baud
    static constexpr double kCharacter = 7.42;  // units
    static constexpr double kRate = 8000.0;     // samples per second of the drawn traces

private:
    struct Letter {
        unsigned code;
        std::string print;
    };
    Letter letterAt(int index) const;
    std::vector<TraceInstant> instantsOf(unsigned code, std::mt19937& random) const;
    std::shared_ptr<const CharacterTrace> trace(int index, std::mt19937& random) const;
    void fillReading(Snapshot& s) const;
    void fillInstants(Snapshot& s) const;
    void fillMargin(Snapshot& s) const;
    void fillNudges(Snapshot& s) const;
    void fillTrail(Snapshot& s, std::mt19937& random) const;

    double bias_ = 0.4, end_ = 0.1, scatter_ = 0.6, rise_ = 0.0004;
    int characters_ = 214, window_ = 32, error_ = -1;
    std::uint64_t serial_ = 1;
    std::string text_ = "RY";
    std::vector<std::pair<double, double>> steps_;
    bool stop_ = true;
};

}  // namespace trueunit::test
