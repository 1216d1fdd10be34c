/// Numbers of a jet and of an impact, and the windows published for them.
#pragma once

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

/// Settling speed [m/s] of a particle, Stokes: g d^2 (rho_p - rho_f) / (18 eta). Dilute, Re << 1.
Speed settling_speed(Length particle, Density particle_density, const Fluid& fluid);
inline constexpr Acceleration standard_gravity = Acceleration::from_si(9.80665);

inline constexpr Speed least_impact_speed = metres_per_second(2);  ///< warn below
/// Least surface energy [N/m] for wetting: ink tension + 10 mN/m. Common practice.
SurfaceTension wetting_energy(SurfaceTension ink);

}  // namespace calc
