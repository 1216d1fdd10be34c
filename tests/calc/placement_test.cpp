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

using namespace calc;
using made::given;
using support::check_all;
using support::six_digits;

namespace {

constexpr const char* method = "method, section 4";
constexpr const char* worked = "method, worked cases";
constexpr const char* geometry = "[C] plane geometry";
constexpr const char* air = "[C] flight over the same throw, computed in the test";

/// A station of one colour in staggered heads; a second colour if asked.
struct Made {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});

  Made() {
    catalogue.heads.front().drop_speed = given(metres_per_second(6));
    catalogue.heads.front().drop_speed_at = given(SpeedPoint::nozzle);
    request.image.levels = given(4);  // so that smallest and largest drop are both in use
    request.line.mount_tolerance.reset();
    request.line.wheel_error.reset();
  }
  void second_colour() {
    request.colours.push_back(request.colours.front());
    request.colours.back().name = "cyan";
    request.inks.push_back(request.inks.front());
    request.inks.back().name = "cyan";
  }
  Specification specify() const { return calculate(request, catalogue, "2026-11-25"); }
};

const Budget* find(const Specification& spec, std::string_view name, bool motion) {
  for (const Budget& b : spec.placement) {
    if (b.name == name && b.motion == motion) return &b;
  }
  return nullptr;
}
const BudgetTerm& term(const Budget& budget, std::string_view name) {
  const auto found = std::find_if(budget.terms.begin(), budget.terms.end(),
                                  [&](const BudgetTerm& t) { return t.name == name; });
  REQUIRE(found != budget.terms.end());
  return *found;
}
double shift_um(const Specification& spec, std::string_view budget, bool motion,
                std::string_view name) {
  const Budget* found = find(spec, budget, motion);
  REQUIRE(found != nullptr);
  return in_um(term(*found, name).shift);
}

bool says(const std::vector<Notice>& list, const std::string& code) {
  return std::any_of(list.begin(), list.end(), [&](const Notice& n) { return n.code == code; });
}
bool rejects(const Specification& spec, const std::string& code, const std::string& subject) {
  for (const RejectedHead& head : spec.rejected) {
    for (const Reason& r : head.reasons) {
      if (r.code == code && r.subject == subject) return true;
    }
  }
  return false;
}

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
