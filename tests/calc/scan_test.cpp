#include "calc/scan.h"

#include <doctest/doctest.h>

#include <numeric>
#include <vector>

#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* motion = "[C] uniform acceleration, computed independently";
constexpr const char* theory = "[C] number theory, computed independently";

std::size_t index(int row) { return static_cast<std::size_t>(row); }

/// How often each row of the finished lattice is printed by passes of `nozzles` nozzles, `steps`
/// rows apart, that advance `advance` rows each.
std::vector<int> printed_rows(int nozzles, int steps, int advance, int passes) {
  std::vector<int> count(index(nozzles * steps + advance * passes), 0);
  for (int pass = 0; pass < passes; ++pass) {
    for (int nozzle = 0; nozzle < nozzles; ++nozzle) {
      ++count[index(pass * advance + nozzle * steps)];
    }
  }
  return count;
}

}  // namespace

TEST_CASE("seven nozzles four rows apart print every row once, continuous from row 18") {
  const std::vector<int> count = printed_rows(7, 4, 7, 20);
  std::vector<int> missing;
  for (int row = 0; row < 60; ++row) {
    CHECK(count[index(row)] <= 1);
    if (count[index(row)] == 0) missing.push_back(row);
  }
  CHECK(missing == std::vector<int>{1, 2, 3, 5, 6, 9, 10, 13, 17});
}

TEST_CASE("the advance prints every row as often as there are quality passes") {
  for (const int nozzles : {7, 16, 48, 100}) {
    for (int steps = 1; steps <= 6; ++steps) {
      for (int passes = 1; passes <= 4; ++passes) {
        const auto rows = advance_rows(nozzles, steps, passes);
        CAPTURE(nozzles);
        CAPTURE(steps);
        CAPTURE(passes);
        REQUIRE(rows.has_value());
        CHECK(std::gcd(*rows, steps) == 1);
        CHECK(*rows * passes <= nozzles);
        for (int more = *rows + 1; more * passes <= nozzles; ++more) {
          CHECK(std::gcd(more, steps) != 1);
        }
        // With exactly J N_q nozzles in use every row of the steady part is met N_q times.
        const int used = *rows * passes;
        const std::vector<int> count = printed_rows(used, steps, *rows, 4 * used);
        for (int row = used * steps; row < *rows * 4 * used; ++row) {
          REQUIRE(count[index(row)] == passes);
        }
      }
    }
  }
  CHECK_FALSE(advance_rows(3, 2, 4).has_value());
}

TEST_CASE("steps, nozzles in line and advance") {
  CHECK(interlace_steps(dpi(600), dpi(300)) == 2);
  CHECK(interlace_steps(dpi(600), dpi(360)) == 2);
  CHECK(interlace_steps(dpi(300), dpi(300)) == 1);
  CHECK(joined_nozzles(1000, 1, 16) == 1000);
  CHECK(joined_nozzles(1000, 3, 16) == 2968);
  CHECK(advance_rows(1000, 4, 2) == 499);
  support::check_all({
      {"499 rows at 4 x 150 [mm]", in_mm(advance_length(499, 4, dpi(150))), 25.4 * 499 / 600,
       identity, theory},
  });
  CHECK(strokes(millimetres(1000), millimetres(20), 1, 1) == 50);
  CHECK(strokes(millimetres(1000), millimetres(20), 2, 2) == 53);
  CHECK(strokes(millimetres(1001), millimetres(20), 1, 1) == 51);
}

TEST_CASE("carriage speed") {
  const Frequency usable = kilohertz(30);
  support::check_all({
      {"by frequency", carriage_speed(usable, dpi(600), 2, false, {}).si(), 1.27, identity,
       "f = v R"},
      {"alternating mask", carriage_speed(usable, dpi(600), 2, true, {}).si(), 2.54, identity,
       "f = v R, each pass prints every other column"},
      {"by the carriage", carriage_speed(usable, dpi(600), 2, true, metres_per_second(1.5)).si(),
       1.5, 0, "carriage limit"},
      {"a fast carriage does not help",
       carriage_speed(usable, dpi(600), 2, false, metres_per_second(3)).si(), 1.27, identity,
       "f = v R"},
  });
}

TEST_CASE("strokes and machine width") {
  const Speed v = metres_per_second(1);
  const Acceleration a = default_carriage_acceleration;
  const Time worked = stroke_time(metres(1.6), metres(0.5), v, a, seconds(0.1), seconds(0));
  const Time bare = stroke_time(metres(1.6), Length{}, v, a, seconds(0.1), seconds(0));
  const Length advance = millimetres(72.2) / 4;
  support::check_all({
      {"array 0.5 m: 2.3 s and the dwell", worked.si(), 2.4, identity, motion},
      {"no array", bare.si(), 1.9, identity, motion},
      {"a slow feed step governs",
       stroke_time(metres(1.6), Length{}, v, a, seconds(0.1), seconds(0.5)).si(), 2.1, identity,
       motion},
      {"overtravel", overtravel(v, a).si(), 0.05, identity, motion},
      {"rate with turning [m2/h]", endless_throughput(metres(1.6), advance, bare).si() * 3600,
       54.72, identity, motion},
      {"rate without turning [m2/h]",
       endless_throughput(metres(1.6), advance, seconds(1.6)).si() * 3600, 64.98, identity, motion},
      {"duty", 1.6 / bare.si(), 0.842105, six_digits, motion},
      {"machine width", machine_width(metres(1.6), metres(0.5), v, a, metres(0.3)).si(), 2.5,
       identity, motion},
      {"image of ten strokes", image_time(10, bare).si(), 19, identity, motion},
      {"throughput of images [m2/h]",
       scan_throughput(metres(1.6), metres(1), image_time(10, bare)).si() * 3600, 1.6 * 3600 / 19,
       identity, motion},
  });
}
