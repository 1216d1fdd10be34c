/// Questions and assumptions that the outcome raises.
#include "calc/later_questions.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "calc/calculate.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

Specification answer(const Request& request, const Head& head) {
  return calculate(request, made::catalogue_of({head}), "2026-11-25");
}

const Question* find(const Specification& spec, const std::string& code) {
  const auto found = std::find_if(spec.questions.begin(), spec.questions.end(),
                                  [&](const Question& q) { return q.code == code; });
  return found == spec.questions.end() ? nullptr : &*found;
}

const Assumption* throw_of(const Specification& spec) {
  const auto found =
      std::find_if(spec.assumptions.begin(), spec.assumptions.end(),
                   [](const Assumption& a) { return a.field == "line.throw_distance"; });
  return found == spec.assumptions.end() ? nullptr : &*found;
}

/// A head that asks for 8 to 12 mPa.s, and an ink known as 30 and 14 mPa.s at 30 and 50 degC.
Head hot_head() {
  Head head = made::plain_head("A");
  head.temperature_most = given(Temperature::celsius(70));
  head.viscosity = given(millipascal_seconds(10));
  head.viscosity_window = made::between(millipascal_seconds(8), millipascal_seconds(12));
  return head;
}
Request thick_ink() {
  Request r = made::plain_request();
  r.inks.front().jetting_temperature.reset();
  r.inks.front().viscosity =
      given(std::vector{ViscosityPoint{millipascal_seconds(30), Temperature::celsius(30)},
                        ViscosityPoint{millipascal_seconds(14), Temperature::celsius(50)}});
  return r;
}

}  // namespace

TEST_CASE("a throw nobody states is that of the head chosen, said where it is asked and assumed") {
  Request r = made::plain_request();
  r.line.throw_distance.reset();
  Head head = made::plain_head("A");
  head.throw_nominal = given(millimetres(2));
  const Specification own = answer(r, head);
  REQUIRE_FALSE(own.chosen.empty());
  REQUIRE(find(own, "q_throw") != nullptr);
  CHECK(*find(own, "q_throw")->assumed == doctest::Approx(2));
  CHECK_FALSE(find(own, "q_throw")->low);
  REQUIRE(throw_of(own) != nullptr);
  CHECK(throw_of(own)->value == doctest::Approx(2));
  // Without one the default is taken, with its range.
  head.throw_nominal.reset();
  const Specification usual = answer(r, head);
  REQUIRE_FALSE(usual.chosen.empty());
  CHECK(*find(usual, "q_throw")->assumed == doctest::Approx(1));
  CHECK(*find(usual, "q_throw")->high == doctest::Approx(1.5));
  r.line.throw_distance = given(millimetres(1));
  CHECK(throw_of(answer(r, head)) == nullptr);
}

TEST_CASE("a head left out only because an ink is not known hotter says so and asks") {
  const Specification spec = answer(thick_ink(), hot_head());
  REQUIRE(spec.chosen.empty());
  bool told = false;
  for (const Reason& reason : spec.rejected.front().reasons) {
    if (reason.code != "viscosity") continue;
    told = true;
    CHECK(reason.value == doctest::Approx(14));
    REQUIRE(reason.known_to_degc);
    CHECK(*reason.known_to_degc == doctest::Approx(50));
  }
  CHECK(told);
  REQUIRE(find(spec, "q_viscosity_hot") != nullptr);
  CHECK(*find(spec, "q_viscosity_hot")->up_to_degc == doctest::Approx(70));
  CHECK(find(spec, "q_viscosity_hot")->weight > 50);
}

TEST_CASE("an ink whose viscosity is known as hot as the head may be is simply too thick") {
  Head head = hot_head();
  head.temperature_most = given(Temperature::celsius(50));
  const Specification spec = answer(thick_ink(), head);
  for (const Reason& reason : spec.rejected.front().reasons) CHECK_FALSE(reason.known_to_degc);
  CHECK(find(spec, "q_viscosity_hot") == nullptr);
}

TEST_CASE("a nominal viscosity missed only for want of knowledge is asked about") {
  Head head = hot_head();
  head.viscosity_window = made::between(millipascal_seconds(8), millipascal_seconds(20));
  const Specification spec = answer(thick_ink(), head);
  REQUIRE_FALSE(spec.chosen.empty());
  REQUIRE(find(spec, "q_viscosity_hot") != nullptr);
  CHECK(*find(spec, "q_viscosity_hot")->up_to_degc == doctest::Approx(70));
}

TEST_CASE("heads that do not take an ink's family do not say how hot it may get") {
  Head other = hot_head();
  other.name = "B";
  other.temperature_most = given(Temperature::celsius(90));
  other.families = given(std::vector{InkFamily::oil});
  const Specification spec =
      calculate(thick_ink(), made::catalogue_of({hot_head(), other}), "2026-11-25");
  REQUIRE(find(spec, "q_viscosity_hot") != nullptr);
  CHECK(*find(spec, "q_viscosity_hot")->up_to_degc == doctest::Approx(70));
}

TEST_CASE("the question that moves a sum furthest, and far, comes before physics and safety") {
  Uncertainty sum;
  sum.figure = "ownership";
  sum.unit = "EUR";
  sum.value = 100;
  sum.low = 60;
  sum.high = 120;
  sum.mover = "assume.cover_mean_process";
  std::vector<Question> questions(2);
  questions[0].weight = 30;
  questions[1].weight = 11;
  questions[1].parameter = sum.mover;
  rank_by_money({sum}, "EUR", questions);
  CHECK(questions[0].weight == doctest::Approx(30));
  CHECK(questions[1].weight > 30);
  CHECK(questions[1].weight < 48);  // what may change the head stays before it
  // Half of the sum or less, or another figure, changes nothing.
  questions[1].weight = 11;
  sum.low = 75;
  rank_by_money({sum}, "EUR", questions);
  sum.low = 0;
  rank_by_money({sum}, "USD", questions);
  CHECK(questions[1].weight == doctest::Approx(11));
}

TEST_CASE("what safety notes call unknown is asked") {
  Request r = made::plain_request();
  r.substrate.food_contact.reset();
  r.inks.front().flash_point.reset();
  Specification spec = answer(r, made::plain_head("A"));
  CHECK(find(spec, "q_contact") != nullptr);
  CHECK(find(spec, "q_flush") != nullptr);
  REQUIRE(find(spec, "q_flash_point") != nullptr);
  CHECK(find(spec, "q_flash_point")->field == "ink." + r.inks.front().name + ".flash_point");
  CHECK(find(spec, "q_flash_point")->effect == "fire_protection");  // it moves no air
  CHECK(find(spec, "q_cosolvent") == nullptr);
  r.inks.front().family = given(InkFamily::aqueous);
  spec = answer(r, made::plain_head("A"));
  REQUIRE(find(spec, "q_cosolvent") != nullptr);
  CHECK(find(spec, "q_cosolvent")->field == "ink." + r.inks.front().name + ".solvent");
  CHECK(find(spec, "q_zone") == nullptr);
  CHECK(find(spec, "q_food_face") == nullptr);
  r.substrate.food_contact = given(true);
  r.inks.front().flash_point = given(Temperature::celsius(30));
  spec = answer(r, made::plain_head("A"));
  CHECK(find(spec, "q_zone") != nullptr);
  CHECK(find(spec, "q_food_face") != nullptr);
  // A fluid of the parts list is known by who supplies it: the customer is not asked.
  Catalogue stocked = made::catalogue_of({made::plain_head("A")});
  Part fluid;
  fluid.element = "part";
  fluid.name = "FS";
  fluid.kind = given(PartKind::flush);
  fluid.designation = given(std::string("Flush"));
  stocked.parts.push_back(fluid);
  CHECK(find(calculate(r, stocked, "2026-11-25"), "q_flush") == nullptr);
  r.substrate.food_contact = given(false);
  CHECK(find(answer(r, made::plain_head("A")), "q_contact") == nullptr);
}
