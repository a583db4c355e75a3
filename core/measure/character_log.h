// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <deque>
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
        entries_.push_back(std::move(c));
        if (entries_.size() > kMost) entries_.pop_front();
    }
    void clear() { entries_.clear(); }
    std::size_t size() const { return entries_.size(); }
    bool empty() const { return entries_.empty(); }
    const LoggedCharacter& back() const { return entries_.back(); }

    // The last n of them; 0 = all.
    std::vector<const LoggedCharacter*> last(std::size_t n) const {
        const std::size_t take = n == 0 ? entries_.size() : std::min(n, entries_.size());
        std::vector<const LoggedCharacter*> out;
        out.reserve(take);
        for (std::size_t i = entries_.size() - take; i < entries_.size(); ++i) out.push_back(&entries_[i]);
        return out;
    }

private:
    std::deque<LoggedCharacter> entries_;
};

}  // namespace trueunit
