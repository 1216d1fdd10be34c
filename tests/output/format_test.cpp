#include "output/format.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <limits>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

const std::string thin = "\xE2\x80\xAF";
const std::string minus = "\xE2\x88\x92";
const std::string nbsp = "\xC2\xA0";

}  // namespace

TEST_CASE("number rounds to significant digits and groups from five digits on") {
  // Grouping and minus after ISO 80000-1; the values by hand.
  struct Case {
    double value;
    int digits;
    std::string text;
  };
  const std::vector<Case> cases{
      {0, 3, "0"},
      {-0.0, 3, "0"},
      {1, 3, "1"},
      {39.370078740157, 3, "39.4"},
      {39.370078740157, 5, "39.37"},
      {1234, 4, "1234"},
      {1234, 3, "1230"},
      {12345, 5, "12" + thin + "345"},
      {9999.6, 4, "10" + thin + "000"},
      {1234567, 7, "1" + thin + "234" + thin + "567"},
      {-5.5, 3, minus + "5.5"},
      {0.00012345, 3, "0.000123"},
      {0.9999, 3, "1"},
      {0.5, 1, "0.5"},
      {2.5e-5, 2, "2.5" + nbsp + "\xC3\x97" + nbsp + "10\xE2\x81\xBB\xE2\x81\xB5"},
      {3e9, 2, "3" + nbsp + "\xC3\x97" + nbsp + "10\xE2\x81\xB9"},
      {999999999, 9, "999" + thin + "999" + thin + "999"}};
  for (const Case& c : cases) {
    CAPTURE(c.value);
    CAPTURE(c.digits);
    CHECK(output::number(c.value, c.digits) == c.text);
  }
}

TEST_CASE("fixed keeps its decimals") {
  CHECK(output::fixed(1234.5, 2) == "1234.50");
  CHECK(output::fixed(12345.678, 1) == "12" + thin + "345.7");
  CHECK(output::fixed(-0.004, 2) == "0.00");
  CHECK(output::fixed(-12.3, 0) == minus + "12");
}

TEST_CASE("money prints minor units exactly") {
  CHECK(output::money({0}) == "0.00");
  CHECK(output::money({5}) == "0.05");
  CHECK(output::money({1234567}) == "12" + thin + "345.67");
  CHECK(output::money({-250}) == minus + "2.50");
  CHECK(output::whole_money({1234549}) == "12" + thin + "345");
  CHECK(output::whole_money({1234550}) == "12" + thin + "346");
  CHECK(output::whole_money({-49}) == "0");
  CHECK(output::whole_money({-150}) == minus + "2");
  CHECK(output::money({std::numeric_limits<std::int64_t>::min()}).substr(0, 3) == minus);
}

TEST_CASE("units are written after ISO 80000-1") {
  CHECK(output::pretty_unit("mPa.s") == "mPa\xC2\xB7s");
  CHECK(output::pretty_unit("degC") == "\xC2\xB0\x43");
  CHECK(output::pretty_unit("um") == "\xC2\xB5m");
  CHECK(output::pretty_unit("m2") == "m\xC2\xB2");
  CHECK(output::pretty_unit("mL/m2") == "mL/m\xC2\xB2");
  CHECK(output::pretty_unit("kg/(m2.h)") == "kg/(m\xC2\xB2\xC2\xB7h)");
  CHECK(output::pretty_unit("dpi") == "dpi");
  CHECK(output::pretty_unit("(s/m)^0.687") == "(s/m)^0.687");
  CHECK(output::pretty_unit("1/1000") == "\xE2\x80\xB0");
  CHECK(output::with_unit(25, "%") == "25" + nbsp + "%");
  CHECK(output::with_unit(30, "deg") == "30\xC2\xB0");
  CHECK(output::with_unit(42, "") == "42");
  CHECK(output::with_unit(42.3333, "um") == "42.3" + nbsp + "\xC2\xB5m");
}

TEST_CASE("exact reads back as the same number") {
  for (const double value : {0.1, 1.0 / 3, 39370.078740157478, 1e-300, -2.5}) {
    CHECK(std::stod(output::exact(value)) == value);
  }
}

TEST_CASE("what is not finite is a fault, never printed") {
  CHECK_THROWS_AS(output::number(std::nan("")), std::invalid_argument);
  CHECK_THROWS_AS(output::fixed(std::numeric_limits<double>::infinity(), 1), std::invalid_argument);
  CHECK_THROWS_AS(output::exact(-std::numeric_limits<double>::infinity()), std::invalid_argument);
}

TEST_CASE("United States units stand first, with the metric ones behind") {
  // Exact by definition: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 gal = 3.785411784 L, degF = 1.8 degC
  // + 32.
  CHECK(output::with_units(25.4, "mm", 4, true) == "1" + nbsp + "in (25.4" + nbsp + "mm)");
  CHECK(output::with_units(20, "degC", 3, true) ==
        "68" + nbsp + "\xC2\xB0\x46 (20" + nbsp + "\xC2\xB0\x43)");
  CHECK(output::with_units(25.4, "mm", 4, false) == "25.4" + nbsp + "mm");
  CHECK(output::with_units(5, "kHz", 4, true) == "5" + nbsp + "kHz");
  CHECK(output::range_with_units(30.48, 60.96, "m/min", 4, true, " to ") ==
        "100 to 200" + nbsp + "ft/min (30.48 to 60.96" + nbsp + "m/min)");
}

TEST_CASE("a minimum is rounded up, what is allowed down, in every unit it is told in") {
  using output::Rounding;
  CHECK(output::number(output::rounded(3.154, 3, Rounding::up), 3) == "3.16");
  CHECK(output::number(output::rounded(33.97, 2, Rounding::down), 2) == "33");
  CHECK(output::number(output::rounded(33.97, 2, Rounding::nearest), 2) == "34");
  CHECK(output::number(output::rounded(0.3, 3, Rounding::up), 3) == "0.3");
  CHECK(output::number(output::rounded(0.1 + 0.2, 3, Rounding::up), 3) == "0.3");
  CHECK(output::number(output::rounded(1171.2, 3, Rounding::up), 3) == "1180");
  CHECK(output::number(output::rounded(-0.55, 1, Rounding::up), 1) == minus + "0.5");
  CHECK(output::rounded(0, 3, Rounding::up) == 0);
  // 32.61 m are 106.988 ft.
  CHECK(output::bound_with_units(32.61, "m", 3, true, Rounding::up) ==
        "107" + nbsp + "ft (32.7" + nbsp + "m)");
  CHECK(output::bound_with_units(32.61, "m", 3, true, Rounding::down) ==
        "106" + nbsp + "ft (32.6" + nbsp + "m)");
}

TEST_CASE("a long name is cut to characters, not bytes") {
  CHECK(output::shortened("abcd", 4) == "abcd");
  CHECK(output::shortened("\xC5\xA0\xC5\xA0\xC5\xA0", 2) == "\xC5\xA0\xE2\x80\xA6");
}
