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
constexpr const char* slipping = "[P] worked case of Seinfeld and Pandis' table, rstudio-pubs";
constexpr const char* sinking = "[L] integrate_drag_sphere, unit test of the library fluids";
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
      {"1 mm, measured", rain(1000), 403, 0.05, gunn},  // Re 266, far beyond any drop jetted
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
      {"Beard 30 um", beard_speed(30), 2.6824, 1e-4, beard},
      {"Beard 40 um", beard_speed(40), 4.7137, 1e-4, beard},
      {"Beard 50 um", beard_speed(50), 7.2438, 1e-5, beard},
      {"Beard 60 um", beard_speed(60), 10.2016, 1e-5, beard},
      {"Beard 80 um", beard_speed(80), 17.1210, 1e-5, beard},
      {"Beard 100 um", beard_speed(100), 24.9845, 1e-5, beard},
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

TEST_CASE("how far off Beard's speeds the law without slip is") {
  const auto off = [](double d_um) { return rain(d_um) / beard_speed(d_um) - 1; };
  check_all({
      {"20 um", off(20), -0.014, 0.036, computed},
      {"30 um", off(30), -0.015, 0.034, computed},
      {"40 um", off(40), -0.018, 0.028, computed},
      {"50 um", off(50), -0.021, 0.024, computed},
      {"60 um", off(60), -0.021, 0.024, computed},
      {"80 um", off(80), -0.017, 0.030, computed},
      {"100 um", off(100), -0.010, 0.050, computed},
      {"200 um", off(200), 0.016, 0.032, computed},
  });
}

TEST_CASE("a particle that slips, and a sphere that starts to fall") {
  const double slipped = falling(10, 1000, 1e-9, 1.72e-5, drag_stokes, 9.807) * 1.016;
  // 1 mm, 2200 in 1.2 kg/m3, 1.78e-5 Pa s by Stokes' law, 0.1 s from rest.
  const double last = falling(1000, 2200, 1.2, 1.78e-5, drag_stokes);
  const double tau = 2200 * 1e-6 / (18 * 1.78e-5);
  const double gained = 1 - std::exp(-0.1 / tau);
  check_all({
      {"10 um of unit density [cm/h]", slipped * 3600 * 100, 1158.594, 1e-6, slipping},
      {"speed after 0.1 s", last * gained, 0.97302748, 1e-8, sinking},
      {"way after 0.1 s", last * (0.1 - tau * gained), 0.04876946, 1e-7, sinking},
  });
}
