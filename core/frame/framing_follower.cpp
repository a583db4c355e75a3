// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/framing_follower.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "core/frame/unit_fit.h"

namespace trueunit {

namespace {
constexpr std::size_t kSearchEveryEdges = 8;
constexpr std::size_t kSearchEdges = 96;   // the last ones are looked at; that many confirm
constexpr std::size_t kGiveUpEdges = 240;  // without framing: this is no start-stop signal
constexpr std::size_t kJudgedCharacters = 12;
constexpr std::size_t kFewestToFollow = 6;
constexpr double kLargestMove = 0.05;  // of the unit, between two characters

bool alike(const Framing& a, const Framing& b) {
    return a.inverted == b.inverted && std::abs(a.unitSeconds / b.unitSeconds - 1.0) < 0.03;
}
}  // namespace

FramingFollower::Event FramingFollower::push(const std::vector<Edge>& edges) {
    Event event = Event::none;
    for (const Edge& e : edges) {
        if (e.glitch) continue;
        if (framer_) framer_->push(e, secondsPerSample_);
        if (framer_ && confirmed_) continue;
        edges_.push_back(e);
        Event now = Event::none;
        if (!framer_ && edges_.size() >= searchedAt_ + kSearchEveryEdges) now = search();
        if (framer_ && edges_.size() >= kSearchEdges && !confirmed_) now = confirm();
        if (now != Event::none && event != Event::takenBack) event = now;
    }
    if (!framer_ && edges_.size() > kGiveUpEdges) {
        reset();
        return Event::refused;
    }
    return event;
}

void FramingFollower::reset() {
    framer_.reset();
    edges_.clear();
    seenFrom_.reset();
    searchedAt_ = 0;
    errors_.clear();
}

void FramingFollower::setNominal(std::optional<double> baud) {
    nominalBaud_ = baud;
    if (baud && framer_ && !nearNominal(1.0 / framer_->framing().unitSeconds, *baud)) reset();
}

FramingFollower::Event FramingFollower::searchNow() { return framer_ ? Event::none : search(); }

std::optional<FramingFound> FramingFollower::find(std::size_t skip) const {
    FramingClues clues{nominalBaud_, 0.0};
    if (seenFrom_ && skip == 0 && !edges_.empty())
        clues.restSeconds = edges_.front().time * secondsPerSample_ - *seenFrom_;
    return findFraming(std::span(edges_).subspan(skip), secondsPerSample_, levels_, clues);
}

FramingFollower::Event FramingFollower::search() {
    searchedAt_ = edges_.size();
    const std::size_t skip = edges_.size() > kSearchEdges ? edges_.size() - kSearchEdges : 0;
    alternates_ = onlyAlternate(std::span(edges_).subspan(skip));
    const auto found = find(skip);
    if (!found) return Event::none;
    framer_.emplace(levels_, found->framing);
    numberBase_ = nextNumber_;
    for (std::size_t i = skip + found->firstEdge; i < edges_.size(); ++i) framer_->push(edges_[i], secondsPerSample_);
    searchedAt_ = 0;
    errors_.clear();
    confirmed_ = edges_.size() >= kSearchEdges;
    if (!confirmed_) return Event::found;
    edges_.clear();
    seenFrom_.reset();
    const bool another = believed_ && !alike(*believed_, found->framing);
    believed_ = found->framing;
    return another ? Event::takenBack : Event::found;
}

// A second of a repeating text can be read in more than one way: with more of it, look again, and if the first reading
// was wrong, or the sender is another one than before, take back what was handed out and read it again.
FramingFollower::Event FramingFollower::confirm() {
    const auto found = find(0);
    if (!found || !alike(found->framing, framer_->framing()) || (believed_ && !alike(*believed_, found->framing)))
        return takeBack();
    confirmed_ = true;
    believed_ = found->framing;
    edges_.clear();
    seenFrom_.reset();
    return Event::none;
}

FramingFollower::Event FramingFollower::takeBack() {
    framer_.reset();
    errors_.clear();
    search();
    return Event::takenBack;
}

void FramingFollower::advance(double knownToSeconds, std::vector<Character>& out) {
    if (!framer_) return;
    const std::size_t before = out.size();
    framer_->advance(knownToSeconds, out);
    for (std::size_t i = before; i < out.size(); ++i) {
        out[i].number += numberBase_;
        nextNumber_ = out[i].number + 1;
        errors_.push_back(!out[i].measurable());
        if (errors_.size() > kJudgedCharacters) errors_.pop_front();
    }
}

FramingFollower::Event FramingFollower::follow(const std::vector<const Character*>& recent) {
    const auto bad = static_cast<std::size_t>(std::count(errors_.begin(), errors_.end(), true));
    if (errors_.size() == kJudgedCharacters && 2 * bad > kJudgedCharacters) {
        if (!confirmed_) return takeBack();
        reset();
        return Event::lost;
    }
    std::vector<const Character*> own;
    for (const Character* c : recent)
        if (c->number >= numberBase_) own.push_back(c);
    const auto fit = fitUnit(own);
    if (!fit || fit->characters < kFewestToFollow || !fit->toMark) return Event::none;
    if (std::abs(fit->unit.value / framer_->framing().unitSeconds - 1.0) < kLargestMove)
        framer_->follow(fit->unit.value, fit->toMark->value);
    return Event::none;
}

}  // namespace trueunit
