#include "calc/cost.h"

#include <doctest/doctest.h>

#include <cstdlib>

#include "calc/present_value.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::StationCase;

namespace {
Cost cost_of(const StationCase& c) { return size_station(c.job, c.catalogue, c.groups).cost; }
}  // namespace

// Worked: 100 k and 50 k a year at 8 % over 5 years are 75.0 k a year (annuity, year end).
TEST_CASE("capital and yearly cost levelised") {
  const Money all = ownership(to_money(100000), to_money(50000), 0.08, 5);
  CHECK(levelised(all, 0.08, 5).major() == doctest::Approx(75045.65).epsilon(1e-6));
}

// By hand: ink 2224.8 L x 50; heads 4 x 4000/6000 x 1000 and an hour of 40 each; 6 kW x 4000 h x
// 0.20. Annuity factor of 8 % and 5 years 3.99271004.
TEST_CASE("running cost and ownership of a small station") {
  const StationCase c;
  const Cost cost = cost_of(c);
  CHECK(cost.ink_per_year.minor == 11124000);
  CHECK(cost.heads_per_year.minor == 266667);
  CHECK(cost.labour_per_year.minor == 10667);
  CHECK(cost.energy_per_year.minor == 480000);
  CHECK(cost.cleaning_per_year.minor == 0);
  CHECK(cost.running_per_year.minor == 11881334);
  CHECK(cost.ownership.major() == doctest::Approx(10450 + 118813.34 * 3.99271004).epsilon(3e-8));
}

// By hand from the case above: ink 111240 x 3.99271004 = 444149.06, heads 2666.67 x 3.99271004 =
// 10647.24, capital 10450, energy 4800 x 3.99271004 = 19165.01, labour 106.67 x 3.99271004 =
// 425.90; a fifth of each.
TEST_CASE("the great terms of ownership, the greatest first, and what a fifth of each moves") {
  const StationCase c;
  const std::vector<CostTerm> terms = cost_of(c).terms;
  const std::vector<CostTerm> wanted{{"ink", to_money(444149.06), to_money(88829.81)},
                                     {"energy", to_money(19165.01), to_money(3833.00)},
                                     {"heads", to_money(10647.24), to_money(2129.45)},
                                     {"capital", to_money(10450), to_money(2090)},
                                     {"labour", to_money(425.90), to_money(85.18)}};
  REQUIRE(terms.size() == wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    CAPTURE(wanted[i].name);
    CHECK(terms[i].name == wanted[i].name);
    CHECK(std::abs(terms[i].value.minor - wanted[i].value.minor) <= 1);
    CHECK(std::abs(terms[i].swing.minor - wanted[i].swing.minor) <= 1);
  }
}

TEST_CASE("cost per area and per thousand parts") {
  StationCase c;
  c.job.pitch = exactly(millimetres(200));
  const Cost cost = cost_of(c);
  const double yearly = cost.ownership.major() / 3.99271004;
  CHECK(*cost.per_m2 == doctest::Approx(yearly / (0.1 * 3600 * 4000)).epsilon(1e-8));
  CHECK(*cost.per_thousand == doctest::Approx(1000 * yearly / (18000 * 4000.0)).epsilon(1e-8));
  c.job.pitch = exactly(Length());
  CHECK_FALSE(cost_of(c).per_thousand);
}

TEST_CASE("an ink without price is left out of the running cost and said so") {
  StationCase c;
  c.request.inks.front().price.reset();
  const Station s = size_station(c.job, c.catalogue, c.groups);
  CHECK(s.cost.ink_per_year.minor == 0);
  bool said = false;
  for (const Notice& n : s.warnings) said = said || n.code == "ink_unpriced";
  CHECK(said);
  CHECK(s.bom_unpriced == 14);
}

// 0.5 mL/h of flush over 4000 h are 2 L of 20 a year; a fluid with a life of its own wears instead.
TEST_CASE("flushing fluid is a cost of cleaning, not of ink") {
  StationCase c;
  CHECK(cost_of(c).flush_unpriced);
  c.catalogue.parts.push_back(support::part("FS-1", PartKind::flush, Per::channel, 20));
  CHECK(cost_of(c).cleaning_per_year.minor == 4000);
  CHECK(cost_of(c).ink_per_year.minor == 11124000);
  CHECK_FALSE(cost_of(c).flush_unpriced);
  c.job.parameters.set(P::flush_bottle_l, 2);
  CHECK(cost_of(c).cleaning_per_year.minor == 2000);
  c.catalogue.parts.back().life = exactly(seconds(1000 * 3600.0));
  CHECK(cost_of(c).cleaning_per_year.minor == 4 * 2000);
}

TEST_CASE("parts that wear are bought again over their life") {
  StationCase c;
  c.catalogue.parts.push_back(support::part("F-1", PartKind::filter, Per::supply, 30));
  c.catalogue.parts.back().life = exactly(seconds(1000 * 3600.0));
  CHECK(cost_of(c).cleaning_per_year.minor == 2 * 4 * 3000);
}

TEST_CASE("head life by drops where that is the lesser") {
  StationCase c;
  // 5e9 drops over 5 kHz x 0.15 = 6.67e6 s = 1851.85 h: 4 x 4000 / 1851.85 = 8.64 heads a year
  c.catalogue.heads.front().life_drops = exactly(5e9);
  CHECK(cost_of(c).heads_per_year.minor == 864000);
}

// Calendar: checked against a table of day numbers (2024 and 2000 leap years, 1900 none).
TEST_CASE("days between dates") {
  CHECK(*days_between("2026-11-25", "2026-11-25") == 0);
  CHECK(*days_between("2026-05-29", "2026-11-25") == 180);
  CHECK(*days_between("2024-02-28", "2024-03-01") == 2);
  CHECK(*days_between("1900-02-28", "1900-03-01") == 1);
  CHECK(*days_between("2000-01-01", "2001-01-01") == 366);
  CHECK(*days_between("2026-11-25", "2026-11-24") == -1);
  CHECK_FALSE(days_between("2026-13-01", "2026-11-25"));
  CHECK_FALSE(days_between("", "2026-11-25"));
  CHECK_FALSE(days_between("25.11.2026", "2026-11-25"));
}

TEST_CASE("what is no date is at no distance from one") {
  for (const char* text :
       {"202x-11-25", "2026-1x-25", "2026-11-2x", "2026-00-25", "0000-11-25", "2026-11-00",
        "2026-11-31", "2026-02-29", "2026-11/25", "2026/11-25", "-026-11-25"}) {
    CAPTURE(text);
    CHECK_FALSE(days_between(text, "2026-11-25"));
    CHECK_FALSE(days_between("2026-11-25", text));
  }
}
