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

TEST_CASE("rows of heads round a body") {
  const auto turn = [](double depth, double gap, double radius, double away) {
    return radial_pitch_angle(millimetres(depth), millimetres(gap), millimetres(radius),
                              millimetres(away)) /
           degree;
  };
  support::check_all({
      {"plates as long as twice the reach stand square", turn(19.5, 0.5, 9, 1), 90, identity,
       geometry},
      {"22 mm and 0.5 mm at 12 mm and 1 mm", turn(22, 0.5, 12, 1), 81.7448166, 1e-8, geometry},
      {"far from a thin body as on a flat [mm]", turn(20, 0, 1e6, 0) * degree * 1e6, 20, 1e-9,
       geometry},
      {"four of 90 degrees all round", static_cast<double>(rows_round(90 * degree, 1)), 3, 0,
       "none jets upward: three from 90 degrees on one side to 90 on the other"},
      {"90 degrees over three quarters", static_cast<double>(rows_round(90 * degree, 0.75)), 3, 0,
       geometry},
      {"90 degrees over half", static_cast<double>(rows_round(90 * degree, 0.5)), 2, 0, geometry},
      {"wider than its share, still one", static_cast<double>(rows_round(170 * degree, 0.3)), 1, 0,
       geometry},
      {"on top, half the plate [mm]",
       in_mm(half_room(0, millimetres(13), millimetres(22), millimetres(100))), 11, identity,
       geometry},
      {"level, reach and height [mm]",
       in_mm(half_room(90 * degree, millimetres(13), millimetres(22), millimetres(100))), 113, 1e-9,
       geometry},
      {"seam of 0.1 mm [mm]", in_mm(seam_error(millimetres(0.1))), 0.314159265, 1e-8,
       "circumference of a circle"},
  });
}
