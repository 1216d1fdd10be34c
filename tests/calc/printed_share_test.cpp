// How much of the length that passes is printed, and how a body lies, where nobody says it.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "calc/calculate.h"
#include "calc/parameter.h"
#include "tests/calc/support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

Specification specify(const Request& request) {
  return calculate(request, made::catalogue_of({made::plain_head("A")}), "2026-11-25");
}

const Assumption* assumed(const Specification& spec, const std::string& field) {
  const auto found = std::find_if(spec.assumptions.begin(), spec.assumptions.end(),
                                  [&](const Assumption& a) { return a.field == field; });
  return found == spec.assumptions.end() ? nullptr : &*found;
}

const Question* asked(const Specification& spec, const std::string& code) {
  const auto found = std::find_if(spec.questions.begin(), spec.questions.end(),
                                  [&](const Question& q) { return q.code == code; });
  return found == spec.questions.end() ? nullptr : &*found;
}

double used(const Specification& spec) {
  return spec.station->consumption.front().printed_ml_per_hour;
}

}  // namespace

TEST_CASE(
    "without image length or pitch the whole way counts as printed, which is said and asked") {
  Request r = made::plain_request();
  r.image.length.reset();
  r.product.pitch.reset();
  const Specification neither = specify(r);
  REQUIRE(neither.station);
  const Assumption* const share = assumed(neither, "assume.printed_share");
  REQUIRE(share != nullptr);
  CHECK(share->value == doctest::Approx(1));
  CHECK(share->low < 1);
  const Question* const question = asked(neither, "q_printed_share");
  REQUIRE(question != nullptr);
  CHECK(question->field == "image.length");
  CHECK(question->assumed == doctest::Approx(1));
  CHECK(question->low == share->low);
  r.image.length = given(millimetres(60));
  const Specification length = specify(r);
  REQUIRE(asked(length, "q_printed_share") != nullptr);
  CHECK(asked(length, "q_printed_share")->field == "product.pitch");
  CHECK(used(length) == doctest::Approx(used(neither)));
  r.product.pitch = given(millimetres(80));
  const Specification both = specify(r);
  CHECK(assumed(both, "assume.printed_share") == nullptr);
  CHECK(asked(both, "q_printed_share") == nullptr);
  CHECK(used(both) == doctest::Approx(used(neither) * 60 / 80));
}

TEST_CASE("the ink used moves with the share assumed, from its low end to what is taken") {
  Request r = made::plain_request();
  r.image.length.reset();
  r.colours.front().cover_mean = given(0.1);
  r.line.hours_per_day = given(Time::from_si(8 * 3600.0));
  r.line.days_per_year = given(250.0);
  const Specification spec = specify(r);
  const auto moves = [](const Uncertainty& u) { return u.mover == "assume.printed_share"; };
  CHECK(std::any_of(spec.uncertainty.begin(), spec.uncertainty.end(), moves));
}

TEST_CASE("a body of which nobody says how it lies is taken to turn, which is said and asked") {
  Request r = made::plain_request();
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(400));
  const Specification unsaid = specify(r);
  const Assumption* const axis = assumed(unsaid, "product.axis");
  REQUIRE(axis != nullptr);
  CHECK(axis->text == "across");
  CHECK(asked(unsaid, "q_axis") != nullptr);
  r.product.axis = given(BodyAxis::across);
  const Specification said = specify(r);
  CHECK(assumed(said, "product.axis") == nullptr);
  CHECK(asked(said, "q_axis") == nullptr);
}
