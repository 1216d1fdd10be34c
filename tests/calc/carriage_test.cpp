// One carriage for all groups of a scanning station: expected values from uniform acceleration and
// number theory, worked out here from the printed parts.
#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/selection.h"
#include "calc/station.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

/// Black and a thick white, one scanning head each, in UV ink.
Request panel() {
  Request r = made::plain_request();
  Colour white;
  white.name = "white";
  white.kind = given(ColourKind::white);
  white.film = given(micrometres(30));
  r.colours.push_back(white);
  r.inks.push_back(r.inks.front());
  r.inks.back().name = "white";
  r.line.mode = given(Mode::scanning);
  r.line.indexing = given(true);
  r.line.speed = given(metres_per_second(0.01));
  r.image.length = given(millimetres(300));
  r.line.throw_variation = given(millimetres(0.01));
  return r;
}

/// Two heads, each fit for one family, so that the groups cannot share one.
Catalogue two_heads() {
  Catalogue c = made::catalogue_of({made::plain_head("A"), made::plain_head("B")});
  HeadMode& slow = c.heads.back().modes.front();
  slow.frequency = given(std::vector<Frequency>(3, kilohertz(12)));
  slow.nozzles = given(900);
  c.heads.front().families = given(std::vector{InkFamily::uv});
  c.heads.back().families = given(std::vector{InkFamily::solvent});
  return c;
}

struct Answer {
  Request request;
  Catalogue catalogue;
  Job job;
  Selection selection;

  Answer(Request r, Catalogue c) : request(std::move(r)), catalogue(std::move(c)) {
    job = resolve(request, catalogue, "2026-11-25");
    selection = select(job, catalogue);
  }
};

Rider rider(double khz, double per_inch, int steps, int rows) {
  Rider r;
  r.allowed = kilohertz(khz);
  r.motion_axis = r.nozzle_axis = dpi(per_inch);
  r.steps = steps;
  r.rows = rows;
  r.advance = static_cast<double>(rows) / r.nozzle_axis;
  return r;
}

void check_one_carriage(const Answer& a) {
  REQUIRE(a.selection.chosen.size() == 2);
  const Scan& first = *a.selection.chosen[0].scan;
  const Scan& second = *a.selection.chosen[1].scan;
  CHECK(first.carriage_speed == second.carriage_speed);
  CHECK(first.advance == second.advance);
  CHECK(first.array_length == second.array_length);
  CHECK(first.stroke_time == second.stroke_time);
  CHECK(first.machine_width == second.machine_width);
  CHECK(first.throughput == second.throughput);
  CHECK(first.strokes == second.strokes);
  CHECK(a.selection.chosen[0].speed_limit == a.selection.chosen[1].speed_limit);
}

}  // namespace

TEST_CASE("white and black ride one carriage: least speed, least advance, all rows and lamps") {
  Request r = panel();
  r.inks.back().family = given(InkFamily::solvent);
  r.inks.back().cure_dose.reset();
  const Answer a(r, two_heads());
  check_one_carriage(a);
  const std::vector<Group>& chosen = a.selection.chosen;
  const Scan& scan = *chosen.front().scan;
  Length depth;
  Length least = metres(99);
  for (const Group& g : chosen) {
    depth += g.footprint;
    least = std::min(least, g.scan->advance_nozzles / (g.scan->interlace_steps * g.native));
    CHECK(in_khz(g.frequency_needed) ==
          doctest::Approx(in_khz(scan.carriage_speed * g.resolution_across)));
    CHECK(at_most(g.frequency_needed, g.frequency_allowed));
  }
  CHECK(in_mm(scan.advance) == doctest::Approx(in_mm(least)));
  // One UV group: the lamp of the catalogue, 120 mm deep, on either side.
  CHECK(in_mm(scan.array_length) == doctest::Approx(in_mm(depth) + 240));
  const double v = scan.carriage_speed.si();
  const double t = (0.2 + scan.array_length.si()) / v + 2 * v / 10 + 0.1;
  CHECK(scan.stroke_time.si() == doctest::Approx(t));
  CHECK(scan.machine_width.si() ==
        doctest::Approx(0.2 + scan.array_length.si() + v * v / 10 + 0.2));
  CHECK(scan.throughput.si() == doctest::Approx(0.2 * 0.3 / (scan.strokes * t)));
}

TEST_CASE("arrays that feed fast enough alone are made longer until all together do") {
  Request r = panel();
  for (const double speed : {0.01, 0.03, 0.05}) {
    r.line.speed = given(metres_per_second(speed));
    const Answer a(r, made::catalogue_of({made::plain_head("A")}));
    CAPTURE(speed);
    check_one_carriage(a);
    CHECK(a.selection.chosen.front().speed_limit.si() >= speed * (1 - 1e-9));
    CHECK(failing_gates(a.job, a.catalogue, a.selection.chosen).empty());
    std::vector<Group> shorter = a.selection.chosen;
    for (Group& g : shorter) --g.scan->heads_per_colour;
    if (shorter.front().scan->heads_per_colour < 1) continue;
    if (shorter.back().scan->heads_per_colour < 1) continue;
    CHECK(!failing_gates(a.job, a.catalogue, shorter).empty());
  }
}

TEST_CASE("a lone carriage of UV ink carries its lamps, one of solvent ink has none") {
  Request r = panel();
  r.colours.pop_back();
  Catalogue c = made::catalogue_of({made::plain_head("A")});
  c.heads.front().families = given(std::vector{InkFamily::uv, InkFamily::solvent});
  const Answer uv(r, c);
  r.inks.front().family = given(InkFamily::solvent);
  const Answer solvent(r, c);
  REQUIRE(uv.selection.chosen.size() == 1);
  REQUIRE(solvent.selection.chosen.size() == 1);
  const auto lamps = [](const Answer& a) {
    const Group& g = a.selection.chosen.front();
    return in_mm(g.scan->array_length - g.footprint);
  };
  CHECK(lamps(uv) == doctest::Approx(240));
  CHECK(lamps(solvent) == doctest::Approx(0));
}

namespace {

/// Length of a carriage beside its rows of heads [mm], and of the lamps its stages name, both
/// sides.
struct Lamps {
  double aboard = 0, named = 0;
  std::string cure;
};
Lamps lamps_of(const Answer& a) {
  REQUIRE(!a.selection.chosen.empty());
  Lamps lamps;
  lamps.aboard = in_mm(a.selection.chosen.front().scan->array_length);
  for (const Group& g : a.selection.chosen) lamps.aboard -= in_mm(g.footprint);
  for (const Stage& stage : size_station(a.job, a.catalogue, a.selection.chosen).stages) {
    if (stage.kind == "uv") lamps.cure = stage.equipment;
    for (const Lamp& lamp : a.catalogue.lamps) {
      if (lamp.name == stage.equipment) lamps.named += 2 * in_mm(lamp.depth->value);
    }
  }
  return lamps;
}

/// A catalogue with a second lamp, three times as deep, at a price.
Catalogue two_lamps(double price) {
  Catalogue c = two_heads();
  c.heads.back().families = given(std::vector{InkFamily::uv});
  c.lamps.front().price = given(Price{to_money(7000), "EUR"});
  Lamp deep = c.lamps.front();
  deep.name = "deep";
  deep.depth = given(millimetres(360));
  deep.price = given(Price{to_money(price), "EUR"});
  c.lamps.push_back(deep);
  return c;
}

}  // namespace

TEST_CASE("the lamp chosen for the station rides, not the deepest of the catalogue") {
  // Two alike but for price and depth, 120 and 360 mm, one on either side: method.md section 3.
  for (const bool together : {false, true}) {
    CAPTURE(together);
    Request r = panel();
    if (!together) r.colours.pop_back();
    const Lamps shallow = lamps_of(Answer(r, two_lamps(90000)));
    CHECK(shallow.cure != "deep");
    CHECK(shallow.aboard == doctest::Approx(240));
    CHECK(shallow.named == doctest::Approx(240));
    const Lamps deep = lamps_of(Answer(r, two_lamps(10)));
    CHECK(deep.cure == "deep");
    CHECK(deep.aboard == doctest::Approx(720));
    CHECK(deep.named == doctest::Approx(720));
  }
}

TEST_CASE("pinning rides beside the final cure, on either side as well") {
  Request r = panel();
  r.colours.pop_back();
  r.inks.front().pinning_dose = given(Dose::from_si(300));
  const Lamps lamps = lamps_of(Answer(r, two_lamps(90000)));
  CHECK(lamps.aboard == doctest::Approx(480));
  CHECK(lamps.named == doctest::Approx(480));
}

TEST_CASE("where no ink says its dose the deepest lamp is reckoned, for one will ride") {
  Request r = panel();
  r.colours.pop_back();
  r.inks.front().cure_dose.reset();
  const Lamps lamps = lamps_of(Answer(r, two_lamps(90000)));
  CHECK(lamps.cure.empty());
  CHECK(lamps.aboard == doctest::Approx(720));
}

TEST_CASE("a carriage is fastest at the share of the least rating: 0.9 x 20 kHz at 600 is 0.762") {
  // Definition of frequency: v = 0.9 x 20000 x 25.4 mm / 600 = 0.762 m/s.
  const Parameters p;
  const std::vector<Rider> two{rider(40, 600, 1, 100), rider(20, 600, 1, 100)};
  CHECK(shared_speed(p, two, 0.9).si() == doctest::Approx(0.762));
  CHECK(shared_speed(p, two, 1).si() == doctest::Approx(0.762 / 0.9));
  CHECK(shared_speed(p, {rider(400, 600, 1, 100)}, 1).si() == doctest::Approx(1.5));
}

TEST_CASE("a carriage stays below a band of frequencies known bad, and below the next as well") {
  const Parameters p;
  std::vector<Rider> two{rider(20, 600, 1, 100), rider(20, 300, 1, 100)};
  const Value<Frequency> high = *made::between(kilohertz(17), kilohertz(19));
  const Value<Frequency> next = *made::between(kilohertz(8), kilohertz(8.6));
  two[0].avoid = &high;
  const double below = 0.999 * 17e3 * 0.0254 / 600;
  CHECK(shared_speed(p, two, 0.9).si() == doctest::Approx(below));
  two[1].avoid = &next;  // 0.999 x 17 kHz at 600 is 8.49 kHz at 300
  CHECK(shared_speed(p, two, 0.9).si() == doctest::Approx(0.999 * 8e3 * 0.0254 / 300));
}

TEST_CASE("the advance suits every lattice: whole rows without a common factor with its steps") {
  // 99 rows at 600 in steps of 2 and 199 at 600: 99. At 360 beside 600, rows stand 3 to 5.
  CHECK(shared_advance({rider(20, 600, 2, 99), rider(20, 600, 4, 199)})->si() ==
        doctest::Approx(99 * 0.0254 / 600));
  CHECK(shared_advance({rider(20, 600, 2, 99), rider(20, 360, 1, 90)})->si() ==
        doctest::Approx(95 * 0.0254 / 600));
  CHECK_FALSE(shared_advance({rider(20, 600, 2, 9), rider(20, 611.123, 1, 90)}));
}

TEST_CASE("the rating is spared while the line allows it, and used up on a printed condition") {
  Request r = panel();
  r.colours.pop_back();
  Catalogue c = made::catalogue_of({made::plain_head("A")});
  c.heads.front().modes.front().frequency = given(std::vector<Frequency>(3, kilohertz(10)));
  const auto used = [&](double speed) {
    r.line.speed = given(metres_per_second(speed));
    return Answer(r, c);
  };
  const Answer slow = used(0.001);
  REQUIRE(!slow.selection.chosen.empty());
  CHECK(slow.selection.chosen.front().frequency_use == doctest::Approx(0.9));
  const double spared = slow.selection.chosen.front().speed_limit.si();
  const Answer fast = used(spared * 1.02);
  REQUIRE(!fast.selection.chosen.empty());
  const Group& g = fast.selection.chosen.front();
  REQUIRE(g.scan->heads_per_colour == slow.selection.chosen.front().scan->heads_per_colour);
  CHECK(g.frequency_use == doctest::Approx(1));
  const auto is_high = [](const Notice& n) { return n.code == "high_use"; };
  const auto& with = fast.selection.conditions;
  const auto& without = slow.selection.conditions;
  CHECK(std::count_if(with.begin(), with.end(), is_high) == 1);
  CHECK(std::count_if(without.begin(), without.end(), is_high) == 0);
}
