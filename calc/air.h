/// Air that drops fly through: dry, at rest.
#pragma once

#include "calc/quantity.h"

namespace calc {

using Pressure = Quantity<-1, 1, -2>;
inline constexpr Pressure standard_pressure = Pressure::from_si(101325);

/// What drops feel of the air.
struct Air {
  Viscosity viscosity;
  Density density;
  Length free_path;  ///< mean, of its molecules
  friend bool operator==(const Air&, const Air&) = default;
};

/// Viscosity [Pa s] by Sutherland: 1.458e-6 T^1.5 / (T + 110.4 K). Valid 100 to 1900 K.
/// Source: US Standard Atmosphere 1976.
Viscosity air_viscosity(Temperature temperature);

/// Density [kg/m3] of an ideal gas: p / (R T), R = 287.05287 J/(kg K). Dry air.
Density air_density(Temperature temperature, Pressure pressure = standard_pressure);

/// Mean free path [m]: (mu / p) sqrt(pi R T / 2).
Length free_path(Temperature temperature, Pressure pressure = standard_pressure);

/// All three at a temperature.
Air air_at(Temperature temperature, Pressure pressure = standard_pressure);

/// Slip correction of Stokes drag on a sphere [1], drag divided by it:
/// 1 + (2 l / d)(1.257 + 0.400 exp(-0.55 d / l)). Below 1.4 % for drops of 12 um and more, so the
/// flight leaves it out. Source: Davies 1945.
double slip_correction(Length diameter, Length mean_free_path);

}  // namespace calc
