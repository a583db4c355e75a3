// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipeline_stages.h"

#include <algorithm>

#include "core/condition/chunk_ahead.h"

namespace trueunit {

namespace {
constexpr double kHoldUnits = 0.3;  // bounce must be over within this part of a unit
constexpr double kLongestHoldSeconds = 0.006;
}  // namespace

void Pipeline::Stages::intake(std::span<const float> samples) {
    while (!samples.empty()) {
        if (pending.empty() && samples.size() >= kChunk) {  // the common case copies nothing
            chunk(samples.first(kChunk));
            samples = samples.subspan(kChunk);
            continue;
        }
        const std::size_t take = std::min(kChunk - pending.size(), samples.size());
        pending.insert(pending.end(), samples.begin(), samples.begin() + static_cast<std::ptrdiff_t>(take));
        samples = samples.subspan(take);
        if (pending.size() == kChunk) chunk(std::exchange(pending, {}));
    }
}

void Pipeline::Stages::chunk(std::span<const float> samples) {
    meter.push(samples, rateHz);
    const std::uint64_t now = std::exchange(heard, heard + samples.size());
    const auto dropout = dropouts.push(samples, meter.recent());
    if (!dropout) return hear(samples, now);
    hear(samples.first(dropout->begin), now);
    gaps += dropout->begins ? 1 : 0;
    lost += dropout->end - dropout->begin;
    closeLine();
    hear(samples.subspan(dropout->end), now + dropout->end);
}

void Pipeline::Stages::hear(std::span<const float> samples, std::uint64_t now) {
    if (samples.empty()) return;
    if (edges) {
        condition(samples);
    } else if (finder.push(samples, now, meter.hearing() && !given)) {
        openLine(finder.found());
    } else if (given) {
        openLine(given->line);
    }
}

// False: the line has closed.
bool Pipeline::Stages::chunkAhead(const ChunkAhead& ahead) {
    if (ahead.dropout) {
        dropouts = *ahead.dropout;
        closeLine();
        return false;
    }
    meter = ahead.meter;
    heard = meter.count();
    if (!edges) openEdges(0);
    takeLine(ahead.line);
    return edges.has_value();
}

void Pipeline::Stages::condition(std::span<const float> samples) {
    conditioned.clear();
    conditioner->push(samples, conditioned);
    takeLine(conditioned);
}

void Pipeline::Stages::takeLine(const Conditioned& line) {
    placed.clear();
    edges->push(line, placed);
    takeEdges(placed, edges->knownTo());
    if (!line.stale || !edges) return;
    ++levelSteps;
    closeLine();
}

void Pipeline::Stages::openEdges(std::uint64_t firstSample) {
    edges.emplace(rateHz, 0.01 * options.slicePercent, firstSample);
    if (given) edges->setShapes(given->shapes);
    framing.seenFrom(static_cast<double>(firstSample) * secondsPerSample);
    if (given && given->unitSeconds > 0.0)
        holdFor(given->unitSeconds);
    else if (options.baud)
        holdFor(1.0 / *options.baud);
}

void Pipeline::Stages::holdFor(double unitSeconds) {
    edges->setHold(rateHz * std::min(kLongestHoldSeconds, kHoldUnits * unitSeconds));
}

void Pipeline::Stages::openLine(const FoundLine& line) {
    openEdges(finder.heldFrom());
    if (!line.tones) meter.setRails(line.fit.rails);
    startOn(dropouts, line);
    conditioner.emplace(line, rateHz, finder.heldFrom());
    if (given) conditioner->keepCoupling();
    const std::vector<float> held = finder.release();
    for (std::size_t i = 0; i < held.size() && edges; i += kChunk)
        condition(std::span(held).subspan(i, std::min(kChunk, held.size() - i)));
}

void Pipeline::Stages::closeLine() {
    conditioner.reset();
    edges.reset();
    given.reset();
    framing.reset();
    finder.release();
}

void Pipeline::Stages::takeEdges(const std::vector<Edge>& found, double knownTo) {
    heed(framing.push(found));
    if (!edges) return;
    std::vector<Character> characters;
    framing.advance(knownTo * secondsPerSample, characters);
    takeCharacters(characters);
}

void Pipeline::Stages::heed(FramingFollower::Event event) {
    using Event = FramingFollower::Event;
    if (event == Event::none) return;
    if (event == Event::refused) {
        refused = true;
        closeLine();
        return;
    }
    if (event == Event::takenBack) {
        log.clear();
        picture.clear();
        parts.reset();
        tape.reset();
        partsDue = 0;
    }
    decoder.reset();
    if (!framing.framed()) return;
    refused = false;
    edges->setMarkIsLow(framing.framing().inverted);
    holdFor(framing.framing().unitSeconds);
}

void Pipeline::Stages::takeCharacters(const std::vector<Character>& characters) {
    for (const Character& c : characters) {
        LoggedCharacter entry;
        entry.name = decoder.name(c.code);
        entry.text = decoder.text(c.code);
        entry.character = c;
        log.add(std::move(entry));
        if (drawn) picture.add(log.back(), log, framing.framing(), edges->timer());
        keepStamp(c);
    }
    if (characters.empty()) return;
    newestUnit = framing.framing().unitSeconds;
    std::vector<const Character*> recent;
    for (const LoggedCharacter* c : log.last(kUnitCharacters)) recent.push_back(&c->character);
    heed(framing.follow(recent));
}

void Pipeline::Stages::keepStamp(const Character& c) {
    const double ended = (c.start + (code->levels + 1) * framing.framing().unitSeconds) / secondsPerSample;
    while (stamps.size() > 1 && static_cast<double>(stamps.front().first) < ended) stamps.pop_front();
    if (!stamps.empty()) newestStamp = stamps.front().second;
}

void Pipeline::Stages::finish(const Conditioned& last) {
    finished = true;
    if (!edges && meter.everHeard() && finder.lookNow()) openLine(finder.found());
    if (!edges) return;
    conditioned.clear();
    if (conditioner) conditioner->finish(conditioned);
    placed.clear();
    edges->finish(conditioner ? conditioned : last, placed);
    const double end = static_cast<double>(edges->timer().end());  // what is cut off is no character
    takeEdges(placed, end);
    if (edges && !framing.framed()) heed(framing.searchNow());
    if (edges) takeEdges({}, end);
}

// Nothing is carried over the missing samples: the line is looked for again, the framing begins anew.
void Pipeline::Stages::gap(std::uint64_t missing) {
    ++gaps;
    lost += missing;
    pending.clear();
    heard = *expected + missing;
    closeLine();
    meter.forgetRecent();
}

}  // namespace trueunit
