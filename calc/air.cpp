#include "calc/air.h"

#include <cmath>

#include "calc/eye.h"

namespace calc {
namespace {

constexpr double gas_constant = 287.05287;  // of dry air [J/(kg K)]

}  // namespace

Viscosity air_viscosity(Temperature temperature) {
  const double t = temperature.in_kelvin();
  return Viscosity::from_si(1.458e-6 * std::pow(t, 1.5) / (t + 110.4));
}

Density air_density(Temperature temperature, Pressure pressure) {
  return Density::from_si(pressure.si() / (gas_constant * temperature.in_kelvin()));
}

Length free_path(Temperature temperature, Pressure pressure) {
  const double thermal = std::sqrt(pi * gas_constant * temperature.in_kelvin() / 2);
  return metres(air_viscosity(temperature).si() / pressure.si() * thermal);
}

Air air_at(Temperature temperature, Pressure pressure) {
  return {air_viscosity(temperature), air_density(temperature, pressure),
          free_path(temperature, pressure)};
}

double slip_correction(Length diameter, Length mean_free_path) {
  const double ratio = diameter / mean_free_path;
  return 1 + 2 / ratio * (1.257 + 0.400 * std::exp(-0.55 * ratio));
}

}  // namespace calc
