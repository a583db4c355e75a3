// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <optional>
#include <string>

#include "app/device_list.h"
#include "core/acquire/sample_source.h"
#include "core/detect/line_model.h"
#include "core/options.h"
#include "core/report/latest_snapshot.h"
#include "core/report/limits.h"
#include "core/result.h"
#include "core/simulate/scenario.h"

namespace trueunit {

class AnalysisThread;
class PortAudioSource;
class RecordingSource;
class RecentInput;
class ScenarioSource;

enum class SourceKind { none, soundInput, recording, scenario };

// Owns what is being measured: source, ring and analysis thread. A source that cannot be opened is refused with one
// sentence and leaves the running one alone. Window's thread only; the window takes latest() on its own tick.
class Session : public QObject {
    Q_OBJECT

public:
    explicit Session(Options options = {}, Limits limits = {}, QObject* parent = nullptr);
    ~Session() override;

    // What to listen to. On success sourceChanged() is emitted and the measurement begins anew.
    Outcome listen(const SoundDevice& device, int channel = 0);
    Outcome playRecording(const std::string& path);
    Outcome playScenario(const std::string& path);
    Outcome playDemonstration();  // the embedded scenario
    void stop();                  // the last snapshot stays

    SourceKind sourceKind() const { return kind_; }
    SourceState sourceState() const;
    bool ended() const { return sourceState() == SourceState::finished; }
    std::string sourceDescription() const;                 // "Line in, left (48 kHz)"; empty without a source
    const std::string& origin() const { return origin_; }  // path or device of the last source, whichever side

    // Always a snapshot once a source was chosen; empty before.
    std::shared_ptr<const Snapshot> latest() const { return latest_.take(); }

    // The last ten minutes of the input, also after it has ended; nullptr before the first.
    std::shared_ptr<const RecentInput> recentInput() const { return recent_; }

    const Options& options() const { return options_; }
    const Limits& limits() const { return limits_; }
    // Refused, and nothing changed, when a value is out of range. What has ended and would have to be measured anew is
    // measured again at once, from its beginning and as fast as it can be.
    Outcome setOptions(const Options& options);
    void setLimits(const Limits& limits);

    // A recording that is played; nothing to do and nothing to tell with any other source.
    struct Playback {
        double played, seconds;  // of it, in seconds
        bool paused;
    };
    std::optional<Playback> playback() const;
    void setPaused(bool paused);
    void setFast(bool fast);  // as fast as it can be measured; holds for those to come as well
    bool fast() const { return fast_; }
    Outcome replay();  // from its beginning, everything read anew

    // The simulated eccentric; only a scenario has one.
    bool hasEccentric() const { return scenario_ != nullptr; }
    void turnEccentric(double biasPercent);
    double eccentricPercent() const;
    const Scenario* scenario() const { return scenarioPlayed_.get(); }  // title and story; nullptr without one

    // The program plays its own tone, or no longer does; is it heard in what is measured?
    void expectTone(bool playing);
    bool toneHeard() const;

    // Sound inputs. The list is made once; rescan makes it afresh and opens the one listened to again, also when it
    // was lost, and also when it was not back at the rescan before and nothing else was chosen since.
    Result<DeviceList> soundInputs();
    Result<DeviceList> rescanSoundInputs();
    std::optional<SoundDevice> soundInput() const;  // the one listened to
    int channels() const;                           // of the sound input: 1 or 2; 0 without one
    int channel() const;                            // heard: 0 = left
    void setChannel(int channel);

signals:
    void sourceChanged();                         // another source, or none
    void optionsChanged();                        // options or limits
    void sourceEnded(const QString& sentence);    // it has come to its end; said once
    void measuredAgain(const QString& sentence);  // it begins anew with other options
    void sourceLost(const QString& sentence);     // a sound input went away; said once
    void playbackMoved();                         // how far a recording is, whether it is paused
    void strongerChannel(int channel);            // the signal seems to be on this one; said once a source

private:
    struct Opened;
    Outcome swap(Opened opened);
    void measure();  // what source_ pushes, from now on
    Outcome measureAgain();
    Outcome play(Result<Scenario> scenario, std::string origin);
    void watch();  // every 200 ms: has the source ended, is the signal on the other side?

    Options options_;
    Limits limits_;
    LatestSnapshot latest_;
    SourceKind kind_ = SourceKind::none;
    std::string origin_;
    std::shared_ptr<const LineModel> learned_;  // of the recording that is played, ahead; empty: of no other source
    std::shared_ptr<RecentInput> recent_;
    std::unique_ptr<SampleRing> ring_;
    std::unique_ptr<SampleSource> source_;      // pushes into ring_
    std::unique_ptr<AnalysisThread> analysis_;  // pops ring_; ends before the source does
    PortAudioSource* soundInput_ = nullptr;     // source_ seen as what it is, or nullptr
    RecordingSource* recording_ = nullptr;
    bool fast_ = false;
    ScenarioSource* scenario_ = nullptr;
    std::unique_ptr<Scenario> scenarioPlayed_;
    bool endSaid_ = false;
    bool again_ = false;  // the source was measured once already, with other options
    bool channelSaid_ = false;
    bool tonePlays_ = false;
    std::optional<SoundDevice> missed_;  // an input that was not back at the last rescan, and its channel
    int missedChannel_ = 0;
    QTimer watchTimer_;
};

}  // namespace trueunit
