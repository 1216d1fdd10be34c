// Terms of the budgets against worked cases of plane geometry and of steel.
#include "calc/placement_terms.h"

#include <doctest/doctest.h>

#include "tests/calc/support/catalogue_maker.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::check_all;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* geometry = "[C] plane geometry, computed independently";
constexpr const char* steel = "[C] 11.5e-6 a kelvin, computed independently";
constexpr double degree_mrad = 17.4532925199;

/// Shift [um] of a jet that leaves at an angle, over a throw.
double jet_um(const PlacementTerms& terms, double mrad, double throw_mm) {
  Group group;
  group.flight.emplace();
  group.flight->budget_throw = millimetres(throw_mm);
  group.flight->straightness = mrad * 1e-3;
  return in_um(terms.straightness(group).shift);
}

}  // namespace

TEST_CASE("jets at an angle, a wheel of another size and a frame that warms") {
  Request request = made::plain_request();
  request.line.wheel_error = made::given(0.001);
  const Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  Job job = resolve(request, catalogue, "2026-11-25");
  job.parameters.set(P::thermal_drift_k, 20);
  const PlacementTerms terms(job, Assumed::likely);
  check_all({
      {"5 mrad over 1 mm [um]", jet_um(terms, 5, 1), 5.00004, six_digits, geometry},
      {"half a degree over 1 mm [um]", jet_um(terms, degree_mrad / 2, 1), 8.72687, six_digits,
       geometry},
      {"a degree over 2 mm [um]", jet_um(terms, degree_mrad, 2), 34.9101, six_digits, geometry},
      {"wheel off by 0.1 %, 1 m [mm]", in_mm(terms.wheel(metres(1)).shift), 1, identity, geometry},
      {"steel 20 K warmer, 1 m [mm]", in_mm(terms.thermal(metres(1)).shift), 0.230000, identity,
       steel},
  });
}
