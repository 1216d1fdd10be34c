#include "calc/station.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "calc/codes.h"
#include "calc/laydown.h"
#include "calc/station_flexibility.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::station_of;
using support::StationCase;
using support::warned;

namespace {

/// A case of a seeded generator: several heads, rows with and without prices, two groups.
void scramble(StationCase& c, std::mt19937& random) {
  const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  c.catalogue.heads.push_back(c.catalogue.heads.front());
  c.catalogue.heads.back().name = "H-2";
  if (below(2) == 0) c.catalogue.heads.back().price.reset();
  if (below(3) == 0) c.catalogue.heads.front().lead_time.reset();
  if (below(3) == 0) c.catalogue.heads.front().supply.reset();
  if (below(3) == 0) c.catalogue.boards.front().price.reset();
  if (below(3) == 0) c.catalogue.lamps.clear();
  if (below(3) == 0) c.request.inks.front().price.reset();
  if (below(3) == 0) c.request.inks.front().cure_dose.reset();
  for (int i = below(8); i > 0; --i) {
    const auto kind = static_cast<PartKind>(below(static_cast<int>(PartKind::training) + 1));
    const auto per = static_cast<Per>(below(static_cast<int>(Per::supply) + 1));
    Part part = support::part("P-" + std::to_string(i), kind, per, below(3) * 12.34);
    if (below(2) == 0) part.life = exactly(seconds(3600.0 * (1 + below(5000))));
    c.catalogue.parts.push_back(part);
  }
  c.set_family(static_cast<InkFamily>(below(4)));
  if (below(3) == 0) c.set_scanning();
  c.groups.front().heads_total = 1 + below(40);
  c.groups.front().joints = below(9);
  if (below(2) == 0) {
    c.groups.push_back(c.groups.front());
    c.groups.back().head = "H-2";
    c.groups.back().heads_total = 1 + below(20);
  }
}

}  // namespace

TEST_CASE("a quote equals the station's own capital, ownership, unpriced lines and lead time") {
  std::mt19937 random(7);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same quotes every run
  for (int i = 0; i < 500; ++i) {
    CAPTURE(i);
    StationCase c;
    scramble(c, random);
    const Station s = station_of(c);
    const Quote q = quote(c.job, c.catalogue, c.groups);
    CHECK(q.capital == s.cost.capital);
    CHECK(q.ownership == s.cost.ownership);
    CHECK(q.unpriced == s.bom_unpriced);
    CHECK(q.lead_time_days == (s.lead_time ? s.lead_time->days : 0));
    const Pricer pricer(c.job, c.catalogue);
    CHECK(pricer.quote(c.groups).ownership == q.ownership);
  }
}

// 0.1 m x 1 m/s x 10 mL/m2 x 15 % = 540 mL/h; waste 3 % = 16.2 mL/h, above 4 heads x 2 mL x 2
// purges over 16 h = 1 mL/h; flush 4 heads x 1 mL x 2 over 16 h = 0.5 mL/h. Worked by hand.
TEST_CASE("consumption is printed ink and the greater of the maintenance share and the purges") {
  StationCase c;
  c.job.pitch = exactly(millimetres(200));  // 18 000 parts an hour
  Consumption use = station_of(c).consumption.front();
  CHECK(use.channel == "black");
  CHECK(use.printed_ml_per_hour == doctest::Approx(540));
  CHECK(use.flush_ml_per_hour == doctest::Approx(0.5));
  CHECK(use.waste_ml_per_hour == doctest::Approx(16.7));
  CHECK(use.ml_per_hour == doctest::Approx(556.7));
  CHECK(use.l_per_year == doctest::Approx(2226.8));
  CHECK(use.l_per_month == doctest::Approx(2226.8 / 12));
  CHECK(*use.ml_per_thousand == doctest::Approx(556.7 / 18));
  c.catalogue.heads.front().purge = exactly(Volume::from_si(100e-6));
  use = station_of(c).consumption.front();
  CHECK(use.waste_ml_per_hour == doctest::Approx(4 * 100 * 2 / 16.0 + 0.5));
}

TEST_CASE("printed share and cover scale consumption") {
  StationCase c;
  c.job.printed_share = 0.5;
  c.job.channels.front().cover_mean = exactly(0.30);
  CHECK(station_of(c).consumption.front().printed_ml_per_hour == doctest::Approx(540));
  c.set_scanning();  // 0.02 m2/s x 10 mL/m2 x 30 % x 0.5
  CHECK(station_of(c).consumption.front().printed_ml_per_hour == doctest::Approx(108));
}

TEST_CASE("lamps: rows by dose, one dose for all channels, least sum wins") {
  StationCase c;
  Stage stage = station_of(c).stages.front();
  CHECK(stage.kind == "uv");
  CHECK(*stage.dose_mj_per_cm2 == doctest::Approx(300));
  CHECK(*stage.rows == 3);
  CHECK(*stage.units == 6);
  CHECK(*stage.electrical_kw == doctest::Approx(6));
  CHECK(*stage.length_m == doctest::Approx(0.15));
  CHECK(station_of(c).footprint.si() == doctest::Approx(0.2 + 0.15 + 0.6));
  // Twice the irradiance: 2 rows, 4 lamps of 600 for 2400 against 3000.
  Lamp strong = c.catalogue.lamps.front();
  strong.name = "L-2";
  strong.irradiance = exactly(Irradiance::from_si(160000));
  strong.price = support::euro(600);
  c.catalogue.lamps.push_back(strong);
  stage = station_of(c).stages.front();
  CHECK(stage.equipment == "L-2");
  CHECK(*stage.rows == 2);
  c.catalogue.lamps.back().price.reset();
  CHECK(station_of(c).stages.front().equipment == "L-1");
}

// 6 lamps of 500 and 1 kW against 4 arc lamps of 400: over 5 years at 8 % and 4000 h x 0.20 a kWh,
// 800 a year each kW. Annuity 3.99271004: 3000 + 4800 x 3.9927 = 22165. Worked by hand.
TEST_CASE("lamps are chosen by price and energy over the years, not by price alone") {
  StationCase c;
  Lamp arc = c.catalogue.lamps.front();
  arc.name = "L-2";
  arc.price = support::euro(400);
  arc.electrical = exactly(Power::from_si(1300));
  c.catalogue.lamps.push_back(arc);
  // 6 of 400 and 1.3 kW: 2400 + 6240 x 3.9927 = 27315.
  CHECK(station_of(c).stages.front().equipment == "L-1");
  c.catalogue.lamps.back().electrical = exactly(Power::from_si(1020));  // 2400 + 19548 = 21948
  CHECK(station_of(c).stages.front().equipment == "L-2");
  // An arc lamp brings its exhaust: on request it is a line more without price.
  c.catalogue.lamps.back().mercury = exactly(true);
  CHECK(station_of(c).stages.front().equipment == "L-1");
  c.catalogue.parts.push_back(support::part("E-1", PartKind::exhaust, Per::station, 200));
  CHECK(station_of(c).stages.front().equipment == "L-2");
  c.catalogue.parts.back().price = support::euro(300);
  CHECK(station_of(c).stages.front().equipment == "L-1");
}

// By hand: 0.8 x 80 kW/m2 x 20 mm / 1 m/s = 1280 J/m2 a stroke, 3 strokes for 3000; ink at 50 mm
// moves on by 50 mm a stroke, so that the third lights it at 150 mm: 3 windows of 60 mm, on either
// side of the carriage. They reach 180 mm, further than the heads' 100 mm.
TEST_CASE("the dose of the rows on a line, never below what is asked") {
  const StationCase c;
  CHECK(*station_of(c).stages.front().dose_given_mj_per_cm2 == doctest::Approx(3 * 128));
  CHECK_FALSE(station_of(c).stages.front().strokes_over_point);
}

TEST_CASE("a lamp that would need more than a hundred rows is no answer") {
  StationCase c;
  c.catalogue.lamps.front().irradiance = exactly(Irradiance::from_si(100));
  const Station s = station_of(c);
  CHECK(s.stages.front().equipment.empty());
  CHECK(*s.stages.front().dose_mj_per_cm2 == doctest::Approx(300));
  CHECK(warned(s, "cure_unsized"));
}

TEST_CASE("without a dose nothing is sized and the lamp is on request") {
  StationCase c;
  c.request.inks.front().cure_dose.reset();
  const Station s = station_of(c);
  CHECK_FALSE(s.stages.front().dose_mj_per_cm2);
  CHECK_FALSE(s.stages.front().units);
  CHECK(s.stages.front().equipment.empty());
  CHECK(warned(s, "cure_unsized"));
  CHECK(s.bom_unpriced == 14);
}

// 60 mL/min x 1050 kg/m3 x 0.65 x 0.9 = 2.2113 kg/h; over 0.1 m x 20 kg/(m2 h) = 1.1057 m.
// Heat: latent at 80 degC 2307.7 + 4.186 x 55 = 2537.9 kJ/kg (steam tables 2538.2), power over
// 0.45.
TEST_CASE("drying of an aqueous ink") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  Dryer dryer;
  dryer.element = "dryer";
  dryer.name = "D-1";
  dryer.price = support::euro(700);
  dryer.width = exactly(millimetres(120));
  dryer.length = exactly(metres(0.5));
  c.catalogue.dryers.push_back(dryer);
  const Station s = station_of(c);
  const Stage& stage = s.stages.front();
  CHECK(stage.kind == "drying");
  CHECK(*stage.water_kg_per_h == doctest::Approx(2.21130));
  CHECK(*stage.length_m == doctest::Approx(1.105650));
  CHECK(*stage.heat_kw == doctest::Approx(2.2113 / 3600 * 2538.2).epsilon(0.001));
  CHECK(*stage.electrical_kw == doctest::Approx(*stage.heat_kw / 0.45));
  CHECK(*stage.units == 3);
  CHECK(stage.equipment == "D-1");
  CHECK(*stage.installed_length_m == doctest::Approx(1.5));
  CHECK(s.footprint.si() == doctest::Approx(0.2 + 1.5 + 0.6));
  // Two abreast take the line once.
  c.catalogue.dryers.front().width = exactly(millimetres(60));
  CHECK(*station_of(c).stages.front().units == 6);
  CHECK(*station_of(c).stages.front().installed_length_m == doctest::Approx(1.5));
  c.catalogue.dryers.clear();
  CHECK_FALSE(station_of(c).stages.front().installed_length_m);
  CHECK(station_of(c).footprint.si() == doctest::Approx(0.2 + 1.10565 + 0.6));
}

// Images of half the pitch: the dryer holds them and the gaps together, its heat and air are of
// half the water, but each film still needs the whole length to dry (mass balance, by hand).
TEST_CASE("a dryer takes the mean of products and gaps, its length the film") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  const Stage whole = station_of(c).stages.front();
  c.job.printed_share = 0.5;
  const Stage half = station_of(c).stages.front();
  CHECK(*half.water_kg_per_h == doctest::Approx(2.21130 / 2));
  CHECK(*half.heat_kw == doctest::Approx(*whole.heat_kw / 2));
  CHECK(*half.exhaust_m3_per_h == doctest::Approx(*whole.exhaust_m3_per_h / 2));
  CHECK(*half.length_m == doctest::Approx(*whole.length_m));
}

TEST_CASE("process colours together are dried at their limit, not as a sum of solids") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  for (const char* name : {"c", "m", "y"}) {
    c.job.channels.push_back(c.job.channels.front());
    c.job.channels.back().name = name;
    c.groups.front().channels.emplace_back(name);
    c.groups.front().dots.push_back(c.groups.front().dots.front());
    c.groups.front().dots.back().channel = name;
  }
  CHECK(*station_of(c).stages.front().water_kg_per_h == doctest::Approx(2.4 * 2.21130));
  c.request.inks.front().limit = exactly(1.5);
  CHECK(*station_of(c).stages.front().water_kg_per_h == doctest::Approx(1.5 * 2.21130));
}

// Worked: 40 heads, 8 weeks, 4000 h a year, life 6000 h: mean 4.09, 8 spares (Poisson, 95 %).
TEST_CASE("spares for the lead time, and one more where a body may strike") {
  StationCase c;
  c.groups.front().heads_total = 40;
  Station s = station_of(c);
  REQUIRE(s.spares.size() == 1);
  CHECK(s.spares.front().part_number == "100-1");
  CHECK(s.spares.front().mean == doctest::Approx(4.09).epsilon(0.001));
  CHECK(s.spares.front().quantity == 8);
  c.request.product.form = exactly(Form::cylinder);
  CHECK(station_of(c).spares.front().quantity == 9);
  c.request.product.form.reset();
  c.request.product.thickness_variation = exactly(millimetres(1));
  CHECK(station_of(c).spares.front().quantity == 8);  // of a web
  c.request.product.thickness = exactly(millimetres(18));
  CHECK(station_of(c).spares.front().quantity == 9);
  c.request.product.thickness_variation = exactly(millimetres(0));
  CHECK(station_of(c).spares.front().quantity == 8);
  c.request.product.thickness_variation = exactly(millimetres(1));
  c.catalogue.heads.front().lead_time.reset();
  s = station_of(c);
  CHECK(s.spares.front().quantity == 2);
  CHECK(warned(s, "spares_without_lead_time"));
}

TEST_CASE("two groups of one head share its spares") {
  StationCase c;
  c.groups.front().heads_total = 20;
  c.groups.push_back(c.groups.front());
  const Station s = station_of(c);
  REQUIRE(s.spares.size() == 1);
  CHECK(s.spares.front().mean == doctest::Approx(4.09).epsilon(0.001));
}

TEST_CASE("a pump of unknown flow is asked for where heads circulate ink") {
  StationCase c;
  CHECK_FALSE(warned(station_of(c), "pump_unknown"));
  c.catalogue.heads.front().recirculates = exactly(true);
  c.catalogue.heads.front().recirculation = exactly(VolumeFlow::from_si(70e-6 / 60));
  const Station s = station_of(c);
  REQUIRE(warned(s, "pump_unknown"));
  const auto& found = *std::find_if(s.warnings.begin(), s.warnings.end(),
                                    [](const Notice& n) { return n.code == "pump_unknown"; });
  const double heads = c.groups.front().heads_total;
  CHECK(std::get<double>(found.args.at(1).value) == doctest::Approx(70 * heads));
  CHECK(found.field == "supply.S-1.pump");
  c.catalogue.supplies.front().pump = exactly(VolumeFlow::from_si(900e-6 / 60));
  CHECK_FALSE(warned(station_of(c), "pump_unknown"));
}

TEST_CASE("every warning of the station is produced") {
  std::vector<std::string> seen;
  const auto take = [&](const StationCase& c) {
    for (const Notice& n : station_of(c).warnings) seen.push_back(n.code);
  };
  StationCase c;
  c.catalogue.heads.front().price_date = exactly(std::string("2026-05-28"));  // 181 days
  c.catalogue.heads.front().lead_time.reset();
  c.catalogue.boards.front().price = exactly(Price{to_money(1), "USD"});
  c.catalogue.lamps.front().electrical.reset();
  c.catalogue.heads.front().recirculates = exactly(true);
  c.catalogue.heads.front().recirculation = exactly(VolumeFlow::from_si(70e-6 / 60));
  c.request.inks.front().price.reset();
  take(c);
  c.catalogue.lamps.clear();
  c.request.inks.front().pinning_dose = exactly(Dose::from_si(100));
  c.request.inks.front().settles = exactly(true);
  take(c);
  c.catalogue.supplies.push_back(c.catalogue.supplies.front());
  c.catalogue.supplies.back().name = "S-2";
  c.catalogue.supplies.back().stirs = exactly(true);
  take(c);
  for (const std::string_view code : station_warning_codes()) {
    CAPTURE(code);
    CHECK(std::find(seen.begin(), seen.end(), code) != seen.end());
  }
  c.catalogue.heads.front().price_date = exactly(std::string("2026-05-29"));  // 180 days
  CHECK_FALSE(warned(station_of(c), "price_stale"));
}

TEST_CASE("flexibility is computed from arrangement and rows") {
  StationCase c;
  Head other = c.catalogue.heads.front();
  other.name = "H-2";
  other.maker = exactly(std::string("maker B"));
  c.catalogue.heads.front().maker = exactly(std::string("maker A"));
  for (Head* head : {&c.catalogue.heads.front(), &other}) {
    head->body_width = exactly(millimetres(80));
    head->body_depth = exactly(millimetres(40));
  }
  c.catalogue.heads.push_back(other);
  const std::vector<Flexibility> list = flexibility(c.job, c.catalogue, c.groups);
  REQUIRE(list.size() == 1);
  const Flexibility& f = list.front();
  CHECK(f.spare_speed->si() == doctest::Approx(0.5));
  CHECK(in_mm(*f.spare_width) == doctest::Approx(69 + 70 - 100));
  CHECK(f.families == std::vector<std::string>{"aqueous"});
  CHECK(f.free_colours == 0);
  CHECK(f.interchangeable == std::vector<std::string>{"H-2"});
  CHECK(f.replace_cost->minor == 104000);
  const Station s = station_of(c);
  // Of its board a head names one; with a second maker's head that is all there is no choice of.
  double boards = 0;
  for (const BomLine& line : s.bom) {
    if (line.source == "board.B-1") boards += line.extended_price->major();
  }
  CHECK(boards > 0);
  CHECK(*single_source_share(c.catalogue, s) == doctest::Approx(boards / 10450));
  c.catalogue.heads.back().body_depth = exactly(millimetres(41));
  // Heads and spares, 6000 of 10450, and the boards.
  CHECK(*single_source_share(c.catalogue, s) == doctest::Approx((6000.0 + boards) / 10450));
  CHECK(single_source_unpriced(c.catalogue, s).empty());
  c.catalogue.heads.front().price.reset();
  // Heads and spares are one part.
  CHECK(single_source_unpriced(c.catalogue, station_of(c)) == std::vector<std::string>{"100-1"});
}
