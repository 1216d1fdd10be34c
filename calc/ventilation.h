/// Air against vapour: below the lower explosive limit where it is captured, below the exposure
/// limit where people breathe. Two calculations, never added together.
#pragma once

#include <span>

#include "calc/quantity.h"

namespace calc {

using MolarMass = Mass;      ///< of one mole
using MolarVolume = Volume;  ///< of one mole

inline constexpr Temperature flow_reference = Temperature::celsius(20);  ///< of volume flows

/// Volume of a mole of gas [m3] at 101.325 kPa: R T/p. Source: ideal gas; 24.055 L at 20 degC,
/// which EU limits use, 24.465 L at 25 degC, which United States limits use as 24.45.
MolarVolume molar_volume(Temperature temperature);

/// Vapour [m3/s] at a temperature from a mass flow: m V_m/M.
VolumeFlow vapour_volume(MassFlow vapour, MolarMass molar_mass,
                         Temperature temperature = flow_reference);

/// Mass concentration [kg/m3] of a share of vapour in air: x M/V_m at that temperature.
Density mass_concentration(double share, MolarMass molar_mass, Temperature temperature);

/// Air [m3/s] that holds vapour at a share of its lower explosive limit: V/(f LEL B), LEL as a
/// fraction. `hot` is B of hot_factor(). lel, share, hot > 0. Source: NFPA 86, EN 1539 (25 %;
/// 50 % where the concentration is monitored continuously).
VolumeFlow explosion_air(VolumeFlow vapour, double lel, double share, double hot = 1);

/// Factor on an explosive limit in hot air [1]: 0.7 above 120 degC (250 degF), else 1; also 1 where
/// the limit itself was measured hot, so that it is not lowered twice.
double hot_factor(Temperature air, bool measured_hot);

/// Air [m3/s] that dilutes vapour below an exposure limit (fraction): K V/limit. mixing K is 1 for
/// perfect mixing, to 10. Source: ACGIH Industrial Ventilation, dilution of steady sources.
VolumeFlow health_air(VolumeFlow vapour, double limit, double mixing);
/// Share of vapour [1] in the air breathed: K V/Q, the same turned round. air > 0.
double steady_share(VolumeFlow vapour, VolumeFlow air, double mixing);

/// Air [m3/s] that dilutes a mass flow below a mass concentration, perfectly mixed.
VolumeFlow dilution_air(MassFlow released, Density concentration);

/// A flow given at the reference temperature as it is at another [m3/s].
VolumeFlow at_temperature(VolumeFlow reference, Temperature temperature);

/// One vapour of a mixture: its moles (of any whole) and its lower explosive limit (fraction).
struct ExplosivePart {
  double moles, lel;
};
/// Lower explosive limit [1] of a mixture: 1/sum(y/LEL), y by mole. At least one part with moles.
/// Source: Le Chatelier.
double mixture_limit(std::span<const ExplosivePart> parts);

/// Atoms of a molecule that burn or bring oxygen.
struct Atoms {
  int carbon = 0, hydrogen = 0, oxygen = 0;
};
/// Estimate of a lower explosive limit [1] nobody states: 0.55/(1 + 4.773 (C + H/4 - O/2)). Right
/// within 25 %. Source: Jones's rule, from memory. To be flagged as an estimate wherever it is
/// used.
double estimated_limit(const Atoms& atoms);
inline constexpr double estimate_error = 0.25;

}  // namespace calc
