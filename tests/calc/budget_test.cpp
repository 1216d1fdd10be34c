#include "calc/budget.h"

#include <doctest/doctest.h>

#include <cmath>

#include "calc/eye.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::check_all;
using support::six_digits;

namespace {

constexpr const char* talal = "[P] micrometer example, talalspecialbolt.com";
constexpr const char* gauge = "[M] GUM annex H.1, end gauge; root [C]";
constexpr const char* terms = "[C] computed independently";
constexpr const char* guide = "[M] GUM 4.3, 4.4: distributions of a half width";
constexpr const char* vernier = "[C] distance times angle; 10 arc seconds after Regan 2000 [P]";

BudgetTerm term(TermKind kind, double um, double coverage = 1) {
  return {"made", kind, um, "um", micrometres(um), coverage, {}};
}
double u_um(TermKind kind, double um, double coverage = 1) {
  return in_um(standard_uncertainty(term(kind, um, coverage)));
}

/// U [um] of terms that are standard uncertainties already.
Budget of_standard(std::initializer_list<double> um) {
  Budget b;
  for (const double u : um) b.terms.push_back(term(TermKind::normal, u));
  add_up(b);
  return b;
}

}  // namespace

TEST_CASE("standard uncertainty by kind of term") {
  check_all({
      {"rectangular", u_um(TermKind::rectangular, 10), 5.77350, six_digits, terms},
      {"normal, c 2", u_um(TermKind::normal, 10, 2), 5, 1e-12, guide},
      {"normal, c 3", u_um(TermKind::normal, 10, 3), 10.0 / 3, 1e-12, guide},
      {"resolution", u_um(TermKind::resolution, 2.5), 1.44338, six_digits, terms},
      {"sinusoid", u_um(TermKind::sinusoid, 10), 10 / std::sqrt(2), 1e-12, guide},
      {"systematic", u_um(TermKind::systematic, 10), 0, 0, guide},
  });
}

TEST_CASE("a micrometer as printed, in mm") {
  Budget b;
  b.terms = {term(TermKind::rectangular, 0.58), term(TermKind::resolution, 0.5),
             term(TermKind::normal, 0.5, 2)};
  add_up(b);
  check_all({
      {"calibration", in_um(standard_uncertainty(b.terms[0])), 0.33, 0.02, talal},
      {"resolution", in_um(standard_uncertainty(b.terms[1])), 0.29, 0.01, talal},
      {"gauge", in_um(standard_uncertainty(b.terms[2])), 0.25, 1e-12, talal},
      {"combined", in_um(b.expanded) / 2, 0.51, 0.005, talal},
      {"combined, exact", in_um(b.expanded) / 2, 0.508, 5e-4, talal},
      {"expanded", in_um(b.expanded), 1.0, 0.02, talal},
  });
}

TEST_CASE("roots of sums of squares") {
  const Budget five = of_standard({10, 5, 8, 3, 4});
  check_all({
      {"end gauge [nm]", 1e3 * in_um(of_standard({0.025, 0.0097, 0.0029, 0.0166}).expanded) / 2, 32,
       0.02, gauge},
      {"end gauge, exact", 1e3 * in_um(of_standard({0.025, 0.0097, 0.0029, 0.0166}).expanded) / 2,
       31.6711, six_digits, gauge},
      {"five terms", in_um(five.expanded) / 2, 14.6287, six_digits, terms},
      {"worst, at three deviations", in_um(five.worst), 3 * 30, 1e-12, terms},
  });
}

TEST_CASE("a systematic term adds linearly, and the limit decides") {
  Budget b;
  b.terms = {term(TermKind::rectangular, 6), term(TermKind::systematic, 4),
             term(TermKind::rectangular, 6)};
  b.limit = micrometres(4 + 2 * 6 * std::sqrt(2.0 / 3));
  add_up(b);
  CHECK(support::near(in_um(b.expanded), in_um(b.limit), 1e-12));
  CHECK(b.pass);
  CHECK(support::near(in_um(b.worst), 16, 1e-12));
  CHECK(largest_term(b) == 0);
  b.terms[1] = term(TermKind::systematic, 7);
  add_up(b);
  CHECK_FALSE(b.pass);
  CHECK(largest_term(b) == 1);
}

TEST_CASE("no term is larger than the worst case allows, and each makes the budget larger") {
  Budget b;
  Length before;
  for (const TermKind kind : {TermKind::rectangular, TermKind::normal, TermKind::resolution,
                              TermKind::sinusoid, TermKind::systematic}) {
    b.terms.push_back(term(kind, 5, 3));
    add_up(b);
    CHECK(b.expanded > before);
    before = b.expanded;
    CHECK(standard_uncertainty(b.terms.back()) <= worst_shift(b.terms.back()));
  }
}

TEST_CASE("nothing is off by more than the worst case") {
  Budget b;
  b.terms = {term(TermKind::sinusoid, 20), term(TermKind::systematic, 1)};
  add_up(b);
  CHECK(support::near(in_um(b.worst), 21, 1e-12));
  CHECK(b.expanded == b.worst);  // and not 20 sqrt 2 + 1
}

TEST_CASE("steps the eye sees between two lines") {
  const double second = one_arc_second;
  check_all({
      {"5 seconds, 254 mm", in_um(vernier_limit(millimetres(254), 5 * second)), 6.15713, six_digits,
       vernier},
      {"5 seconds, 300 mm", in_um(vernier_limit(millimetres(300), 5 * second)), 7.27221, six_digits,
       vernier},
      {"5 seconds, 500 mm", in_um(vernier_limit(millimetres(500), 5 * second)), 12.1203, six_digits,
       vernier},
      {"300 mm", in_um(vernier_limit(millimetres(300))), 14.5444, six_digits, vernier},
      {"350 mm", in_um(vernier_limit(millimetres(350))), 16.9685, six_digits, vernier},
      {"500 mm", in_um(vernier_limit(millimetres(500))), 24.2407, six_digits, vernier},
      {"1 m", in_um(vernier_limit(metres(1))), 48.4814, six_digits, vernier},
  });
}
