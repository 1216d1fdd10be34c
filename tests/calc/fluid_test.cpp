#include "calc/fluid.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

#include "calc/dot.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "[C] definition, computed independently";
constexpr const char* fluids = "[L] unit test of the Python library fluids";
constexpr const char* son = "[P] Son et al. 2008";
constexpr const char* stokes = "[C] Stokes, computed independently";
constexpr const char* gibson = "[P] Gibson, Rosen and Stucker, eq. 7.4, Table 7.1";

Fluid fluid(double density, double mpas, double mn_per_m) {
  return {Density::from_si(density), millipascal_seconds(mpas), millinewtons_per_metre(mn_per_m)};
}
const Fluid water = fluid(998.2, 1.002, 72.8);

/// Entry length 0.06 d Re in um of a 20 um nozzle at 10 m/s.
double entry_um(double density, double mpas) {
  const Length d = micrometres(20);
  return 0.06 * in_um(d) * reynolds(fluid(density, mpas, 30), metres_per_second(10), d);
}

bool passes(std::string_view name, double z) {
  for (const JettingWindow& window : jetting_windows()) {
    if (window.name == name) return in_window(window, z);
  }
  FAIL("no window of that name");
  return false;
}

}  // namespace

TEST_CASE("numbers of a jet against published values") {
  const Length d46 = micrometres(46);
  const Speed we2 =
      Speed::from_si(std::sqrt(2 * water.tension.si() / (water.density.si() * d46.si())));
  const Speed we005 =
      Speed::from_si(std::sqrt(0.05 * water.tension.si() / (water.density.si() * d46.si())));
  support::check_all({
      {"We", weber(fluid(900, 1, 10), metres_per_second(0.18), millimetres(1)), 2.916, identity,
       fluids},
      {"Oh", ohnesorge(fluid(1000, 1, 100), micrometres(100)), 0.01, identity, fluids},
      {"Oh of a 46 um drop of water", ohnesorge(water, d46), 0.0173, 0.005, son},
      {"Oh as printed", ohnesorge(water, d46), 0.017, 0.03, son},
      {"speed at We 2", we2.si(), 1.78071, six_digits, son},
      {"Re at We 2", reynolds(water, we2, d46), 81.6020, six_digits, son},
      {"Re at We 0.05", reynolds(water, we005, d46), 12.9024, six_digits, son},
      {"Oh of a 3 mm raindrop", ohnesorge(water, millimetres(3)), 0.002146, 5e-4,
       "[P] Wikipedia, Ohnesorge number: about 0.002; [C]"},
      {"entry length 1 cP", entry_um(1000, 1), 240, identity, gibson},
      {"entry length 10 cP", entry_um(1000, 10), 24, identity, gibson},
      {"entry length 40 cP", entry_um(1000, 40), 6, identity, gibson},
      {"entry length 100 cP", entry_um(1000, 100), 2.4, identity, gibson},
      {"entry length 200 cP", entry_um(1000, 200), 1.2, identity, gibson},
      {"entry length 1 cP, 1250", entry_um(1250, 1), 300, identity, gibson},
      {"entry length 10 cP, 1250", entry_um(1250, 10), 30, identity, gibson},
      {"entry length 40 cP, 1250", entry_um(1250, 40), 7.5, identity, gibson},
      {"entry length 100 cP, 1250", entry_um(1250, 100), 3, identity, gibson},
      {"entry length 200 cP, 1250", entry_um(1250, 200), 1.5, identity, gibson},
      {"Z of an exercise", z_number(fluid(1000, 12, 50), micrometres(60)), 4.56435, six_digits,
       "[P] inputs of Biofabrication exercises, 4.4; [C]"},
  });
}

TEST_CASE("numbers of an ink that cures and of an aqueous one") {
  const Fluid uv = fluid(1050, 10, 28);
  const Fluid aqueous = fluid(1060, 5, 35);
  const Length nozzle = micrometres(20);
  const Length drop = drop_diameter(picolitres(10));
  const Speed v6 = metres_per_second(6);
  const Speed v8 = metres_per_second(8);
  support::check_all({
      {"Re", reynolds(uv, v6, nozzle), 12.6, identity, closed},
      {"We", weber(uv, v6, nozzle), 27, identity, closed},
      {"Oh", ohnesorge(uv, nozzle), 0.412393, six_digits, closed},
      {"Z", z_number(uv, nozzle), 2.424871, six_digits, closed},
      {"least speed", least_ejection_speed(uv, nozzle).si(), 2.309401, six_digits,
       "[P] Lee J.M. et al. 2023 p. 201; [C]"},
      {"impact Re", reynolds(uv, v6, drop), 16.8400, six_digits, closed},
      {"impact We", weber(uv, v6, drop), 36.0856, six_digits, closed},
      {"impact K", splash_number(uv, v6, drop), 12.1689, six_digits, closed},
      {"K 50 reached", splash_number(uv, metres_per_second(18.5834), drop), splash_limit, 1e-5,
       closed},
      {"aqueous Re", reynolds(aqueous, v8, nozzle), 33.92, identity, closed},
      {"aqueous We", weber(aqueous, v8, nozzle), 38.7657, six_digits, closed},
      {"aqueous Z", z_number(aqueous, nozzle), 5.447935, six_digits, closed},
      {"aqueous K", splash_number(aqueous, v8, nozzle), 15.0258, six_digits, closed},
  });
  const double z = z_number(uv, nozzle);
  CHECK(passes("Reis and Derby", z));
  CHECK(passes("Fromm", z));
  CHECK_FALSE(passes("Jang", z));
}

TEST_CASE("published windows keep their ends") {
  CHECK(passes("Jang", 4));
  CHECK(passes("Jang", 14));
  CHECK_FALSE(passes("Jang", 14.1));
  CHECK_FALSE(passes("Reis and Derby", 1));
  CHECK_FALSE(passes("Reis and Derby", 10));
  CHECK_FALSE(passes("Fromm", 2));
  CHECK(passes("Fromm", 500));
  CHECK(passes("Lee", 25));
  CHECK_FALSE(passes("Lee", 26));
  CHECK_FALSE(passes("Jang", 3.9));
  CHECK_FALSE(passes("Lee", 2.5));
}

TEST_CASE("identities between the numbers") {
  std::mt19937 random(3);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same points every run
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
  };
  for (int i = 0; i < 200; ++i) {
    const Fluid f = fluid(between(700, 1500), between(1, 30), between(18, 73));
    const Length d = micrometres(between(10, 100));
    const Speed v = metres_per_second(between(1, 20));
    CHECK(support::near(ohnesorge(f, d), std::sqrt(weber(f, v, d)) / reynolds(f, v, d), identity));
    CHECK(support::near(weber(f, least_ejection_speed(f, d), d), 4, identity));
    CHECK(support::near(splash_number(f, 2 * v, d) / splash_number(f, v, d), std::pow(2, 1.25),
                        identity));
  }
}

TEST_CASE("shear, particles and settling") {
  const auto mm_per_day = [](double um, double density, const Fluid& f) {
    return settling_speed(micrometres(um), Density::from_si(density), f).si() * 86400 * 1e3;
  };
  const Fluid thick = fluid(1000, 10, 30);
  support::check_all({
      {"30 um, 6 m/s", nozzle_shear(metres_per_second(6), micrometres(30)).si(), 1.6e6, identity,
       closed},
      {"20 um, 10 m/s", nozzle_shear(metres_per_second(10), micrometres(20)).si(), 4.0e6, identity,
       closed},
      {"20 um nozzle", in_um(largest_particle(micrometres(20))), 0.40, identity,
       "[C] rule of thumb"},
      {"30 um nozzle", in_um(largest_particle(micrometres(30))), 0.60, identity,
       "[C] rule of thumb"},
      {"20 um nozzle, safer", in_um(safe_particle(micrometres(20))), 0.20, identity,
       "[C] rule of thumb"},
      {"30 um nozzle, safer", in_um(safe_particle(micrometres(30))), 0.30, identity,
       "[C] rule of thumb"},
      {"50 um nozzle, safer", in_um(safe_particle(micrometres(50))), 0.50, identity,
       "[C] rule of thumb"},
      {"50 um nozzle", in_um(largest_particle(micrometres(50))), 1.00, identity,
       "[P] Torrisi et al. 2012: 1 um for 50 um"},
      {"TiO2 0.22 um [m/s]", settling_speed(micrometres(0.22), Density::from_si(4230), thick).si(),
       8.51718e-9, six_digits, stokes},
      {"TiO2 0.25 um [m/s]", settling_speed(micrometres(0.25), Density::from_si(4230), thick).si(),
       1.09984e-8, six_digits, stokes},
      {"TiO2 0.22 um", mm_per_day(0.22, 4230, thick), 0.735885, six_digits, stokes},
      {"TiO2 0.25 um", mm_per_day(0.25, 4230, thick), 0.950264, six_digits, stokes},
      {"TiO2 0.5 um", mm_per_day(0.5, 4230, thick), 3.80106, six_digits, stokes},
      {"TiO2 0.25 um in water", mm_per_day(0.25, 4230, fluid(1000, 1.002, 72.8)), 9.48368, 5e-5,
       stokes},
      {"organic 0.12 um", mm_per_day(0.12, 1500, fluid(1000, 4, 30)), 0.084729, six_digits, stokes},
      {"70 nm, 2600 in 1000, 1 mPa s [m/s]",
       settling_speed(micrometres(0.07), Density::from_si(2600), fluid(1000, 1, 30)).si(),
       4.271340889e-9, 1e-9, fluids},
      {"TiO2 0.25 um in 14 days [mm]", 14 * mm_per_day(0.25, 4230, thick), 13.3037, six_digits,
       stokes},
      {"wetting [mN/m]", in_mn_per_m(wetting_energy(millinewtons_per_metre(28))), 38, identity,
       "common practice"},
  });
}

TEST_CASE("crowded particles settle slower, and heat keeps small ones up") {
  const auto height_um = [](double um, double density) {
    const auto height = settling_height(micrometres(um), Density::from_si(density),
                                        Density::from_si(1000), Temperature::celsius(25));
    REQUIRE(height.has_value());
    return in_um(*height);
  };
  support::check_all({
      {"one alone", hindered_share(0), 1, identity, "Richardson and Zaki 1954"},
      // 0.9^4.65 = exp(4.65 ln 0.9).
      {"10 % by volume", hindered_share(0.1), 0.612672, six_digits, "Richardson and Zaki 1954"},
      {"D/v of TiO2 0.25 um [um]", height_um(0.25, 4230), 15.9, 2e-3, "[C] Stokes and Einstein"},
      {"D/v of an organic pigment 0.12 um [um]", height_um(0.12, 1500), 928, 1e-3,
       "[C] Stokes and Einstein"},
      {"it holds for what rises too", height_um(0.25, 700), height_um(0.25, 1300), identity,
       "symmetry"},
  });
  CHECK_FALSE(settling_height(micrometres(1), Density::from_si(1000), Density::from_si(1000),
                              Temperature::celsius(25))
                  .has_value());
}

TEST_CASE("shear thinning after Carreau") {
  const ShearLaw law{0.6, seconds(1e-4), 8.0 / 15};
  const ShearLaw power{0.8, seconds(1e3), 0};
  const Speed v = metres_per_second(10);
  const Length d = micrometres(20);
  support::check_all({
      {"15 to 8 mPa s, at 1e3 1/s", 15 * shear_factor(law, hertz(1e3)), 14.9861, six_digits,
       closed},
      {"at 1.6e6 1/s", 15 * shear_factor(law, hertz(1.6e6)), 8.91928, six_digits, closed},
      {"at rest", shear_factor(law, hertz(0)), 1, identity, closed},
      {"index at rest", flow_index(law, hertz(0)), 1, identity, closed},
      {"power law, index", flow_index(power, nozzle_shear(v, d)), 0.8, 1e-9, closed},
      {"power law, wall [1/s]", wall_shear(power, v, d).si(), 4.25e6, 1e-9, closed},
      {"Newtonian, wall [1/s]", wall_shear(ShearLaw{}, v, d).si(), 4.0e6, identity, closed},
  });
  // The local index is the slope of the flow curve.
  for (const double rate : {1e2, 1e4, 1e6}) {
    const double h = 1e-5;
    const double up = std::log(shear_factor(law, hertz(rate * std::exp(h))));
    const double down = std::log(shear_factor(law, hertz(rate * std::exp(-h))));
    CHECK(flow_index(law, hertz(rate)) == doctest::Approx(1 + (up - down) / (2 * h)).epsilon(1e-7));
  }
}
