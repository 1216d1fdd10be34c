// Spheres falling at their terminal speed, against handbooks, measurements and a second formula.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "calc/air.h"
#include "calc/drag.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::check_all;
using support::six_digits;

namespace {

constexpr const char* computed = "[C] computed independently";
constexpr const char* gpsa = "[L/P] GPSA Engineering Data Book, 13th ed., Example 7-1";
constexpr const char* rushton = "[L] Rushton, Ward and Holdich, quoted in the tests of fluids";
constexpr const char* stokes_library = "[L] unit test of the Python library fluids";
constexpr const char* stokes_printed = "[P] worked exercise at askanewquestion.com";
constexpr const char* cutlip = "[P] inputs of Cutlip et al., 10 numerical problems, no. 5; [C]";
constexpr const char* cengel = "[P] inputs of Cengel and Cimbala, Example 10-2; [C]";
constexpr const char* gunn = "[T] Gunn and Kinzer, J. Meteor. 6 (1949) 243, Table 2";
constexpr const char* beard = "[T] Beard, J. Atmos. Sci. 33 (1976) 851, computed independently";

constexpr double foot = 0.3048;
constexpr double pound_per_cubic_foot = 16.01846337;

double falling(double d_um, double sphere, double fluid, double mu,
               DragLaw law = drag_schiller_naumann, double g = 9.80665) {
  return terminal_speed(micrometres(d_um), Density::from_si(sphere), Density::from_si(fluid),
                        Viscosity::from_si(mu), law, Acceleration::from_si(g))
      .si();
}

/// Water in air of 20 degC [cm/s].
double rain(double d_um) {
  const Air air = air_at(Temperature::celsius(20));
  return 100 * falling(d_um, 998.2, air.density.si(), air.viscosity.si());
}

/// Beard's own formula for 19 um to 1.07 mm [cm/s].
double beard_speed(double d_um) {
  constexpr std::array<double, 7> b{-3.18657,    0.992696,   -1.53193e-3, -9.87059e-4,
                                    -5.78878e-4, 8.55176e-5, -3.27815e-6};
  const Air air = air_at(Temperature::celsius(20));
  const double d = d_um * 1e-6;
  const double mu = air.viscosity.si();
  const double rho = air.density.si();
  const double davies = 4 * rho * (998.2 - rho) * 9.80665 * d * d * d / (3 * mu * mu);
  double y = 0;
  for (std::size_t i = b.size(); i > 0; --i) y = y * std::log(davies) + b.at(i - 1);
  const double slip = 1 + 2.51 * 6.62e-8 / d;
  return 100 * slip * std::exp(y) * mu / (rho * d);
}

double cutlip_drag(double re) { return 24 / re * (1 + 0.14 * std::pow(re, 0.7)); }

}  // namespace

TEST_CASE("terminal speeds of handbooks") {
  const double gas = 31.2 * pound_per_cubic_foot;
  const double thin = 2.07 * pound_per_cubic_foot;
  const double ash_air = 55000 / (287 * 223.15);  // the book's gas constant
  const double ash = falling(50, 1240, ash_air, 1.474e-5, drag_stokes);
  check_all({
      {"GPSA, printed [ft/s]", falling(150, gas, thin, 1.2e-5) / foot, 0.46, 0.02, gpsa},
      {"GPSA [ft/s]", falling(150, gas, thin, 1.2e-5) / foot, 0.455988, six_digits, computed},
      {"GPSA, library [ft/s]", falling(150, gas, thin, 1.2e-5) / foot, 0.4491992, 0.02, gpsa},
      {"sand 70 um, printed", falling(70, 2600, 1000, 1e-3), 0.00406, 0.04, rushton},
      {"sand 70 um, library", falling(70, 2600, 1000, 1e-3), 0.0041425, 0.04, rushton},
      {"sand 70 um", falling(70, 2600, 1000, 1e-3), 0.004019, 2e-4, computed},
      {"sand 70 um, Clift", falling(70, 2600, 1000, 1e-3, drag_clift), 0.004085, 2e-4, computed},
      {"sand 50 um, printed", falling(50, 2800, 1000, 1e-3), 0.002453, 0.04, rushton},
      {"sand 50 um", falling(50, 2800, 1000, 1e-3), 0.002370, 3e-4, computed},
      {"70 nm, Stokes", falling(0.07, 2600, 1000, 1e-3, drag_stokes), 4.271340889e-9, 1e-9,
       stokes_library},
      {"9 um, Stokes", falling(18, 2166, 1e-9, 1.8e-5, drag_stokes, 9.81), 0.0212485, 1e-5,
       stokes_printed},
      {"coal in water", falling(208, 1800, 994.6, 8.931e-4, cutlip_drag), 0.0157816, six_digits,
       cutlip},
      {"coal at 30 g", falling(208, 1800, 994.57, 8.931e-4, cutlip_drag, 30 * 9.80665), 0.2060287,
       six_digits, cutlip},
      {"ash", ash, 0.114502, six_digits, cengel},
      {"ash, Reynolds", ash_air * ash * 50e-6 / 1.474e-5, 0.333555, six_digits, cengel},
  });
}

TEST_CASE("drops of water in air as measured") {
  check_all({
      {"0.078 mm, measured", rain(78), 18, 0.12, gunn},
      {"0.1 mm, measured", rain(100), 27, 0.12, gunn},
      {"0.2 mm, measured", rain(200), 72, 0.03, gunn},
      {"0.3 mm, measured", rain(300), 117, 0.03, gunn},
      {"0.4 mm, measured", rain(400), 162, 0.03, gunn},
      {"0.5 mm, measured", rain(500), 206, 0.03, gunn},
      {"0.078 mm", rain(78), 16.0935, six_digits, computed},
      {"0.1 mm", rain(100), 24.7359, six_digits, computed},
      {"0.2 mm", rain(200), 70.5700, six_digits, computed},
      {"0.3 mm", rain(300), 116.974, six_digits, computed},
      {"0.4 mm", rain(400), 160.886, six_digits, computed},
      {"0.5 mm", rain(500), 202.366, six_digits, computed},
  });
}

TEST_CASE("drops of water in air by Beard's formula") {
  check_all({
      {"Beard 20 um", beard_speed(20), 1.2049, 1e-4, beard},
      {"Beard 200 um", beard_speed(200), 69.4435, 1e-5, beard},
      {"20 um", rain(20), 1.2049, 0.022, beard},
      {"30 um", rain(30), 2.6824, 0.022, beard},
      {"40 um", rain(40), 4.7137, 0.022, beard},
      {"50 um", rain(50), 7.2438, 0.022, beard},
      {"60 um", rain(60), 10.2016, 0.022, beard},
      {"80 um", rain(80), 17.1210, 0.022, beard},
      {"100 um", rain(100), 24.9845, 0.022, beard},
      {"200 um", rain(200), 69.4435, 0.022, beard},
  });
}
