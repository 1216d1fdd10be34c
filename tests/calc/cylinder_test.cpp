#include "calc/cylinder.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* geometry = "plane geometry, computed independently";
constexpr double degree = 3.14159265358979323846 / 180;

double slope_degrees(double depth, double radius) {
  return landing_slope(millimetres(depth), millimetres(radius)).value_or(-1) / degree;
}
double sagitta_um(double chord, double radius) {
  return in_um(sagitta(millimetres(chord), millimetres(radius)).value_or(metres(-1)));
}

}  // namespace

TEST_CASE("slopes and sagittas on a round body") {
  support::check_all({
      {"30 mm on 30 mm radius", slope_degrees(30, 30), 30, identity, geometry},
      {"20 mm on 40 mm radius", slope_degrees(20, 40), 14.4775122, 1e-8, geometry},
      {"as deep as the body is thick", slope_degrees(60, 30), 90, identity, geometry},
      {"30 mm on 30 mm radius [um]", sagitta_um(30, 30), 30000 * (1 - std::sqrt(0.75)), identity,
       geometry},
      {"6 and 5 of a 3-4-5 triangle [um]", sagitta_um(6, 5), 1000, identity, geometry},
      {"flat body [um]", sagitta_um(1, 1e6), 1.25e-4, 1e-9, geometry},
      {"half the body", sagitta_um(60, 30), 30000, identity, geometry},
      {"stretch at 60 degrees", pitch_stretch(60 * degree), 2, identity, geometry},
      {"stretch on a flat", pitch_stretch(0), 1, 0, geometry},
      {"least radius at 30 degrees [mm]", in_mm(least_radius(millimetres(30), 30 * degree)), 30,
       identity, geometry},
  });
  CHECK_FALSE(landing_slope(millimetres(61), millimetres(30)).has_value());
  CHECK_FALSE(sagitta(millimetres(61), millimetres(30)).has_value());
}
