#include "calc/across.h"

#include <doctest/doctest.h>

#include <random>

#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* pitches = "[C] whole nozzle pitches, computed independently";

int heads(double width, double swath_mm, double pitch_mm) {
  return heads_across(millimetres(width), millimetres(swath_mm), millimetres(pitch_mm));
}

}  // namespace

TEST_CASE("heads across a width") {
  CHECK(heads(210, 70.5, 69) == 4);
  CHECK(heads(500, 70.5, 69) == 8);
  CHECK(heads(1600, 72, 72) == 23);
  const auto unrounded = [](double width, double swath_mm, double pitch_mm) {
    const Length one = printed_width(1, millimetres(swath_mm), millimetres(pitch_mm));
    const Length two = printed_width(2, millimetres(swath_mm), millimetres(pitch_mm));
    return 1 + (millimetres(width) - one) / (two - one);
  };
  support::check_all({
      {"500 mm, before rounding up", unrounded(500, 70.5, 69), 7.22464, six_digits, pitches},
      {"210 mm, before rounding up", unrounded(210, 70.5, 69), 3.02174, six_digits, pitches},
  });
  CHECK(heads(70.5, 70.5, 69) == 1);
  CHECK(heads(70.6, 70.5, 69) == 2);
  CHECK(heads(70.5 + 69, 70.5, 69) == 2);
}

TEST_CASE("whole pitches need one head more than a plain division says") {
  const Length p = 1.0 / dpi(360);
  const Length step = head_pitch(millimetres(70.5), millimetres(1.5), p);
  support::check_all({
      {"pitches", step / p, 977, identity, pitches},
      {"head pitch [mm]", in_mm(step), 68.9327778, 1e-8, pitches},
  });
  CHECK(heads_across(millimetres(484.3), millimetres(70.5), step) == 8);
  CHECK(ceil_tolerant((484.3 - 1.5) / (70.5 - 1.5)) == 7);
}

TEST_CASE("swath, overlap and width") {
  const Length p = 1.0 / dpi(600);
  support::check_all({
      {"1000 nozzles at 600 [mm]", in_mm(swath(1000, dpi(600))), 42.3333333, 1e-8, pitches},
      {"overlap of joining heads", default_overlap(true, p).si(), 0, 0, pitches},
      {"overlap of staggered heads", default_overlap(false, p) / p, 16, identity,
       "common practice"},
      {"a whole overlap stays whole",
       head_pitch(swath(1000, dpi(600)), default_overlap(false, p), p) / p, 984, identity, pitches},
      {"print width [mm]", in_mm(print_width(millimetres(200), millimetres(5))), 210, identity,
       pitches},
      {"printed width [mm]", in_mm(printed_width(4, millimetres(70.5), millimetres(69))), 277.5,
       identity, pitches},
      {"idle share", idle_nozzle_share(millimetres(210), 4, millimetres(70.5), millimetres(69)),
       1 - 210 / 277.5, identity, pitches},
      {"depth of two rows [mm]", in_mm(rows_depth(2, millimetres(40))), 100, identity, pitches},
  });
}

TEST_CASE("the least number of heads covers the width and one fewer does not") {
  std::mt19937 random(11);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same points every run
  for (int i = 0; i < 500; ++i) {
    const Length s = millimetres(20 + static_cast<double>(random() % 1000) / 10);
    const Length step = s * (0.8 + static_cast<double>(random() % 200) / 1000);
    const Length width = millimetres(1 + static_cast<double>(random() % 20000) / 10);
    const int n = heads_across(width, s, step);
    CHECK(at_least(printed_width(n, s, step), width));
    if (n > 1) CHECK_FALSE(at_least(printed_width(n - 1, s, step), width));
    CHECK(idle_nozzle_share(width, n, s, step) >= -1e-9);
  }
}

TEST_CASE("rows of staggered heads") {
  const Length gap = default_body_gap;
  CHECK(staggered_rows(false, millimetres(70), gap, millimetres(69)) == 2);
  CHECK(staggered_rows(false, millimetres(68.5), gap, millimetres(69)) == 1);
  CHECK(staggered_rows(false, millimetres(140), gap, millimetres(69)) == 3);
  CHECK(staggered_rows(true, millimetres(140), gap, millimetres(69)) == 1);
  CHECK(rows_in_group(1, 2) == 1);
  CHECK(rows_in_group(5, 2) == 2);
}

TEST_CASE("heads stand centred on the width, a pitch apart") {
  const Length s = millimetres(70.5);
  const Length step = millimetres(69);
  const Length first = head_start(0, millimetres(210), 4, s, step);
  const Length last = head_start(3, millimetres(210), 4, s, step);
  support::check_all({
      {"first [mm]", in_mm(first), -33.75, identity, pitches},
      {"last ends [mm]", in_mm(last + s), 243.75, identity, pitches},
      {"pitch [mm]", in_mm(head_start(1, millimetres(210), 4, s, step) - first), 69, identity,
       pitches},
  });
}

TEST_CASE("every head but the first is one joint") {
  for (int positions = 1; positions <= 4; ++positions) {
    for (int n = 1; n <= 5; ++n) {
      for (int k = 1; k <= 3; ++k) {
        for (int m = 1; m <= 3; ++m) {
          CHECK(joints(positions, n, k, m).total() == heads_in_group(positions, n, k, m) - 1);
        }
      }
    }
  }
  CHECK(joints(4, 3, 1, 1).stitch == 8);
  CHECK(joints(4, 3, 1, 1).colour == 3);
  CHECK(joints(1, 3, 2, 1).interleave == 1);
  CHECK(joints(2, 3, 1, 2).stack == 2);
}
