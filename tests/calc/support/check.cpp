#include "tests/calc/support/check.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace support {

bool near(double actual, double expected, double relative) {
  const double scale = expected == 0 ? 1 : std::abs(expected);
  return std::abs(actual - expected) <= relative * scale;
}

void check_all(std::initializer_list<Check> rows) {
  REQUIRE(rows.size() > 0);
  for (const Check& row : rows) {
    INFO(std::string(row.what), " = ", row.actual, ", expected ", row.expected, " after ",
         std::string(row.source));
    CHECK(near(row.actual, row.expected, row.relative));
  }
}

}  // namespace support
