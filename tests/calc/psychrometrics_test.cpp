// Moist air: ASHRAE Handbook Fundamentals 2017, chapter 1, Tables 1 to 3 and example 1, as the
// tests of PsychroLib quote them [P].
#include "calc/psychrometrics.h"

#include <doctest/doctest.h>

#include "tests/calc/support/check.h"

using namespace calc;

namespace {

constexpr const char* table_2 = "ASHRAE Fundamentals 2017 chapter 1, Table 2 [P]";
constexpr const char* table_3 = "ASHRAE Fundamentals 2017 chapter 1, Table 3 [P]";
constexpr const char* library = "PsychroLib tests after ASHRAE 2017 [L]";
constexpr const char* example = "ASHRAE Fundamentals 2017 chapter 1, example 1 [P]";
constexpr const char* steam = "saturation tables after NIST [P]";
constexpr double table_3_share = 3e-4;

Pressure pascal(double v) { return Pressure::from_si(v); }
double saturated(double celsius) {
  return saturation_pressure(Temperature::celsius(celsius))->si();
}
double humidity(double celsius) { return *saturated_humidity(Temperature::celsius(celsius)); }

}  // namespace

TEST_CASE("saturation pressure") {
  support::check_all({
      {"5 degC [Pa]", saturated(5), 872.6, table_3_share, table_3},
      {"25 degC [Pa]", saturated(25), 3169.7, table_3_share, table_3},
      {"50 degC [Pa]", saturated(50), 12351.3, table_3_share, table_3},
      {"100 degC [Pa]", saturated(100), 101418.0, table_3_share, table_3},
      {"20 degC [kPa]", saturated(20) / 1e3, 2.339, 1e-3, steam},
      {"40 degC [kPa]", saturated(40) / 1e3, 7.385, 1e-3, steam},
      {"60 degC [kPa]", saturated(60) / 1e3, 19.95, 1e-3, steam},
      {"70 degC [kPa]", saturated(70) / 1e3, 31.20, 1e-3, steam},
      {"80 degC [kPa]", saturated(80) / 1e3, 47.41, 1e-3, steam},
      {"85 degC [kPa]", saturated(85) / 1e3, 57.87, 1e-3, steam},
      {"90 degC [kPa]", saturated(90) / 1e3, 70.18, 1e-3, steam},
      {"25 degC [kPa]", saturated(25) / 1e3, 3.170, 1e-3, steam},
      {"50 degC [kPa]", saturated(50) / 1e3, 12.352, 1e-3, steam},
      {"100 degC [kPa]", saturated(100) / 1e3, 101.42, 1e-3, steam},
      {"0.01 degC [kPa]", saturated(0.01) / 1e3, 0.612, 1e-3, steam},
  });
  CHECK_FALSE(saturation_pressure(Temperature::celsius(-0.1)));
  CHECK_FALSE(saturation_pressure(Temperature::celsius(200.1)));
}

TEST_CASE("humidity, enthalpy and volume") {
  support::check_all({
      // The ideal gas is known to lie below the table: 0.5, 0.5, 1 and 2 %.
      {"saturated at 5 degC", humidity(5), 0.005425, 5e-3, table_2},
      {"saturated at 25 degC", humidity(25), 0.020173, 5e-3, table_2},
      {"saturated at 50 degC", humidity(50), 0.086863, 1e-2, table_2},
      {"saturated at 85 degC", humidity(85), 0.838105, 2e-2, table_2},
      {"of 3169.7 Pa in 95461 Pa", humidity_ratio(pascal(3169.7), pascal(95461)), 0.0213604, 1e-5,
       library},
      {"of 30 degC and 0.02 [kJ/kg]", moist_enthalpy(Temperature::celsius(30), 0.02).si() / 1e3,
       81.316, 1e-4, library},
      {"volume at 30 degC, 0.02, 95.461 kPa",
       moist_volume(Temperature::celsius(30), 0.02, pascal(95461)).si(), 0.940855, 1e-5, library},
      {"dry volume at 25 degC", moist_volume(Temperature::celsius(25), 0).si(), 0.8443, 5e-4,
       table_2},
      {"vapour pressure back from a humidity", vapour_pressure(humidity_ratio(pascal(2000))).si(),
       2000, support::identity, "inverse"},
  });
  CHECK_FALSE(saturated_humidity(Temperature::celsius(101)));
}

TEST_CASE("air of 40 degC and 20 degC wet bulb") {
  const Temperature dry = Temperature::celsius(40);
  const double w = 0.0065;  // printed beside the figures below
  support::check_all({
      {"relative humidity", vapour_pressure(w) / *saturation_pressure(dry), 0.14, 0.02, example},
      {"dew point [degC]", dew_point(w)->in_celsius(), 7, 0.1, example},
      {"enthalpy [kJ/kg]", moist_enthalpy(dry, w).si() / 1e3, 56.7, 0.005, example},
      {"volume [m3/kg]", moist_volume(dry, w).si(), 0.896, 1e-3, example},
  });
}

TEST_CASE("the dew point of saturated air is its temperature") {
  for (int degree = 1; degree < 100; degree += 7) {
    const double celsius = degree;
    CHECK(dew_point(humidity(celsius))->in_celsius() == doctest::Approx(celsius).epsilon(1e-9));
  }
  CHECK(dew_point(0.030)->in_celsius() == doctest::Approx(31.6).epsilon(0.01));  // worked [C]
  CHECK_FALSE(dew_point(1e-6));
}
