// Properties of the ink in the head: similarity numbers, shear, viscosity over temperature,
// particles.
#include <doctest/doctest.h>

#include "calc/compare.h"
#include "calc/fluid.h"
#include "calc/viscosity.h"
#include "tests/property/between.h"

using namespace calc;
using property::between;
using property::near;

namespace {

Fluid some_fluid() {
  return {Density::from_si(between(700, 1500)), millipascal_seconds(between(1, 30)),
          millinewtons_per_metre(between(18, 73))};
}
Length some_nozzle() { return micrometres(between(10, 100)); }
Speed some_speed() { return metres_per_second(between(1, 20)); }
ShearLaw some_law() { return {between(0.2, 1), seconds(between(1e-7, 1e-3)), between(0, 1)}; }

/// Two to five points, rising in temperature, falling in viscosity.
std::vector<ViscosityPoint> some_points() {
  std::vector<ViscosityPoint> points;
  double celsius = between(0, 30);
  double mpas = between(5, 80);
  const int count = *rc::gen::inRange(2, 6);
  for (int i = 0; i < count; ++i) {
    points.push_back({millipascal_seconds(mpas), Temperature::celsius(celsius)});
    celsius += between(3, 20);
    mpas *= between(0.3, 0.95);
  }
  return points;
}

Temperature inside(const ViscosityModel& model) {
  return model.low() + (model.high() - model.low()) * between(0, 1);
}

}  // namespace

TEST_CASE("similarity numbers keep their identities") {
  CHECK(rc::check("Oh = sqrt(We)/Re, Z = 1/Oh, We = 4 at the least speed, K ~ v^1.25", [] {
    const Fluid f = some_fluid();
    const Length d = some_nozzle();
    const Speed v = some_speed();
    RC_ASSERT(near(ohnesorge(f, d), std::sqrt(weber(f, v, d)) / reynolds(f, v, d)));
    RC_ASSERT(near(z_number(f, d) * ohnesorge(f, d), 1));
    RC_ASSERT(near(weber(f, least_ejection_speed(f, d), d), 4));
    const double k = between(1.1, 4);
    RC_ASSERT(near(splash_number(f, k * v, d) / splash_number(f, v, d), std::pow(k, 1.25)));
  }));
  CHECK(rc::check("scaling: Re ~ v d, We ~ v^2 d", [] {
    const Fluid f = some_fluid();
    const Length d = some_nozzle();
    const Speed v = some_speed();
    const double k = between(0.2, 5);
    RC_ASSERT(near(reynolds(f, k * v, d), k * reynolds(f, v, d)));
    RC_ASSERT(near(reynolds(f, v, k * d), k * reynolds(f, v, d)));
    RC_ASSERT(near(weber(f, k * v, d), k * k * weber(f, v, d)));
  }));
}

TEST_CASE("shear only thins, and never below its floor") {
  CHECK(rc::check("factor falls with rate between 1 and the share", [] {
    const ShearLaw law = some_law();
    const Frequency rate = hertz(between(1, 1e7));
    const double factor = shear_factor(law, rate);
    RC_ASSERT(factor <= 1);
    RC_ASSERT(factor >= law.share);
    RC_ASSERT(shear_factor(law, 2 * rate) <= factor);
    RC_ASSERT(flow_index(law, rate) <= 1);
    RC_ASSERT(flow_index(law, rate) >= law.index * (1 - 1e-12));
  }));
  CHECK(rc::check("shear at the wall is at least the Newtonian one", [] {
    const ShearLaw law = some_law();
    const Speed v = some_speed();
    const Length d = some_nozzle();
    RC_ASSERT(wall_shear(law, v, d) >= nozzle_shear(v, d) * (1 - 1e-12));
  }));
}

TEST_CASE("viscosity over temperature") {
  CHECK(rc::check("passes through its points, falls between them, is unknown outside", [] {
    const std::vector<ViscosityPoint> points = some_points();
    const auto model = fit_viscosity(points);
    RC_ASSERT(model.has_value());
    for (const ViscosityPoint& p : points) {
      RC_ASSERT(near(viscosity_at(*model, p.temperature)->si(), p.viscosity.si(), 1e-9));
    }
    const Temperature t = inside(*model);
    const Temperature warmer = model->high() + (t - model->high()) * 0.5;
    RC_ASSERT(*viscosity_at(*model, warmer) <= *viscosity_at(*model, t) * (1 + 1e-12));
    const TemperatureDifference beyond = TemperatureDifference::from_si(between(0.01, 50));
    RC_ASSERT(!viscosity_at(*model, model->high() + beyond));
    RC_ASSERT(!viscosity_at(*model, model->low() + -beyond));
  }));
  CHECK(rc::check("the order of the points does not matter", [] {
    const std::vector<ViscosityPoint> points = some_points();
    const std::vector<ViscosityPoint> turned(points.rbegin(), points.rend());
    const auto a = fit_viscosity(points);
    const auto b = fit_viscosity(turned);
    const Temperature t = inside(*a);
    RC_ASSERT(viscosity_at(*a, t)->si() == viscosity_at(*b, t)->si());
  }));
}

TEST_CASE("jetting temperature is allowed, known and where the target lies") {
  CHECK(rc::check("found by its own rule", [] {
    const auto model = fit_viscosity(some_points());
    const Temperature low = Temperature::celsius(between(20, 40));
    const Temperature high = low + TemperatureDifference::from_si(between(0, 40));
    ViscosityNeed need;
    need.nominal = millipascal_seconds(between(3, 40));
    const JettingTemperature found = find_jetting_temperature(*model, low, high, need);
    if (found.choice == JettingChoice::no_overlap) {
      RC_ASSERT(low > model->high() || model->low() > high);
      return;
    }
    RC_ASSERT(at_least(found.temperature.si(), low.si()));
    RC_ASSERT(at_most(found.temperature.si(), high.si()));
    RC_ASSERT(viscosity_at(*model, found.temperature).has_value());
    if (found.choice == JettingChoice::nominal) {
      RC_ASSERT(near(found.viscosity.si(), need.nominal->si(), 1e-9));
    }
  }));
}

TEST_CASE("particles") {
  CHECK(rc::check("settling ~ d^2, height ~ d^-3, crowding slows", [] {
    const Fluid f = some_fluid();
    const Length d = micrometres(between(0.05, 5));
    const Density heavy = Density::from_si(between(1600, 6000));
    const double k = between(1.1, 3);
    RC_ASSERT(near(settling_speed(k * d, heavy, f).si(), k * k * settling_speed(d, heavy, f).si()));
    const Temperature t = Temperature::celsius(between(10, 60));
    const auto height = settling_height(d, heavy, f.density, t);
    const auto bigger = settling_height(k * d, heavy, f.density, t);
    RC_ASSERT(near(bigger->si() * k * k * k, height->si()));
    const double phi = between(0, 0.4);
    RC_ASSERT(hindered_share(phi + 0.05) < hindered_share(phi));
  }));
  CHECK(rc::check("height is diffusivity over settling speed, whatever the viscosity", [] {
    // Stokes and Einstein: D = k T / (3 pi eta d).
    const Fluid f = some_fluid();
    const Length d = micrometres(between(0.05, 5));
    const Density heavy = Density::from_si(between(1600, 6000));
    const Temperature t = Temperature::celsius(between(10, 60));
    const double diffusivity =
        boltzmann * t.si() / (3 * 3.14159265358979323846 * f.viscosity.si() * d.si());
    const double speed = settling_speed(d, heavy, f).si();
    RC_ASSERT(near(settling_height(d, heavy, f.density, t)->si(), diffusivity / speed, 1e-11));
  }));
}
