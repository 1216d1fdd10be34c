/// Ink on the area. 1 mL/m2 is 1 um of wet film, so a laydown is a Length.
#pragma once

#include "calc/quantity.h"

namespace calc {

using DotDensity = Quantity<-2, 0, 0>;  ///< dots per area
using AreaMass = Quantity<-2, 1, 0>;    ///< mass per area
using SpecificHeat = Quantity<2, 0, -2, -1>;

/// Lattice points per area [1/m2]: R_n R_m.
DotDensity dot_density(Resolution nozzle_axis, Resolution motion_axis);

/// Wet film of a solid [m] (mL/m2 in um): V N, times the heads in line for laydown.
/// Source: mass balance.
Length laydown(Volume drop, Resolution nozzle_axis, Resolution motion_axis, int heads = 1);

/// Least heads in line for laydown [1] that reach a film: ceil(film / one head's). Both > 0.
int heads_for_film(Length film, Length one_head);

/// Wet film [m] of process colours together at their peak: solid times the limit (1 = one solid).
Length process_film(Length solid, double limit);
inline constexpr double default_process_limit = 2.40;

/// Dry film [m]: wet film times volume share of solids.
Length dry_film(Length wet, double solids_share);

/// Mass per area [kg/m2] of a wet film.
AreaMass area_mass(Length wet, Density density);

/// Flow [m3/s] of ink onto a width at a speed: W v laydown cover. cover as a share (1 = solid).
VolumeFlow printed_flow(Length width, Speed speed, Length laydown, double cover);

/// Flow [m3/s] of nozzles firing at every dot: n f V.
VolumeFlow jetted_flow(double nozzles, Frequency per_nozzle, Volume drop);

/// Volume [m3] printed on an area at a cover.
Volume printed_volume(Area area, Length laydown, double cover);

}  // namespace calc
