// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "core/report/frozen_frame.h"

namespace trueunit {

// Holds the frozen moment with what the person wrote on it. A frame let go is kept until the next freeze, so that a
// slip of the space bar loses no notes. Window's thread.
class FrameKeeper : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    bool frozen() const { return frozen_; }
    const FrozenFrame& frame() const { return frame_; }  // while frozen; else the one let go, if any

    // The snapshot with the character and cursors that the grid shows just now; 0 = the newest. Of nothing: nothing.
    void freeze(std::shared_ptr<const Snapshot> snapshot, const QString& inputDescription, std::uint64_t character = 0,
                const std::array<std::optional<double>, 2>& cursors = {});
    void release();
    bool bringBack();                 // false: there is none
    void restore(FrozenFrame frame);  // as the one let go; ignored while another is frozen

    // Only while frozen; other calls are ignored.
    void dateFile(qint64 secondsUtc);                           // it was measured from a recording of this date
    void sign(const QString& machine, const QString& remarks);  // whose frame it is, and what was done
    void chooseCharacter(std::uint64_t number);
    void setCursors(const std::array<std::optional<double>, 2>& cursors);
    std::size_t addNote(double units, double level, const QString& text);  // its place in the list
    void editNote(std::size_t index, const QString& text);                 // an empty text removes the note

signals:
    void changed();

private:
    FrozenFrame frame_;
    bool frozen_ = false;
};

}  // namespace trueunit
