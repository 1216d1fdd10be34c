#include "calc/frequency.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "[C] f = v R, computed independently";
constexpr const char* practice = "common practice";

double column_khz(double metres_per_minute, double resolution) {
  return in_khz(column_frequency(metres_per_second(metres_per_minute / 60), dpi(resolution)));
}

double allowed_khz(const std::vector<double>& khz, int drops, GreyMethod method, int levels) {
  std::vector<Frequency> ratings;
  ratings.reserve(khz.size());
  for (const double f : khz) ratings.push_back(kilohertz(f));
  return in_khz(allowed_frequency(ratings, drops, method, levels).value);
}

}  // namespace

TEST_CASE("frequency of a column") {
  support::check_all({
      {"600 dpi, 1 m/s", column_khz(60, 600), 23.6220, six_digits, closed},
      {"600 dpi, 50 m/min", column_khz(50, 600), 19.6850, six_digits, closed},
      {"600 dpi, 100 m/min", column_khz(100, 600), 39.3701, six_digits, closed},
      {"600 dpi, 100 m/min to the hertz", column_khz(100, 600), 39.370, 1e-5, "hand-worked"},
      {"600 dpi, 400 ft/min", column_khz(400 * 0.3048, 600), 48, identity, closed},
      {"360 dpi, 1 m/s", column_khz(60, 360), 14.1732, six_digits, closed},
      {"1200 dpi, 1 m/s", column_khz(60, 1200), 47.2441, six_digits, closed},
      {"300 dpi, 2 m/s", column_khz(120, 300), 23.6220, six_digits, closed},
      {"8.5 in at 300 dpi in half a second [kHz]",
       in_khz(column_frequency(metres_per_second(8.25 * 0.0254 / 0.5), dpi(300))), 5, 0.03,
       "[P] pctechguide.com: about 1/5000th of a second"},
      {"greatest speed at 30 kHz, 600 dpi", speed_limit(1, kilohertz(30), dpi(600)).si(), 1.27,
       identity, closed},
      {"the same [m/min]", speed_limit(1, kilohertz(30), dpi(600)).si() * 60, 76.2, identity,
       closed},
      {"two heads a column", in_khz(nozzle_frequency(kilohertz(39.37), 2)), 19.685, identity,
       closed},
      {"reserve of a tenth", in_khz(usable_frequency(kilohertz(50), 0.1)), 45, identity, closed},
      {"use", frequency_use(kilohertz(45), kilohertz(50)), 0.9, identity, closed},
  });
}

TEST_CASE("heads sharing a column") {
  CHECK(least_stack(kilohertz(150), kilohertz(50)) == 3);
  CHECK(least_stack(kilohertz(150.001), kilohertz(50)) == 4);
  CHECK(least_stack(kilohertz(12), kilohertz(50)) == 1);
  CHECK(least_stack(column_frequency(metres_per_second(400 * 0.3048 / 60), dpi(600)),
                    kilohertz(16)) == 3);
}

TEST_CASE("the speed limit is where one head more is needed") {
  std::mt19937 random(7);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same points every run
  for (int i = 0; i < 200; ++i) {
    const Frequency usable = kilohertz(5 + static_cast<double>(random() % 1000) / 10);
    const Resolution resolution = dpi(100 + static_cast<double>(random() % 1100));
    const int stack = 1 + static_cast<int>(random() % 6);
    const Speed limit = speed_limit(stack, usable, resolution);
    CHECK(least_stack(column_frequency(limit, resolution), usable) == stack);
    CHECK(least_stack(column_frequency(limit * (1 + 1e-6), resolution), usable) == stack + 1);
  }
}

TEST_CASE("ratings for the highest level used") {
  using enum GreyMethod;
  constexpr const char* rating = "as rated by the catalogue";
  support::check_all({
      {"list, binary use", allowed_khz({60, 40, 30}, 3, amplitude, 2), 60, identity, rating},
      {"list, three levels", allowed_khz({60, 40, 30}, 3, amplitude, 3), 40, identity, rating},
      {"list, four levels", allowed_khz({60, 40, 30}, 3, subdrops, 4), 30, identity, rating},
      {"binary head", allowed_khz({50}, 1, amplitude, 2), 50, identity, rating},
      {"binary rating, binary use", allowed_khz({50}, 2, subdrops, 2), 50, identity, rating},
      {"binary rating, amplitude", allowed_khz({50}, 2, amplitude, 3), 30, identity, practice},
      {"binary rating, sub-drops at 4 levels", allowed_khz({90}, 3, subdrops, 4), 30, identity,
       practice},
  });
  CHECK(allowed_frequency({kilohertz(50)}, 2, amplitude, 3).from_binary);
  CHECK_FALSE(allowed_frequency({kilohertz(50)}, 2, amplitude, 2).from_binary);
  CHECK_FALSE(allowed_frequency({kilohertz(50), kilohertz(30)}, 2, amplitude, 3).from_binary);
}

TEST_CASE("a bad band holds its ends") {
  const Frequency low = kilohertz(18);
  const Frequency high = kilohertz(21);
  CHECK(in_bad_band(kilohertz(18), low, high));
  CHECK(in_bad_band(kilohertz(20), low, high));
  CHECK(in_bad_band(kilohertz(21), low, high));
  CHECK_FALSE(in_bad_band(kilohertz(17.9), low, high));
  CHECK_FALSE(in_bad_band(kilohertz(21.1), low, high));
}

TEST_CASE("native resolution of rows") {
  const auto native = [](double row, const std::vector<double>& offsets) {
    return in_dpi(native_resolution(dpi(row), offsets).value);
  };
  constexpr const char* rows = "[C] rows times nozzles an inch";
  support::check_all({
      {"8 rows of 50", native(50, {0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875}), 400, identity,
       rows},
      {"4 rows of 150", native(150, {0, 0.25, 0.5, 0.75}), 600, identity, rows},
      {"2 rows of 180", native(180, {0, 0.5}), 360, identity, rows},
      {"4 rows of 300 in any order", native(300, {0.5, 0, 0.75, 0.25}), 1200, identity, rows},
      {"one row", native(100, {0}), 100, identity, rows},
      {"whole pitches do not count", native(180, {0, 3.5}), 360, identity, rows},
      {"thirds as written", native(100, {0, 0.333, 0.667}), 300, identity, rows},
      {"uneven: the largest gap", native(100, {0, 0.25}), 100 / 0.75, identity, closed},
      {"uneven: three rows", native(100, {0, 0.2, 0.6}), 100 / 0.4, identity, closed},
      {"two rows in one place", native(100, {0, 1}), 100, identity, rows},
      {"pairs of rows in one place", native(100, {0, 0.5, 2, 1.5}), 200, identity, rows},
  });
  CHECK(native_resolution(dpi(180), {0, 0.5}).even);
  CHECK_FALSE(native_resolution(dpi(100), {0, 0.25}).even);
  CHECK(native_resolution(dpi(100), {0, 0.5, 2, 1.5}).distinct_rows == 2);
}

TEST_CASE("the least interleave that meets the need") {
  CHECK(least_interleave(dpi(360), dpi(600)) == 2);
  CHECK(least_interleave(dpi(300), dpi(600)) == 2);
  CHECK(least_interleave(dpi(600), dpi(600)) == 1);
  CHECK(least_interleave(dpi(150), dpi(600)) == 4);
  CHECK_FALSE(least_interleave(dpi(150), dpi(610)));
  CHECK(support::near(in_dpi(interleaved(dpi(360), 2)), 720, identity));
}
