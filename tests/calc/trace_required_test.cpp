// The steps that derive the demands on resolution.
#include <doctest/doctest.h>

#include <algorithm>

#include "calc/calculate.h"
#include "calc/trace.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

TEST_CASE("a bar code whose module follows from its symbol alone is traced as derived") {
  Request r = made::plain_request();
  r.image.barcode_symbol = given(std::string("ean-13-retail"));
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  const Specification spec = calculate(r, c, "2026-11-25");
  const auto step = std::find_if(spec.trace.begin(), spec.trace.end(),
                                 [](const Step& s) { return s.id == "required.bar_code"; });
  REQUIRE(step != spec.trace.end());
  const StepInput& module = step->inputs.back();
  CHECK(module.symbol == "X");
  CHECK(module.origin == "derived");
  // GS1: target X dimension of EAN-13 at retail 0.330 mm; 25.4 x 3.5 / 0.33 = 269.4.
  CHECK(module.value == doctest::Approx(0.33));
  CHECK(step->value == doctest::Approx(25.4 * 3.5 / 0.33));
}
