// Cure, drying and ventilation of a small station, worked by hand from the formulas of the method.
#include <doctest/doctest.h>

#include <cmath>

#include "calc/laydown.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::station_of;
using support::StationCase;

namespace {

const Stage& stage_of(const Station& station, const std::string& kind) {
  for (const Stage& stage : station.stages) {
    if (stage.kind == kind) return stage;
  }
  FAIL("no stage ", kind);
  return station.stages.front();
}

Stage stage(const StationCase& c, const std::string& kind) { return stage_of(station_of(c), kind); }

/// A solvent ink of one named solvent that fills the whole of it.
void make_solvent(StationCase& c, const std::string& name) {
  c.set_family(InkFamily::solvent);
  c.request.inks.front().solvent = exactly(name);
  c.request.inks.front().solvents = {{name, 1}};
  c.request.inks.front().solvent_share = exactly(1.0);
}

constexpr double vapour_kg_per_h = 3600.5 * 1.05e-3;  // 60 mL/min and 0.5 mL/h of flush

}  // namespace

TEST_CASE("heat of lamps and the web under them") {
  StationCase c;
  // 6 lamps of 1 kW; each 8 W/cm2 x 12 cm2 = 96 W of light.
  Stage uv = stage(c, "uv");
  CHECK(*uv.heat_kw == doctest::Approx(6 - 0.576));
  CHECK(*uv.cooling_m3_per_h == doctest::Approx(5424 / (1.2 * 1006 * 15) * 3600));
  CHECK_FALSE(uv.web_degc);
  // Three rows of 1600 J/m2 when new, half absorbed, and 10.5 g/m2 of ink at 300 J/g.
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.1));
  const double rise = (0.5 * 3 * 1600 + 10.5 * 300) / (0.1 * 1300);
  CHECK(*stage(c, "uv").web_degc == doctest::Approx(25 + rise));
  // The least speed decides: half of it doubles the dose, not the ink's own heat.
  c.job.speed->low = metres_per_second(0.5);
  c.job.speed->spread = Spread::demand;
  CHECK(*stage(c, "uv").web_degc ==
        doctest::Approx(25 + (0.5 * 6 * 1600 + 10.5 * 300) / (0.1 * 1300)));
  // An arc lamp brings 2.5 times as much with its other radiation.
  c.catalogue.lamps.front().mercury = exactly(true);
  CHECK(*stage(c, "uv").web_degc ==
        doctest::Approx(25 + (2.5 * 0.5 * 6 * 1600 + 10.5 * 300) / (0.1 * 1300)));
}

TEST_CASE("lamps too dim or too hot are passed over") {
  StationCase c;
  c.request.inks.front().cure_irradiance = exactly(Irradiance::from_si(70000));
  // 8 W/cm2 aged to 6.4 is below 7.
  CHECK(stage(c, "uv").equipment.empty());
  Lamp strong = c.catalogue.lamps.front();
  strong.name = "L-2";
  strong.irradiance = exactly(Irradiance::from_si(90000));
  c.catalogue.lamps.push_back(strong);
  CHECK(stage(c, "uv").equipment == "L-2");
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.1));
  c.request.substrate.temperature_limit = exactly(Temperature::celsius(60));
  CHECK(stage(c, "uv").equipment.empty());
  c.request.substrate.temperature_limit = exactly(Temperature::celsius(80));
  CHECK(stage(c, "uv").equipment == "L-2");
}

TEST_CASE("pinning is a stage of its own, without credit to the cure") {
  StationCase c;
  c.groups.front().positions = 4;
  c.request.inks.front().pinning_dose = exactly(Dose::from_si(200));
  const Station s = station_of(c);
  REQUIRE(s.stages.size() == 2);
  const Stage& pinning = s.stages.front();
  CHECK(pinning.kind == "pinning");
  // One row of 1280 J/m2 behind three of four positions, two lamps abreast.
  CHECK(*pinning.rows == 3);
  CHECK(*pinning.units == 6);
  CHECK(*pinning.dose_given_mj_per_cm2 == doctest::Approx(128));
  CHECK(*pinning.length_m == doctest::Approx(0.15));
  CHECK(*s.stages.back().rows == 3);
  CHECK(*s.stages.back().dose_mj_per_cm2 == doctest::Approx(300));
  CHECK(s.footprint.si() == doctest::Approx(0.2 + 0.15 + 0.15 + 0.6));
  // All twelve lamps are lit together: 1.152 kW, of which 0.3 scatter; once, with the last stage.
  CHECK(pinning.stray.empty());
  REQUIRE_FALSE(s.stages.back().stray.empty());
  CHECK(s.stages.back().stray.front().irradiance_w_per_m2 ==
        doctest::Approx(0.3 * 1152 / (3.14159265358979 * 0.25)));
  // Its heat counts: three times 200 J/m2, half absorbed.
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.1));
  const double with = *stage(c, "uv").web_degc;
  c.request.inks.front().pinning_dose.reset();
  CHECK(with - *stage(c, "uv").web_degc == doctest::Approx(3 * 100 / 130.0));
  // Arc lamps cannot be dimmed.
  c.request.inks.front().pinning_dose = exactly(Dose::from_si(200));
  c.catalogue.lamps.front().mercury = exactly(true);
  CHECK(stage(c, "pinning").equipment.empty());
}

// W_in of 25 degC and half saturated 0.00988 kg/kg; 2.2113 kg/h over 0.030 - W_in; volume after
// ASHRAE 2017; dew point of 0.030 kg/kg 31.6 degC (worked in safety.md 3.2 [C]).
TEST_CASE("exhaust of a dryer") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  const Stage drying = stage(c, "drying");
  const double p = 0.5 * 3169.7;
  const double dry_air = 2.2113 / (0.030 - 0.621945 * p / (101325 - p));
  const double volume = 0.287042 * 353.15 * (1 + 1.607858 * 0.030) / 101.325;
  CHECK(*drying.exhaust_m3_per_h == doctest::Approx(dry_air * volume).epsilon(1e-3));
  CHECK(*drying.dew_point_degc == doctest::Approx(31.6).epsilon(0.01));
  CHECK(*drying.air_degc == doctest::Approx(80));
  CHECK(*drying.condenses_degc == doctest::Approx(25));  // of the room
  // As moist as 0.060 kg/kg: 8.91 kPa of vapour, saturated at 43.6 degC (steam tables [P]).
  CHECK(*drying.dew_point_most_degc == doctest::Approx(43.6).epsilon(0.005));
  c.job.room = exactly(Temperature::celsius(35));
  CHECK(*stage(c, "drying").condenses_degc == doctest::Approx(35));
  c.job.room = exactly(Temperature::celsius(45));
  c.request.line.air_humidity = exactly(0.1);
  CHECK(stage(c, "drying").exhaust_m3_per_h);
  CHECK_FALSE(stage(c, "drying").condenses_degc);
  c.request.line.air_humidity.reset();
  // A room that is assumed may be as cold as its range, 18 degC.
  c.job.room.value = c.job.room.low = c.job.room.high = Temperature::celsius(25);
  c.job.room.origin.kind = OriginKind::assumed;
  CHECK(*stage(c, "drying").condenses_degc == doctest::Approx(18));
  c.job.room = exactly(Temperature::celsius(25));
  // A web of 80 g/m2 and 1.34 kJ/(kg K) is warmed by 55 K along with the water.
  const double water_heat = *drying.heat_kw;
  CHECK(drying.heat_at_least);
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.080));
  c.request.substrate.heat_capacity = exactly(SpecificHeat::from_si(1340));
  CHECK(*stage(c, "drying").heat_kw - water_heat == doctest::Approx(0.1 * 0.080 * 1.34 * 55));
  CHECK_FALSE(stage(c, "drying").heat_at_least);
  // A web of 130 mm is warmed over its width, not over that of the image.
  c.request.product.width = exactly(millimetres(130));
  CHECK(*stage(c, "drying").heat_kw - water_heat == doctest::Approx(1.3 * 0.1 * 0.080 * 1.34 * 55));
  c.request.product.width.reset();
  // Air held down by the substrate below the dew point carries nothing off.
  c.request.substrate.temperature_limit = exactly(Temperature::celsius(31));
  CHECK_FALSE(stage(c, "drying").exhaust_m3_per_h);
}

TEST_CASE("vapour in the open: all of it against the exposure limit") {
  StationCase c;
  make_solvent(c, "MEK");
  const Stage s = stage(c, "ventilation");
  CHECK(*s.vapour_kg_per_h == doctest::Approx(vapour_kg_per_h));
  REQUIRE(s.airing);
  CHECK_FALSE(s.airing->captures);
  CHECK_FALSE(s.airing->lel_m3_per_h);
  CHECK(*s.airing->limit_ppm == doctest::Approx(200));
  // 834 m3/h for 0.1 kg/h at 200 ppm and K 5: the worked case of the method.
  CHECK(*s.airing->health_m3_per_h == doctest::Approx(834 * vapour_kg_per_h / 0.1).epsilon(1e-3));
  CHECK(*s.airing->health_most_m3_per_h == doctest::Approx(*s.airing->health_m3_per_h * 2));
}

TEST_CASE("vapour captured: explosion air on all of it, health air on the rest") {
  StationCase c;
  make_solvent(c, "MEK");
  c.request.line.enclosed = exactly(true);
  Stage s = stage(c, "ventilation");
  CHECK(s.airing->captured_kg_per_h == doctest::Approx(0.9 * vapour_kg_per_h));
  CHECK(s.airing->room_kg_per_h == doctest::Approx(0.1 * vapour_kg_per_h));
  // 2 kg/h need 190.6 m3/h at 25 % of 1.4 % [C].
  CHECK(*s.airing->lel_m3_per_h == doctest::Approx(190.6 * vapour_kg_per_h / 2).epsilon(1e-3));
  CHECK(*s.airing->lel_hot_m3_per_h == doctest::Approx(*s.airing->lel_m3_per_h * 333.15 / 293.15));
  const double health = *s.airing->health_m3_per_h;
  CHECK(health == doctest::Approx(834 * vapour_kg_per_h).epsilon(1e-3));
  // 80 to 98 % captured where 90 % are assumed, K of 3 to 10 for 5.
  CHECK(*s.airing->health_most_m3_per_h == doctest::Approx(health * 2 * 2));
  CHECK(*s.airing->health_least_m3_per_h == doctest::Approx(health * 0.2 * 0.6));
  CHECK(s.airing->voc_peak_kg_per_year == doctest::Approx(vapour_kg_per_h * 4000));
  CHECK(s.airing->voc_kg_per_year < s.airing->voc_peak_kg_per_year);
  c.request.line.vapour_monitored = exactly(true);
  CHECK(*stage(c, "ventilation").airing->lel_m3_per_h ==
        doctest::Approx(*s.airing->lel_m3_per_h / 2));
  // What the request says comes before the table.
  c.request.inks.front().explosive_limit = exactly(0.028);
  c.request.inks.front().exposure_limit = exactly(100.0);
  Stage stated = stage(c, "ventilation");
  CHECK(*stated.airing->lel_m3_per_h == doctest::Approx(*s.airing->lel_m3_per_h / 4));
  CHECK(*stated.airing->health_m3_per_h == doctest::Approx(*s.airing->health_m3_per_h * 2));
  CHECK_FALSE(stated.airing->lel_hot);
}

TEST_CASE("a mixture of solvents, and one the table does not know") {
  StationCase c;
  make_solvent(c, "ethanol");
  c.request.line.enclosed = exactly(true);
  c.request.inks.front().solvents = {{"ethanol", 0.6}, {"ethyl acetate", 0.4}};
  const double ethanol = 0.6 / 46.1, acetate = 0.4 / 88.1;
  const double lel = (ethanol + acetate) / (ethanol / 3.3 + acetate / 2.0);
  const Stage s = stage(c, "ventilation");
  CHECK(*s.airing->lel_percent == doctest::Approx(lel));
  CHECK(*s.airing->limit_ppm ==
        doctest::Approx((ethanol + acetate) / (ethanol / 1000 + acetate / 200)));
  REQUIRE(s.airing->solvents.size() == 2);
  CHECK_FALSE(s.airing->solvents.back().seen);  // an EU limit from memory
  // Ethanol has no limit of the European Union: unknown, ask, never the American one.
  c.request.request.region = exactly(std::string("EU"));
  CHECK_FALSE(stage(c, "ventilation").airing->health_m3_per_h);
  CHECK(stage(c, "ventilation").airing->lel_m3_per_h);
  c.request.inks.front().solvents = {{"unheard-of", 1}};
  const Stage unknown = stage(c, "ventilation");
  CHECK_FALSE(unknown.airing->lel_m3_per_h);
  CHECK_FALSE(unknown.airing->health_m3_per_h);
  CHECK(*unknown.vapour_kg_per_h == doctest::Approx(vapour_kg_per_h));
}

TEST_CASE("an unknown share counts the whole ink, a little co-solvent nothing") {
  StationCase c;
  make_solvent(c, "MEK");
  c.request.inks.front().solvent_share.reset();
  CHECK(*stage(c, "ventilation").vapour_kg_per_h == doctest::Approx(vapour_kg_per_h));
  c.request.inks.front().solvent_share = exactly(0.5);
  CHECK(*stage(c, "ventilation").vapour_kg_per_h == doctest::Approx((1800 + 0.5) * 1.05e-3));
  c.set_family(InkFamily::aqueous);
  c.request.inks.front().solvent_share = exactly(0.04);
  CHECK(station_of(c).stages.size() == 1);
  c.request.inks.front().solvent_share = exactly(0.2);
  CHECK(station_of(c).stages.size() == 2);
  c.set_family(InkFamily::oil);
  CHECK(station_of(c).stages.empty());
}

TEST_CASE("fans by the air they move") {
  StationCase c;
  make_solvent(c, "MEK");
  const auto fans = [&](const char* source) {
    for (const BomLine& line : station_of(c).bom) {
      if (line.source == source) return line.quantity;
    }
    return 0.0;
  };
  c.catalogue.parts.push_back(support::part("V-1", PartKind::ventilation, Per::station, 900));
  CHECK(fans("part.V-1") == 1);
  c.catalogue.parts.back().air_flow = exactly(VolumeFlow::from_si(10000.0 / 3600));
  // 834 x 37.8 = 31530 m3/h in the room as it is assumed to mix, twice as much at K of 10.
  CHECK(fans("part.V-1") == 7);
}

TEST_CASE("the highest speed of a station is the least of heads, lamps and dryers as installed") {
  // Lamps: three rows of 80000 x 0.8 x 0.02 = 1280 J m/s over the 3000 J/m2 asked: 1.28 m/s.
  StationCase c;
  Station s = station_of(c);
  REQUIRE(s.speed_limit);
  CHECK(s.speed_limit->by == "uv");
  CHECK(s.speed_limit->speed.si() == doctest::Approx(1.28));
  CHECK(*s.stages.front().speed_limit_m_per_s == doctest::Approx(1.28));
  c.groups.front().speed_limit = metres_per_second(1.1);
  s = station_of(c);
  CHECK(s.speed_limit->by == "heads");
  CHECK(s.speed_limit->speed.si() == doctest::Approx(1.1));
  // Pinning in three places of one row, 1280 over 200 J/m2, is no limit before the cure.
  c.groups.front().speed_limit = metres_per_second(9);
  c.groups.front().positions = 4;
  c.request.inks.front().pinning_dose = exactly(Dose::from_si(200));
  s = station_of(c);
  CHECK(*s.stages.front().speed_limit_m_per_s == doctest::Approx(6.4));
  CHECK(s.speed_limit->by == "uv");
  // On a carriage the lamps are lit for its own speed.
  c.request.inks.front().pinning_dose.reset();
  c.set_scanning();
  CHECK_FALSE(station_of(c).speed_limit);
}

TEST_CASE(
    "a dryer serves until its length or its power is used up, both in proportion to the speed") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  c.groups.front().speed_limit = metres_per_second(9);
  Dryer dryer;
  dryer.element = "dryer";
  dryer.name = "D-1";
  dryer.width = exactly(metres(1));
  dryer.length = exactly(metres(50));
  c.catalogue.dryers.push_back(dryer);
  const Stage long_enough = stage(c, "drying");
  CHECK(*long_enough.speed_limit_m_per_s ==
        doctest::Approx(*long_enough.installed_length_m / *long_enough.length_m));
  CHECK(station_of(c).speed_limit->by ==
        (*long_enough.speed_limit_m_per_s < 9 ? "drying" : "heads"));
  const double kw = *long_enough.electrical_kw;
  c.catalogue.dryers.front().electrical = exactly(Power::from_si(kw * 1.1e3));
  CHECK(*stage(c, "drying").speed_limit_m_per_s == doctest::Approx(1.1));
  CHECK(station_of(c).speed_limit->by == "drying");
  CHECK(*stage(c, "drying").installed_kw == doctest::Approx(*stage(c, "drying").units * kw * 1.1));
  // Without the mass of what passes, its power is a lower bound: the speed is an upper one.
  CHECK(station_of(c).speed_limit->at_most);
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.080));
  CHECK_FALSE(station_of(c).speed_limit->at_most);
}

TEST_CASE("fans of the catalogue with what they move together") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  CHECK(station_of(c).fans.empty());
  Part fan;
  fan.element = "part";
  fan.name = "F-1";
  fan.kind = exactly(PartKind::exhaust);
  c.catalogue.parts.push_back(fan);
  REQUIRE(station_of(c).fans.size() == 1);
  CHECK_FALSE(station_of(c).fans.front().m3_per_h);
  // Some 110 m3/h leave the dryer: three of 50 m3/h.
  REQUIRE(*stage(c, "drying").exhaust_m3_per_h > 100);
  REQUIRE(*stage(c, "drying").exhaust_m3_per_h < 150);
  c.catalogue.parts.back().air_flow = exactly(VolumeFlow::from_si(50 / 3600.0));
  const Fans fans = station_of(c).fans.front();
  CHECK(fans.kind == "exhaust");
  CHECK(fans.part == "F-1");
  CHECK(fans.units == 3);
  CHECK(*fans.m3_per_h == doctest::Approx(150));
  CHECK(*station_of(c).heat_kw == doctest::Approx(*stage(c, "drying").electrical_kw));
}
