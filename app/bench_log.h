// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <future>
#include <memory>
#include <optional>

#include "app/logbook/draft.h"
#include "app/logbook/keeping.h"

namespace trueunit {

class FrameKeeper;
class Session;

// Carries the frozen frame into the logbook: takes its sound when it is frozen, saves it against a crash with every
// change, keeps it on request. The logbook is opened when it is first wanted. Window's thread; packing the sound is
// done by a thread of its own.
class BenchLog : public QObject {
    Q_OBJECT

public:
    BenchLog(FrameKeeper& keeper, const Session& session, QObject* parent = nullptr);
    ~BenchLog() override;

    void setPath(const QString& path);  // of the logbook; empty: the usual place
    const QString& path() const { return path_; }

    // From now on frozen frames are saved against a crash. A frame that a killed program left comes back as the one
    // that was let go; the sentence says so.
    std::optional<QString> guardAndRecover();

    // A moment as it was before the repair: kept with whatever is kept next, until it is forgotten.
    void setBefore(const FrozenFrame& moment);
    void forgetBefore() { before_.reset(); }

    // The frozen frame under the machine's name; again: only its notes change.
    Result<Kept> keep(const QString& machine, const QString& remarks);
    // What was typed for a report is kept, though its own moment is not: with the frame that was kept last, of this
    // machine and input and in the visit that goes on; when there is none, with the one that is kept next.
    Outcome carryRemarks();
    bool beforeKept() const { return before_ && before_->kept; }     // with a moment after it
    bool kept() const { return kept_; }                              // the frame is in the logbook as it is now
    bool holdsFrame() const { return last_ && last_->uid == uid_; }  // as it was when it was kept

    Result<Store*> store();  // opened, made, brought forward or mended
    std::optional<QString> takeMendedSentence();

signals:
    void troubled(const QString& sentence);
    void keptFrame();

private:
    void follow();  // the frame has changed
    void begin();   // another frame
    std::shared_future<QByteArray> soundOf(const Snapshot& snapshot) const;

    struct Before {
        Keeping keeping;
        std::shared_future<QByteArray> sound;
        bool kept = false;
    };

    struct Last {  // the frame that was kept last
        Kept kept;
        QString uid;
        std::string machine, input;
        std::string waited;  // remarks of an earlier moment that came in with it
    };

    struct Waiting {
        std::string machine, input, remarks;
    };

    std::string waitedFor(const FrozenFrame& frame) const;

    FrameKeeper& keeper_;
    const Session& session_;
    QString path_;
    std::unique_ptr<Store> store_;
    std::unique_ptr<Draft> draft_;
    std::optional<QString> mended_;
    std::shared_ptr<const Snapshot> followed_;
    QString uid_;
    std::shared_future<QByteArray> sound_;  // of the frame, packed
    std::optional<Before> before_;
    std::optional<Last> last_;
    std::optional<Waiting> waiting_;
    bool kept_ = false;
};

}  // namespace trueunit
