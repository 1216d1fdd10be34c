#include "calc/resolution.h"

#include <doctest/doctest.h>

#include <cmath>

#include "calc/eye.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* sampling = "sampling theorem, computed independently";
constexpr const char* practice = "stroke share of the type size, common practice";
constexpr double point_mm = 25.4 / 72;

double text_dpi(double points, Typeface typeface, TextQuality quality) {
  return in_dpi(text_demand(millimetres(points * point_mm), typeface, quality));
}

}  // namespace

TEST_CASE("what features, text and bar codes demand") {
  using enum Typeface;
  using enum TextQuality;
  support::check_all({
      {"0.1 mm, two dots", in_dpi(feature_demand(millimetres(0.1))), 508, identity, sampling},
      {"0.1 mm, three dots", in_dpi(feature_demand(millimetres(0.1), 3)), 762, identity, sampling},
      {"6 pt stroke [mm]", in_mm(text_stroke(millimetres(6 * point_mm), regular)), 0.179916667,
       1e-8, practice},
      {"6 pt regular", text_dpi(6, regular, legible), 282.352941, 1e-8, practice},
      {"6 pt regular, good", text_dpi(6, regular, good), 423.529412, 1e-8, practice},
      {"6 pt bold", text_dpi(6, bold, legible), 184.615385, 1e-8, practice},
      {"6 pt serif", text_dpi(6, serif, legible), 800, identity, practice},
      {"module 0.33 mm", in_dpi(barcode_demand(millimetres(0.33))), 269.393939, 1e-8,
       "rounding to the nearest whole dot"},
      {"module 0.495 mm, two dots", in_dpi(barcode_demand(millimetres(0.495), 2)), 76.969697, 1e-8,
       "rounding to the nearest whole dot"},
  });
}

TEST_CASE("the bar-code demand is just where rounding gives the dots wanted") {
  for (const double mm : {0.17, 0.264, 0.33, 0.495, 1.016}) {
    for (const int dots : {2, 3, 4, 7}) {
      const double delivered = barcode_demand(millimetres(mm), dots) * millimetres(mm);
      CHECK(std::lround(delivered * (1 + 1e-9)) == dots);
      CHECK(std::lround(delivered * (1 - 1e-9)) == dots - 1);
    }
  }
}

TEST_CASE("soft demands are met at nine tenths, hard ones exactly") {
  CHECK(meets_soft(dpi(540), dpi(600)));
  CHECK_FALSE(meets_soft(dpi(539.99), dpi(600)));
  CHECK(meets_soft(dpi(480), dpi(600), 0.8));
  CHECK(meets_hard(dpi(600), dpi(600)));
  CHECK(meets_hard(dpi(600 * (1 - 1e-12)), dpi(600)));
  CHECK_FALSE(meets_hard(dpi(599.9), dpi(600)));
}

TEST_CASE("twice finer than the eye resolves is noted from there on") {
  const Length distance = millimetres(500);
  CHECK(far_beyond_eye(eye_limit(distance) * 2, distance));
  CHECK(far_beyond_eye(dpi(600), distance));
  CHECK_FALSE(far_beyond_eye(eye_limit(distance) * 1.99, distance));
}
