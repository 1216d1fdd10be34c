#include "calc/air.h"

#include <doctest/doctest.h>

#include "tests/calc/support/check.h"

using namespace calc;
using support::check_all;
using support::six_digits;

namespace {

constexpr const char* atmosphere =
    "[L] US Standard Atmosphere 1976, unit test of the Python library fluids";
constexpr const char* sutherland = "[C] Sutherland, computed independently";
constexpr const char* nettally = "[P] table of air at nettally.com";
constexpr const char* seinfeld = "[P] Seinfeld and Pandis, Table 9.3";
constexpr const char* davies = "[C] Davies 1945, computed independently";

double viscosity_k(double kelvin) { return air_viscosity(Temperature::kelvin(kelvin)).si(); }
double viscosity_c(double celsius) { return air_viscosity(Temperature::celsius(celsius)).si(); }
double slip(double um) { return slip_correction(micrometres(um), micrometres(0.0651)); }

}  // namespace

TEST_CASE("viscosity of air against the standard atmosphere") {
  check_all({
      {"-2 km", viscosity_k(301.154), 1.8515e-5, 5e-5, atmosphere},
      {"0 km", viscosity_k(288.15), 1.7894e-5, 5e-5, atmosphere},
      {"2 km", viscosity_k(275.154), 1.7260e-5, 5e-5, atmosphere},
      {"4 km", viscosity_k(262.166), 1.6612e-5, 5e-5, atmosphere},
      {"5 km", viscosity_k(255.675543), 1.628248135e-5, 1e-6, atmosphere},
  });
}

TEST_CASE("viscosity, density and free path of air by temperature") {
  const Air room = air_at(Temperature::celsius(20));
  check_all({
      {"0 degC", viscosity_c(0), 1.716079e-5, six_digits, sutherland},
      {"15 degC", viscosity_c(15), 1.789380e-5, six_digits, sutherland},
      {"20 degC", viscosity_c(20), 1.813406e-5, six_digits, sutherland},
      {"25 degC", viscosity_c(25), 1.837234e-5, six_digits, sutherland},
      {"40 degC", viscosity_c(40), 1.907574e-5, six_digits, sutherland},
      {"20 degC, printed", viscosity_c(20), 1.808e-5, 5e-3, nettally},
      {"kinematic, printed", room.viscosity.si() / room.density.si(), 0.150e-4, 5e-3, nettally},
      {"density", room.density.si(), 1.204106, six_digits, sutherland},
      {"free path", room.free_path.si(), 6.50675e-8, six_digits, sutherland},
  });
  // Half the pressure: half the density, twice the free path, the same viscosity.
  const Air thin = air_at(Temperature::celsius(20), standard_pressure / 2);
  CHECK(support::near(thin.density / room.density, 0.5, support::identity));
  CHECK(support::near(thin.free_path / room.free_path, 2, support::identity));
  CHECK(thin.viscosity == room.viscosity);
}

TEST_CASE("slip correction of small spheres") {
  check_all({
      {"0.1 um, printed", slip(0.1), 2.85, 4e-3, seinfeld},
      {"0.2 um, printed", slip(0.2), 1.865, 4e-3, seinfeld},
      {"0.5 um, printed", slip(0.5), 1.326, 4e-3, seinfeld},
      {"1 um, printed", slip(1), 1.164, 4e-3, seinfeld},
      {"2 um, printed", slip(2), 1.082, 4e-3, seinfeld},
      {"5 um, printed", slip(5), 1.032, 4e-3, seinfeld},
      {"10 um, printed", slip(10), 1.016, 4e-3, seinfeld},
      {"20 um, printed", slip(20), 1.008, 4e-3, seinfeld},
      {"50 um, printed", slip(50), 1.003, 4e-3, seinfeld},
      {"100 um, printed", slip(100), 1.0016, 4e-3, seinfeld},
      {"0.1 um", slip(0.1), 2.86036, six_digits, davies},
      {"0.2 um", slip(0.2), 1.86637, six_digits, davies},
      {"0.5 um", slip(0.5), 1.32885, six_digits, davies},
      {"1 um", slip(1), 1.16367, six_digits, davies},
      {"2 um", slip(2), 1.08183, six_digits, davies},
      {"5 um", slip(5), 1.03273, six_digits, davies},
      {"10 um", slip(10), 1.01637, six_digits, davies},
      {"20 um", slip(20), 1.00818, six_digits, davies},
      {"50 um", slip(50), 1.00327, six_digits, davies},
      {"100 um", slip(100), 1.00164, six_digits, davies},
      {"1 um, another print", slip(1), 1.15, 0.015, "[P] UFL page; sources differ by 1.5 %"},
  });
  // What leaving it out costs the smallest drop that is jetted: 12 um is 1 pL.
  CHECK(slip_correction(micrometres(12), free_path(Temperature::celsius(20))) < 1.014);
}
