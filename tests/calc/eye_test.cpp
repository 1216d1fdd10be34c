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
constexpr const char* closed = "[C] closed form 25.4/(2 D tan(a/2))";
constexpr const char* wiki = "[P] table of eye limits, moin.meidokon.net; [C]";
constexpr const char* pixel = "[P] pixelcraft.photo.blog";
constexpr const char* display = "[P] hemlockdisplay.com, citing Fogra PSD; [C]";

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
      {"24 in", limit_dpi(24 * inch), 143.239, six_digits,
       "[P] pixelcraft.photo.blog prints 143; [C]"},
      {"250 mm", limit_dpi(250), 349.275, six_digits, closed},
      {"350 mm", limit_dpi(350), 249.482, six_digits, closed},
      {"2 m", limit_dpi(2000), 43.6594, six_digits, closed},
      {"1 in", limit_dpi(inch), 3437.75, six_digits, closed},
      {"1 cm", limit_dpi(10), 8731.88, six_digits, closed},
      {"1 in, half a minute", limit_dpi(inch, 0.5), 6875.49, six_digits, closed},
  });
}

TEST_CASE("the eye limit as printed in whole dots") {
  const double half = 0.5;
  const auto off = [](double printed) { return 0.5 / printed; };  // half a digit
  support::check_all({
      {"20 cm", limit_dpi(200), 436, 0.6 / 436, wiki},  // cut off, not rounded
      {"30 cm", limit_dpi(300), 291, off(291), wiki},
      {"40 cm", limit_dpi(400), 218, off(218), wiki},
      {"50 cm", limit_dpi(500), 175, off(175), wiki},
      {"1 m", limit_dpi(1000), 87, off(87), wiki},
      {"3 m", limit_dpi(3000), 29, off(29), wiki},
      {"5 m", limit_dpi(5000), 18, 0.6 / 18, wiki},  // rounded up
      {"10 m", limit_dpi(10000), 9, off(9), wiki},
      {"8 in", limit_dpi(8 * inch, half), 859, off(859), display},
      {"14 in", limit_dpi(14 * inch, half), 491, off(491), display},
      {"60 in", limit_dpi(60 * inch, half), 114, 0.6 / 114, display},  // cut off
      {"588 in", limit_dpi(588 * inch, half), 11.7, 0.05 / 11.7, display},
      {"24 in", limit_dpi(24 * inch), 143, off(143), pixel},
  });
}

TEST_CASE("the distance from which dots are not separated") {
  support::check_all({
      {"300 dpi [in]", in_mm(eye_limit_distance(dpi(300))) / inch, 11.4592, six_digits,
       "[P] pixelcraft.photo.blog prints 11.46 in; [C]"},
      {"300 dpi at 5.8e-4 rad [cm]", in_mm(eye_limit_distance(dpi(300), 5.8e-4)) / 10, 14.5977,
       six_digits, closed},
      {"300 dpi at 5.8e-4 rad [cm]", in_mm(eye_limit_distance(dpi(300), 5.8e-4)) / 10, 14.5, 0.01,
       "[P] NCERT Exemplar"},
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
      {"20/20 letter", height(6096, 5), 8.86627, six_digits, "[C] Snellen letter"},
      {"20/20 letter, printed", height(6096, 5), 8.87, 1e-3, "[P] Snellen chart, liquisearch"},
      {"a minute at 24 in [in]", height(24 * inch, 1) / inch, 0.00698, 1e-3, pixel},
      {"a minute at 24 in [mm]", height(24 * inch, 1), 0.177, 3e-3, pixel},
      {"17.1887' is a 200th of the distance", height(500, 17.1887), 2.5, six_digits, "[P] FAA"},
      {"5' at 5 m, printed", height(5000, 5), 7.25, 4e-3, "[P] greinerteam.de"},
      {"16' at 500 mm", height(500, 16), 2.32711, six_digits, closed},
      {"20' at 500 mm", height(500, 20), 2.90889, six_digits, closed},
      {"22' at 500 mm", height(500, 22), 3.19978, six_digits, closed},
      {"20' at 5 m", height(5000, 20), 29.0889, six_digits, closed},
      {"0.7 degrees at 500 mm", height(500, 42), 6.10873, six_digits, "[P] EN 301 549, 5.1.4; [C]"},
      {"acuity one half is two minutes", acuity_angle(0.5) / one_arc_minute, 2, identity,
       "[P] ISO 8596"},
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
       "[P] Regan 2000 for the angle; [C]"},
      {"10 s at 1 m", step(1000, 10), 48.4814, six_digits, closed},
      {"10 s at 10 in [in]", step(10 * inch, 10) / 25400, 4.848137e-4, 1e-6, closed},
  });
}
