#include "calc/flight.h"

#include <cmath>

namespace calc {
namespace {

constexpr double n = schiller_naumann_exponent;

/// The integral of 1 / (1 + c v^n) from 0 to v, in v's unit; z = c v^n.
double slowed_at(double z, double v) {
  const double y = z / (1 + z);
  double term = 1;
  double sum = 1;
  for (int k = 1; term * y > 1e-15 * sum * (1 - y); ++k) {
    term *= y * k / (k + 1 / n);
    sum += term;
  }
  return v / (1 + z) * sum;
}

double slowed(double c, double v) { return slowed_at(c * std::pow(v, n), v); }

/// The v at which `slowed` is `target`. It is concave and never above v, so Newton's rule from the
/// target climbs to the root and never passes it.
double unslowed(double c, double target) {
  double v = target;
  for (int i = 0; i < 60; ++i) {
    const double z = c * std::pow(v, n);
    const double step = (target - slowed_at(z, v)) * (1 + z);
    v += step;
    if (std::abs(step) <= 1e-14 * v) break;
  }
  return v;
}

}  // namespace

FlightLaw flight_law(Length diameter, Density density, const Air& air) {
  const double d = diameter.si();
  const double mu = air.viscosity.si();
  return {seconds(density.si() * d * d / (18 * mu)),
          schiller_naumann_factor * std::pow(air.density.si() * d / mu, n)};
}

Length stopping_distance(const FlightLaw& law, Speed speed) {
  return law.tau * metres_per_second(slowed(law.c, speed.si()));
}

std::optional<Speed> speed_after(const FlightLaw& law, Speed start, Length way) {
  const double left = slowed(law.c, start.si()) - (way / law.tau).si();
  if (left <= 0) return std::nullopt;
  return metres_per_second(unslowed(law.c, left));
}

Speed speed_before(const FlightLaw& law, Speed speed, Length way) {
  return metres_per_second(unslowed(law.c, slowed(law.c, speed.si()) + (way / law.tau).si()));
}

Time slowing_time(const FlightLaw& law, Speed start, Speed end) {
  const double from = std::pow(start.si(), -n) + law.c;
  const double to = std::pow(end.si(), -n) + law.c;
  return law.tau / n * std::log(to / from);
}

std::optional<Landing> land(const FlightLaw& law, Speed start, Length way) {
  const std::optional<Speed> impact = speed_after(law, start, way);
  if (!impact) return std::nullopt;
  return Landing{*impact, slowing_time(law, start, *impact)};
}

Length sag(Time flight) { return standard_gravity * flight * flight / 2; }

}  // namespace calc
