// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

#include "core/frame/character.h"

namespace trueunit {

// A received character with what it prints.
struct LoggedCharacter {
    Character character;
    std::string text;  // what it adds to a plain text
    std::string name;  // what it is called
};

// The characters of the input, oldest first, bounded: the memory of hours is that of one hour.
class CharacterLog {
public:
    static constexpr std::size_t kMost = 32768;  // over an hour at 367 operations a minute

    void add(LoggedCharacter c) {
        if (size_ == ring_.size() && size_ < kMost) ring_.resize(size_ < kFirst ? kFirst : kMost);
        newest_ = (newest_ + 1) % ring_.size();
        size_ = std::min(size_ + 1, kMost);
        ring_[newest_] = std::move(c);
    }
    void clear() { *this = {}; }
    std::size_t size() const { return size_; }
    bool empty() const { return size_ == 0; }
    const LoggedCharacter& back() const { return ring_[newest_]; }

    // The last n of them; 0 = all.
    std::vector<const LoggedCharacter*> last(std::size_t n) const {
        const std::size_t take = n == 0 ? size_ : std::min(n, size_);
        std::vector<const LoggedCharacter*> out(take);
        for (std::size_t i = 0; i < take; ++i) out[take - 1 - i] = &ring_[(newest_ + ring_.size() - i) % ring_.size()];
        return out;
    }

private:
    static constexpr std::size_t kFirst = 1024;  // some minutes; after it all is taken at once, not over hours

    std::vector<LoggedCharacter> ring_;
    std::size_t newest_ = SIZE_MAX;
    std::size_t size_ = 0;
};

}  // namespace trueunit
