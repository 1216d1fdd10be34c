/// Rows of the catalogue that a chosen arrangement names.
#pragma once

#include <vector>

#include "calc/specification.h"

namespace calc {

/// The head and its mode. Throw std::logic_error when the catalogue has none of that name.
const Head& trace_head(const Catalogue& catalogue, const Group& group);
const HeadMode& trace_mode(const Catalogue& catalogue, const Group& group);

/// Offsets of the mode's rows, one row at 0 where none are stated.
std::vector<double> trace_offsets(const HeadMode& mode);

}  // namespace calc
