/// Comparisons at a limit and whole counts, all with one tolerance, so that a unit conversion's
/// last bit (feet, inches) never adds a head or fails a gate.
#pragma once

#include <algorithm>
#include <cmath>

namespace calc {

inline constexpr double tolerance = 1e-9;

/// The least integer not below x, less the tolerance: 150 over 50 is 3, never 4. x finite.
inline double ceil_tolerant(double x) {
  return std::ceil(x - tolerance * std::max(1.0, std::abs(x)));
}
/// The greatest integer not above x, plus the tolerance.
inline double floor_tolerant(double x) {
  return std::floor(x + tolerance * std::max(1.0, std::abs(x)));
}
/// a <= b, taking a within the relative tolerance above b as equal.
inline bool at_most(double a, double b) {
  return a <= b + tolerance * std::max(std::abs(a), std::abs(b));
}
/// a >= b, taking a within the relative tolerance below b as equal.
inline bool at_least(double a, double b) { return at_most(b, a); }

/// The same for quantities of one dimension.
template <class Q>
bool at_most(Q a, Q b) {
  return at_most(a.si(), b.si());
}
template <class Q>
bool at_least(Q a, Q b) {
  return at_most(b.si(), a.si());
}

}  // namespace calc
