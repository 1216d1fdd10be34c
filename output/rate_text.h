/// A rate of parts, in the unit the customer wrote it in.
#pragma once

#include <optional>
#include <string>

#include "output/compose_context.h"

namespace output {

/// What the chosen heads reach and what is asked for, in one unit.
struct PartsRate {
  std::string reached, asked;
};

/// The greatest speed of the station, or of the carriage's feed, over the greatest that the request
/// needs [1]. None without a speed needed, or where nothing is chosen.
std::optional<double> speed_over_needed(const Context& context);

/// The rate of the whole station. None where the request asks for no rate of parts, or nothing is
/// chosen.
std::optional<PartsRate> parts_rate(const Context& context);

}  // namespace output
