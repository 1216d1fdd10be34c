/// What the best station costs over the line speed: a map for the choice of the speed itself.
#pragma once

#include <string>
#include <vector>

#include "calc/catalogue.h"
#include "calc/request.h"
#include "calc/specification.h"

namespace calc {

/// The station chosen at speeds from half to twice the greatest one asked for [m/s], each by a
/// search of its own with all else as it is; speeds rise. Empty without a line speed. The dates of
/// prices count from `date`.
std::vector<SpeedStep> speed_steps(const Request& request, const Catalogue& catalogue,
                                   const std::string& date);

}  // namespace calc
