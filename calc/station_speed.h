/// How fast the line may run with all that is installed, heads and stages together.
#pragma once

#include "calc/station_sizing.h"

namespace calc {

/// Fills the line speed [m/s] up to which each stage of lamps or dryers serves as installed, and
/// the least of these and of what the heads allow, with what sets it. Of a lamp: rows in one place
/// times k E ageing w over the dose; pinning at its full power. Of a dryer: the speed asked for
/// times the lesser of installed over needed length and power, for water and web grow with the
/// speed. Nothing for a carriage, whose lamps are lit for its own speed, whatever the feed.
/// Precondition: the station's stages are those of the sizing.
void add_speed_limits(const Job& job, const std::vector<Group>& groups, const Sizing& sizing,
                      Station& station);

}  // namespace calc
