/// Whether an ink settles, so that it must be kept moving.
#pragma once

#include <optional>

#include "calc/job.h"

namespace calc {

/// Density [kg/m3] of an ink: given, else assumed.
Density ink_density(const Job& job, const Ink& ink);

/// Height [m] over which heat keeps the greatest particles of an ink up, at room temperature; none
/// where size or density of the particles is not known, or they weigh as much as the ink.
std::optional<Length> settling_height_of(const Job& job, const Ink& ink);

/// Whether the figures alone say that an ink settles: that height is less than the depth of an ink
/// channel in a head. None where size or density of the particles is not known. The rule is common
/// practice, no source.
std::optional<bool> settles_by_figures(const Job& job, const Ink& ink);

/// Whether an ink settles: as stated, else by figures; none where neither tells.
std::optional<bool> settles(const Job& job, const Ink& ink);

}  // namespace calc
