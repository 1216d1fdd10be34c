#include "calc/fluid.h"

#include <array>
#include <cmath>
#include <limits>

#include "calc/compare.h"
#include "calc/eye.h"

namespace calc {

double reynolds(const Fluid& fluid, Speed speed, Length length) {
  return fluid.density * speed * length / fluid.viscosity;
}

double weber(const Fluid& fluid, Speed speed, Length length) {
  return fluid.density * speed * speed * length / fluid.tension;
}

double ohnesorge(const Fluid& fluid, Length length) {
  return fluid.viscosity.si() / std::sqrt((fluid.density * fluid.tension * length).si());
}

double z_number(const Fluid& fluid, Length length) { return 1 / ohnesorge(fluid, length); }

double splash_number(const Fluid& fluid, Speed impact, Length drop) {
  return std::sqrt(weber(fluid, impact, drop)) * std::pow(reynolds(fluid, impact, drop), 0.25);
}

Speed least_ejection_speed(const Fluid& fluid, Length nozzle) {
  return Speed::from_si(std::sqrt((4 * fluid.tension / (fluid.density * nozzle)).si()));
}

Frequency nozzle_shear(Speed speed, Length nozzle) { return 8 * speed / nozzle; }

namespace {

/// (1 + (time rate)^2)^((index - 1)/2), and the base of that power.
struct Thinning {
  double base = 1, power = 1;
};

Thinning thinning(const ShearLaw& law, Frequency rate) {
  const double reduced = law.time * rate;
  const double base = 1 + reduced * reduced;
  return {base, std::pow(base, (law.index - 1) / 2)};
}

}  // namespace

double shear_factor(const ShearLaw& law, Frequency rate) {
  return law.share + (1 - law.share) * thinning(law, rate).power;
}

double flow_index(const ShearLaw& law, Frequency rate) {
  const Thinning t = thinning(law, rate);
  const double slope = (law.index - 1) * (t.base - 1) / t.base * t.power;
  return 1 + (1 - law.share) * slope / shear_factor(law, rate);
}

Frequency wall_shear(const ShearLaw& law, Speed speed, Length nozzle) {
  const Frequency newtonian = nozzle_shear(speed, nozzle);
  const double n = flow_index(law, newtonian);
  return newtonian * ((3 * n + 1) / (4 * n));
}

namespace {

constexpr double open_end = std::numeric_limits<double>::infinity();
constexpr std::array<JettingWindow, 4> windows{{
    {"Fromm", 2, open_end, false, "Fromm, IBM J. Res. Dev. 28 (1984) 322", "M", "lower end only"},
    {"Reis and Derby", 1, 10, false, "Reis and Derby, MRS Proc. 625 (2000) 117; Derby 2010", "P",
     "stated as 0.1 < Oh < 1"},
    {"Jang", 4, 14, true, "Jang, Kim and Moon, Langmuir 25 (2009) 2629", "P", "both ends included"},
    {"Lee", 2.5, 26, false, "Lee et al., Ind. Eng. Chem. Res. (2012)", "P",
     "Newtonian fluids; suspensions within it clogged"},
}};

}  // namespace

std::span<const JettingWindow> jetting_windows() { return windows; }

bool in_window(const JettingWindow& window, double z) {
  if (window.low_included) return at_least(z, window.low) && at_most(z, window.high);
  return z > window.low && z < window.high;
}

Length largest_particle(Length nozzle) { return nozzle / particle_ratio; }
Length safe_particle(Length nozzle) { return nozzle / safe_particle_ratio; }

Speed settling_speed(Length particle, Density particle_density, const Fluid& fluid) {
  return standard_gravity * particle * particle * (particle_density - fluid.density) /
         (18 * fluid.viscosity);
}

double hindered_share(double volume_share) {
  return std::pow(1 - volume_share, hindering_exponent);
}

std::optional<Length> settling_height(Length particle, Density particle_density, Density fluid,
                                      Temperature temperature) {
  const double weight = pi * standard_gravity.si() * std::pow(particle.si(), 3) *
                        std::abs((particle_density - fluid).si());
  if (weight <= 0) return std::nullopt;
  return metres(6 * boltzmann * temperature.in_kelvin() / weight);
}

SurfaceTension wetting_energy(SurfaceTension ink) { return ink + millinewtons_per_metre(10); }

}  // namespace calc
