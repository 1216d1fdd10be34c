/// Rows of the overview from issued JSON.
#pragma once

#include <string>

#include "output/json_parts.h"

namespace output {

/// What the overview needs of an issued JSON file, as one line of JSON, which the work data keep.
std::string overview_row_text(const Json& root);

}  // namespace output
