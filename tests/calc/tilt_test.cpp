#include "calc/tilt.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "calc/across.h"
#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

// The other rows: [C] plane geometry, each nozzle projected by itself.
constexpr const char* triangle = "[C] right triangle 3, 4, 5: cosine 0.6, sine 0.8";

const double three_four_five = std::acos(0.6);
constexpr double right = 1.5707963267948966;

/// Gaps between the nozzles of rows in the middle of a head, each nozzle projected by itself [m].
std::vector<double> gaps_by_nozzle(double row_pitch, const std::vector<double>& offsets,
                                   const std::vector<Length>& places, double tilt) {
  constexpr int nozzles = 400;
  std::vector<double> all;
  for (std::size_t row = 0; row < offsets.size(); ++row) {
    for (int i = 0; i < nozzles; ++i) {
      const double x = (offsets[row] + i) * row_pitch;
      all.push_back(x * std::cos(tilt) - places[row].si() * std::sin(tilt));
    }
  }
  std::sort(all.begin(), all.end());
  std::vector<double> gaps;
  for (std::size_t i = all.size() / 2 - 40; i < all.size() / 2 + 40; ++i) {
    gaps.push_back(all[i + 1] - all[i]);
  }
  return gaps;
}

}  // namespace

TEST_CASE("a tenth of a degree off 53.13 degrees changes the swath by 0.2327 per cent") {
  // physics.md 7 [C]: d(npi)/npi = tan t dt; 70.5 mm at 53.1301 degrees prints 42.3 mm.
  const double found =
      tilt_tolerance(millimetres(70.5), three_four_five, millimetres(42.3) * 0.00232711);
  support::check_all(
      {{"angle [deg]", found * 180 / 3.14159265358979323846, 0.1, 2e-6, "physics.md 7 [C]"}});
  CHECK(tilt_tolerance(millimetres(70.5), -three_four_five, millimetres(0.1)) > 0);
}

TEST_CASE(
    "turned by the tolerance of its angle, a row's ends part by as much as the joint allows") {
  const Length row = millimetres(54);
  const Length shift = micrometres(20);
  const double off = tilt_tolerance(row, three_four_five, shift);
  const double before = (row * std::cos(three_four_five)).si();
  for (const double sense : {1.0, -1.0}) {
    const double moved = std::abs((row * std::cos(three_four_five + sense * off)).si() - before);
    CHECK(moved == doctest::Approx(shift.si()).epsilon(1e-3));  // linear, for small errors
  }
}

TEST_CASE("two rows of 180 per inch, 0.5 mm apart, at 30 degrees print 66.7 and 55.5 um apart") {
  // method.md, worked cases [C]: the second row 66.7 or 55.5 um by the sense of tilt, ideal 61.1.
  const Resolution row = dpi(180);
  const std::vector<double> offsets{0, 0.5};
  const std::vector<Length> places{Length{}, millimetres(0.5)};
  for (const double sense : {1.0, -1.0}) {
    const double t = sense * right / 3;
    const std::vector<double> at = row_phases(row, offsets, places, t);
    const double period = 25400.0 / 180 * std::cos(t);
    const double second = (at[1] - at[0]) * period;
    support::check_all({
        {"ideal [um]", period / 2, 61.1, 1e-3, "method.md, worked cases"},
        {"second row [um]", second, sense > 0 ? 55.5 : 66.7, 1e-3, "method.md, worked cases"},
        {"uneven", unevenness(row, dpi(360), offsets, places, t), 5.6 / 61.1, 5e-3,
         "method.md, worked cases: 66.7 - 61.1 over 61.1"},
    });
    CHECK(unevenness(row, dpi(360), offsets, places, t) < most_uneven);
  }
}

TEST_CASE("angles that meet a resolution") {
  const double degree = right / 90;
  support::check_all({
      {"360 to 600 per inch", *tilt_for(dpi(360), 1, dpi(600)) / degree, 53.13010235415598,
       identity, triangle},
      {"two of 180 to 600", *tilt_for(dpi(180), 2, dpi(600)) / degree, 53.13010235415598, identity,
       triangle},
      {"by 600 lines, j = 1", *tilt_by_lines(dpi(360), 1, dpi(400), dpi(600)) / degree,
       36.86989764584402, identity, "[C] right triangle: sine 360/600"},
      {"by 3600 lines, j = 8", *tilt_by_lines(dpi(360), 1, dpi(600), dpi(3600)) / degree,
       53.13010235415598, 1e-9, "[C] least j of 0.1 j >= 0.8"},
      {"at its greatest", *tilt_for(dpi(300), 1, dpi(600)) / degree, 60, identity,
       "[C] cosine of 60 degrees is a half"},
  });
  CHECK_FALSE(tilt_for(dpi(360), 1, dpi(360)));
  CHECK_FALSE(tilt_for(dpi(360), 2, dpi(600)));
  CHECK_FALSE(tilt_for(dpi(299), 1, dpi(600)));
  CHECK_FALSE(tilt_by_lines(dpi(360), 1, dpi(600), dpi(600)));  // j = 2 has a sine of 1.2
  CHECK_FALSE(tilt_by_lines(dpi(360), 1, dpi(360), dpi(600)));
}

TEST_CASE("what a head of 1000 nozzles at 360 per inch is at 53.13 degrees") {
  const double t = three_four_five;
  const Length s = swath(1000, dpi(360));
  const Length p = 1.0 / dpi(360);
  support::check_all({
      {"native", in_dpi(tilted_native(dpi(360), t)), 600, identity, triangle},
      {"swath, field of 5 mm [mm]", in_mm(tilted_swath(s, millimetres(5), t)),
       1000 * 25.4 / 360 * 0.6 - 5 * 0.8, identity, triangle},
      {"the same turned the other way [mm]", in_mm(tilted_swath(s, millimetres(5), -t)),
       1000 * 25.4 / 360 * 0.6 - 5 * 0.8, identity, triangle},
      {"lines apart at 450", lines_apart(dpi(450), p, t), 1, identity, triangle},
      {"whole lines from 450", in_dpi(whole_lines(dpi(450), p, t)), 450, 1e-9, triangle},
      {"whole lines from 451", in_dpi(whole_lines(dpi(451), p, t)), 900, identity, triangle},
      {"whole lines from 100", in_dpi(whole_lines(dpi(100), p, t)), 450, identity, triangle},
      {"depth of a body 80 x 30 [mm]", in_mm(tilted_depth(millimetres(80), millimetres(30), t)), 82,
       identity, triangle},
  });
}

TEST_CASE("slanted bodies stand in one row from P sin t = depth + gap on") {
  const Length gap = default_body_gap;
  const Length step = millimetres(38);  // 30.4 mm square to the bodies, 22.8 mm beside
  const double t = three_four_five;
  CHECK(tilted_rows(5, millimetres(80), millimetres(29.9), gap, step, t) == 1);
  CHECK(tilted_rows(5, millimetres(80), millimetres(30), gap, step, t) == 2);
  CHECK(tilted_rows(5, millimetres(80), millimetres(30), gap, step, -t) == 2);
  CHECK(tilted_rows(1, millimetres(80), millimetres(30), gap, step, t) == 1);
  CHECK(tilted_rows(5, millimetres(22.3), millimetres(200), gap, step, t) == 1);
  CHECK(tilted_rows(9, millimetres(80), millimetres(200), gap, step, t) == 4);  // 80.5 / 22.8
}

TEST_CASE("a head tilted ever less becomes the straight head") {
  const std::vector<double> offsets{0, 0.5, 0.25, 0.75};
  const std::vector<Length> places{Length{}, millimetres(0.5), millimetres(5), millimetres(5.5)};
  const Length s = millimetres(70);
  const Length step = millimetres(68);
  double before = 1;
  for (const double t : {1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8}) {
    const double off = unevenness(dpi(90), dpi(360), offsets, places, t);
    CHECK(off < before);
    before = off;
    CHECK(tilted_native(dpi(360), t) / dpi(360) == doctest::Approx(1).epsilon(t));
    CHECK(tilted_swath(s, millimetres(5.5), t) / s == doctest::Approx(1).epsilon(t));
    CHECK(tilted_depth(millimetres(80), millimetres(30), t) / millimetres(30) ==
          doctest::Approx(1).epsilon(3 * t));
    CHECK(tilted_rows(9, millimetres(80), millimetres(30), default_body_gap, step, t) ==
          staggered_rows(false, millimetres(80), default_body_gap, step));
  }
  CHECK(unevenness(dpi(90), dpi(360), offsets, places, 0) == doctest::Approx(0).epsilon(1e-12));
}

TEST_CASE("phases of rows are those of their nozzles projected one by one") {
  std::mt19937 random(17);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same heads every run
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random() % 10001) / 10000;
  };
  for (int i = 0; i < 200; ++i) {
    const std::size_t rows = 1 + random() % 4;
    std::vector<double> offsets;
    std::vector<Length> places;
    for (std::size_t r = 0; r < rows; ++r) {
      offsets.push_back(static_cast<double>(r) / static_cast<double>(rows));
      places.push_back(r == 0 ? Length{} : millimetres(between(0, 3)));
    }
    const double row = between(50, 200);
    const double t = between(-1, 1) * most_tilt;
    const std::vector<double> gaps = gaps_by_nozzle(0.0254 / row, offsets, places, t);
    const double pitch = 0.0254 / row / static_cast<double>(rows) * std::cos(t);
    double off = 0;
    for (const double gap : gaps) off = std::max(off, std::abs(gap - pitch) / pitch);
    const double whole =
        unevenness(dpi(row), dpi(row) * static_cast<double>(rows), offsets, places, t);
    CAPTURE(rows);
    CAPTURE(t);
    CHECK(std::abs(whole - off) < 1e-6);
    CHECK(tilted_native(dpi(row), t) / dpi(row) == doctest::Approx(1 / std::cos(t)));
  }
}
