#include "calc/present_value.h"

#include <doctest/doctest.h>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* annuity = "sum of discounted years, computed independently";

Money euros(double v) { return to_money(v); }

}  // namespace

TEST_CASE("present value of yearly amounts") {
  support::check_all({
      {"8 %, 5 years", annuity_factor(0.08, 5), 3.992710037, 1e-9, annuity},
      {"10 %, 3 years", annuity_factor(0.10, 3), 2.486851991, 1e-9, annuity},
      {"no interest", annuity_factor(0, 7), 7, 0, annuity},
      {"hardly any interest", annuity_factor(1e-12, 7), 7, 1e-10, annuity},
      {"no years", annuity_factor(0.08, 0), 0, 0, annuity},
      {"one year", discount_factor(0.08, 1), 1 / 1.08, identity, annuity},
      {"today", discount_factor(0.08, 0), 1, 0, annuity},
  });
  for (const double rate : {-0.02, 0.01, 0.08, 0.3}) {
    double sum = 0;
    for (int year = 1; year <= 12; ++year) sum += discount_factor(rate, year);
    CHECK(support::near(annuity_factor(rate, 12), sum, identity));
  }
}

TEST_CASE("100 k and 50 k a year over 5 years are 75.0 k a year") {
  const Money total = ownership(euros(100000), euros(50000), 0.08, 5);
  CHECK(total == euros(299635.50));
  CHECK(support::near(levelised(total, 0.08, 5).major(), 75045.645, 1.4e-7));  // a cent
  CHECK(support::near(cost_per_square_metre(total, 0.08, 5, 1e6), 0.07504565, 1e-6));
}
