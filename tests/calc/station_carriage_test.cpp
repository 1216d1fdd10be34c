// Lamps and supplies of stations: those of a carriage, and those that stir.
#include <doctest/doctest.h>

#include <algorithm>

#include "calc/codes.h"
#include "calc/laydown.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::station_of;
using support::StationCase;
using support::warned;

TEST_CASE("lamps on a carriage") {
  StationCase c;
  c.set_scanning();
  const Station station = station_of(c);
  const Stage& stage = station.stages.front();
  CHECK(*stage.rows == 3);
  CHECK(*stage.units == 6);
  CHECK(station.footprint.si() == doctest::Approx(0.18 + 0.6));
  CHECK_FALSE(stage.length_m);
  CHECK(*stage.lamps_lit == 3);
  CHECK(*stage.dose_stroke_mj_per_cm2 == doctest::Approx(128));
  CHECK(*stage.strokes_over_point == doctest::Approx(3));
  CHECK(*stage.dose_given_mj_per_cm2 == doctest::Approx(384));
  // Two more strokes of 2 s follow the last that prints. Of 1 kW each six are connected, three lit.
  CHECK(*stage.strokes_after == doctest::Approx(2));
  CHECK(*stage.time_after_s == doctest::Approx(4));
  CHECK(*stage.electrical_kw == doctest::Approx(6));
  CHECK(*stage.running_kw == doctest::Approx(3));
  // Where two strokes lay down a point the last ink starts at 100 mm: four windows.
  c.groups.front().scan->passes = 2;
  CHECK(*station_of(c).stages.front().lamps_lit == 4);
  CHECK(*station_of(c).stages.front().dose_given_mj_per_cm2 == doctest::Approx(384));
  c.groups.front().scan->passes = 1;
  // Along the feed the heads count where they are longer than the windows.
  c.groups.front().scan->heads_along = millimetres(250);
  CHECK(station_of(c).footprint.si() == doctest::Approx(0.25 + 0.6));
  // A window shorter than the advance leaves strips: three of 20 mm reach over 50 mm.
  c.catalogue.lamps.front().window_across = exactly(millimetres(20));
  c.request.inks.front().cure_dose = exactly(Dose::from_si(100));
  CHECK(*station_of(c).stages.front().lamps_lit == 3);
}

// A carriage's web warms by the light of one lamp a stroke, however many stand side by side:
// 1.28 x 1600 J/m2 (not aged) x 0.8 absorbed, and a fraction of the ink's own heat.
TEST_CASE("lamps side by side on a carriage warm the web once a stroke") {
  StationCase c;
  c.set_scanning();
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.1));
  const double three = *station_of(c).stages.front().web_degc;
  c.request.inks.front().cure_dose = exactly(Dose::from_si(1000));
  const Stage one = station_of(c).stages.front();
  CHECK(*one.lamps_lit == 1);
  CHECK(*one.web_degc == doctest::Approx(three));
}

TEST_CASE("ink that settles goes into a supply that stirs, and what is not sure is warned of") {
  StationCase c;
  CHECK_FALSE(warned(station_of(c), "supply_unstirred"));
  c.request.inks.front().settles = exactly(true);
  CHECK(warned(station_of(c), "supply_unstirred"));
  Supply stirred = c.catalogue.supplies.front();
  stirred.name = "S-2";
  stirred.stirs = exactly(true);
  stirred.price = support::euro(900);
  c.catalogue.supplies.push_back(stirred);
  const Station other = station_of(c);
  CHECK(other.feeds.front().supply == "S-2");
  CHECK(warned(other, "supply_not_named"));
  CHECK_FALSE(warned(other, "supply_unstirred"));
  c.catalogue.heads.front().supply = exactly(std::string("S-2"));
  CHECK_FALSE(warned(station_of(c), "supply_not_named"));
  c.request.inks.front().settles = exactly(false);
  c.catalogue.heads.front().supply = exactly(std::string("S-1"));
  CHECK(station_of(c).feeds.front().supply == "S-1");
}
