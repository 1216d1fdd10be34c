/// The cost of a station over years, per area and per part.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/station_sizing.h"

namespace calc {

/// Area printed a year [m2]: substrate passed, times the printed share of it.
double printed_area_per_year(const Job& job, const std::vector<Group>& groups);

/// The cost with its parts. Per area and per thousand parts: ownership spread by the annuity
/// factor; absent where the area or the parts are not known.
Cost cost(const Job& job, const std::vector<Group>& groups, const Sizing& sizing);

/// Share by which a term is moved [1]; common practice, no source.
inline constexpr double cost_swing = 0.2;

/// The five greatest terms of ownership, the greatest first: capital, and each yearly cost times
/// the annuity factor of the cost's rate and years. Empty with no years.
std::vector<CostTerm> cost_terms(const Cost& cost);

/// Days from one date to another [d], both YYYY-MM-DD in the Gregorian calendar; none when either
/// is no date.
std::optional<int> days_between(std::string_view from, std::string_view to);

/// Warnings about the prices of a row: stale, or in another currency, which is told once for all of
/// `to`. Appends to `to`.
void price_warnings(const Job& job, const Row& row, std::vector<Notice>& to);

}  // namespace calc
