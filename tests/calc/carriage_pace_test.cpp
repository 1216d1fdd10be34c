// A carriage slowed to what the line asks for: closed forms of its stroke, and its budgets.
#include "calc/carriage_pace.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "calc/calculate.h"
#include "calc/scan.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

Request panel(double speed) {
  Request r = made::plain_request();
  r.line.mode = given(Mode::scanning);
  r.line.indexing = given(true);
  r.line.speed = given(metres_per_second(speed));
  r.image.length = given(millimetres(300));
  return r;
}

Specification specified(const Request& r, const Catalogue& c) {
  return calculate(r, c, "2026-11-25");
}

const Budget& budget(const std::vector<Budget>& list, bool motion) {
  const auto found = std::find_if(list.begin(), list.end(), [&](const Budget& b) {
    return b.name == "dot" && b.motion == motion;
  });
  REQUIRE(found != list.end());
  return *found;
}

}  // namespace

TEST_CASE("the speed for a stroke is the lesser root: 2 m at 0.5 m/s, 10 m/s2 and 0.1 s is 4.2 s") {
  const auto a = Acceleration::from_si(10);
  const auto v = speed_for_stroke(metres(2), seconds(4.2), a, seconds(0.1));
  REQUIRE(v);
  CHECK(v->si() == doctest::Approx(0.5));
  CHECK(stroke_time(metres(2), Length(), *v, a, seconds(0.1), Time()).si() == doctest::Approx(4.2));
  // Never quicker than 0.1 + 2 sqrt(2 x 2 / 10) s, where turning costs what the way saves.
  CHECK_FALSE(speed_for_stroke(metres(2), seconds(1.3), a, seconds(0.1)));
  CHECK_FALSE(speed_for_stroke(metres(2), seconds(0.05), a, seconds(0.1)));
}

TEST_CASE("the nozzles that print are the advance's rows, once for each pass") {
  CHECK(printing_nozzles(640.0 / dpi(600), dpi(600), 2) == 1280);
  CHECK(printing_nozzles(99.0 / dpi(1200), dpi(1200), 3) == 297);
}

TEST_CASE(
    "at its pace the carriage feeds just as fast as the line, and lags shrink in proportion") {
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  const Specification spec = specified(panel(0.002), c);
  REQUIRE(spec.carriage_pace);
  const CarriagePace& pace = *spec.carriage_pace;
  const Scan& scan = *spec.chosen.front().scan;
  CHECK(pace.speed < scan.carriage_speed);
  const double v = pace.speed.si();
  const double stroke = (0.2 + scan.array_length.si()) / v + 2 * v / 10 + 0.1;
  CHECK(pace.stroke_time.si() == doctest::Approx(stroke));
  CHECK(0.3 / (stroke * scan.strokes) == doctest::Approx(0.002));
  const double share = pace.speed / scan.carriage_speed;
  const Budget& fast = budget(spec.placement, true);
  const Budget& slow = budget(pace.placement, true);
  for (std::size_t i = 0; i < fast.terms.size(); ++i) {
    const bool lags = fast.terms[i].late > Time();
    CHECK(slow.terms[i].shift.si() ==
          doctest::Approx(fast.terms[i].shift.si() * (lags ? share : 1)));
  }
  CHECK(slow.expanded < fast.expanded);
  CHECK(budget(pace.placement, false).expanded == budget(spec.placement, false).expanded);
}

TEST_CASE("no pace without a carriage, or where its head would jet in a bad band") {
  const Catalogue plain = made::catalogue_of({made::plain_head("A")});
  CHECK_FALSE(specified(made::plain_request(), plain).carriage_pace);
  const Specification spec = specified(panel(0.002), plain);
  REQUIRE(spec.carriage_pace);
  const Frequency f = spec.carriage_pace->speed * spec.chosen.front().resolution_across;
  Catalogue bad = plain;
  bad.heads.front().avoid = made::between(f * 0.9, f * 1.1);
  CHECK_FALSE(specified(panel(0.002), bad).carriage_pace);
}

TEST_CASE("a carriage too fast for its budgets is told the pace at which they hold") {
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  Request r = panel(0.002);
  r.line.throw_distance = given(millimetres(1.5));
  const Specification spec = specified(r, c);
  REQUIRE(spec.carriage_pace);
  const PaceGain gain = pace_gain(spec.placement, *spec.carriage_pace);
  CHECK(gain.held > 0);
  CHECK(gain.held <= gain.beyond);
  const auto told = std::find_if(spec.warnings.begin(), spec.warnings.end(),
                                 [](const Notice& n) { return n.code == "carriage_pace"; });
  CHECK(told != spec.warnings.end());
}
