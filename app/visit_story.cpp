// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "app/logbook/frame_search.h"
#include "app/visit_report.h"

namespace trueunit {

namespace {

const VisitFrame* marked(const std::vector<VisitFrame>& frames, FrameRole role) {
    const auto at =
        std::find_if(frames.begin(), frames.end(), [role](const VisitFrame& f) { return f.row.role == role; });
    return at == frames.end() ? nullptr : &*at;
}

}  // namespace

const VisitFrame* VisitStory::before() const {
    if (const VisitFrame* f = marked(frames, FrameRole::before)) return f;
    if (frames.empty() || frames.front().row.role == FrameRole::after) return nullptr;
    return &frames.front();
}

const VisitFrame* VisitStory::after() const {
    if (const VisitFrame* f = marked(frames, FrameRole::after)) return f;
    if (frames.size() < 2 || frames.back().row.role == FrameRole::before) return nullptr;
    return &frames.back();
}

Result<VisitStory> readVisitStory(const Store& store, qint64 id) {
    VisitStory story;
    const auto visit = findVisit(store, id);
    if (!visit) return visit.error();
    if (!*visit) return Error{"There is no visit " + std::to_string(id) + " in the logbook."};
    story.visit = **visit;
    const auto machine = findMachine(store, story.visit.machine);
    if (!machine) return machine.error();
    if (*machine) story.machine = **machine;
    const auto rows = framesOf(store, id);
    if (!rows) return rows.error();
    for (const FrameRow& row : *rows) {
        Result<KeptFrame> kept = readFrame(store, row.id);
        if (!kept) return kept.error();
        story.frames.push_back({row, std::move(kept->frame)});
    }
    return story;
}

}  // namespace trueunit
