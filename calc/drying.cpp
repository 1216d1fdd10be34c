#include "calc/drying.h"

namespace calc {

double evaporated_share(Absorbency absorbency) {
  return absorbency == Absorbency::high ? 0.6 : 0.9;
}

MassFlow evaporated_water(VolumeFlow printed, Density ink, double water_share,
                          double evaporated_share) {
  return printed * ink * (water_share * evaporated_share);
}

SpecificEnergy latent_heat(Temperature temperature) {
  const double t = temperature.in_celsius();
  return SpecificEnergy::from_si(1e3 * (2500.43 - 2.30547 * t - 1.29555e-3 * t * t));
}

SpecificEnergy evaporation_energy(Temperature inlet, Temperature exhaust) {
  return latent_heat(exhaust) + water_heat * (exhaust - inlet);
}

Power evaporation_power(MassFlow water, SpecificEnergy energy) { return water * energy; }

Power web_power(Length width, Speed speed, AreaMass area_mass, SpecificHeat heat,
                TemperatureDifference rise) {
  return width * speed * area_mass * (heat * rise);
}

Power dryer_power(Power heat, double efficiency) { return heat / efficiency; }

Length dryer_length(MassFlow water, Length width, MassFlux rate) { return water / (width * rate); }

MassFlow exhaust_air(MassFlow water, double humidity_rise) { return water / humidity_rise; }

VolumeFlow humid_air_flow(MassFlow dry_air, double humidity, Temperature temperature) {
  const double specific_volume =
      0.287042 * temperature.in_kelvin() * (1 + 1.607858 * humidity) / 101.325;
  return VolumeFlow::from_si(dry_air.si() * specific_volume);
}

}  // namespace calc
