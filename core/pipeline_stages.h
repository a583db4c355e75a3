// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/acquire/dropout_watch.h"
#include "core/acquire/level_meter.h"
#include "core/condition/line_conditioner.h"
#include "core/condition/line_finder.h"
#include "core/detect/edge_finder.h"
#include "core/detect/line_model.h"
#include "core/frame/code_table.h"
#include "core/frame/framing_follower.h"
#include "core/measure/character_log.h"
#include "core/pipeline.h"
#include "core/report/compose_reading.h"
#include "core/report/find_faults.h"
#include "core/report/picture.h"

namespace trueunit {

// The stages in the order of the signal, and what passes between them. Private to the pipeline: pipeline_stages.cpp is
// the way of the samples to characters, pipeline_reading.cpp what is read from these.
struct Pipeline::Stages {
    Stages(double rate, Options o, Limits l)
        : rateHz(rate),
          options(std::move(o)),
          limits(std::move(l)),
          code(findCode(options.code)),
          secondsPerSample(1.0 / (rate * (1.0 + 1e-6 * options.clockPpm))),
          dropouts(rate),
          finder(rate, options.input, options.tonesHz),
          framing(code->levels, secondsPerSample),
          decoder(*code),
          picture(options, code->levels, secondsPerSample) {
        framing.setNominal(options.baud);
    }

    double rateHz;
    Options options;
    Limits limits;
    const CodeTable* code;
    double secondsPerSample;

    // Intake
    std::vector<float> pending;  // less than a chunk
    std::uint64_t heard = 0;     // number of the next sample, gaps included
    std::optional<std::uint64_t> expected;
    std::deque<std::pair<std::uint64_t, std::int64_t>> stamps;  // sample number after a block, its stamp
    LevelMeter meter;
    DropoutWatch dropouts;
    long gaps = 0;
    long levelSteps = 0;  // so often the line was lost because its level fell
    std::uint64_t lost = 0;

    // The path
    LineFinder finder;
    std::optional<LineConditioner> conditioner;  // none while the line comes conditioned already
    Conditioned conditioned;                     // of one chunk
    std::optional<EdgeFinder> edges;             // once a line is found
    FramingFollower framing;
    double newestUnit = 0.0;  // seconds, of the framing of the newest characters: it may have been lost since
    Decoder decoder;
    CharacterLog log;
    Picture picture;
    bool drawn = true;         // false: the picture stays empty
    std::vector<Edge> placed;  // of one chunk
    std::shared_ptr<const LineModel> given;
    bool refused = false;  // there was a signal and it was no start-stop one

    std::optional<Decomposition> parts;       // of the last characters, for a running window
    std::optional<Decomposition> causeParts;  // of those that tell a cause, where the window has fewer
    std::optional<TapeStudy> tape;            // likewise
    std::optional<PlainTextStudy> plainText;  // likewise, where its text is not known
    std::optional<StandardSpeed> taken;       // the nominal speed of the last reading
    std::uint64_t tapeEnd = 0;                // number of the newest character in it,
    std::uint64_t partsEnd = 0;               // and in the parts
    std::shared_ptr<const FirmReading> firm;  // of the last reading, where its window is a short one
    bool wanders = false;                     // the speed, over longer than a window for adjusting
    std::size_t findingsOver = 0;             // characters that its findings rest on
    std::uint64_t partsDue = 0;               // number of the character that makes them due again
    std::uint64_t partsFirst = 0;             // number of the first character in them
    std::uint64_t partsSince = 0;             // number of the first character after the last nudge when they were made
    bool finished = false;                    // nothing more is to come: parts are of the whole window
    std::int64_t newestStamp = 0;
    std::uint64_t serial = 0;

    void intake(std::span<const float> samples);
    void chunk(std::span<const float> samples);
    void hear(std::span<const float> samples, std::uint64_t now);  // of a chunk, without dropouts
    bool chunkAhead(const ChunkAhead& ahead);
    void condition(std::span<const float> samples);
    void takeLine(const Conditioned& line);
    void finish(const Conditioned& last);
    void gap(std::uint64_t missing);
    void openEdges(std::uint64_t firstSample);
    void openLine(const FoundLine& line);
    void holdFor(double unitSeconds);  // how long bounce is waited out
    void closeLine();
    const FoundLine& line() const { return conditioner ? conditioner->line() : given->line; }  // while there are edges
    void takeEdges(const std::vector<Edge>& found, double knownTo);
    void heed(FramingFollower::Event event);
    void takeCharacters(const std::vector<Character>& characters);
    void keepStamp(const Character& c);
    InputReading inputReading() const;
    NoReading whyNoReading() const;
    bool stillListening() const;
    bool onOneClock(const std::vector<const LoggedCharacter*>& recent) const;
    void followParts(const WindowOfCharacters& asked, std::size_t seen);
    Reading reading(bool final);
    std::vector<const LoggedCharacter*> telling(const WindowOfCharacters& asked) const;
    std::vector<const LoggedCharacter*> lastSeconds(double seconds, std::size_t most) const;
    bool speedWanders() const;
    void studyCause(const WindowOfCharacters& asked);
    void firmUp(Reading& r, const WindowOfCharacters& asked);
    void takeNominal(const SpeedReading& speed);
    void studyTape(std::size_t seen, std::size_t window);
    void fillDue(std::vector<TapeCharacter>& characters) const;
    void describe(Snapshot& s) const;
};

}  // namespace trueunit
