// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

class PageFlow;
struct VisitStory;

// The characters on the grid before and after the repair: on one page and of the same character where that can be, so
// that they are held against each other.
void drawPictures(PageFlow& page, const VisitStory& story);

}  // namespace trueunit
