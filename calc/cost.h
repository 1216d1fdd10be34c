/// The cost of a station over years, per area and per part.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "calc/station_sizing.h"

namespace calc {

/// Area printed a year [m2]: substrate passed, times the printed share of it.
double printed_area_per_year(const Job& job, const std::vector<Group>& groups);

/// The cost with its parts. Per area and per thousand parts: ownership spread by the annuity
/// factor; absent where the area or the parts are not known.
Cost cost(const Job& job, const std::vector<Group>& groups, const Sizing& sizing);

/// Days from one date to another [d], both YYYY-MM-DD in the Gregorian calendar; none when either
/// is no date.
std::optional<int> days_between(std::string_view from, std::string_view to);

/// Warnings about the prices of a row: stale, or in another currency. Appends to `to`.
void price_warnings(const Job& job, const Row& row, std::vector<Notice>& to);

}  // namespace calc
