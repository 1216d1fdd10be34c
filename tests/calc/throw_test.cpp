// Gaps of flat, turning and lengthwise bodies, and of bodies that are no cylinder.
#include "calc/throw.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/catalogue_maker.h"
#include "tests/calc/support/check.h"

using namespace calc;
using made::given;
using support::check_all;

namespace {

constexpr const char* plane = "plane geometry: r - sqrt(r^2 - c^2/4)";
constexpr const char* sums = "sums of the gaps given";

Throw of(const Request& request) {
  const Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(request, catalogue, "2026-11-25");
  return throw_of(job, catalogue.heads.front());
}

Request body(double diameter_mm, BodyAxis axis) {
  Request r = made::plain_request();
  r.product.form = given(Form::cylinder);
  r.product.diameter = given(millimetres(diameter_mm));
  r.product.axis = given(axis);
  r.product.thickness_variation = given(millimetres(0.2));
  return r;
}

}  // namespace

TEST_CASE("a flat product: variation and flutter narrow the gap and widen it") {
  Request r = made::plain_request();
  r.product.thickness_variation = given(millimetres(0.2));
  const Throw t = of(r);
  check_all({{"least", in_mm(t.least), 1 - 0.2 - 0.05, 1e-12, sums},
             {"nominal", in_mm(t.nominal), 1, 1e-12, sums},
             {"most", in_mm(t.most), 1 + 0.2 + 0.05, 1e-12, sums}});
  CHECK_FALSE(t.curved);
}

TEST_CASE("a body that turns bends away under the depth of the rows") {
  const Throw t = of(body(60, BodyAxis::across));
  const double s = 30 - std::sqrt(30 * 30 - 2.5 * 2.5);
  check_all({{"sagitta", in_mm(t.along), s, 1e-9, plane},
             {"across", in_mm(t.across), 0, 0, plane},
             {"most", in_mm(t.most), 1 + 0.2 + 0.05 + s, 1e-9, sums},
             {"greatest nominal", in_mm(t.greatest_nominal), 1 + s, 1e-9, sums},
             {"slope", t.slope.value(), std::asin(2.5 / 30), 1e-12, plane}});
}

TEST_CASE("a body that moves along its axis bends away under the swath, or the image if narrower") {
  Request r = body(300, BodyAxis::along);
  r.image.width = given(millimetres(40));
  const Throw narrow = of(r);
  r.image.width = given(millimetres(200));
  const Throw wide = of(r);
  const double swath = 1280.0 / 600 * 25.4;
  check_all(
      {{"image", in_mm(narrow.across), 150 - std::sqrt(150.0 * 150 - 400), 1e-9, plane},
       {"swath", in_mm(wide.across), 150 - std::sqrt(150.0 * 150 - swath * swath / 4), 1e-9, plane},
       {"along", in_mm(wide.along), 0, 0, plane}});
  const Throw thin = of(body(20, BodyAxis::along));
  CHECK(thin.curved);
  CHECK_FALSE(thin.slope);  // the swath is wider than the body
}

TEST_CASE("a body that is no cylinder is served over the range of gaps it is given with") {
  Request r = made::plain_request();
  r.line.throw_distance = made::between(millimetres(1), millimetres(2.5));
  const Throw t = of(r);
  check_all({{"least", in_mm(t.least), 1 - 0.05, 1e-12, sums},
             {"most", in_mm(t.most), 2.5 + 0.05, 1e-12, sums},
             {"greatest nominal", in_mm(t.greatest_nominal), 2.5, 1e-12, sums}});
  // An uncertainty is no demand: the nominal stands.
  r.line.throw_distance->spread = Spread::uncertain;
  CHECK(in_mm(of(r).most) == doctest::Approx(2.5 + 0.05));
}
