// Which questions could change that nothing passes.
#include "calc/chance.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "calc/calculate.h"
#include "tests/calc/support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

/// A head that reaches `most_mm` over a product of which nobody says how uneven it is.
Specification over_uneven(double most_mm) {
  Request r = made::plain_request();
  r.line.throw_distance = given(millimetres(1));
  r.line.throw_variation.reset();
  r.product.thickness_variation.reset();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  catalogue.heads.front().throw_most = given(millimetres(most_mm));
  return calculate(r, catalogue, "2026-11-25");
}

std::size_t place_of(const Specification& spec, const std::string& code) {
  const auto found = std::find_if(spec.questions.begin(), spec.questions.end(),
                                  [&](const Question& q) { return q.code == code; });
  return static_cast<std::size_t>(found - spec.questions.begin());
}

bool any_lets_pass(const Specification& spec) {
  return std::any_of(spec.questions.begin(), spec.questions.end(),
                     [](const Question& q) { return !q.lets_pass.empty(); });
}

}  // namespace

TEST_CASE("where nothing passes the question whose answer could change that comes first") {
  // 1 mm and the 0.1 mm assumed are beyond 1.05 mm; over an even product they are not.
  const Specification tight = over_uneven(1.05);
  REQUIRE(tight.verdict == Verdict::infeasible);
  REQUIRE_FALSE(tight.questions.empty());
  CHECK(tight.questions.front().code == "q_thickness_variation");
  CHECK(tight.questions.front().lets_pass == std::vector<std::string>{"A"});
  const Specification wide = over_uneven(3);
  REQUIRE_FALSE(wide.chosen.empty());
  CHECK(place_of(wide, "q_thickness_variation") > 0);
  CHECK_FALSE(any_lets_pass(wide));
}

TEST_CASE("where no answer could change it none is said to") {
  const Specification short_of = over_uneven(0.9);
  REQUIRE(short_of.verdict == Verdict::infeasible);
  CHECK_FALSE(any_lets_pass(short_of));
}
