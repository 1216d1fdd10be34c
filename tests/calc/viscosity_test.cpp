#include "calc/viscosity.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* fit = "[C] fit through the points, computed independently";
constexpr const char* table = "[P] glycerol-water table after Segur and Oberstar 1951";

ViscosityPoint point(double mpas, double celsius) {
  return {millipascal_seconds(mpas), Temperature::celsius(celsius)};
}
ViscosityModel model(std::vector<ViscosityPoint> points) {
  const auto fitted = fit_viscosity(std::move(points));
  REQUIRE(fitted.has_value());
  return *fitted;
}
double mpas_at(const ViscosityModel& m, double celsius) {
  const auto viscosity = viscosity_at(m, Temperature::celsius(celsius));
  REQUIRE(viscosity.has_value());
  return in_mpas(*viscosity);
}
double curve_mpas(const ViscosityCurve& curve, double celsius) {
  return in_mpas(curve_viscosity(curve, Temperature::celsius(celsius)));
}
bool inside(const ViscosityModel& m, double celsius) {
  return viscosity_at(m, Temperature::celsius(celsius)).has_value();
}

const std::vector<ViscosityPoint> two_60{point(10.8, 20), point(5.08, 40)};
const std::vector<ViscosityPoint> three_60{point(29.9, 0), point(10.8, 20), point(5.08, 40)};
const std::vector<ViscosityPoint> two_70{point(22.5, 20), point(9.4, 40)};

JettingTemperature find(const ViscosityModel& m, double low, double high,
                        const ViscosityNeed& need) {
  return find_jetting_temperature(m, Temperature::celsius(low), Temperature::celsius(high), need);
}

}  // namespace

TEST_CASE("Arrhenius through two points") {
  const ViscosityModel m = model(two_60);
  REQUIRE(m.curves.size() == 1);
  const ViscosityCurve& curve = m.curves.front();
  CHECK(curve.kind == ViscosityKind::arrhenius);
  const double t20 = 293.15;
  support::check_all({
      {"B [K]", curve.b, 3461.935, 1e-6, fit},
      {"Ea [kJ/mol]", curve.b * 8.314462618e-3, 28.7841, six_digits, fit},
      {"A [mPa s]", std::exp(curve.a) * 1e3, 8.02883e-5, six_digits, fit},
      {"30 degC", mpas_at(m, 30), 7.31545, six_digits, fit},
      {"30 degC against the table", mpas_at(m, 30), 7.19, 0.02, table},
      {"slope at 20 degC [%/K]", -100 * curve.b / (t20 * t20), -4.02846, six_digits, fit},
      {"at its own point", mpas_at(m, 20), 10.8, identity, table},
      {"70 wt% B [K]", model(two_70).curves.front().b, 4006.174, 1e-6, fit},
      {"70 wt% 30 degC", mpas_at(model(two_70), 30), 14.3352, six_digits, fit},
      {"70 wt% 30 degC against the table", mpas_at(model(two_70), 30), 14.1, 0.02, table},
  });
}

TEST_CASE("why two points are not taken outside their span") {
  const ViscosityCurve curve = model(two_60).curves.front();
  support::check_all({
      {"10 degC", curve_mpas(curve, 10), 16.3892, six_digits, fit},
      {"0 degC", curve_mpas(curve, 0), 25.642, 5e-5, fit},
      {"10 degC off the table", curve_mpas(curve, 10) / 17.4 - 1, -0.058, 0.009, table},
      {"0 degC off the table", curve_mpas(curve, 0) / 29.9 - 1, -0.14, 0.036, table},
  });
  CHECK(curve_mpas(curve, 0) < 29.9 * 0.87);
  CHECK_FALSE(inside(model(two_60), 10));
  CHECK_FALSE(inside(model(two_60), 41));
  CHECK(inside(model(two_60), 20));
  CHECK(inside(model(two_60), 40));
}

TEST_CASE("Vogel through three points") {
  const ViscosityModel m = model(three_60);
  REQUIRE(m.curves.size() == 2);
  for (const ViscosityCurve& curve : m.curves) {
    CHECK(curve.kind == ViscosityKind::vogel);
    support::check_all({
        {"a for mPa s", curve.a + std::log(1e3), -3.437282, six_digits, fit},
        {"b [K]", curve.b, 780.8771, six_digits, fit},
        {"c [K]", curve.c, 158.9055, six_digits, fit},
    });
  }
  support::check_all({
      {"10 degC", mpas_at(m, 10), 17.2485, six_digits, fit},
      {"30 degC", mpas_at(m, 30), 7.21588, six_digits, fit},
      {"10 degC against the table", mpas_at(m, 10), 17.4, 0.01, table},
      {"30 degC against the table", mpas_at(m, 30), 7.19, 0.005, table},
      {"0 degC", mpas_at(m, 0), 29.9, identity, table},
      {"20 degC", mpas_at(m, 20), 10.8, identity, table},
      {"40 degC", mpas_at(m, 40), 5.08, identity, table},
  });
}

TEST_CASE("points that no liquid's curve goes through are met in pairs") {
  // Falling faster the warmer: the curve through all three has its pole above them.
  const ViscosityModel m = model({point(22, 25), point(15, 40), point(10, 50)});
  for (const ViscosityCurve& curve : m.curves) CHECK(curve.kind == ViscosityKind::arrhenius);
  support::check_all({
      {"25 degC", mpas_at(m, 25), 22, identity, "given"},
      {"40 degC", mpas_at(m, 40), 15, identity, "given"},
      {"50 degC", mpas_at(m, 50), 10, identity, "given"},
  });
}

TEST_CASE("Vogel finds the constants of water's published equation") {
  // 2.414e-5 10^(247.8/(T - 140)) Pa s, calculatorlib.com; prints 1.002 mPa s at 20 degC.
  const auto water = [](double celsius) {
    return 2.414e-2 * std::pow(10, 247.8 / (celsius + 273.15 - 140));
  };
  const ViscosityModel m =
      model({point(water(10), 10), point(water(35), 35), point(water(70), 70)});
  support::check_all({
      {"c", m.curves.front().c, 140, 1e-9, "[P] equation of calculatorlib.com; [C]"},
      {"b", m.curves.front().b, 247.8 * std::log(10), 1e-9,
       "[P] equation of calculatorlib.com; [C]"},
      {"20 degC", mpas_at(m, 20), 1.001749, 1e-6, "[P] equation of calculatorlib.com; [C]"},
      {"20 degC, printed", mpas_at(m, 20), 1.002, 5e-4, "[P] calculatorlib.com"},
      {"25 degC", mpas_at(m, 25), 0.890439, 1e-6, "[P] equation of calculatorlib.com; [C]"},
      {"40 degC", mpas_at(m, 40), 0.651428, 1e-6, "[P] equation of calculatorlib.com; [C]"},
      {"60 degC", mpas_at(m, 60), 0.463103, 1e-6, "[P] equation of calculatorlib.com; [C]"},
  });
}

TEST_CASE("more points than three are all met, and the pieces join") {
  const std::vector<ViscosityPoint> five{point(3.10, 40), point(14.6, 0), point(9.01, 10),
                                         point(6.00, 20), point(4.21, 30)};
  const ViscosityModel m = model(five);
  CHECK(m.curves.size() == 4);
  for (const ViscosityPoint& p : five) {
    const double celsius = p.temperature.in_celsius();
    CHECK(support::near(mpas_at(m, celsius), in_mpas(p.viscosity), identity));
  }
  double last = 100;
  for (int quarter = 0; quarter <= 160; ++quarter) {
    const double celsius = 0.25 * quarter;
    CHECK(mpas_at(m, celsius) < last);
    last = mpas_at(m, celsius);
  }
}

TEST_CASE("points on a straight line of logarithms fall back to pairs") {
  const ViscosityModel m = model({point(16, 20), point(8, 40), point(4, 60)});
  for (const ViscosityCurve& curve : m.curves) CHECK(curve.kind == ViscosityKind::arrhenius);
  CHECK(support::near(mpas_at(m, 40), 8, identity));
}

TEST_CASE("points that curve the other way still fall and are met") {
  const ViscosityModel m = model({point(16, 20), point(12, 40), point(4, 60)});
  CHECK(support::near(mpas_at(m, 40), 12, identity));
  for (int celsius = 20; celsius < 60; ++celsius) {
    CHECK(mpas_at(m, celsius + 1) < mpas_at(m, celsius));
  }
}

TEST_CASE("one point holds at its temperature only") {
  const ViscosityModel m = model({point(12, 45)});
  CHECK(support::near(mpas_at(m, 45), 12, identity));
  CHECK_FALSE(inside(m, 44.9));
  CHECK_FALSE(inside(m, 45.1));
}

TEST_CASE("points that contradict each other give no model") {
  CHECK_FALSE(fit_viscosity({}).has_value());
  CHECK_FALSE(fit_viscosity({point(10, 20), point(10, 40)}).has_value());
  CHECK_FALSE(fit_viscosity({point(10, 20), point(11, 40)}).has_value());
  CHECK_FALSE(fit_viscosity({point(10, 20), point(9, 20)}).has_value());
  CHECK_FALSE(fit_viscosity({point(10, 20), point(0, 40)}).has_value());
  CHECK_FALSE(fit_viscosity({point(-1, 20)}).has_value());
}

TEST_CASE("the jetting temperature is where viscosity is nominal") {
  const ViscosityModel m = model(three_60);
  ViscosityNeed need;
  need.nominal = millipascal_seconds(7.21588);
  const JettingTemperature found = find(m, 5, 60, need);
  CHECK(found.choice == JettingChoice::nominal);
  support::check_all({
      {"temperature [degC]", found.temperature.in_celsius(), 30, 1e-5, fit},
      {"viscosity", in_mpas(found.viscosity), 7.21588, identity, fit},
  });
  // Lowest: a little cooler it is above.
  const Temperature cooler = found.temperature + TemperatureDifference::from_si(-1e-9);
  CHECK(*viscosity_at(m, cooler) > *need.nominal);
}

TEST_CASE("without a nominal viscosity the window's centre is aimed at") {
  ViscosityNeed need;
  need.least = millipascal_seconds(6);
  need.most = millipascal_seconds(8);
  CHECK(support::near(in_mpas(*viscosity_target(need)), 7, identity));
  const JettingTemperature found = find(model(three_60), 5, 60, need);
  CHECK(found.choice == JettingChoice::nominal);
  CHECK(support::near(in_mpas(found.viscosity), 7, identity));
  CHECK_FALSE(viscosity_target({}).has_value());
  CHECK(find(model(three_60), 25, 60, {}).temperature == Temperature::celsius(25));
}

TEST_CASE("a nominal viscosity out of reach takes the nearest temperature in the window") {
  ViscosityNeed need;
  need.nominal = millipascal_seconds(4);
  need.least = millipascal_seconds(3);
  need.most = millipascal_seconds(6);
  const JettingTemperature hot = find(model(three_60), 25, 60, need);
  CHECK(hot.choice == JettingChoice::nearest);
  CHECK(hot.temperature == Temperature::celsius(40));
  need.nominal = millipascal_seconds(12);
  need.most = millipascal_seconds(14);
  const JettingTemperature cold = find(model(three_60), 25, 60, need);
  CHECK(cold.choice == JettingChoice::nearest);
  CHECK(cold.temperature == Temperature::celsius(25));
}

TEST_CASE("a window out of reach and temperatures without viscosity are told apart") {
  ViscosityNeed need;
  need.nominal = millipascal_seconds(2);
  need.least = millipascal_seconds(1.5);
  need.most = millipascal_seconds(3);
  const JettingTemperature thick = find(model(three_60), 25, 60, need);
  CHECK(thick.choice == JettingChoice::outside_window);
  CHECK(support::near(in_mpas(thick.viscosity), 5.08, identity));
  CHECK(find(model(three_60), 45, 60, need).choice == JettingChoice::no_overlap);
  CHECK(find(model(three_60), 60, 45, need).choice == JettingChoice::no_overlap);
  CHECK(find(model({point(2, 25)}), 30, 60, need).choice == JettingChoice::no_overlap);
  const JettingTemperature single = find(model({point(2, 45)}), 30, 60, need);
  CHECK(single.choice == JettingChoice::nominal);
  CHECK(single.temperature == Temperature::celsius(45));
}

TEST_CASE("a heater alone holds five kelvin above the room") {
  CHECK(support::near(least_jetting_temperature(Temperature::celsius(30)).in_celsius(), 35,
                      identity));
}
