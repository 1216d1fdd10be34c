/// A request with one number moved, made by the tests themselves and not by the calculation.
#pragma once

#include <string>
#include <vector>

#include "calc/request.h"

namespace whole {

/// The request with the number of that key so many times as great, both ends of a range; of a
/// viscosity every point. Throws std::invalid_argument for a key that no number is moved by.
calc::Request moved(calc::Request request, const std::string& key, double factor);

/// Keys of the numbers a request gives that may be moved.
std::vector<std::string> movable_keys(const calc::Request& request);

/// 1: easier to serve when greater; -1: when less; 0: either may be.
int easing(const std::string& key);

}  // namespace whole
