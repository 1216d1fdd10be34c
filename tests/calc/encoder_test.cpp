#include "calc/encoder.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "[C] definition, computed independently";
constexpr const char* gronemeyer = "[P] Gronemeyer, wheel of 0.5 m, 1024 counts a turn";

double counts(double dots_an_inch, double count_um) {
  return counts_per_dot(1.0 / dpi(dots_an_inch), micrometres(count_um));
}

/// Residue [mm] over 300 mm of a division.
double over_300(Division division, double wanted) { return 300 * division_error(division, wanted); }

}  // namespace

TEST_CASE("length of a count and its rate") {
  const Length wheel = count_length(metres(0.5), 1024);
  support::check_all({
      {"0.5 m, 1024 [m]", wheel.si(), 0.00153398, 3e-6, gronemeyer},
      {"1500 counts a second [m/s]", 1500 * wheel.si(), 2.30097, 3e-6, gronemeyer},
      {"the same back [1/s]", count_rate(metres_per_second(2.30097), wheel).si(), 1500, 3e-6,
       gronemeyer},
      {"circumference 500 mm, 10000 pulses by 4 [um]",
       in_um(count_length(millimetres(500 / 3.14159265358979323846), 10000 * 4)), 12.5, identity,
       closed},
      {"counts of a 600 dpi dot", counts(600, 12.5), 3.38667, six_digits, closed},
      {"5 um rounded to whole counts [um]", in_um(rounding_rms(micrometres(5))), 1.44338,
       six_digits, closed},
  });
}

TEST_CASE("whole divisions and what they leave over the print") {
  const double five = counts(600, 5);
  const double one = counts(600, 1);
  const Division eight = whole_division(five);
  const Division forty_two = whole_division(one);
  CHECK(eight.counts == 8);
  CHECK(eight.dots == 1);
  CHECK(forty_two.counts == 42);
  CHECK(whole_division(0.2).counts == 1);
  support::check_all({
      {"5 um by 8 [um]", eight.counts * 5.0, 40, identity, closed},
      {"5 um by 8 [dpi]", in_dpi(divided_resolution(eight, micrometres(5))), 635, identity, closed},
      {"of the pitch [%]", 100 * division_error(eight, five), -5.51181, six_digits, closed},
      {"over 300 mm", over_300(eight, five), -16.5354, six_digits, closed},
      {"1 um by 42 [dpi]", in_dpi(divided_resolution(forty_two, micrometres(1))), 604.762,
       six_digits, closed},
      {"over 300 mm", over_300(forty_two, one), -2.36220, six_digits, closed},
  });
}

TEST_CASE("a fraction reaches what no whole number does") {
  const double one = counts(600, 1);  // 127/3
  const Division exact = nearest_division(one, 255);
  CHECK(exact.counts == 127);
  CHECK(exact.dots == 3);
  CHECK(support::near(1 + division_error(exact, one), 1, identity));
  const Division short_of = nearest_division(one, 2);
  CHECK(short_of.counts == 85);
  CHECK(short_of.dots == 2);
  CHECK(nearest_division(8, 255).dots == 1);
}

TEST_CASE("a longer denominator never leaves more") {
  for (const double wanted : {0.7, 1.0, 3.386666666666667, 8.466666666666667, 17.123456}) {
    double last = 1;
    for (int most = 1; most <= 64; ++most) {
      const double error = division_error(nearest_division(wanted, most), wanted);
      CHECK(std::abs(error) <= last);
      last = std::abs(error);
    }
  }
}
