#include "calc/flight.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace calc {
namespace {

constexpr double n = schiller_naumann_exponent;

constexpr std::size_t terms = 64;

/// k / (k + 1/n), by which terms of the series follow each other; the first is not used.
constexpr std::array<double, terms> ratios = [] {
  std::array<double, terms> r{};
  for (std::size_t k = 0; k < terms; ++k) {
    r.at(k) = static_cast<double>(k) / (static_cast<double>(k) + 1 / n);
  }
  return r;
}();

Slowed slowed(double c, double v) {
  const double z = c * std::pow(v, n);
  const double y = z / (1 + z);
  double term = 1;
  double sum = 1;
  for (std::size_t k = 1; term * y > 1e-15 * sum * (1 - y); ++k) {
    const auto at = static_cast<double>(k);
    term *= y * (k < terms ? ratios[k] : at / (at + 1 / n));
    sum += term;
  }
  return {v, z, v / (1 + z) * sum};
}

/// Step from a speed towards the one whose way is `target`, by Halley's rule; far from it no more
/// than twice Newton's step.
double step_towards(double target, const Slowed& at) {
  const double newton = (target - at.way) * (1 + at.z);
  const double bend = newton * n * at.z / (2 * at.v * (1 + at.z));
  return newton / std::max(0.5, 1 - bend);
}

/// The v whose way is `target`, from a speed whose way is known. The way is never above v, so that
/// the root is no less than the target.
double unslowed(double c, double target, const Slowed& known) {
  double v = std::max(target, known.v + step_towards(target, known));
  for (int i = 0; i < 60; ++i) {
    const double step = step_towards(target, slowed(c, v));
    v += step;
    if (std::abs(step) <= 1e-6 * v) break;  // what is left is of its third power
  }
  return v;
}

/// Speed after a way [m/s], of which `left` of the integral is then still before the drop.
std::optional<Speed> speed_left(const FlightLaw& law, const Slowed& from, Length way) {
  const double left = from.way - (way / law.tau).si();
  if (left <= 0) return std::nullopt;
  return metres_per_second(unslowed(law.c, left, from));
}

}  // namespace

FlightLaw flight_law(Length diameter, Density density, const Air& air) {
  const double d = diameter.si();
  const double mu = air.viscosity.si();
  return {seconds(density.si() * d * d / (18 * mu)),
          schiller_naumann_factor * std::pow(air.density.si() * d / mu, n)};
}

Length stopping_distance(const FlightLaw& law, Speed speed) {
  return law.tau * metres_per_second(slowed(law.c, speed.si()).way);
}

std::optional<Speed> speed_after(const FlightLaw& law, Speed start, Length way) {
  return speed_left(law, slowed(law.c, start.si()), way);
}

Speed speed_before(const FlightLaw& law, Speed speed, Length way) {
  const Slowed end = slowed(law.c, speed.si());
  return metres_per_second(unslowed(law.c, end.way + (way / law.tau).si(), end));
}

Time slowing_time(const FlightLaw& law, Speed start, Speed end) {
  const double from = std::pow(start.si(), -n) + law.c;
  const double to = std::pow(end.si(), -n) + law.c;
  return law.tau / n * std::log(to / from);
}

std::optional<Landing> land(const FlightLaw& law, Speed start, Length way) {
  return Departure(law, start).land(way);
}

Departure::Departure(const FlightLaw& law, Speed start)
    : law_(law), from_(slowed(law.c, start.si())) {}

Length Departure::stop() const { return law_.tau * metres_per_second(from_.way); }

std::optional<Landing> Departure::land(Length way) const {
  const std::optional<Speed> impact = speed_left(law_, from_, way);
  if (!impact) return std::nullopt;
  return Landing{*impact, slowing_time(law_, metres_per_second(from_.v), *impact)};
}

Length sag(Time flight) { return standard_gravity * flight * flight / 2; }

}  // namespace calc
