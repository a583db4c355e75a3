// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/frame_keeper.h"

#include <QDateTime>

namespace trueunit {

void FrameKeeper::freeze(std::shared_ptr<const Snapshot> snapshot, const QString& inputDescription,
                         std::uint64_t character, const std::array<std::optional<double>, 2>& cursors) {
    if (!snapshot || frozen_) return;
    frame_ = {};
    frame_.snapshot = std::move(snapshot);
    frame_.characterNumber = character;
    frame_.cursors = cursors;
    if (character == 0 && !frame_.snapshot->traces.empty())
        frame_.characterNumber = frame_.snapshot->traces.back()->number;
    frame_.takenSecondsUtc = QDateTime::currentSecsSinceEpoch();
    frame_.inputDescription = inputDescription.toStdString();
    frozen_ = true;
    emit changed();
}

void FrameKeeper::release() {
    if (!frozen_) return;
    frozen_ = false;
    emit changed();
}

bool FrameKeeper::bringBack() {
    if (frozen_ || !frame_.snapshot) return false;
    frozen_ = true;
    emit changed();
    return true;
}

void FrameKeeper::restore(FrozenFrame frame) {
    if (!frozen_) frame_ = std::move(frame);
}

void FrameKeeper::dateFile(qint64 secondsUtc) {
    if (frozen_) frame_.fileSecondsUtc = secondsUtc;
}

void FrameKeeper::sign(const QString& machine, const QString& remarks) {
    if (!frozen_ || (frame_.machine == machine.toStdString() && frame_.remarks == remarks.toStdString())) return;
    frame_.machine = machine.toStdString();
    frame_.remarks = remarks.toStdString();
    emit changed();
}

void FrameKeeper::chooseCharacter(std::uint64_t number) {
    if (!frozen_ || number == frame_.characterNumber) return;
    frame_.characterNumber = number;
    emit changed();
}

void FrameKeeper::setCursors(const std::array<std::optional<double>, 2>& cursors) {
    if (!frozen_ || cursors == frame_.cursors) return;
    frame_.cursors = cursors;
    emit changed();
}

std::size_t FrameKeeper::addNote(double units, double level, const QString& text) {
    if (!frozen_ || text.trimmed().isEmpty()) return frame_.notes.size();
    frame_.notes.push_back({units, level, text.trimmed().toStdString()});
    emit changed();
    return frame_.notes.size() - 1;
}

void FrameKeeper::editNote(std::size_t index, const QString& text) {
    if (!frozen_ || index >= frame_.notes.size()) return;
    if (text.trimmed().isEmpty())
        frame_.notes.erase(frame_.notes.begin() + static_cast<std::ptrdiff_t>(index));
    else
        frame_.notes[index].text = text.trimmed().toStdString();
    emit changed();
}

}  // namespace trueunit
