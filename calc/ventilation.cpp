#include "calc/ventilation.h"

namespace calc {

namespace {

constexpr double gas_constant = 8.314462618;  // J/(mol K), exact in the SI
constexpr double atmosphere = 101325;         // Pa
constexpr Temperature hot_above = Temperature::celsius(120);
constexpr double moles_of_air = 4.773;  // that hold one of oxygen

}  // namespace

MolarVolume molar_volume(Temperature temperature) {
  return MolarVolume::from_si(gas_constant * temperature.in_kelvin() / atmosphere);
}

VolumeFlow vapour_volume(MassFlow vapour, MolarMass molar_mass, Temperature temperature) {
  return vapour / molar_mass * molar_volume(temperature);
}

Density mass_concentration(double share, MolarMass molar_mass, Temperature temperature) {
  return share * molar_mass / molar_volume(temperature);
}

VolumeFlow explosion_air(VolumeFlow vapour, double lel, double share, double hot) {
  return vapour / (share * lel * hot);
}

double hot_factor(Temperature air, bool measured_hot) {
  return air > hot_above && !measured_hot ? 0.7 : 1;
}

VolumeFlow health_air(VolumeFlow vapour, double limit, double mixing) {
  return mixing * vapour / limit;
}

double steady_share(VolumeFlow vapour, VolumeFlow air, double mixing) {
  return mixing * (vapour / air);
}

VolumeFlow dilution_air(MassFlow released, Density concentration) {
  return released / concentration;
}

VolumeFlow at_temperature(VolumeFlow reference, Temperature temperature) {
  return reference * (temperature.in_kelvin() / flow_reference.in_kelvin());
}

double mixture_limit(std::span<const ExplosivePart> parts) {
  double moles = 0, sum = 0;
  for (const ExplosivePart& part : parts) {
    moles += part.moles;
    sum += part.moles / part.lel;
  }
  return moles / sum;
}

double estimated_limit(const Atoms& atoms) {
  const double oxygen = atoms.carbon + atoms.hydrogen / 4.0 - atoms.oxygen / 2.0;
  return 0.55 / (1 + moles_of_air * oxygen);
}

}  // namespace calc
