#include "calc/selection.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "calc/codes.h"
#include "calc/compare.h"
#include "calc/ranking.h"
#include "calc/station.h"
#include "calc/verdict.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

constexpr std::uint64_t runs = 60;
constexpr const char* date = "2026-11-25";

Selection select_for(const Request& r, const Catalogue& c) {
  return select(resolve(r, c, date), c);
}

std::set<std::string> heads_in(const std::vector<Group>& groups) {
  std::set<std::string> names;
  for (const Group& g : groups) names.insert(g.head);
  return names;
}

int heads_total(const std::vector<Group>& groups) {
  int sum = 0;
  for (const Group& g : groups) sum += g.heads_total;
  return sum;
}

/// A reason's figures say by themselves that its gate failed.
bool fails_by_its_figures(const Reason& r) {
  return r.at_least ? !at_least(r.value, r.limit) : !at_most(r.value, r.limit);
}

bool contains(std::span<const std::string_view> codes, const std::string& code) {
  return std::find(codes.begin(), codes.end(), code) != codes.end();
}

}  // namespace

TEST_CASE("every head not chosen stands in rejected, with reasons that recompute") {
  int chosen = 0;
  int rejected = 0;
  for (std::uint64_t i = 0; i < runs; ++i) {
    const Catalogue c = made::catalogue(i, 12);
    const Request r = made::request(i);
    const Selection s = select_for(r, c);
    std::set<std::string> named = heads_in(s.chosen);
    for (const RejectedHead& row : s.rejected) {
      CAPTURE(i);
      CAPTURE(row.head);
      CHECK(named.insert(row.head).second);
      CHECK(!row.reasons.empty());
      for (const Reason& reason : row.reasons) {
        CAPTURE(reason.code);
        CHECK(contains(reason_codes(), reason.code));
        CHECK(fails_by_its_figures(reason));
      }
    }
    CHECK(named.size() == c.heads.size());
    chosen += s.chosen.empty() ? 0 : 1;
    rejected += static_cast<int>(s.rejected.size());
  }
  CHECK(chosen > 10);
  CHECK(rejected > 100);
}

TEST_CASE("the chosen arrangement passes its own gates and serves every channel once") {
  for (std::uint64_t i = 0; i < runs; ++i) {
    const Catalogue c = made::catalogue(i, 12);
    const Request r = made::request(i);
    const Job job = resolve(r, c, date);
    const Selection s = select(job, c);
    if (s.chosen.empty()) continue;
    CAPTURE(i);
    CHECK(failing_gates(job, c, s.chosen).empty());
    std::vector<std::string> served;
    for (const Group& g : s.chosen) {
      served.insert(served.end(), g.channels.begin(), g.channels.end());
      const bool carriage = g.family == Family::scanning;
      CHECK(carriage == (s.chosen.front().family == Family::scanning));
      CHECK(static_cast<int>(g.places.size()) == g.heads_total);
    }
    CHECK(served.size() == job.channels.size());
    CHECK(s.alternatives.size() <= 3);
  }
}

TEST_CASE("a slower line never needs more heads of the same head") {
  for (std::uint64_t i = 0; i < runs; ++i) {
    const Catalogue c = made::catalogue_of({made::plain_head("A")});
    Request r = made::plain_request();
    const double fast = 0.3 + 0.05 * static_cast<double>(i);
    r.line.speed = given(metres_per_second(fast));
    const Selection at_speed = select_for(r, c);
    r.line.speed = given(metres_per_second(fast * 0.7));
    const Selection slower = select_for(r, c);
    if (at_speed.chosen.empty()) continue;
    CAPTURE(fast);
    REQUIRE(!slower.chosen.empty());
    CHECK(heads_total(slower.chosen) <= heads_total(at_speed.chosen));
  }
}

TEST_CASE("the order of the catalogue decides nothing but ties") {
  for (std::uint64_t i = 0; i < runs; ++i) {
    Catalogue c = made::catalogue(i, 10);
    const Request r = made::request(i);
    const Selection forward = select_for(r, c);
    std::reverse(c.heads.begin(), c.heads.end());
    const Selection backward = select_for(r, c);
    CAPTURE(i);
    CHECK(heads_in(forward.chosen) == heads_in(backward.chosen));
    CHECK(heads_total(forward.chosen) == heads_total(backward.chosen));
  }
}

TEST_CASE("taking a loser out of the catalogue changes nothing") {
  for (std::uint64_t i = 0; i < runs; ++i) {
    Catalogue c = made::catalogue(i, 10);
    const Request r = made::request(i);
    const Selection whole = select_for(r, c);
    if (whole.chosen.empty() || whole.rejected.empty()) continue;
    const std::string gone = whole.rejected.front().head;
    c.heads.erase(std::find_if(c.heads.begin(), c.heads.end(),
                               [&](const Head& h) { return h.name == gone; }));
    const Selection rest = select_for(r, c);
    CAPTURE(i);
    CHECK(heads_in(whole.chosen) == heads_in(rest.chosen));
  }
}

TEST_CASE("feet and inches choose the same arrangement as metres") {
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  Request metric = made::plain_request();
  metric.image.width = given(millimetres(406.4));
  metric.line.speed = given(metres_per_second(0.508));
  Request us = made::plain_request();
  us.image.width = given(metres(16 * 0.0254));
  us.line.speed = given(metres_per_second(20 * 0.3048 * 5 / 60));
  const Selection a = select_for(metric, c);
  const Selection b = select_for(us, c);
  REQUIRE(a.chosen.size() == 1);
  REQUIRE(b.chosen.size() == 1);
  CHECK(a.chosen.front().heads_total == b.chosen.front().heads_total);
  CHECK(a.chosen.front().stack == b.chosen.front().stack);
}

TEST_CASE("of equals the first of the catalogue, of unequals the cheaper") {
  const Request r = made::plain_request();
  Catalogue c = made::catalogue_of({made::plain_head("A"), made::plain_head("B")});
  CHECK(select_for(r, c).chosen.front().head == "A");
  c.heads[0].price = made::euros(6000);
  CHECK(select_for(r, c).chosen.front().head == "B");
}

TEST_CASE("the space a limit must leave is the station's own length") {
  Request r = made::plain_request();
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(r, c, date);
  const Selection open = select(job, c);
  const Length length = size_station(job, c, open.chosen).footprint;
  r.limits.space = given(length);
  CHECK(!select_for(r, c).chosen.empty());
  r.limits.space = given(length * (1 - 1e-6));
  const Selection tight = select_for(r, c);
  CHECK(tight.chosen.empty());
  REQUIRE(tight.rejected.size() == 1);
  CHECK(tight.rejected.front().reasons.front().code == "space");
}

// A dryer of 2 m where less is needed stands 2 m long all the same (made catalogue, by hand).
TEST_CASE("the space a limit must leave counts dryers as they are installed") {
  Request r = made::plain_request();
  r.inks.front().family = given(InkFamily::aqueous);
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(r, c, date);
  const Selection open = select(job, c);
  REQUIRE(!open.chosen.empty());
  const Station station = size_station(job, c, open.chosen);
  REQUIRE(station.stages.size() == 1);
  REQUIRE(*station.stages.front().installed_length_m > *station.stages.front().length_m * 1.01);
  r.limits.space = given(station.footprint);
  CHECK(!select_for(r, c).chosen.empty());
  r.limits.space = given(station.footprint * (1 - 1e-6));
  CHECK(select_for(r, c).chosen.empty());
}

TEST_CASE("a budget of exactly the capital passes, a cent less does not") {
  Request r = made::plain_request();
  const Catalogue c = made::catalogue_of({made::plain_head("A")});
  const Job job = resolve(r, c, date);
  const Money capital = quote(job, c, select(job, c).chosen).capital;
  r.limits.budget = given(Price{capital, "EUR"});
  CHECK(!select_for(r, c).chosen.empty());
  r.limits.budget = given(Price{capital - Money{1}, "EUR"});
  CHECK(select_for(r, c).chosen.empty());
}

TEST_CASE("prefers rank before money, and unpriced lines before price") {
  Request r = made::plain_request();
  Catalogue c = made::catalogue_of({made::plain_head("A"), made::plain_head("B")});
  c.heads[0].serviceable = given(Serviceable::none);
  c.heads[1].price = made::euros(7000);
  r.service.serviceable = given(Wish::prefer);
  CHECK(select_for(r, c).chosen.front().head == "B");
  r.service.serviceable.reset();
  CHECK(select_for(r, c).chosen.front().head == "A");
  c.heads[0].price.reset();
  CHECK(select_for(r, c).chosen.front().head == "B");
}

TEST_CASE("5 % apart is one price, the classes are ordered") {
  CHECK(price_class(Money{100000}) <= price_class(Money{100001}));
  CHECK(price_class(Money{200000}) > price_class(Money{100000}));
  CHECK(price_class(Money{0}) < price_class(Money{1}));
  RankKey a;
  RankKey b;
  a.ownership = 100;
  b.ownership = 99;
  a.joints = 1;
  b.joints = 2;
  CHECK(before(a, b));
  CHECK_FALSE(before(b, a));
  const Reason reason = lost_reason(b, a, "black", "EUR");
  CHECK(reason.code == "lost");
  CHECK(reason.subject == "joints");
  CHECK(reason.value == 2);
  CHECK(reason.limit == 1);
}

TEST_CASE("of one price, what closes at the likely dot comes before fewer joints") {
  RankKey a;
  RankKey b;
  a.joints = 9;
  b.open = 1;
  CHECK(before(a, b));
  CHECK(lost_reason(b, a, "black", "EUR").subject == "open");
  b.price_class = -1;
  CHECK(before(b, a));
}

TEST_CASE("what the substrate shows at most is two dots a smallest dot") {
  // Closed form: 5 pL of a 62 um dot at 10 pL is 62 / 2^(1/3) = 49.21 um, 2 / D = 1032.3 per inch.
  const Selection s =
      select_for(made::plain_request(), made::catalogue_of({made::plain_head("A")}));
  REQUIRE(s.substrate_ceiling);
  CHECK(in_dpi(*s.substrate_ceiling) == doctest::Approx(1032.3).epsilon(1e-4));
}

TEST_CASE("a white beside process colours gets heads of its own") {
  Request r = made::plain_request();
  Colour white;
  white.name = "white";
  white.kind = given(ColourKind::white);
  r.colours.push_back(white);
  r.inks.push_back(r.inks.front());
  r.inks.back().name = "white";
  const Catalogue c = made::catalogue_of({made::plain_head("A"), made::plain_head("B")});
  const Selection s = select_for(r, c);
  REQUIRE(s.chosen.size() == 2);
  CHECK(s.chosen[1].name == "white");
  CHECK(at_least(s.chosen[1].dots.front().laydown, 10e-6));
}

TEST_CASE("the heads of a group stand behind those of the groups before it") {
  Request r = made::plain_request();
  Colour white;
  white.name = "white";
  white.kind = given(ColourKind::white);
  r.colours.push_back(white);
  Catalogue c = made::catalogue_of({made::plain_head("A")});
  for (const bool known : {true, false}) {
    if (!known) c.heads.front().body_depth.reset();
    const Selection s = select_for(r, c);
    REQUIRE(s.chosen.size() == 2);
    const Group& first = s.chosen[0];
    const Group& second = s.chosen[1];
    const Length start = known ? first.footprint + c.heads[0].body_depth->value / 2
                               : millimetres(10) * first.places.back().row + millimetres(10);
    CHECK(in_mm(first.places.front().y) ==
          doctest::Approx(known ? in_mm(c.heads[0].body_depth->value / 2) : 0));
    CHECK(in_mm(second.places.front().y) == doctest::Approx(in_mm(start)));
    CHECK((first.footprint > Length()) == known);
  }
}

TEST_CASE("two runs give the same selection") {
  for (std::uint64_t i = 0; i < 10; ++i) {
    const Catalogue c = made::catalogue(i, 12);
    const Request r = made::request(i);
    const Selection a = select_for(r, c);
    const Selection b = select_for(r, c);
    CHECK(heads_in(a.chosen) == heads_in(b.chosen));
    CHECK(a.rejected.size() == b.rejected.size());
    CHECK(a.conditions.size() == b.conditions.size());
  }
}
