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
};

/// Distributes the story over pages between `top` and `bottom` [pt]: slices that keep with the next
/// stand together, a page that begins within a table begins with its head, keys of a block that
/// would run into those of the next push them down, and a wide slice stands below all keys before
/// it. A slice higher than a page stands alone and overflows. No page is empty.
Plan make_plan(const Story& story, double top, double bottom, double key_pitch);

}  // namespace output
