/// The one table of unit texts.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace intake {

/// A unit as people write it. SI value = number * factor + offset.
struct Unit {
  std::string_view text;       ///< "m/min", "mil", "degC", "%", "dpi", "pL"
  std::string_view dimension;  ///< "speed", "length", ...
  double factor = 1;
  double offset = 0;
  std::string_view udunits;  ///< the same for UDUNITS-2, empty when it has none (money, levels)
};

std::span<const Unit> units();

/// The unit of that text within a dimension, or nullopt.
std::optional<Unit> find_unit(std::string_view dimension, std::string_view text);

/// Converts between an SI number and a unit's number.
double to_unit(double si, const Unit& unit);
double from_unit(double number, const Unit& unit);

}  // namespace intake
