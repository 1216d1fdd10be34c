/// The display list as text.
#pragma once

#include <string>
#include <string_view>

#include "output/display_list.h"

namespace output {

/// A line of JSON a page: stem, page (from 1), width, height [pt], boxes and items in their order,
/// with their places in points from the top left corner.
std::string frames_json(const DisplayList& list, std::string_view stem);

}  // namespace output
