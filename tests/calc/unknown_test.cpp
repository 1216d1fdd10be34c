// What a row of the catalogue or the request does not say is assumed by name, never passed over.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include "calc/calculate.h"
#include "calc/laydown.h"
#include "calc/parameter.h"
#include "tests/calc/support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

using Change = std::function<void(Request&, Catalogue&)>;

Specification made_with(const std::vector<Change>& changes) {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  for (const Change& change : changes) change(request, catalogue);
  return calculate(request, catalogue, "2026-11-25");
}

/// Whether the default of the table stands in: what a head brings itself has another source.
bool assumes(const Specification& spec, P id) {
  return std::any_of(spec.assumptions.begin(), spec.assumptions.end(), [&](const Assumption& a) {
    return a.field == parameter(id).key && a.source == parameter(id).source;
  });
}

Head& head(Catalogue& c) { return c.heads.front(); }

void print_aqueous(Request& r, Catalogue&) {
  r.inks.front().family = given(InkFamily::aqueous);
  r.substrate.absorbency = given(Absorbency::high);
}

/// The mass of the web known, its heat capacity not.
void weigh_web(Request& r, Catalogue&) {
  r.substrate.area_mass = given(AreaMass::from_si(0.2));
  r.substrate.heat_capacity.reset();
}

void warm_web(Request& r, Catalogue& c) {
  weigh_web(r, c);
  r.substrate.heat_capacity = given(Quantity<2, 0, -2, -1>::from_si(1300));
}

/// A field and the default that stands in for it.
struct Gap {
  const char* name = "";
  P id{};
  Change drop, state;
  Change before = [](Request&, Catalogue&) {};
};

const std::vector<Gap> gaps{
    {"life of a head", P::head_life_h,
     [](Request&, Catalogue& c) {
       head(c).life.reset();
       head(c).life_drops.reset();
     },
     [](Request&, Catalogue& c) { head(c).life = given(Time::from_si(8000 * 3600.0)); }},
    {"drops in a life", P::head_life_h,
     [](Request&, Catalogue& c) {
       head(c).life.reset();
       head(c).life_drops.reset();
     },
     [](Request&, Catalogue& c) {
       head(c).life.reset();
       head(c).life_drops = given(1e11);
     }},
    {"purge", P::purge_ml, [](Request&, Catalogue& c) { head(c).purge.reset(); },
     [](Request&, Catalogue& c) { head(c).purge = given(Volume::from_si(2e-6)); }},
    {"nominal throw", P::throw_mm,
     [](Request& r, Catalogue& c) {
       r.line.throw_distance.reset();
       head(c).throw_nominal.reset();
     },
     [](Request& r, Catalogue& c) {
       r.line.throw_distance.reset();
       head(c).throw_nominal = given(millimetres(1));
     }},
    {"least throw", P::throw_least_mm, [](Request&, Catalogue& c) { head(c).throw_least.reset(); },
     [](Request&, Catalogue& c) { head(c).throw_least = given(millimetres(0.5)); }},
    {"rate of a dryer", P::drying_rate,
     [](Request&, Catalogue& c) { c.dryers.front().drying_rate.reset(); },
     [](Request&, Catalogue& c) {
       c.dryers.front().drying_rate = given(MassFlux::from_si(20 / 3600.0));
     },
     print_aqueous},
    {"heat capacity", P::web_heat_capacity, weigh_web, warm_web},
    {"heat capacity under a dryer", P::web_heat_capacity, weigh_web, warm_web, print_aqueous},
};

}  // namespace

TEST_CASE("a datum that is missing is among the assumptions, one that is stated is not") {
  for (const Gap& gap : gaps) {
    CAPTURE(gap.name);
    const Specification without = made_with({gap.before, gap.drop});
    const Specification with = made_with({gap.before, gap.state});
    REQUIRE_FALSE(without.chosen.empty());
    REQUIRE_FALSE(with.chosen.empty());
    CHECK(assumes(without, gap.id));
    CHECK_FALSE(assumes(with, gap.id));
  }
}

TEST_CASE("heads of which body, board or rows are not known are called exchangeable with none") {
  const auto others = [](const Change& change) {
    return made_with(
               {[](Request&, Catalogue& c) { c.heads.push_back(made::plain_head("B")); }, change})
        .flexibility.front()
        .interchangeable.size();
  };
  CHECK(others([](Request&, Catalogue&) {}) == 1);
  CHECK(others([](Request&, Catalogue& c) {
          for (Head& h : c.heads) h.board.reset();
        }) == 0);
  CHECK(others([](Request&, Catalogue& c) {
          for (Head& h : c.heads) h.body_depth.reset();
        }) == 0);
  CHECK(others([](Request&, Catalogue& c) { c.heads.back().modes.front().nozzles.reset(); }) == 0);
  CHECK(others([](Request&, Catalogue& c) { c.heads.back().modes.front().row_pitch.reset(); }) ==
        0);
}

TEST_CASE("heads that hardly last are stocked by the normal limit of the Poisson sum") {
  // Mean failures in the lead time: heads x lead time x share of running hours over life.
  const auto spares = [](double life_h) {
    const Specification spec = made_with({[&](Request& r, Catalogue& c) {
      r.line.hours_per_day = given(Time::from_si(24 * 3600.0));
      r.line.days_per_year = given(365.0);
      head(c).life = given(Time::from_si(life_h * 3600.0));
      head(c).life_drops.reset();
    }});
    return spec.station->spares.front();
  };
  const auto many = spares(0.5);
  REQUIRE(many.mean > 700);
  CHECK(many.quantity >= static_cast<int>(std::ceil(many.mean + 1.6448536 * std::sqrt(many.mean))));
  CHECK(many.quantity <=
        static_cast<int>(std::ceil(many.mean + 1.6448537 * std::sqrt(many.mean))) + 1);
}
