/// Numbers for properties: rapidcheck shrinks whole ones, so a real one is a step on a grid.
#pragma once

#include <rapidcheck.h>

#include <cmath>

namespace property {

/// A number of [low, high], by thousandths of the span.
inline double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

/// Whether two numbers agree within a share of the second.
inline bool near(double a, double b, double share = 1e-12) {
  return std::abs(a - b) <= share * std::abs(b);
}

}  // namespace property
