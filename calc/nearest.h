/// What would have to give way so that something fits.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calc/job.h"
#include "calc/selection.h"

namespace calc {

/// Numbers are eased, and looked at, as far as to twice or half of what is asked.
inline constexpr double farthest_ease = 2;

/// Of a job that nothing fits: the number of the request that has to be eased by the least ratio,
/// each by itself, with the heads that then fit. The search was run again with the rounded value
/// and passed. None where no single number helps. Ties: the order of the levers.
std::optional<NearestMiss> nearest_miss(const Job& job, const Catalogue& catalogue,
                                        const Selection& selection);

/// The musts of service, each of which alone keeps everything out.
std::vector<std::string> musts_in_the_way(const Job& job, const Catalogue& catalogue);

}  // namespace calc
