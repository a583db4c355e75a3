// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <initializer_list>

#include "core/units.h"

namespace trueunit {

// A significant instant inside a character, nominally k units after its start.
struct Instant {
    int k = 0;  // 1 .. levels + 1; the last is the beginning of stop
    Condition to = Condition::mark;
    double seconds = 0.0;        // after the start instant
    double steadySeconds = 0.0;  // from then until a contact that bounced was steady; 0: it was at once
};

// The instants of one character in the order they came, kept in place: hours of characters ask for no memory one by
// one.
class Instants {
public:
    static constexpr std::size_t kMost = 9;  // of a code of eight levels; more can have no places of their own

    Instants() = default;
    Instants(std::initializer_list<Instant> instants) {
        for (const Instant& i : instants) push_back(i);
    }
    void push_back(const Instant& i) {  // what is beyond kMost is dropped
        if (size_ < kMost) places_[size_++] = i;
    }
    std::size_t size() const { return size_; }
    bool empty() const { return size_ == 0; }
    const Instant* begin() const { return places_.data(); }
    const Instant* end() const { return places_.data() + size_; }
    Instant* begin() { return places_.data(); }
    Instant* end() { return places_.data() + size_; }
    const Instant& back() const { return places_[size_ - 1]; }
    const Instant& operator[](std::size_t i) const { return places_[i]; }

private:
    std::array<Instant, kMost> places_{};
    std::size_t size_ = 0;
};

// One start-stop character as it came. Seconds on the corrected clock.
struct Character {
    std::uint64_t number = 0;  // counts since the input started
    unsigned code = 0;         // level 1 is bit 0
    bool stopPresent = true;   // false: framing error; its instants prove nothing
    bool regular = true;       // false: two instants claim one place
    bool afterGap = false;     // samples were lost, or the framing began anew, before it
    double start = 0.0;        // seconds since the input started
    int bounces = 0;
    double longestBounceSeconds = 0.0;
    Instants instants;

    bool measurable() const { return stopPresent && regular; }
};

}  // namespace trueunit
