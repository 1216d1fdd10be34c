#include "calc/spares.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* poisson = "Poisson distribution, computed independently";
Time hours(double h) { return seconds(h * 3600); }

}  // namespace

TEST_CASE("chances of a Poisson count") {
  support::check_all({
      {"none of mean 1", poisson_at_most(0, 1), std::exp(-1.0), identity, poisson},
      {"at most 1 of mean 1", poisson_at_most(1, 1), 2 * std::exp(-1.0), identity, poisson},
      {"at most 2 of mean 2", poisson_at_most(2, 2), 5 * std::exp(-2.0), identity, poisson},
      {"at most 5 of mean 2.5", poisson_at_most(5, 2.5), 0.9579789618, 1e-9, poisson},
      {"mean nothing", poisson_at_most(0, 0), 1, 0, poisson},
  });
}

TEST_CASE("spares of forty heads over eight weeks") {
  const double mean = failures_in_lead_time(40, days(56), hours(4000), hours(6000));
  CHECK(support::near(mean, 4.0913, 1e-4));
  CHECK(spares(mean, false) == 8);
  CHECK(spares(mean, true) == 9);
}

TEST_CASE("spares are the least that reach the confidence, and at least one") {
  for (int step = 0; step < 160; ++step) {
    const double mean = 0.37 * step;
    const int s = spares(mean, false);
    CAPTURE(mean);
    CHECK(s >= 1);
    CHECK(poisson_at_most(s, mean) >= default_spares_confidence);
    if (s > 1) CHECK(poisson_at_most(s - 1, mean) < default_spares_confidence);
  }
  CHECK(spares(0, false) == 1);
  CHECK(spares(0, true) == 2);
  CHECK(spares(2, false, 0.5) == 2);
  CHECK(spares(2, false, 0.999) == 8);
}
