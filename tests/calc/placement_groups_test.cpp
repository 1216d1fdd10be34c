// Budgets of placement on a carriage and of several groups, their conditions and questions.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "calc/calculate.h"
#include "calc/dot.h"
#include "calc/eye.h"
#include "calc/placement.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/calc/support/check.h"
#include "tests/calc/support/placement_case.h"

using namespace calc;
using namespace placed;
using support::check_all;

namespace {

constexpr const char* method = "method, section 4";
constexpr const char* geometry = "[C] plane geometry";
constexpr const char* air = "[C] flight over the same throw, computed in the test";

}  // namespace

TEST_CASE("to and fro a drop's own deviation turns its sign and counts once, a shared gap twice") {
  Made made;
  made.request.line.mode = given(Mode::scanning);
  made.request.line.indexing = given(true);
  made.request.line.speed = given(metres_per_second(0.005));
  made.request.line.throw_variation = given(millimetres(0.005));
  made.request.image.placement = given(micrometres(5000));
  const Specification spec = made.specify();
  REQUIRE(!spec.chosen.empty());
  const Group& g = spec.chosen.front();
  const double u = g.scan->carriage_speed.si();
  const double by_gap = u * g.flight->gap_delay.si() * 1e6;
  check_all(
      {{"speed", shift_um(spec, "dot", true, "speed"), u * g.flight->speed_delay.si() * 1e6, 1e-9,
        "[C] a signed deviation about the lattice"},
       {"speed at a joint", shift_um(spec, "joint", true, "speed"),
        u * g.flight->speed_delay.si() * 1e6, 1e-9, "[C] a signed deviation"},
       {"levels, half either way", shift_um(spec, "dot", true, "levels"),
        u * g.flight->level_delay.si() * 1e6 / 2, 1e-9, "[C] timed to the middle each way"},
       {"gap between strokes", shift_um(spec, "joint", true, "gap"), 2 * by_gap, 1e-9, method},
       {"gap against the product", shift_um(spec, "image", true, "gap"), by_gap, 1e-9,
        "[C] every stroke is off once"},
       {"feed", shift_um(spec, "joint", false, "wheel"), in_mm(g.scan->advance) * 0.2, 1e-9,
        method}});
}

TEST_CASE(
    "to and fro over an uneven product: strokes part by twice its delay, heads of a line not") {
  // Delay by flight over 0.02 mm more than the nominal throw; method.md section 4, lag terms
  // double.
  Made made;
  made.request.product.thickness_variation = given(millimetres(0.02));
  const auto delay = [](const Specification& spec) {
    const DropFlight& flight = *spec.chosen.front().flight;
    const LevelFlight& small = flight.levels.front();
    const auto arrive = [&](Length way) { return land(small.law, small.start, way)->time; };
    return (arrive(flight.budget_throw + millimetres(0.02)) - arrive(flight.budget_throw)).si();
  };
  made.request.image.placement = given(micrometres(5000));
  made.second_colour();
  const Specification line = made.specify();
  REQUIRE(!line.chosen.empty());
  const auto has = [](const Specification& spec, std::string_view budget) {
    const Budget* found = find(spec, budget, true);
    REQUIRE(found != nullptr);
    return std::any_of(found->terms.begin(), found->terms.end(),
                       [](const BudgetTerm& t) { return t.name == "thickness"; });
  };
  CHECK_FALSE(has(line, "dot"));
  CHECK_FALSE(has(line, "joint"));
  CHECK_FALSE(has(line, "colour"));
  check_all({{"image on a line", shift_um(line, "image", true, "thickness"),
              made.request.line.speed->high.si() * delay(line) * 1e6, 1e-9, air}});
  made.request.line.mode = given(Mode::scanning);
  made.request.line.indexing = given(true);
  made.request.line.speed = given(metres_per_second(0.005));
  made.request.line.throw_variation = given(Length{});
  const Specification to_and_fro = made.specify();
  REQUIRE(!to_and_fro.chosen.empty());
  const double u = to_and_fro.chosen.front().scan->carriage_speed.si();
  CHECK_FALSE(has(to_and_fro, "dot"));
  const double twice = 2 * u * delay(to_and_fro) * 1e6;
  check_all({{"joint", shift_um(to_and_fro, "joint", true, "thickness"), twice, 1e-9, air},
             {"colour", shift_um(to_and_fro, "colour", true, "thickness"), twice, 1e-9, air}});
  const BudgetTerm& t = term(*find(to_and_fro, "colour", true), "thickness");
  CHECK(t.kind == TermKind::rectangular);
  CHECK(t.half_width == doctest::Approx(0.02));
  // From product to product the throw can be set anew: it is to be proved, and rejects no head.
  made.request.product.thickness_variation = given(millimetres(0.4));
  const Specification uneven = made.specify();
  REQUIRE(!uneven.chosen.empty());
  for (const char* code : {"placement", "throw_anew"}) {
    CAPTURE(code);
    CHECK(std::any_of(uneven.conditions.begin(), uneven.conditions.end(), [&](const Notice& n) {
      return n.code == code && n.field == "product.thickness_variation";
    }));
  }
  const auto joined = [&] {
    for (const Notice& n : uneven.conditions) {
      if (n.code != "placement") continue;
      const auto& subject = std::get<std::string>(n.args.front().value);
      if (subject.starts_with("stroke")) return subject;
    }
    return std::string();
  };
  const bool alone = uneven.chosen.front().scan->heads_per_colour == 1;
  CHECK(joined() == (alone ? "stroke_alone" : "stroke"));
  made.request.product.thickness_variation.reset();
  CHECK_FALSE(has(made.specify(), "colour"));
  CHECK_FALSE(says(made.specify().conditions, "throw_anew"));
}

TEST_CASE("a condition on joints names its group, and one on colours is of the whole station") {
  Made made;
  made.second_colour();
  made.request.colours.back().kind = given(ColourKind::white);
  made.request.line.mount_tolerance = given(micrometres(15));
  made.request.image.registration = given(micrometres(31));
  const Specification spec = made.specify();
  REQUIRE(spec.chosen.size() == 2);
  int joints = 0;
  for (const Notice& n : spec.conditions) {
    if (n.code != "placement") continue;
    const auto at = [&](std::string_view name) {
      return std::find_if(n.args.begin(), n.args.end(),
                          [&](const Arg& arg) { return arg.name == name; });
    };
    const bool joint = std::get<std::string>(at("subject")->value) == "joint";
    CHECK((at("group") != n.args.end()) == joint);
    if (!joint) continue;
    ++joints;
    const auto& group = std::get<std::string>(at("group")->value);
    CHECK((group == spec.chosen[0].name || group == spec.chosen[1].name));
    CHECK((std::get<std::string>(at("axis")->value) == "motion" ||
           std::get<std::string>(at("axis")->value) == "nozzle"));
  }
  // Every budget of joints that fails, of whichever group and axis, is one condition.
  const auto beyond = std::count_if(spec.placement.begin(), spec.placement.end(),
                                    [](const auto& b) { return b.name == "joint" && !b.pass; });
  CHECK(joints == beyond);
  for (const Group& g : spec.chosen) {
    CHECK(std::any_of(spec.placement.begin(), spec.placement.end(), [&](const Budget& b) {
      return b.name == "joint" && b.group == g.name && !b.pass;
    }));
  }
}

TEST_CASE("joints of two groups that fail are both refused") {
  Made made;
  made.second_colour();
  made.request.colours.back().kind = given(ColourKind::white);
  made.request.line.mount_tolerance = given(micrometres(60));
  made.request.image.registration = given(micrometres(500));
  CHECK(made.specify().chosen.empty());
  const Request loose = made.request;
  const Job job = resolve(loose, made.catalogue, "2026-11-25");
  made.request.line.mount_tolerance = given(micrometres(15));
  const Specification stands = made.specify();
  REQUIRE(stands.chosen.size() == 2);
  std::vector<Finding> failures;
  placement_gate(job, stands.chosen, failures, nullptr);
  CHECK(std::count_if(failures.begin(), failures.end(), [](const Finding& f) {
          return f.code == "placement" && f.subject == "joint";
        }) == 2);
}

TEST_CASE("where nobody states a registration the question says by which it was judged") {
  Made made;
  made.second_colour();
  const Specification spec = made.specify();
  const auto question = std::find_if(spec.questions.begin(), spec.questions.end(),
                                     [](const Question& q) { return q.code == "q_registration"; });
  REQUIRE(question != spec.questions.end());
  REQUIRE(question->assumed);
  CHECK(*question->assumed == doctest::Approx(25400.0 / 600));  // one pitch
  CHECK(question->unit == "um");
}

TEST_CASE("the share that counts as high use is listed wherever it was asked about") {
  Made made;
  for (const Mode mode : {Mode::single, Mode::scanning}) {
    made.request.line.mode = given(mode);
    made.request.line.indexing = given(true);
    made.request.line.speed = given(metres_per_second(0.005));
    made.request.line.throw_variation = given(Length{});
    made.request.image.placement = given(micrometres(5000));
    made.request.line.weave.reset();
    const Specification spec = made.specify();
    REQUIRE(!spec.chosen.empty());
    for (const char* field : {"assume.high_use", "assume.reserve", "assume.weave"}) {
      CAPTURE(field);
      CHECK(std::any_of(spec.assumptions.begin(), spec.assumptions.end(),
                        [&](const Assumption& a) { return a.field == field; }));
    }
  }
}

TEST_CASE("pinning stands behind the group that asks for it, and what follows stands farther on") {
  // One row of the lamp of 120 mm: 120000 W/m2 x 0.6 x 0.8 x 20 mm at 0.5 m/s is 2304 J/m2.
  Made made;
  made.second_colour();
  made.request.colours.back().kind = given(ColourKind::white);
  made.request.image.registration = given(micrometres(500));
  const Specification without = made.specify();
  REQUIRE(without.chosen.size() == 2);
  const auto first = [](const Specification& spec, std::size_t group) {
    return in_mm(spec.chosen.at(group).places.front().y);
  };
  const auto apart = [](const Specification& spec) {
    return in_mm(term(*find(spec, "colour", true), "thermal").over);
  };
  const auto ask = [&](const std::string& group) {
    for (Ink& ink : made.request.inks) {
      ink.pinning_dose.reset();
      if (ink.name == group) ink.pinning_dose = given(Dose::from_si(300));
    }
    return made.specify();
  };
  const Specification before = ask(without.chosen.front().name);
  REQUIRE(before.chosen.size() == 2);
  CHECK(before.chosen.front().pinned_places == 1);
  CHECK(before.chosen.back().pinned_places == 0);
  check_all({
      {"the first group stays", first(before, 0), first(without, 0), 1e-9, geometry},
      {"the next moves on", first(before, 1), first(without, 1) + 120, 1e-9, geometry},
      {"colours part", apart(before), apart(without) + 120, 1e-9, geometry},
      {"the station is longer", in_mm(before.station->footprint),
       in_mm(without.station->footprint) + 120, 1e-9, geometry},
  });
  // Behind the last group it stands only where nobody else asks.
  const Specification behind = ask(without.chosen.back().name);
  REQUIRE(behind.chosen.size() == 2);
  CHECK(behind.chosen.front().pinned_places == 0);
  CHECK(behind.chosen.back().pinned_places == 1);
  CHECK(first(behind, 1) == doctest::Approx(first(without, 1)));
}
