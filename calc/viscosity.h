/// Viscosity over temperature, and the temperature to jet at.
#pragma once

#include <optional>
#include <vector>

#include "calc/quantity.h"
#include "calc/request.h"

namespace calc {

enum class ViscosityKind { point, arrhenius, vogel };

/// One curve, ln(eta / 1 Pa s) = a + b/(T - c), T in kelvin, c = 0 for Arrhenius, b = 0 for a
/// point.
struct ViscosityCurve {
  ViscosityKind kind = ViscosityKind::point;
  double a = 0, b = 0, c = 0;
  Temperature from, to;  ///< the span it is used in
};

/// Curves side by side over the span of the given points, continuous, falling. Invariant: at
/// least one curve, in order of temperature.
struct ViscosityModel {
  std::vector<ViscosityCurve> curves;
  Temperature low() const { return curves.front().from; }
  Temperature high() const { return curves.back().to; }
};

/// Model through every point: one: that temperature only; two: Arrhenius; three and more: Vogel-
/// Fulcher-Tammann through each pair and its nearest third (Arrhenius where the three have no such
/// curve with its pole below them: c is a temperature at which the ink would stand still). None for
/// no point, two points at one temperature, a viscosity <= 0, or one that does not fall with
/// temperature. Any order. Validity: within about 2 % inside the span (Segur and Oberstar 1951),
/// never outside.
std::optional<ViscosityModel> fit_viscosity(std::vector<ViscosityPoint> points);

/// Curve in charge at a temperature; null outside the span (the common tolerance allowed).
const ViscosityCurve* curve_at(const ViscosityModel& model, Temperature temperature);

/// Viscosity [Pa s] of one curve: exp(a + b/(T - c)).
Viscosity curve_viscosity(const ViscosityCurve& curve, Temperature temperature);

/// Viscosity [Pa s] at a temperature; none outside the span: never extrapolated.
std::optional<Viscosity> viscosity_at(const ViscosityModel& model, Temperature temperature);

enum class JettingChoice {
  nominal,         ///< viscosity is the target at the temperature found
  nearest,         ///< the target lies outside; nearest to it and inside the window
  outside_window,  ///< nearest to the target, but outside the window: reject
  no_overlap       ///< no temperature is both allowed and within the span: unknown
};
struct JettingTemperature {
  JettingChoice choice = JettingChoice::no_overlap;
  Temperature temperature;  ///< meaningless for no_overlap
  Viscosity viscosity;
};

/// What a head asks of viscosity; absent = not stated.
struct ViscosityNeed {
  std::optional<Viscosity> nominal, least, most;
};

/// Viscosity aimed at [Pa s]: the nominal, else the window's centre; none where neither is stated.
std::optional<Viscosity> viscosity_target(const ViscosityNeed& need);

/// Temperature [K] in [low, high] and the model's span at which viscosity is the target: the curve
/// in charge there, solved for it; else the end nearest to it, told apart by the window. Without
/// any target, the lowest temperature, `nearest`. Source: the inverse of the model.
JettingTemperature find_jetting_temperature(const ViscosityModel& model, Temperature low,
                                            Temperature high, const ViscosityNeed& need);

/// Whether a viscosity is within the window, open where an end is not stated.
bool within_window(Viscosity viscosity, const ViscosityNeed& need);

/// Least jetting temperature [K]: highest room temperature + 5 K, so that a heater alone holds it.
Temperature least_jetting_temperature(Temperature highest_room);

}  // namespace calc
