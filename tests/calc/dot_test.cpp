#include "calc/dot.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "calc/eye.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "[C] closed form, computed independently";
constexpr const char* cap = "[C] van Dam and Le Clerc 2004, computed independently";
constexpr const char* bead = "[C] mass balance, Smith et al. 2006, Stringer and Derby 2010";
constexpr const char* son = "[C] Son et al. 2008, computed independently";
constexpr const char* practice = "class default, common practice";

constexpr double degrees(double d) { return d * pi / 180; }
double drop_um(double pl) { return in_um(drop_diameter(picolitres(pl))); }
double cap_dot_um(double pl, double angle) { return drop_um(pl) * cap_spread(degrees(angle)); }
double dot_um(double pl, const DotEvidence& evidence) {
  return in_um(dot_diameter(picolitres(pl), evidence).diameter);
}

}  // namespace

TEST_CASE("diameters of free drops") {
  support::check_all({
      {"1 pL", drop_um(1), 12.4070, six_digits, closed},
      {"3 pL", drop_um(3), 17.8940, six_digits, closed},
      {"7 pL", drop_um(7), 23.7338, six_digits, closed},
      {"10 pL", drop_um(10), 26.7301, six_digits, closed},
      {"14 pL", drop_um(14), 29.9027, six_digits, closed},
      {"30 pL", drop_um(30), 38.5515, six_digits, closed},
      {"mass of a 70 um drop [kg]", drop_volume(micrometres(70)).si() * 1000, 1.79594e-10,
       six_digits, "[P] inputs of Giordano, College Physics, 17.94; [C]"},
      {"mass of 10 pL at 1060 [ng]", picolitres(10).si() * 1060 * 1e12, 10.6, identity, closed},
  });
  for (const double pl : {0.5, 7.0, 80.0}) {
    CHECK(support::near(in_pl(drop_volume(drop_diameter(picolitres(pl)))), pl, identity));
  }
}

TEST_CASE("spread and height of a spherical cap") {
  struct Row {
    double angle, spread, height;
  };
  const std::vector<Row> rows = {
      {5, 3.937313, 0.085953},  {10, 3.121069, 0.136529}, {15, 2.720691, 0.179093},
      {20, 2.464473, 0.217277}, {30, 2.134101, 0.285915}, {45, 1.826124, 0.378203},
      {60, 1.607894, 0.464159}, {90, 1.259921, 0.629961}, {120, 0.916486, 0.793701}};
  for (const Row& row : rows) {
    support::check_all({
        {"spread", cap_spread(degrees(row.angle)), row.spread, 1e-6, cap},
        {"height", cap_height(degrees(row.angle)), row.height, six_digits, cap},
    });
  }
  // A thin cap spreads (16/(3 a))^(1/3) times: 0.17 % more at 10 degrees, 1.6 % more at 30.
  const auto thin = [](double angle) {
    return std::cbrt(16 / (3 * degrees(angle))) / cap_spread(degrees(angle)) - 1;
  };
  support::check_all({
      {"90 degrees", cap_spread(pi / 2), std::cbrt(2.0), identity, cap},
      {"thin cap, 10 degrees", thin(10), 0.0017, 0.03, cap},
      {"thin cap, 30 degrees", thin(30), 0.016, 0.03, cap},
  });
}

TEST_CASE("the cap agrees with the form in the sphere's radius") {
  // R/R0 = ((2 + cos a)(1 - cos a)^2/4)^(-1/3), contact circle 2 R sin a: Basilisk "3D Sessile
  // drop".
  for (int angle = 3; angle < 178; angle += 5) {
    const double a = degrees(angle);
    const double sphere =
        std::pow((2 + std::cos(a)) * (1 - std::cos(a)) * (1 - std::cos(a)) / 4, -1.0 / 3);
    CAPTURE(angle);
    CHECK(support::near(cap_spread(a), sphere * std::sin(a), 1e-9));
    if (angle > 90) CHECK(support::near(visible_spread(a), sphere, 1e-9));
  }
}

TEST_CASE("dots of caps") {
  support::check_all({
      {"10 pL at 30 degrees", cap_dot_um(10, 30), 57.0447, six_digits, cap},
      {"10 pL at 60 degrees", cap_dot_um(10, 60), 42.9791, six_digits, cap},
      {"7 pL at 20 degrees", cap_dot_um(7, 20), 58.4912, six_digits, cap},
      {"14 pL at 30 degrees", cap_dot_um(14, 30), 63.8153, six_digits, cap},
      {"30 pL at 45 degrees", cap_dot_um(30, 45), 70.3998, six_digits, cap},
      {"80 pL at 30 degrees", cap_dot_um(80, 30), 114.089, six_digits, cap},
      {"capped below 10 degrees", capped_cap_spread(degrees(4)), 3.121069, 1e-6, cap},
      {"not capped above", capped_cap_spread(degrees(15)), 2.720691, 1e-6, cap},
  });
}

TEST_CASE("greatest spread at impact") {
  support::check_all({
      {"We 1 at 60 degrees", impact_spread(1, degrees(60)), 1.182238, 1e-6, son},
      {"We 2 at 30 degrees", impact_spread(2, degrees(30)), 1.427140, 1e-6, son},
  });
}

TEST_CASE("spread factors by class") {
  const auto check = [](Absorbency absorbency, double value, double low, double high) {
    const SpreadRange spread = class_spread(absorbency);
    support::check_all({{"value", spread.value, value, 0, practice},
                        {"low", spread.low, low, 0, practice},
                        {"high", spread.high, high, 0, practice}});
  };
  check(Absorbency::none, 1.6, 1.3, 2.4);
  check(Absorbency::low, 1.8, 1.5, 2.2);
  check(Absorbency::high, 2.2, 1.8, 2.8);
}

TEST_CASE("the best evidence gives the dot") {
  DotEvidence all;
  all.measured = micrometres(55);
  all.measured_with = picolitres(10);
  all.factor = 2;
  all.angle = degrees(30);
  DotEvidence unscaled = all;
  unscaled.measured_with.reset();
  DotEvidence factor = unscaled;
  factor.measured.reset();
  DotEvidence angle = factor;
  angle.factor.reset();
  DotEvidence flat = angle;
  flat.angle = degrees(3);
  DotEvidence paper = angle;
  paper.absorbency = Absorbency::high;
  support::check_all({
      {"measured, its own drop", dot_um(10, all), 55, identity, closed},
      {"measured, eight times the drop", dot_um(80, all), 110, identity, closed},
      {"measured, drop unknown", dot_um(80, unscaled), 55, identity, closed},
      {"factor", dot_um(10, factor), 53.4602, six_digits, closed},
      {"angle", dot_um(10, angle), 57.0447, six_digits, cap},
      {"angle held at 10 degrees", dot_um(10, flat), 26.7301 * 3.121069, six_digits, cap},
      {"angle says nothing on paper", dot_um(10, paper), 26.7301 * 2.2, six_digits, practice},
      {"class of film", dot_um(10, {}), 26.7301 * 1.6, six_digits, practice},
  });
  CHECK(dot_diameter(picolitres(10), all).rule == DotRule::measured_scaled);
  CHECK(dot_diameter(picolitres(10), unscaled).rule == DotRule::measured);
  CHECK(dot_diameter(picolitres(10), factor).rule == DotRule::factor);
  CHECK(dot_diameter(picolitres(10), angle).rule == DotRule::angle);
  CHECK(dot_diameter(picolitres(10), flat).rule == DotRule::angle_capped);
  const DotEstimate guess = dot_diameter(picolitres(10), paper);
  CHECK(guess.rule == DotRule::class_default);
  CHECK(support::near(guess.low / guess.diameter, 1.8 / 2.2, identity));
  CHECK(support::near(guess.high / guess.diameter, 2.8 / 2.2, identity));
  const DotEstimate known = dot_diameter(picolitres(10), all);
  CHECK(known.low == known.diameter);
  CHECK(known.high == known.diameter);
}

TEST_CASE("width and stability of a line of drops") {
  const Length d10 = drop_diameter(picolitres(10));
  const auto limit = [](double angle) {
    return scalloping_spacing(metres(1), degrees(angle)).si();
  };
  support::check_all({
      {"f(90)", bead_shape(pi / 2), pi / 2, identity, bead},
      {"f(30)", bead_shape(degrees(30)), 0.362344, six_digits, bead},
      {"f(60)", bead_shape(degrees(60)), 0.818913, six_digits, bead},
      {"half cylinder", bead_width(metres(1), metres(1), pi / 2).si(), 1.154701, 1e-6, bead},
      {"limit at 90", limit(90), 0.839947, six_digits, bead},
      {"limit at 30", limit(30), 1.269133, six_digits, bead},
      {"limit at 60", limit(60), 0.989250, six_digits, bead},
      {"10 pL, 60 degrees, 20 um", in_um(bead_width(d10, micrometres(20), degrees(60))), 49.4192,
       six_digits, bead},
      {"10 pL limit at 60", in_um(scalloping_spacing(d10, degrees(60))), 26.4428, six_digits, bead},
      {"10 pL limit at 30", in_um(scalloping_spacing(d10, degrees(30))), 33.9240, six_digits, bead},
  });
  // 10 pL at 30 degrees and 600 dpi is scalloped.
  CHECK(micrometres(42.3333) > scalloping_spacing(d10, degrees(30)));
  // At the limit the line is as wide as a single dot.
  for (const double angle : {20.0, 45.0, 80.0}) {
    const Length spacing = scalloping_spacing(d10, degrees(angle));
    CHECK(support::near(bead_width(d10, spacing, degrees(angle)) / d10, cap_spread(degrees(angle)),
                        identity));
  }
}
