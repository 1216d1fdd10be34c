// The limit of the process colours together: what an arrangement may lay, what the peaks ask for,
// what the dryer takes. Figures by hand, common practice, no source.
#include <doctest/doctest.h>

#include <algorithm>

#include "calc/selection.h"
#include "calc/station.h"
#include "calc/station_load.h"
#include "support/catalogue_maker.h"
#include "support/station_case.h"

using namespace calc;
using made::given;

namespace {

Selection select_for(const Request& r, const Catalogue& c) {
  return select(resolve(r, c, "2026-11-25"), c);
}

const Notice* condition(const Selection& s) {
  const auto found = std::find_if(s.conditions.begin(), s.conditions.end(),
                                  [](const Notice& n) { return n.code == "ink_limit"; });
  return found == s.conditions.end() ? nullptr : &*found;
}

double number(const Notice& notice, const std::string& name) {
  for (const Arg& arg : notice.args) {
    if (arg.name == name) return std::get<double>(arg.value);
  }
  return 0;
}

/// A head of one drop size, so that a film is reached by heads in line alone; straight, even and
/// shallow, so that many of them still place their dots on the finest lattice.
Catalogue one_drop() {
  Head head = made::plain_head("A");
  head.modes.front().drops = given(std::vector{picolitres(15)});
  head.modes.front().frequency = given(std::vector{kilohertz(25)});
  head.body_depth = given(millimetres(5.5));
  head.straightness = given(1e-5);
  head.speed_spread = given(1e-4);
  return made::catalogue_of({head});
}

/// Aqueous black, cyan, magenta at the peaks that the case's channels have.
void three_colours(support::StationCase& c) {
  c.set_family(InkFamily::aqueous);
  for (const char* name : {"cyan", "magenta"}) {
    c.job.channels.push_back(c.job.channels.front());
    c.job.channels.back().name = name;
    c.groups.front().channels.emplace_back(name);
    c.groups.front().dots.push_back(c.groups.front().dots.front());
    c.groups.front().dots.back().channel = name;
  }
}

double water(const support::StationCase& c) {
  return *size_station(c.job, c.catalogue, c.groups).stages.front().water_kg_per_h;
}

}  // namespace

// 15 pL lay 8.37 um at 600 x 600 per inch, and 134 um at the 2400 x 2400 that four interleaved
// heads make at most: 200 um always take several in line.
TEST_CASE("heads in line lay no more of a process colour than its limit") {
  Request r = made::plain_request();
  r.colours.front().film = given(micrometres(200));
  r.inks.front().limit = given(6.0);
  r.line.mount_tolerance = given(micrometres(0.1));
  r.line.wheel_error = given(0.0);
  r.line.throw_variation = given(micrometres(0.1));
  const Selection passes = select_for(r, one_drop());
  REQUIRE(passes.chosen.size() == 1);
  const double solids = passes.chosen.front().film_heads;
  CHECK(solids > 1);
  r.inks.front().limit = given(solids - 0.01);
  const Selection fails = select_for(r, one_drop());
  CHECK(
      (fails.chosen.empty() || fails.chosen.front().film_heads < passes.chosen.front().film_heads));
  r.inks.front().limit = given(1.0);
  const Selection none = select_for(r, one_drop());
  REQUIRE(none.chosen.empty());
  const auto& reasons = none.rejected.front().reasons;
  const auto film = std::find_if(reasons.begin(), reasons.end(), [](const Reason& reason) {
    return reason.code == "film" && reason.subject == "limit";
  });
  REQUIRE(film != reasons.end());
  CHECK(film->value > 1);
  CHECK(film->limit == 1);
  CHECK_FALSE(film->at_least);
  r.colours.front().kind = given(ColourKind::white);
  CHECK(!select_for(r, one_drop()).chosen.empty());
}

TEST_CASE("peaks stated above the limit are a condition, peaks assumed are kept to it") {
  Request r = made::plain_request();
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  r.colours.front().kind = given(ColourKind::process);
  r.colours.push_back(r.colours.front());
  r.colours.back().name = "cyan";
  r.inks.front().limit = given(1.5);
  CHECK(condition(select_for(r, c)) == nullptr);
  for (Colour& colour : r.colours) colour.cover_peak = given(0.8);
  const Selection stated = select_for(r, c);
  REQUIRE(!stated.chosen.empty());
  REQUIRE(condition(stated) != nullptr);
  CHECK(number(*condition(stated), "value") == doctest::Approx(1.6));
  CHECK(number(*condition(stated), "limit") == doctest::Approx(1.5));
  CHECK(condition(stated)->field == "ink.black.limit");
  r.inks.front().limit = given(1.6);
  CHECK(condition(select_for(r, c)) == nullptr);
}

TEST_CASE("the dryer takes the water of the process colours up to their limit") {
  support::StationCase one;
  one.set_family(InkFamily::aqueous);
  const double solid = water(one);
  support::StationCase c;
  three_colours(c);
  CHECK(water(c) == doctest::Approx(2.4 * solid));  // the default, 240 %
  c.request.inks.front().limit = exactly(1.5);
  CHECK(water(c) == doctest::Approx(1.5 * solid));
  c.request.inks.front().limit = exactly(2.8);  // above the default, which it replaces
  CHECK(water(c) == doctest::Approx(2.8 * solid));
  c.request.inks.front().limit = exactly(4.0);
  CHECK(water(c) == doctest::Approx(3 * solid));
}

TEST_CASE("a limit that an ink states is no assumption") {
  Request r = made::plain_request();
  r.colours.front().film = given(micrometres(20));
  const Catalogue c = one_drop();
  const auto assumes = [&] {
    const Job job = resolve(r, c, "2026-11-25");
    return std::any_of(job.assumptions.begin(), job.assumptions.end(),
                       [](const Assumption& a) { return a.field == "assume.process_limit"; });
  };
  CHECK(assumes());
  r.inks.front().limit = given(3.0);
  CHECK_FALSE(assumes());
}
