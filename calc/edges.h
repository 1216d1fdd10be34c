/// How much room there is around the chosen arrangement.
#pragma once

#include <vector>

#include "calc/job.h"
#include "calc/selection.h"

namespace calc {

/// Numbers are moved, and looked at, as far as to this many times or parts of what is asked.
inline constexpr double farthest_edge = 2;

/// For every number the request gives that a customer may turn to later (speed or throughput,
/// width, resolution, throw), moved the way that makes it harder to serve, throw both ways, all
/// else as it is: the last value that passes, of either kind of edge. `recommended` names the heads
/// that are chosen beyond it where they are others while the chosen ones still pass. Precondition:
/// something is chosen. Each value passes, and 1e-6 of it beyond does not.
std::vector<Edge> edges(const Job& job, const Catalogue& catalogue, const Selection& selection);

}  // namespace calc
