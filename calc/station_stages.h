/// The stages after the heads as the document states them.
#pragma once

#include <vector>

#include "calc/station_sizing.h"

namespace calc {

/// Pinning, cure, drying and ventilation, as far as the inks ask for them, in that order.
std::vector<Stage> stages_of(const Job& job, const Sizing& sizing);

/// Greatest share [1] of the lamps' light that the substrate may scatter: the unfavourable end of
/// what is assumed, or the value in force where that is more.
double worst_stray_share(const Parameters& parameters);

}  // namespace calc
