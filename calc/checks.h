/// Checks before anyone commits, each with its acceptance figure from the calculation.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// The checks of a chosen arrangement, in the order of check_codes(); none without groups.
std::vector<Check> checks(const Job& job, const Catalogue& catalogue,
                          const std::vector<Group>& groups, const Station& station);

}  // namespace calc
