// Ticks and places of a plot; the figures follow from the definitions of linear and logarithmic
// axes.
#include "output/plot.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tests/output/support/hand_made.h"

namespace {

using Numbers = std::vector<double>;

bool near(const Numbers& one, const Numbers& other) {
  if (one.size() != other.size()) return false;
  for (std::size_t i = 0; i < one.size(); ++i) {
    if (std::abs(one[i] - other[i]) > 1e-9 * std::max(1.0, std::abs(other[i]))) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("ticks are multiples of 1, 2 or 5 times a power of ten, at most so many") {
  CHECK(near(output::round_ticks(0, 10, 6), {0, 2, 4, 6, 8, 10}));
  CHECK(near(output::round_ticks(0, 1, 6), {0, 0.2, 0.4, 0.6, 0.8, 1}));
  CHECK(near(output::round_ticks(-3, 12, 5), {0, 5, 10}));
  CHECK(near(output::round_ticks(17, 93, 9), {20, 30, 40, 50, 60, 70, 80, 90}));
  CHECK(near(output::round_ticks(0, 0.0007, 8), {0, 1e-4, 2e-4, 3e-4, 4e-4, 5e-4, 6e-4, 7e-4}));
  for (int power = 0; power < 30; ++power) {
    const double high = 0.013 * std::pow(1.7, power);
    for (std::size_t most = 2; most < 9; ++most) {
      CHECK(output::round_ticks(0, high, most).size() <= most);
    }
  }
}

TEST_CASE("ticks of a logarithmic axis are 1, 2 and 5 times each power of ten") {
  CHECK(near(output::decade_ticks(80, 2000), {100, 200, 500, 1000, 2000}));
  CHECK(near(output::decade_ticks(0.5, 3), {0.5, 1, 2}));
}

TEST_CASE("a point stands where its axes put it, one beyond them at their end") {
  output::Sketch sketch(120, 60);
  const output::Plot linear(sketch, {10, 5, 100, 40}, {"x", 0, 10, false}, {"y", 0, 4, false});
  CHECK(linear.at(2.5, 1).x == doctest::Approx(35));
  CHECK(linear.at(2.5, 1).y == doctest::Approx(35));
  CHECK(linear.at(-1, 9).x == doctest::Approx(10));
  CHECK(linear.at(-1, 9).y == doctest::Approx(5));
  const output::Plot logarithmic(sketch, {10, 5, 100, 40}, {"x", 1, 100, true},
                                 {"y", 1, 1e4, true});
  CHECK(logarithmic.at(10, 10).x == doctest::Approx(60));
  CHECK(logarithmic.at(10, 10).y == doctest::Approx(35));
}

TEST_CASE("an axis told in another unit has round ticks of that unit at the same places") {
  // An inch is 25.4 mm, a foot 0.3048 m: the international yard and pound agreement of 1959.
  hand_made::Case made = hand_made::feasible();
  const output::Templates templates;
  const auto drawn = [&](calc::UnitSystem units) {
    made.request.request.units.emplace().value = units;
    const output::Context c(made.spec, made.request, templates);
    output::Sketch sketch(120, 60);
    const output::Plot plot(sketch, {10, 5, 100, 40},
                            output::length_axis(c, "plot.distance", 0, 254),
                            output::speed_axis(c, "plot.speed", 0, 30.48));
    plot.draw_axes();
    CHECK(plot.at(127, 15.24).x == doctest::Approx(60));
    CHECK(plot.at(127, 15.24).y == doctest::Approx(25));
    return sketch.figure("", "", false);
  };
  const std::string metric = drawn(calc::UnitSystem::si), us = drawn(calc::UnitSystem::us);
  const auto has = [](const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
  };
  CHECK(has(metric, ", mm<"));
  CHECK(has(metric, ", m/min<"));
  CHECK(has(metric, ">250<"));
  CHECK(has(us, ", in<"));
  CHECK(has(us, ", ft/min<"));
  CHECK(has(us, ">10<"));   // 254 mm
  CHECK(has(us, ">100<"));  // 30.48 m/min
  CHECK_FALSE(has(us, ">250<"));
}
