// The budgets of stations, term by term, and their gate.
#include "calc/placement.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "calc/calculate.h"
#include "calc/dot.h"
#include "calc/eye.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/calc/support/check.h"
#include "tests/calc/support/placement_case.h"

using namespace calc;
using namespace placed;
using support::check_all;
using support::six_digits;

namespace {

constexpr const char* method = "method, section 4";
constexpr const char* worked = "method, worked cases";
constexpr const char* geometry = "[C] plane geometry";
constexpr const char* air = "[C] flight over the same throw, computed in the test";

}  // namespace

TEST_CASE("terms of dots and joints of one colour") {
  const Made made;
  const Specification spec = made.specify();
  REQUIRE(spec.chosen.size() == 1);
  const Group& g = spec.chosen.front();
  REQUIRE(g.rows_staggered == 2);
  const double step = in_mm(g.footprint) / 2;  // body and gap
  REQUIRE(g.flight);
  const LevelFlight& small = g.flight->levels.front();
  const auto arrive = [&](double speed, double mm) {
    return land(small.law, metres_per_second(speed), millimetres(mm))->time.si() * 1e6;
  };
  const double on_time = arrive(6, 1);
  const LevelFlight& large = g.flight->levels.at(1);
  const double last = land(large.law, large.start, millimetres(1))->time.si() * 1e6;
  check_all({
      {"straightness", shift_um(spec, "dot", true, "straightness"), 5.00004, six_digits, method},
      {"speed", shift_um(spec, "dot", true, "speed"), 0.5 * (arrive(5.7, 1) - on_time), 1e-9, air},
      {"levels, half of it", shift_um(spec, "dot", true, "levels"), 0.5 * (on_time - last) / 2,
       1e-9, air},
      {"count, half of it", shift_um(spec, "dot", true, "count"), 2.5, 1e-12, method},
      {"gap", shift_um(spec, "joint", true, "gap"), 0.5 * (arrive(6, 1.05) - on_time), 1e-9, air},
      {"mount", shift_um(spec, "joint", true, "mount"), 10, 1e-12, method},
      {"wheel", shift_um(spec, "joint", true, "wheel"), step * 0.2, 1e-9, method},
      {"thermal", shift_um(spec, "joint", true, "thermal"), step * 11.5e-3 * 5, 1e-9,
       "[P] steel 11.5e-6 a kelvin"},
      {"thermal along the row", shift_um(spec, "joint", false, "thermal"),
       in_mm(g.head_pitch) * 11.5e-3 * 5, 1e-9, "[P] steel 11.5e-6 a kelvin"},
      {"limit", in_um(find(spec, "dot", true)->limit), 25400.0 / 600 / 2, 1e-12, method},
  });
  CHECK(find(spec, "colour", true) == nullptr);
  CHECK(find(spec, "image", true) == nullptr);
  // What all dots of a head share does not part them.
  for (const BudgetTerm& t : find(spec, "dot", true)->terms) {
    CHECK(t.name != "gap");
    CHECK(t.name != "weave");
  }
}

TEST_CASE("weave between two rows, as worked") {
  const auto between = [](double mm) { return 2 * 0.2 * 1000 * std::sin(pi * mm / 3000); };
  check_all(
      {{"60 mm", between(60), 25, 0.01, worked}, {"300 mm", between(300), 124, 0.005, worked}});
  Made made;
  made.second_colour();
  made.request.line.weave = given(millimetres(0.2));
  made.request.image.margin = given(Length{});
  made.request.image.registration = given(micrometres(500));
  const Specification spec = made.specify();
  REQUIRE(!spec.chosen.empty());
  const double apart = in_mm(term(*find(spec, "colour", false), "weave").over);
  check_all({{"as the budget has it", shift_um(spec, "colour", false, "weave"), between(apart),
              1e-9, geometry}});
  made.request.line.weave = given(micrometres(4));
  made.request.line.weave_wavelength = given(millimetres(2 * apart));
  check_all({{"whole at half a wavelength", shift_um(made.specify(), "colour", false, "weave"), 8,
              1e-9, geometry}});
  made.request.image.placement = given(micrometres(2000));
  check_all({{"once against the product", shift_um(made.specify(), "image", false, "weave"), 4,
              1e-9, method}});
}

TEST_CASE("limits: registration asked for, one pitch, ten arc seconds at the distance of the eye") {
  Made made;
  made.second_colour();
  Specification spec = made.specify();
  REQUIRE(!spec.chosen.empty());
  CHECK(in_um(find(spec, "colour", true)->limit) == doctest::Approx(25400.0 / 600));
  made.request.image.registration = given(micrometres(80));
  made.request.image.viewing_distance = given(millimetres(350));
  spec = made.specify();
  REQUIRE(!spec.chosen.empty());
  CHECK(in_um(find(spec, "colour", true)->limit) == doctest::Approx(80));
  CHECK(in_um(find(spec, "joint", true)->limit) == doctest::Approx(16.9685));
  CHECK(in_um(find(spec, "dot", true)->limit) == doctest::Approx(25400.0 / 600 / 2));
}

TEST_CASE("what is given decides, what is assumed only asks for proof") {
  Made made;
  made.request.line.mount_tolerance = given(micrometres(15));
  const Specification asked = made.specify();
  CHECK(asked.verdict == Verdict::conditional);
  CHECK(says(asked.conditions, "placement"));
  made.request.line.mount_tolerance = given(micrometres(25));
  CHECK(rejects(made.specify(), "placement", "joint"));
  // The kind end of an assumed tolerance is no promise: it is never what is shown.
  made.request.line.mount_tolerance.reset();
  const Specification plain = made.specify();
  CHECK(shift_um(plain, "joint", true, "mount") == doctest::Approx(10));
}

TEST_CASE("a known encoder's own count is in the budget, and is no assumption any more") {
  Made made;
  const auto assumed = [](const Specification& spec) {
    return std::any_of(spec.assumptions.begin(), spec.assumptions.end(),
                       [](const Assumption& a) { return a.field == "assume.encoder_count"; });
  };
  const Specification before = made.specify();
  CHECK(shift_um(before, "dot", true, "count") == doctest::Approx(2.5));
  CHECK(assumed(before));
  made.request.line.encoder_step = given(micrometres(12));
  const Specification known = made.specify();
  CHECK(shift_um(known, "dot", true, "count") == doctest::Approx(6));
  CHECK_FALSE(assumed(known));
  // pi 60 mm over 10,000 counts [C].
  made.request.line.encoder_step.reset();
  made.request.line.encoder_wheel = given(millimetres(60));
  made.request.line.encoder_counts = given(10000);
  CHECK(shift_um(made.specify(), "dot", true, "count") == doctest::Approx(9.42478));
}

TEST_CASE("a speed for every level that makes them arrive together leaves no systematic term") {
  Made made;
  const Specification before = made.specify();
  const DropFlight& flight = *before.chosen.front().flight;
  const Time last = land(flight.levels[1].law, flight.levels[1].start, millimetres(1))->time;
  double low = 5;
  double high = 9;
  while (high - low > 1e-9) {
    const double v = (low + high) / 2;
    const Time t = land(flight.levels[0].law, metres_per_second(v), millimetres(1))->time;
    (t > last ? low : high) = v;
  }
  const Speed six = metres_per_second(6);
  made.catalogue.heads.front().modes.front().drop_speed =
      given(std::vector<Speed>{metres_per_second(low), six, six});
  CHECK(shift_um(before, "dot", true, "levels") > 1);
  CHECK(shift_um(made.specify(), "dot", true, "levels") < 1e-6);
}

TEST_CASE("a speed measured at 1 mm is reckoned back to the nozzle") {
  Made made;
  made.catalogue.heads.front().drop_speed_at = given(SpeedPoint::one_mm);
  const LevelFlight level = made.specify().chosen.front().flight->levels.front();
  CHECK(level.start.si() > 6);
  CHECK(speed_after(level.law, level.start, millimetres(1))->si() == doctest::Approx(6));
}

TEST_CASE("without a speed of the drops there is no budget, and the maker is asked") {
  Made made;
  made.catalogue.heads.front().drop_speed.reset();
  const Specification spec = made.specify();
  CHECK(spec.placement.empty());
  REQUIRE(!spec.chosen.empty());
  CHECK_FALSE(spec.chosen.front().flight);
  CHECK(says(spec.conditions, "head_data_unknown"));
  CHECK(std::any_of(spec.questions.begin(), spec.questions.end(),
                    [](const Question& q) { return q.field == "head.A.drop_speed"; }));
}

TEST_CASE("a drop that stops short of the surface fails the throw") {
  Made made;
  made.request.line.speed = given(metres_per_second(0.01));
  made.request.line.throw_distance = given(millimetres(2.9));
  made.catalogue.heads.front().drop_speed = given(metres_per_second(2));
  CHECK(rejects(made.specify(), "throw", "stopped"));
}

TEST_CASE("jets that lie level: the small drop falls farther than the large one") {
  Made made;
  made.request.line.jetting = given(JetDirection::sideways);
  const Specification spec = made.specify();
  const DropFlight& flight = *spec.chosen.front().flight;
  const double small =
      in_um(sag(land(flight.levels[0].law, flight.levels[0].start, flight.budget_throw)->time));
  const double large =
      in_um(sag(land(flight.levels[1].law, flight.levels[1].start, flight.budget_throw)->time));
  check_all({{"half of the difference", shift_um(spec, "dot", false, "sag"), (small - large) / 2,
              1e-9, "g t^2 / 2"}});
}
