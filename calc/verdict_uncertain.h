/// The uncertain inputs of a request (`2 mm +- 0.3 mm`), each to be moved alone to its ends.
/// Internal to verdict*.cpp.
#pragma once

#include <string>
#include <vector>

#include "calc/request.h"

namespace calc {

/// A request with one uncertain field set to one of its ends.
struct MovedInput {
  std::string field, unit;
  double value = 0;  ///< the end, in `unit`
  Origin where;
  Request request;
};

/// Low end, then high end of every field that is given as an uncertainty and that the calculation
/// reads, in the order of the field table.
std::vector<MovedInput> moved_inputs(const Request& request);

}  // namespace calc
