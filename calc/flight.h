/// Flight of a drop from nozzle to surface through air at rest, slowed by drag alone.
#pragma once

#include <optional>

#include "calc/air.h"
#include "calc/drag.h"
#include "calc/quantity.h"

namespace calc {

/// How a drop slows down: dv/dt = -(v / tau)(1 + c v^0.687), Schiller and Naumann's drag.
struct FlightLaw {
  Time tau;      ///< relaxation time rho d^2 / (18 mu)
  double c = 0;  ///< 0.15 (rho_a d / mu)^0.687 [(s/m)^0.687]; 0 is Stokes drag
};

/// The law of a drop in air. Diameter and density > 0. Valid Re < 800; an isolated drop: in a train
/// of drops each shields the next, so this is the slowest of flights. No slip, no evaporation.
FlightLaw flight_law(Length diameter, Density density, const Air& air);

/// Way [m] on which a drop of that speed comes to rest: tau times the integral of
/// 1 / (1 + c v^0.687) from 0 to `speed`. By the series
/// v/(1+z) sum k! / ((1+1/n)(2+1/n)...(k+1/n)) (z/(1+z))^k with z = c v^n, n = 0.687, cut where
/// what is left is below 1e-15 of the sum. speed >= 0.
Length stopping_distance(const FlightLaw& law, Speed speed);

/// Speed [m/s] after a way: the root of stopping_distance(v) = stopping_distance(start) - way, by
/// Halley's rule from `start`; relative error below 1e-13. None where the drop
/// stops short. way >= 0.
std::optional<Speed> speed_after(const FlightLaw& law, Speed start, Length way);

/// Speed [m/s] at the start of a way at whose end the drop still has `speed`: the inverse of
/// speed_after. speed > 0.
Speed speed_before(const FlightLaw& law, Speed speed, Length way);

/// Time [s] in which a drop slows from one speed to another, in closed form:
/// (tau / n) ln((v1^-n + c) / (v0^-n + c)). start >= end > 0.
Time slowing_time(const FlightLaw& law, Speed start, Speed end);

/// Arrival at a surface.
struct Landing {
  Speed impact;
  Time time;
};
/// Arrival after a throw; none where the drop stops short. Gravity is left out: along the throw it
/// changes the speed by at most g times the time.
std::optional<Landing> land(const FlightLaw& law, Speed start, Length way);

/// A speed, c v^n of it and the integral of stopping_distance() up to it.
struct Slowed {
  double v = 0, z = 0, way = 0;
};

/// A drop that leaves at a speed, for several throws: what hangs on the start is worked out once.
/// start > 0.
class Departure {
 public:
  Departure(const FlightLaw& law, Speed start);
  Length stop() const;                            ///< stopping_distance()
  std::optional<Landing> land(Length way) const;  ///< as the function of that name

 private:
  FlightLaw law_;
  Slowed from_;
};

/// Fall [m] of a drop jetted sideways, at most: g t^2 / 2.
Length sag(Time flight);

}  // namespace calc
