/// Rows of reference values: what, computed, expected, relative tolerance, source.
#pragma once

#include <initializer_list>

namespace support {

struct Check {
  const char* what;
  double actual;
  double expected;
  double relative;  ///< tolerance as a share of |expected|; absolute where expected is 0
  const char* source;
};

/// Whether two numbers agree within a share of the expected one. A NaN agrees with nothing.
bool near(double actual, double expected, double relative);

/// Asserts every row, naming row and source where it fails. Fails on an empty list.
void check_all(std::initializer_list<Check> rows);

/// Tolerance of values printed with six significant digits.
inline constexpr double six_digits = 1e-5;
/// Tolerance of identities.
inline constexpr double identity = 1e-12;

}  // namespace support
