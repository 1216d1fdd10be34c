/// Numbers of a jet and of an impact, and the windows published for them.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "calc/quantity.h"

namespace calc {

struct Fluid {
  Density density;
  Viscosity viscosity;
  SurfaceTension tension;
};

/// Reynolds number [1]: rho v L / eta. L = nozzle diameter for jetting, drop's for impact.
double reynolds(const Fluid& fluid, Speed speed, Length length);
/// Weber number [1]: rho v^2 L / sigma.
double weber(const Fluid& fluid, Speed speed, Length length);
/// Ohnesorge number [1]: eta / sqrt(rho sigma L) = sqrt(We)/Re.
double ohnesorge(const Fluid& fluid, Length length);
/// Its inverse Z [1].
double z_number(const Fluid& fluid, Length length);
/// Splash parameter K [1]: We^(1/2) Re^(1/4), with drop diameter and impact speed. Splash above
/// `splash_limit` on a smooth dry surface. Source: Stow and Hadfield 1981 via Derby 2010.
double splash_number(const Fluid& fluid, Speed impact, Length drop);
inline constexpr double splash_limit = 50;

/// Least speed [m/s] at which a drop leaves a nozzle: sqrt(4 sigma / (rho d)), that is We = 4.
/// Source: Lee J.M. et al. 2023 p. 201; Derby 2010.
Speed least_ejection_speed(const Fluid& fluid, Length nozzle);

/// Shear rate at the nozzle's wall [1/s], Newtonian: 8 v / D.
Frequency nozzle_shear(Speed speed, Length nozzle);

/// How viscosity falls with shear: eta = eta_0 (share + (1 - share)(1 + (time rate)^2)^((index -
/// 1)/2)). `share` 0 makes a power law at high shear, `index` 1 a Newtonian fluid. 0 < index <= 1,
/// time >= 0, 0 <= share <= 1. Source: Carreau 1972; one law for every temperature.
struct ShearLaw {
  double index = 1;
  Time time;
  double share = 0;
};
/// Viscosity at a shear rate over that at rest [1].
double shear_factor(const ShearLaw& law, Frequency rate);
/// Local exponent of the flow curve [1]: 1 + d ln eta / d ln rate.
double flow_index(const ShearLaw& law, Frequency rate);
/// Shear rate at the wall [1/s] of a fluid that is no longer Newtonian: 8 v / D (3n + 1)/(4n), n
/// the local exponent at 8 v / D. Source: Rabinowitsch 1929; exact for a power law.
Frequency wall_shear(const ShearLaw& law, Speed speed, Length nozzle);

/// A published window for Z.
struct JettingWindow {
  std::string_view name;
  double low = 0, high = 0;  ///< high = infinity where open
  bool low_included = false;
  std::string_view source, tag, note;
};
/// All published windows, oldest first.
std::span<const JettingWindow> jetting_windows();
/// Whether Z lies in a window (ends as the source states them).
bool in_window(const JettingWindow& window, double z);

/// Largest particle [m] by rule of thumb: nozzle / 50. A warning, not a limit. From memory.
Length largest_particle(Length nozzle);
inline constexpr double particle_ratio = 50;
/// The safer rule [m]: nozzle / 100. From memory.
Length safe_particle(Length nozzle);
inline constexpr double safe_particle_ratio = 100;

/// Settling speed [m/s] of a particle, Stokes: g d^2 (rho_p - rho_f) / (18 eta). Dilute, Re << 1.
Speed settling_speed(Length particle, Density particle_density, const Fluid& fluid);
inline constexpr Acceleration standard_gravity = Acceleration::from_si(9.80665);

/// Share of the settling speed that is left where particles crowd [1]: (1 - phi)^4.65, phi their
/// volume share, 0 <= phi < 1. Source: Richardson and Zaki 1954, from memory.
double hindered_share(double volume_share);
inline constexpr double hindering_exponent = 4.65;

/// Height [m] over which Brownian motion keeps particles up against gravity: D / v = 6 k T / (pi g
/// d^3 |rho_p - rho_f|), whatever the viscosity. None where they are as dense as the fluid.
/// Source: Stokes and Einstein; barometric equilibrium of a dilute suspension.
std::optional<Length> settling_height(Length particle, Density particle_density, Density fluid,
                                      Temperature temperature);
inline constexpr double boltzmann = 1.380649e-23;  ///< [J/K], exact since 2019

inline constexpr Speed least_impact_speed = metres_per_second(2);  ///< warn below
/// Least surface energy [N/m] for wetting: ink tension + 10 mN/m. Common practice.
SurfaceTension wetting_energy(SurfaceTension ink);

}  // namespace calc
