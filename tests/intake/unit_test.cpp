#include "intake/unit.h"

#include <doctest/doctest.h>
#include <udunits2.h>

#include <cmath>
#include <set>
#include <string>

#include "intake/unit_data.h"

namespace {

ut_system* silent_units() {
  ut_set_error_message_handler(ut_ignore);
  return ut_read_xml(nullptr);
}

struct System {
  System() : system(silent_units()) {}
  ~System() { ut_free_system(system); }
  System(const System&) = delete;
  System& operator=(const System&) = delete;
  System(System&&) = delete;
  System& operator=(System&&) = delete;
  ut_system* system;
};

/// SI base unit text of each dimension of ours, for UDUNITS-2 to convert to.
std::string base_of(const std::string& dimension) {
  if (dimension == "length") return "m";
  if (dimension == "speed") return "m/s";
  if (dimension == "resolution") return "1/m";
  if (dimension == "volume") return "m3";
  if (dimension == "viscosity") return "Pa.s";
  if (dimension == "surface tension") return "N/m";
  if (dimension == "density") return "kg/m3";
  if (dimension == "time") return "s";
  if (dimension == "temperature") return "K";
  if (dimension == "dose") return "J/m2";
  if (dimension == "irradiance") return "W/m2";
  if (dimension == "fraction" || dimension == "concentration") return "1";
  if (dimension == "angle") return "rad";
  if (dimension == "flow") return "m3/s";
  if (dimension == "area rate") return "m2/s";
  if (dimension == "drying rate") return "kg/(m2 s)";
  if (dimension == "power") return "W";
  if (dimension == "molar mass") return "kg/mol";
  if (dimension == "area mass") return "kg/m2";
  if (dimension == "heat capacity") return "J/(kg K)";
  if (dimension == "mass flow") return "kg/s";
  return "1/s";  // frequency, part rate, data rate
}

}  // namespace

TEST_CASE("every factor agrees with UDUNITS-2") {
  const System udunits;
  REQUIRE(udunits.system != nullptr);
  for (const intake::Unit& unit : intake::physical_units()) {
    CAPTURE(unit.text);
    CAPTURE(unit.dimension);
    const std::string base_text = base_of(std::string(unit.dimension));
    REQUIRE(!unit.udunits.empty());
    ut_unit* theirs = ut_parse(udunits.system, std::string(unit.udunits).c_str(), UT_ASCII);
    ut_unit* base = ut_parse(udunits.system, base_text.c_str(), UT_ASCII);
    REQUIRE(theirs != nullptr);
    REQUIRE(base != nullptr);
    REQUIRE(ut_are_convertible(theirs, base) != 0);
    cv_converter* converter = ut_get_converter(theirs, base);
    REQUIRE(converter != nullptr);
    for (const double number : {1.0, 0.0, 37.5}) {
      const double expected = cv_convert_double(converter, number);
      const double ours = intake::from_unit(number, unit);
      CHECK(std::abs(ours - expected) <= 1e-12 * std::max(1e-300, std::abs(expected)));
      CHECK(intake::to_unit(ours, unit) == doctest::Approx(number).epsilon(1e-12));
    }
    cv_free(converter);
    ut_free(theirs);
    ut_free(base);
  }
}

TEST_CASE("a unit text stands once in its dimension, and only money lacks UDUNITS-2") {
  std::set<std::pair<std::string, std::string>> seen;
  for (const intake::Unit& unit : intake::units()) {
    CAPTURE(unit.text);
    CHECK(seen.emplace(unit.dimension, unit.text).second);
    CHECK(unit.udunits.empty() == (unit.dimension.substr(0, 5) == "price"));
  }
}

TEST_CASE("definitions of the foot, the mil, the point and the gallon") {
  // International yard and pound agreement 1959; desktop publishing point; US gallon 231 cubic
  // inch.
  CHECK(intake::find_unit("length", "ft")->factor == 0.3048);
  CHECK(intake::find_unit("length", "mil")->factor == doctest::Approx(25.4e-6).epsilon(1e-15));
  CHECK(intake::find_unit("length", "pt")->factor == doctest::Approx(0.0254 / 72).epsilon(1e-15));
  CHECK(intake::find_unit("volume", "gal")->factor ==
        doctest::Approx(231 * 0.0254 * 0.0254 * 0.0254).epsilon(1e-14));
  CHECK(intake::find_unit("price per litre", "EUR/mL")->factor == 1000);
  CHECK(!intake::find_unit("length", "furlong"));
  CHECK(!intake::find_unit("speed", "mm"));
}
