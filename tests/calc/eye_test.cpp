#include "calc/eye.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

double limit_dpi(double mm, double minutes = 1) {
  return in_dpi(eye_limit(millimetres(mm), minutes * one_arc_minute));
}
constexpr double inch = 25.4;
constexpr const char* closed = "closed form 25.4/(2 D tan(a/2)), computed independently";
constexpr const char* wiki = "published table of eye limits (moin.meidokon.net)";
constexpr const char* display = "published table citing Fogra PSD (hemlockdisplay.com)";

}  // namespace

TEST_CASE("the eye limit over distance") {
  support::check_all({
      {"20 cm", limit_dpi(200), 436.594, six_digits, wiki},
      {"30 cm", limit_dpi(300), 291.063, six_digits, wiki},
      {"40 cm", limit_dpi(400), 218.297, six_digits, wiki},
      {"50 cm", limit_dpi(500), 174.638, six_digits, wiki},
      {"1 m", limit_dpi(1000), 87.3188, six_digits, wiki},
      {"3 m", limit_dpi(3000), 29.1063, six_digits, wiki},
      {"5 m", limit_dpi(5000), 17.4638, six_digits, wiki},
      {"10 m", limit_dpi(10000), 8.73188, six_digits, wiki},
      {"8 in", limit_dpi(8 * inch), 429.7185, six_digits, closed},
      {"8 in, half a minute", limit_dpi(8 * inch, 0.5), 859.437, six_digits, display},
      {"14 in, half a minute", limit_dpi(14 * inch, 0.5), 491.107, six_digits, display},
      {"60 in, half a minute", limit_dpi(60 * inch, 0.5), 114.592, six_digits, display},
      {"588 in, half a minute", limit_dpi(588 * inch, 0.5), 11.6930, six_digits, display},
      {"24 in", limit_dpi(24 * inch), 143.239, six_digits, "pixelcraft.photo.blog prints 143"},
      {"250 mm", limit_dpi(250), 349.275, six_digits, closed},
      {"350 mm", limit_dpi(350), 249.482, six_digits, closed},
      {"2 m", limit_dpi(2000), 43.6594, six_digits, closed},
      {"1 in", limit_dpi(inch), 3437.75, six_digits, closed},
      {"1 cm", limit_dpi(10), 8731.88, six_digits, closed},
  });
}

TEST_CASE("the distance from which dots are not separated") {
  support::check_all({
      {"300 dpi [in]", in_mm(eye_limit_distance(dpi(300))) / inch, 11.4592, six_digits,
       "pixelcraft.photo.blog prints 11.46 in"},
      {"300 dpi at 5.8e-4 rad [cm]", in_mm(eye_limit_distance(dpi(300), 5.8e-4)) / 10, 14.5977,
       six_digits, closed},
      {"300 dpi at 5.8e-4 rad [cm]", in_mm(eye_limit_distance(dpi(300), 5.8e-4)) / 10, 14.5, 0.01,
       "NCERT Exemplar"},
  });
  for (const double mm : {200.0, 350.0, 2000.0}) {
    CHECK(support::near(in_mm(eye_limit_distance(eye_limit(millimetres(mm)))), mm, identity));
  }
}

TEST_CASE("heights that subtend an angle") {
  const auto height = [](double mm, double minutes) {
    return in_mm(subtended_length(millimetres(mm), minutes * one_arc_minute));
  };
  support::check_all({
      {"20/20 letter", height(6096, 5), 8.86627, six_digits, "Snellen chart prints 8.87 mm"},
      {"16' at 500 mm", height(500, 16), 2.32711, six_digits, closed},
      {"20' at 500 mm", height(500, 20), 2.90889, six_digits, closed},
      {"22' at 500 mm", height(500, 22), 3.19978, six_digits, closed},
      {"20' at 5 m", height(5000, 20), 29.0889, six_digits, closed},
      {"0.7 degrees at 500 mm", height(500, 42), 6.10873, six_digits, "EN 301 549, 5.1.4"},
      {"acuity one half is two minutes", acuity_angle(0.5) / one_arc_minute, 2, identity,
       "ISO 8596"},
      {"one minute [rad]", one_arc_minute, 2.908882e-4, 1e-6, closed},
  });
}

TEST_CASE("steps that vernier acuity sees") {
  const auto step = [](double mm, double seconds) {
    return in_um(vernier_limit(millimetres(mm), seconds * one_arc_second));
  };
  support::check_all({
      {"5 s at 254 mm", step(254, 5), 6.15713, six_digits, closed},
      {"5 s at 300 mm", step(300, 5), 7.27221, six_digits, closed},
      {"5 s at 500 mm", step(500, 5), 12.1203, six_digits, closed},
      {"10 s at 300 mm", step(300, 10), 14.5444, six_digits, closed},
      {"10 s at 350 mm", step(350, 10), 16.9685, six_digits, closed},
      {"default is 10 s", in_um(vernier_limit(millimetres(500))), 24.2407, six_digits,
       "Regan 2000 for the angle"},
      {"10 s at 1 m", step(1000, 10), 48.4814, six_digits, closed},
  });
}
