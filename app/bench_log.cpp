// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/bench_log.h"

#include <QDir>
#include <QFileInfo>
#include <cmath>

#include "app/check_record.h"
#include "app/frame_keeper.h"
#include "app/logbook/excerpt_flac.h"
#include "app/logbook/salvage.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"
#include "app/session.h"
#include "core/acquire/recent_input.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kExcerptSeconds = 30.0;  // 128 characters at 45 baud and some to begin with; about 3 MB as FLAC

// Up to the moment that is shown: what came while the hand went to the key was not measured for it.
QByteArray packed(const std::vector<KeptStretch>& stretches, double rateHz, double untilSeconds) {
    const auto end = static_cast<std::uint64_t>(std::llround(untilSeconds * rateHz));
    const std::vector<float> samples =
        lastSamples(stretches, end, static_cast<std::uint64_t>(std::llround(kExcerptSeconds * rateHz)));
    const Result<QByteArray> flac = excerptToFlac(samples, rateHz);
    return flac ? *flac : QByteArray();
}

std::shared_future<QByteArray> ready(QByteArray sound) {
    std::promise<QByteArray> promise;
    promise.set_value(std::move(sound));
    return promise.get_future().share();
}

void sign(FrozenFrame& frame, const QString& machine) {
    frame.machine = machine.toStdString();
    frame.selfCheck = lastCheckLine();
}

// Nothing that was typed before is lost, and nothing stands there twice. What belongs to another moment says to which.
std::string added(const std::string& fresh, const std::string& old) {
    if (fresh.find(old) != std::string::npos) return fresh;
    return old.find(fresh) != std::string::npos ? old : old + '\n' + fresh;
}

std::string timed(const FrozenFrame& frame) {
    const QDateTime taken = QDateTime::fromSecsSinceEpoch(frame.takenSecondsUtc);
    return taken.toString(QStringLiteral("HH:mm:ss: ")).toStdString() + frame.remarks;
}

}  // namespace

BenchLog::BenchLog(FrameKeeper& keeper, const Session& session, QObject* parent)
    : QObject(parent), keeper_(keeper), session_(session), path_(Store::defaultPath()) {
    connect(&keeper_, &FrameKeeper::changed, this, &BenchLog::follow);
}

BenchLog::~BenchLog() = default;

void BenchLog::setPath(const QString& path) {
    path_ = path.isEmpty() ? Store::defaultPath() : path;
    store_.reset();
    last_.reset();
}

std::optional<QString> BenchLog::guardAndRecover() {
    draft_ = std::make_unique<Draft>(QFileInfo(path_).dir().filePath(QStringLiteral("drafts")));
    auto left = draft_->takeOver();
    if (!left) return std::nullopt;
    const qint64 taken = left->kept.frame.takenSecondsUtc;
    followed_ = left->kept.frame.snapshot;
    uid_ = left->uid;
    sound_ = ready(left->kept.excerptFlac);
    kept_ = false;
    keeper_.restore(std::move(left->kept.frame));
    return tr("The frame frozen on %1 had not been kept when the program ended; Shift+Space brings it back.")
        .arg(momentWords(taken));
}

std::shared_future<QByteArray> BenchLog::soundOf(const Snapshot& snapshot) const {
    const auto input = session_.recentInput();
    if (!input) return ready({});
    return std::async(std::launch::async, [stretches = input->stretches(), rate = input->rateHz(),
                                           until = snapshot.seconds] { return packed(stretches, rate, until); })
        .share();
}

void BenchLog::begin() {
    followed_ = keeper_.frame().snapshot;
    uid_ = freshUid();
    sound_ = soundOf(*followed_);
}

void BenchLog::setBefore(const FrozenFrame& moment) {
    const bool frozen = moment.snapshot == followed_;  // one and the same in the logbook, too
    before_ = Before{{}, frozen ? sound_ : soundOf(*moment.snapshot)};
    before_->keeping.kept.frame = moment;
    before_->keeping.uid = frozen ? uid_ : freshUid();
}

void BenchLog::follow() {
    const FrozenFrame& frame = keeper_.frame();
    if (!frame.snapshot) return;
    kept_ = false;
    if (frame.snapshot != followed_) begin();
    if (!draft_) return;
    if (const Outcome saved = draft_->write(frame, uid_); !saved) emit troubled(told(saved.error().text));
}

Result<Store*> BenchLog::store() {
    if (store_ && !store_->readOnly()) return store_.get();
    std::optional<Mended> mended;
    auto opened = openOrMend(path_, mended);
    if (mended) mended_ = told(mended->sentence().toStdString());
    if (!opened) return opened.error();
    store_ = std::move(*opened);
    return store_.get();
}

std::optional<QString> BenchLog::takeMendedSentence() { return std::exchange(mended_, std::nullopt); }

Result<Kept> BenchLog::keep(const QString& machine, const QString& remarks) {
    if (!keeper_.frame().snapshot) return Error{"There is nothing to keep yet; the space bar freezes a frame."};
    const Result<Store*> store = this->store();
    if (!store) return store.error();
    Keeping keeping;
    keeping.kept = {keeper_.frame(), sound_.valid() ? sound_.get() : QByteArray()};
    sign(keeping.kept.frame, machine);
    const std::string waited = waitedFor(keeping.kept.frame);
    keeping.kept.frame.remarks = added(remarks.toStdString(), waited);
    keeping.uid = uid_;
    const auto taken = keeping.kept.frame.takenSecondsUtc;
    const bool with =
        before_ && before_->keeping.kept.frame.takenSecondsUtc <= taken;  // not an older frame, brought back
    if (with) {
        sign(before_->keeping.kept.frame, machine);
        before_->keeping.kept.excerptFlac = before_->sound.get();
        if (before_->keeping.uid != uid_) keeping.role = FrameRole::after;
    }
    const Result<Kept> done = keepFrame(**store, keeping, with ? &before_->keeping : nullptr);
    if (!done) return done;
    kept_ = true;
    if (with && done->after) before_->kept = true;
    last_ = Last{*done, uid_, keeper_.frame().machine, keeper_.frame().inputDescription, waited};
    waiting_.reset();
    if (draft_) draft_->clear();
    emit keptFrame();
    return done;
}

std::string BenchLog::waitedFor(const FrozenFrame& frame) const {
    if (waiting_ && waiting_->machine == frame.machine && waiting_->input == frame.inputDescription)
        return waiting_->remarks;
    return last_ && last_->uid == uid_ ? last_->waited : std::string();
}

Outcome BenchLog::carryRemarks() {
    const FrozenFrame& frame = keeper_.frame();
    if (frame.remarks.empty()) return done();
    waiting_ = Waiting{frame.machine, frame.inputDescription, timed(frame)};
    if (!last_ || last_->machine != frame.machine || last_->input != frame.inputDescription) return done();
    const Result<Store*> store = this->store();
    if (!store) return store.error();
    WriteTransaction transaction(**store);
    if (!transaction.begun()) return transaction.begun().error();
    const auto visit = visitGoingOn(**store, last_->kept.machine, frame.takenSecondsUtc);
    if (!visit) return visit.error();
    if (!*visit || (*visit)->id != last_->kept.visit) return done();
    Result<KeptFrame> kept = readFrame(**store, last_->kept.frame);
    if (!kept) return kept.error();
    kept->frame.remarks =
        last_->uid == uid_ ? added(frame.remarks, last_->waited) : added(timed(frame), kept->frame.remarks);
    if (Outcome written = rewriteFrame(**store, last_->kept.frame, kept->frame); !written) return written;
    if (Outcome committed = transaction.commit(); !committed) return committed;
    waiting_.reset();
    emit keptFrame();
    return done();
}

}  // namespace trueunit
