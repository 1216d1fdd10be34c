/// Conditions that fire, vapour and contact with food put on a design, whichever heads it has.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// What has to be settled before anything is ordered: zones where an ink may burn
/// (`zone_unclassified`), the drying of solvent ink, which is not reckoned (`solvent_drying`), the
/// share of vapour an enclosure captures, which is assumed (`capture_unproved`), and whether a
/// printed face touches food (`food_face`). Empty without groups.
std::vector<Notice> safety_conditions(const Job& job, const Catalogue& catalogue,
                                      const std::vector<Group>& groups);

}  // namespace calc
