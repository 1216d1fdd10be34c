#include "calc/cure.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* exposure = "[C] dose = irradiance times dwell";

Irradiance w_per_cm2(double v) { return Irradiance::from_si(v * 1e4); }
Dose mj_per_cm2(double v) { return Dose::from_si(v * 10); }
double in_mj_per_cm2(Dose v) { return v.si() / 10; }
Speed m_per_min(double v) { return metres_per_second(v / 60); }

/// 8 W/cm2 over a flat window of 20 mm, 300 mm wide, as new.
LampWindow lamp() {
  LampWindow window;
  window.peak = w_per_cm2(8);
  window.along = millimetres(20);
  window.across = millimetres(300);
  window.ageing = 1;
  return window;
}

}  // namespace

TEST_CASE("dose, speed and lamps of a flat window") {
  LampWindow aged = lamp();
  aged.ageing = default_lamp_ageing;
  LampWindow peaked = lamp();
  peaked.shape = 0.5;
  LampWindow wide = lamp();
  wide.along = millimetres(40);
  support::check_all({
      {"dwell [ms]", dwell(millimetres(20), m_per_min(50)).si() * 1e3, 24, identity, exposure},
      {"one row [mJ/cm2]", in_mj_per_cm2(row_dose(lamp(), m_per_min(50))), 192, identity, exposure},
      {"two rows [mJ/cm2]", in_mj_per_cm2(2 * row_dose(lamp(), m_per_min(50))), 384, identity,
       exposure},
      {"aged to 0.8 [mJ/cm2]", in_mj_per_cm2(row_dose(aged, m_per_min(50))), 153.6, identity,
       exposure},
      {"triangular window [mJ/cm2]", in_mj_per_cm2(row_dose(peaked, m_per_min(50))), 96, identity,
       exposure},
      {"twice the window at twice the speed [mJ/cm2]",
       in_mj_per_cm2(row_dose(wide, m_per_min(100))), 192, identity, exposure},
      {"speed for 300 with two [m/min]", cure_speed_limit(2, lamp(), mj_per_cm2(300)).si() * 60, 64,
       identity, exposure},
      {"rows at 100 m/min, unrounded", mj_per_cm2(300) / row_dose(lamp(), m_per_min(100)), 3.125,
       identity, exposure},
  });
  CHECK(lamp_rows(mj_per_cm2(300), lamp(), m_per_min(100)) == 4);
  CHECK(lamp_rows(mj_per_cm2(300), lamp(), m_per_min(64)) == 2);
  CHECK(lamp_rows(mj_per_cm2(300), lamp(), m_per_min(64.01)) == 3);
  CHECK(lamp_rows(mj_per_cm2(1), lamp(), m_per_min(50)) == 1);
  CHECK(lamp_count(4, millimetres(520), millimetres(300)) == 8);
  CHECK(lamp_count(4, millimetres(300), millimetres(300)) == 4);
}

namespace {

constexpr const char* geometry = "[C] geometry of swath and window, by hand";

/// Strokes that find ink under a window: laid down at the swath's far end, it moves on by an
/// advance a stroke. Counted one by one.
int strokes_under(double window, double advance, int passes, int lit) {
  int count = 0;
  while ((passes + count) * advance <= lit * window * (1 + 1e-12)) ++count;
  return count;
}

}  // namespace

TEST_CASE("under a carriage the last ink of a point gets whole strokes") {
  const Length w = millimetres(60), a = millimetres(20);
  support::check_all({
      {"one pass", carriage_strokes(w, a, 1, 1), 3, identity, geometry},
      {"the third pass at the window's end", carriage_strokes(w, a, 3, 1), 1, identity, geometry},
      {"a swath longer than the window", carriage_strokes(w, a, 4, 1), 0, identity, geometry},
      {"two lamps lit", carriage_strokes(w, a, 3, 2), 4, identity, geometry},
      {"54.2 of 150 mm used, 27.1 mm a stroke",
       carriage_strokes(millimetres(150), 640.0 / dpi(600), 2, 1), 4, identity, geometry},
      {"lit for one stroke", carriage_lit(w, a, 3, 1), 1, identity, geometry},
      {"lit for two", carriage_lit(w, a, 3, 2), 2, identity, geometry},
      {"lit for four", carriage_lit(w, a, 3, 4), 2, identity, geometry},
      {"lit for five", carriage_lit(w, a, 3, 5), 3, identity, geometry},
  });
}

TEST_CASE("the lamps lit are the fewest that light the last ink so often") {
  for (const double window : {20.0, 75.0, 150.0, 151.3}) {
    for (const double advance : {7.1, 20.0, 27.1, 160.0}) {
      for (int passes = 1; passes <= 4; ++passes) {
        for (int strokes = 1; strokes <= 6; ++strokes) {
          CAPTURE(window);
          CAPTURE(advance);
          CAPTURE(passes);
          CAPTURE(strokes);
          const Length w = millimetres(window), a = millimetres(advance);
          const int lit = static_cast<int>(carriage_lit(w, a, passes, strokes));
          CHECK(strokes_under(window, advance, passes, lit) >= strokes);
          if (lit > 1) CHECK(strokes_under(window, advance, passes, lit - 1) < strokes);
          CHECK(carriage_strokes(w, a, passes, lit) ==
                doctest::Approx(strokes_under(window, advance, passes, lit)));
        }
      }
    }
  }
}

TEST_CASE("power, heat and the web's rise") {
  const Power optical = optical_power(lamp());
  const Power heat = lamp_heat(lamp_power(optical, 0.35), optical);
  const AreaMass film = area_mass(micrometres(50), Density::from_si(1390));
  const SpecificHeat polyester = SpecificHeat::from_si(1200);
  const auto kelvin = [](double k) { return TemperatureDifference::from_si(k); };
  support::check_all({
      {"optical [W]", optical.si(), 480, identity, exposure},
      {"electrical [W]", lamp_power(optical, 0.35).si(), 1371, 5e-4, exposure},
      {"heat [W]", heat.si(), 891, 5e-4, exposure},
      {"air 15 K warmer [m3/h]",
       coolant_flow(heat, Density::from_si(1.2), SpecificHeat::from_si(1006), kelvin(15)).si() *
           3600,
       177, 2e-3, "heat balance [C]"},
      {"water 5 K warmer [L/min]",
       coolant_flow(heat, Density::from_si(1000), SpecificHeat::from_si(4186), kelvin(5)).si() *
           6e4,
       2.56, 5e-3, "heat balance [C]"},
      {"rise of 50 um polyester [K]", web_rise(mj_per_cm2(192), 0.5, Dose(), film, polyester).si(),
       11.5, 2e-3, "energy balance [C]"},
      {"reaction of 5 g/m2 at 300 J/g [J/m2]",
       reaction_heat(AreaMass::from_si(0.005), SpecificEnergy::from_si(3e5)).si(), 1500, identity,
       "heat of polymerisation [M]"},
      {"rise with the reaction [K]",
       web_rise(mj_per_cm2(192), 0.5, Dose::from_si(1500), film, polyester).si(),
       (960.0 + 1500) / (1390 * 50e-6 * 1200), identity, "energy balance [C]"},
  });
}

// A Gaussian profile counts with its width at half height: 1.0645 of peak times width.
TEST_CASE("shapes of the window's profile") {
  LampWindow gaussian = lamp();
  gaussian.shape = 1.0645;
  const double sigma = 1;
  const double half_height = 2 * std::sqrt(2 * std::log(2.0)) * sigma;
  const double area = sigma * std::sqrt(2 * 3.14159265358979323846);
  CHECK(area / half_height == doctest::Approx(1.0645).epsilon(1e-4));
  CHECK(in_mj_per_cm2(row_dose(gaussian, m_per_min(50))) == doctest::Approx(192 * 1.0645));
}
