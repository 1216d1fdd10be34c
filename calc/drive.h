/// Data, boards, ink supply and encoder of a station, as the document states them.
#pragma once

#include <vector>

#include "calc/station_sizing.h"

namespace calc {

/// Limits of a supply for the heads it feeds; what neither row states does not bind.
SupplyLimits supply_limits(const Supply& supply, const Head* head);

/// What asks for so many supplies: "pump", "heads", "flow", the first that alone needs them all, or
/// "one".
std::string bound_by(VolumeFlow peak, int heads, const SupplyLimits& limits);

/// Length of the product a count of the line's encoder [m]: given, else of its wheel; none where
/// the request does not tell.
std::optional<Length> encoder_step(const Job& job);

/// Fills board uses, cables, feeds and encoder of a station with these groups.
void describe_drive(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                    const Sizing& sizing, Station& station);

}  // namespace calc
