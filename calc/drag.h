/// Drag of a sphere and the speed it falls at.
#pragma once

#include "calc/fluid.h"
#include "calc/quantity.h"

namespace calc {

/// Drag coefficient [1] over a Reynolds number > 0.
using DragLaw = double (*)(double reynolds);

/// Stokes: 24 / Re. Valid Re < 0.1.
double drag_stokes(double reynolds);
/// Schiller and Naumann: (24 / Re)(1 + 0.15 Re^0.687). Valid Re < 800, within 5 % of the standard
/// curve up to 200 and 9 % at 300. Source: VDI-Z. 77 (1935) 318.
double drag_schiller_naumann(double reynolds);
/// Clift, Grace and Weber, three pieces up to Re 1500; the cross-check of the law above.
/// Source: Bubbles, Drops and Particles (1978).
double drag_clift(double reynolds);

inline constexpr double schiller_naumann_exponent = 0.687;
inline constexpr double schiller_naumann_factor = 0.15;

/// Speed [m/s] at which a sphere falls through a fluid at rest: the root of
/// v^2 = 4 g d (rho_p - rho_f) / (3 C_D rho_f), by bisection of the logarithm to 1e-13. Density of
/// the sphere above the fluid's. Validity of the law of drag.
Speed terminal_speed(Length diameter, Density sphere, Density fluid, Viscosity viscosity,
                     DragLaw law = drag_schiller_naumann, Acceleration gravity = standard_gravity);

}  // namespace calc
