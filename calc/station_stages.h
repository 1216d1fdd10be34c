/// The stages after the heads as the document states them.
#pragma once

#include <vector>

#include "calc/station_sizing.h"

namespace calc {

/// Pinning, cure, drying and ventilation, as far as the inks ask for them, in that order.
std::vector<Stage> stages_of(const Job& job, const Sizing& sizing);

}  // namespace calc
