// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

#include "core/detect/edge.h"
#include "core/frame/character.h"
#include "core/frame/character_framer.h"
#include "core/frame/framing_search.h"

namespace trueunit {

// Edges to characters, without being told the speed: searches the framing, confirms it when more of the tape has been
// seen, follows the unit, and lets go when it no longer holds. Character numbers go on through all of it.
// Analysis thread; the search costs some tens of milliseconds, following it next to nothing.
class FramingFollower {
public:
    enum class Event { none, found, takenBack, lost, refused };

    FramingFollower(int levels, double secondsPerSample) : levels_(levels), secondsPerSample_(secondsPerSample) {}

    // The speed as set by the person; one that is followed and cannot be that of such a machine is let go.
    void setNominal(std::optional<double> baud);
    void seenFrom(double seconds) { seenFrom_ = seconds; }  // since when there is a line, before its first edge

    // Takes edges; says what became of the framing. takenBack: characters handed out so far were wrong, or of another
    // sender; those of the framing that holds now come again.
    // refused: many edges and no framing; the signal is not start-stop.
    Event push(const std::vector<Edge>& edges);
    Event searchNow();  // at the end of a recording
    void advance(double knownToSeconds, std::vector<Character>& out);
    Event follow(const std::vector<const Character*>& recent);  // after characters came

    void reset();  // edges to come have nothing to do with those so far; character numbers go on

    bool mayYetFrame() const { return framed() || edges_.size() < kFewEdges; }  // too few yet to be refused
    bool onlyAlternates() const { return alternates_; }                         // what was searched last
    bool framed() const { return framer_.has_value(); }
    const Framing& framing() const { return framer_->framing(); }
    std::uint64_t since() const { return numberBase_; }  // number of the first character of this framing

private:
    static constexpr std::size_t kFewEdges = 48;

    std::optional<FramingFound> find(std::size_t skip) const;
    Event search();
    Event confirm();
    Event takeBack();

    int levels_;
    double secondsPerSample_;
    std::optional<double> nominalBaud_;
    std::optional<double> seenFrom_;  // seconds, while the first edge since then is the first of edges_
    std::optional<CharacterFramer> framer_;
    std::vector<Edge> edges_;  // while searching, and until confirmed
    bool confirmed_ = false;
    bool alternates_ = false;
    std::optional<Framing> believed_;  // the last one that was confirmed
    std::size_t searchedAt_ = 0;
    std::deque<bool> errors_;  // of the last characters
    std::uint64_t numberBase_ = 0;
    std::uint64_t nextNumber_ = 0;
};

}  // namespace trueunit
