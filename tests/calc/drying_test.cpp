#include "calc/drying.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* steam = "[P] steam tables (NISTIR 5078 derivatives)";
constexpr const char* balance = "[C] heat and mass balance, computed independently";

double latent_kj(double celsius) { return latent_heat(Temperature::celsius(celsius)).si() / 1e3; }

}  // namespace

TEST_CASE("latent heat of water") {
  struct Row {
    double celsius, kj_per_kg;
  };
  const std::vector<Row> rows = {{0.01, 2500.9}, {20, 2453.5}, {25, 2441.7}, {40, 2406.0},
                                 {50, 2382.0},   {60, 2357.6}, {70, 2333.0}, {80, 2308.0},
                                 {85, 2295.3},   {90, 2282.5}};
  for (const Row& row : rows) {
    CAPTURE(row.celsius);
    CHECK(std::abs(latent_kj(row.celsius) - row.kj_per_kg) <= 1e-9);
  }
  // Between the rows: fit to the same tables, 0.53 kJ/kg; FAO-56 2501 - 2.361 t, 0.2 % up to 80
  // degC.
  for (int degree = 1; degree < 100; degree += 3) {
    const double t = degree;
    CAPTURE(t);
    CHECK(std::abs(latent_kj(t) - (2500.43 - 2.30547 * t - 1.29555e-3 * t * t)) <= 0.6);
    if (t <= 80) CHECK(support::near(latent_kj(t), 2501 - 2.361 * t, 2e-3));
  }
  const auto fao = [](double t) { return (2501 - 2.361 * t) / latent_kj(t); };
  constexpr const char* straight = "[C] share by which FAO-56 is off the steam tables";
  support::check_all({
      {"vapour at 80 degC [kJ/kg]", vapour_enthalpy(Temperature::celsius(80)).si() / 1e3, 2643.0,
       1e-3, steam},
      {"liquid at 25 degC [kJ/kg]", liquid_enthalpy(Temperature::celsius(25)).si() / 1e3, 104.83,
       2e-3, steam},
      {"100 degC", latent_kj(100), 2257, 5e-4, "[P] ASHRAE HVAC Applications 1999 chapter 29"},
      {"100 degC, Clapeyron", latent_kj(100), 2256.6, 1e-4, "[C] IAPWS SR1-86"},
      {"FAO-56 at 25 degC", fao(25) - 1, 0.0001, 0.5, straight},
      {"FAO-56 at 50 degC", fao(50) - 1, 0.0004, 0.125, straight},
      {"FAO-56 at 80 degC", fao(80) - 1, 0.0018, 0.03, straight},
      {"FAO-56 at 100 degC", fao(100) - 1, 0.0038, 0.03, straight},
      {"25 to 80 degC [kJ/kg]",
       evaporation_energy(Temperature::celsius(25), Temperature::celsius(80)).si() / 1e3,
       2643.0 - 104.83, 1e-3, steam},
  });
}

TEST_CASE("a dryer of half a metre at 50 m/min") {
  const Speed v = metres_per_second(50.0 / 60);
  // 5.2 g/m2 of water: 8 um of ink at 1000 kg/m3, 65 % water, all of it evaporated.
  const VolumeFlow printed = printed_flow(metres(0.5), v, micrometres(8), 1);
  const MassFlow water = evaporated_water(printed, Density::from_si(1000), 0.65, 1);
  const Power evaporation = evaporation_power(
      water, evaporation_energy(Temperature::celsius(25), Temperature::celsius(80)));
  const Power web = web_power(metres(0.5), v, AreaMass::from_si(0.080), SpecificHeat::from_si(1340),
                              TemperatureDifference::from_si(55));
  const MassFlow air = exhaust_air(water, 0.030 - 0.00726);
  support::check_all({
      {"water [kg/h]", water.si() * 3600, 7.80, identity, balance},
      {"evaporation [kW]", evaporation.si() / 1e3, 5.50, 1e-3, balance},
      {"paper [kW]", web.si() / 1e3, 2.46, 2e-3, balance},
      {"evaporation and paper [kW]", (evaporation + web).si() / 1e3, 7.96, 1e-3, balance},
      {"connected [kW]", dryer_power(evaporation + web, default_drying_efficiency).si() / 1e3, 17.7,
       2e-3, balance},
      {"specific energy at 60 % [kJ/kg]", (dryer_power(evaporation, 0.60) / water).si() / 1e3, 4230,
       1e-3, balance},
      {"specific energy at 45 % [kJ/kg]", (dryer_power(evaporation, 0.45) / water).si() / 1e3, 5640,
       1e-3, balance},
      {"specific energy at 30 % [kJ/kg]", (dryer_power(evaporation, 0.30) / water).si() / 1e3, 8460,
       1e-3, balance},
      {"dry air [kg/h]", air.si() * 3600, 343, 1e-3, balance},
      {"exhaust at 80 degC [m3/h]",
       humid_air_flow(air, 0.030, Temperature::celsius(80)).si() * 3600, 360, 2e-3, balance},
      {"inlet at 20 degC [m3/h]",
       humid_air_flow(air, 0.00726, Temperature::celsius(20)).si() * 3600, 288, 2e-3, balance},
      {"dew point of the exhaust [degC]", dew_point(0.030)->in_celsius(), 31.6, 0.01, balance},
      {"heat of the air, 20 to 80 degC [kW]",
       air.si() *
           (moist_enthalpy(Temperature::celsius(80), 0.00726) -
            moist_enthalpy(Temperature::celsius(20), 0.00726))
               .si() /
           1e3,
       5.83, 5e-3, balance},
      {"inlet humidity, 20 degC and half saturated",
       humidity_ratio(0.5 * *saturation_pressure(Temperature::celsius(20))), 0.00726, 1e-3,
       balance},
      {"length at 20 kg/(m2 h) [m]", dryer_length(water, metres(0.5), default_drying_rate).si(),
       0.78, identity, balance},
      {"dry air at 25 degC [m3/kg]",
       humid_air_flow(MassFlow::from_si(1), 0, Temperature::celsius(25)).si(), 0.8443, 5e-4,
       "[P] ASHRAE Fundamentals 2017 chapter 1"},
  });
}

TEST_CASE("shares of the water that must leave") {
  CHECK(evaporated_share(Absorbency::none) == 0.9);
  CHECK(evaporated_share(Absorbency::low) == 0.9);
  CHECK(evaporated_share(Absorbency::high) == 0.6);
}
