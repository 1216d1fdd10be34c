/// Pagination: which slice stands on which page, and at which height.
#pragma once

#include <vector>

#include "output/layout_context.h"

namespace output {

struct Placement {
  int slice = 0;
  int page = 0;  ///< from 0
  double y = 0;  ///< top of the slice [pt]
};

struct KeyPlacement {
  int line = 0;  ///< in Story::key_lines
  int page = 0;
  double y = 0;
};

struct Plan {
  std::vector<Placement> placements;  ///< in reading order; a repeated head stands twice
  std::vector<KeyPlacement> keys;
  int pages = 1;
  std::vector<bool> landscape;  ///< of each page
};

/// Where the text of a page begins and ends [pt].
struct PageRoom {
  double top = 0, bottom = 0, landscape_bottom = 0;
};

/// Sees that the last page before a break that is asked for, as before a page that is turned, and
/// the last of all have a quarter of a page on them. What is less is saved by closing up the room
/// between the blocks since the break before; where that does not do, what stands before goes to
/// the last page with it.
void fill_last_pages(Story& story, const PageRoom& room, double key_pitch);

/// Distributes the story over pages: slices that keep with the next
/// stand together, a page that begins within a table begins with its head, keys of a block that
/// would run into those of the next push them down, and a wide slice stands below all keys before
/// it. A slice higher than a page stands alone and overflows. A page is turned where its slices
/// are. No page is empty. Where a quarter of a page would be left empty, the room between its
/// blocks is closed up if that lets the next stand on it.
Plan make_plan(const Story& story, const PageRoom& room, double key_pitch);

}  // namespace output
