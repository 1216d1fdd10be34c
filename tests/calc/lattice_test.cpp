#include "calc/lattice.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* geometry = "[C] plane geometry, computed independently";

double closing_um(double across, double along) {
  return in_um(closing_dot(pitch(dpi(across)), pitch(dpi(along))));
}
double square_cover(double x) { return covered_fraction(metres(x), metres(1), metres(1)); }

/// Share of random points of the lattice's cell that lie under any dot near it.
double sampled_cover(double dot, double a, double b, std::mt19937& random) {
  constexpr int points = 200000;
  const auto uniform = [&] { return static_cast<double>(random()) / 4294967296.0; };
  int covered = 0;
  for (int i = 0; i < points; ++i) {
    const double x = uniform() * a;
    const double y = uniform() * b;
    bool hit = false;
    for (int column = -4; column <= 5 && !hit; ++column) {
      for (int row = -4; row <= 5 && !hit; ++row) {
        hit = std::hypot(x - column * a, y - row * b) <= dot / 2;
      }
    }
    covered += hit ? 1 : 0;
  }
  return static_cast<double>(covered) / points;
}

}  // namespace

TEST_CASE("the dot that closes solids is the lattice's diagonal") {
  support::check_all({
      {"300 dpi", closing_um(300, 300), 119.737, six_digits, geometry},
      {"360 dpi", closing_um(360, 360), 99.7806, six_digits, geometry},
      {"400 dpi", closing_um(400, 400), 89.8026, six_digits, geometry},
      {"600 dpi", closing_um(600, 600), 59.8684, six_digits, geometry},
      {"720 dpi", closing_um(720, 720), 49.8903, six_digits, geometry},
      {"1200 dpi", closing_um(1200, 1200), 29.9342, six_digits, geometry},
      {"600 x 300 dpi", closing_um(600, 300), 94.6602, six_digits, geometry},
  });
}

TEST_CASE("cover of the square lattice") {
  support::check_all({
      {"small dot", square_cover(0.5), 0.19634954084936207, identity, geometry},
      {"1.0", square_cover(1.0), 0.785398, 1e-6, geometry},
      {"1.1", square_cover(1.1), 0.888653, 1e-6, geometry},
      {"1.2", square_cover(1.2), 0.950911, 1e-6, geometry},
      {"1.2 by 4e5 random points", square_cover(1.2), 0.95068, 5e-4,
       "[C] Monte Carlo of the sheet"},
      {"1.3", square_cover(1.3), 0.986545, 1e-6, geometry},
      {"1.4", square_cover(1.4), 0.999797, 1e-6, geometry},
      {"the diagonal", square_cover(std::sqrt(2.0)), 1, 0, geometry},
      {"beyond it", square_cover(1.7), 1, 0, geometry},
      {"no dot", square_cover(0), 0, 0, geometry},
  });
}

TEST_CASE("cover of rectangular lattices agrees with random points") {
  std::mt19937 random(20261125);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same points every run
  struct Row {
    double dot, a, b;
  };
  // Dot below both pitches, between them, above both, near and above the diagonal; steep lattices.
  const std::vector<Row> rows = {{0.8, 1, 2},     {1.3, 1, 2},  {1.9, 1, 2},    {2.1, 1, 2},
                                 {2.2, 1, 2},     {2.24, 1, 2}, {1.5, 1, 1.4},  {1.05, 1, 1.1},
                                 {2.5, 1, 3},     {3.1, 1, 3},  {0.95, 1, 1.2}, {1.3, 0.5, 1.25},
                                 {1.3, 1.25, 0.5}};
  for (const Row& row : rows) {
    CAPTURE(row.dot);
    CAPTURE(row.a);
    CAPTURE(row.b);
    const double exact = covered_fraction(metres(row.dot), metres(row.a), metres(row.b));
    const double sampled = sampled_cover(row.dot, row.a, row.b, random);
    const double four_sigma = 4 * std::sqrt(exact * (1 - exact) / 200000) + 1e-5;
    CHECK(std::abs(exact - sampled) <= four_sigma);
  }
}

TEST_CASE("cover grows with the dot, up to 1, and turning the lattice changes nothing") {
  for (const double b : {1.0, 1.5, 2.0, 4.0}) {
    double last = 0;
    for (int step = 1; step < 100; ++step) {
      const double dot = 0.05 * step;
      const double cover = covered_fraction(metres(dot), metres(1), metres(b));
      CAPTURE(dot);
      CHECK(cover >= last);
      CHECK(cover <= 1);
      CHECK(support::near(covered_fraction(metres(dot), metres(b), metres(1)), cover, identity));
      last = cover;
    }
    CHECK(last == 1);
  }
}

TEST_CASE("the solid drop is the smallest whose dot closes") {
  const std::vector<Length> dots{micrometres(40), micrometres(60), micrometres(75)};
  const Length p600 = pitch(dpi(600));
  CHECK(solid_level(dots, p600, p600) == 1U);
  CHECK(solid_level(dots, p600, pitch(dpi(1200))) == 1U);
  CHECK(solid_level(dots, pitch(dpi(1200)), pitch(dpi(1200))) == 0U);
  CHECK_FALSE(solid_level(dots, pitch(dpi(300)), pitch(dpi(300))).has_value());
  CHECK(closes(closing_dot(p600, p600), p600, p600));
  CHECK(closes(closing_dot(p600, p600) * (1 - 1e-12), p600, p600));
  CHECK_FALSE(closes(closing_dot(p600, p600) * (1 - 1e-6), p600, p600));
}

TEST_CASE("the least resolution along the motion that closes solids") {
  const Length p600 = pitch(dpi(600));
  const Length dot = micrometres(53.8);
  CHECK_FALSE(closes(dot, p600, p600));
  const auto found = closing_resolution(dot, p600, dpi(600), dpi(1200));
  REQUIRE(found.has_value());
  CHECK(std::round(in_dpi(*found)) == 765);
  CHECK(closes(dot, p600, pitch(*found)));
  CHECK_FALSE(closes(dot, p600, pitch(*found * (1 - 1e-6))));
  // It closes as it is; it can never close; it would take more than twice.
  CHECK_FALSE(closing_resolution(micrometres(60), p600, dpi(600), dpi(1200)).has_value());
  CHECK_FALSE(closing_resolution(micrometres(42), p600, dpi(600), dpi(1200)).has_value());
  CHECK_FALSE(closing_resolution(micrometres(45), p600, dpi(600), dpi(1200)).has_value());
  // Exactly twice is still taken.
  const Length twice = closing_dot(p600, pitch(dpi(1200)));
  // A coarse demand on a fine head: as fine along as across closes what twice the demand does not.
  CHECK(finest_along(dpi(100), dpi(600)) == dpi(600));
  CHECK(finest_along(dpi(600), dpi(600)) == dpi(1200));
  const Length wide = micrometres(60);
  CHECK_FALSE(closing_resolution(wide, p600, dpi(100), dpi(200)).has_value());
  CHECK(closing_resolution(wide, p600, dpi(100), finest_along(dpi(100), dpi(600))).has_value());
  CHECK(closing_resolution(twice, p600, dpi(600), dpi(1200)).has_value());
}

TEST_CASE("lines, gaps, edges and dead nozzles") {
  const Length p = pitch(dpi(600));
  const Length dot = closing_dot(p, p);
  support::check_all({
      {"line of three [um]", in_um(line_width(3, p, dot)), 2 * 42.33333 + 59.8684, six_digits,
       geometry},
      {"gap of three [um]", in_um(gap_width(3, p, dot)), 4 * 42.33333 - 59.8684, six_digits,
       geometry},
      {"edge gain at 600 dpi [um]", in_um(edge_gain(p, dot)), 17.5350, six_digits, geometry},
      {"deviation of three", line_deviation(3, p, dot), 17.5350 / 127, six_digits, geometry},
      {"deviation counts both ways", line_deviation(1, p, p * 0.6), 0.4, identity, geometry},
      {"dead nozzle, 60 um dot [um]", in_um(dead_nozzle_gap(p, micrometres(60))), 24.66667, 1e-6,
       geometry},
      {"hiding dot [um]", in_um(dead_nozzle_hiding_dot(p, p)), 94.6602, six_digits, geometry},
      {"ceiling of a 50 um dot [dpi]", in_dpi(useful_ceiling(micrometres(50))), 1016, identity,
       geometry},
      {"one dot off is [um]", -in_um(p), -42.3333, six_digits, geometry},
  });
  CHECK(support::near((line_width(5, p, dot) + gap_width(2, p, dot)) / p, 7, identity));
  CHECK(bar_reduction_dots(p, p * 1.4) == 0);
  CHECK(bar_reduction_dots(p, p * 1.6) == 1);
  CHECK(bar_reduction_dots(p, p * 2.9) == 2);
  CHECK(bar_reduction_dots(p, p * 0.3) == 0);
  CHECK(finer_than_dot(p * 2.1, p, p));
  CHECK_FALSE(finer_than_dot(p * 2, p, p));
  CHECK_FALSE(finer_than_dot(p * 2.1, p, p * 1.5));
}

TEST_CASE("grey levels count the empty dot") {
  CHECK(levels_used(0) == 2);
  CHECK(levels_used(2) == 4);
  const std::vector<std::array<int, 2>> expected = {{2, 1}, {3, 2}, {4, 2}, {5, 3},
                                                    {8, 3}, {9, 4}, {16, 4}};
  for (const auto& row : expected) {
    CAPTURE(row[0]);
    CHECK(bits_per_dot(row[0]) == row[1]);
  }
}
