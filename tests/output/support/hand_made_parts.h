/// The longer parts of the specifications built by hand; internal to hand_made*.cpp.
#pragma once

#include <vector>

#include "calc/specification.h"

namespace hand_made {

calc::Station station();          ///< of feasible()
std::vector<calc::Step> trace();  ///< of feasible(): a formula, one with steps, a row of a table

}  // namespace hand_made
