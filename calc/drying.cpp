#include "calc/drying.h"

#include <algorithm>

#include "calc/steam.h"

namespace calc {

double evaporated_share(Absorbency absorbency) {
  return absorbency == Absorbency::high ? 0.6 : 0.9;
}

MassFlow evaporated_water(VolumeFlow printed, Density ink, double water_share,
                          double evaporated_share) {
  return printed * ink * (water_share * evaporated_share);
}

SpecificEnergy latent_heat(Temperature temperature) {
  const SteamInterval i = steam_interval(temperature);
  const double share =
      (temperature.in_celsius() - i.low.celsius) / (i.high.celsius - i.low.celsius);
  return SpecificEnergy::from_si(1e3 *
                                 (i.low.kj_per_kg + (i.high.kj_per_kg - i.low.kj_per_kg) * share));
}

SpecificEnergy liquid_enthalpy(Temperature temperature) {
  return water_heat * (temperature - Temperature::celsius(0));
}

SpecificEnergy vapour_enthalpy(Temperature temperature) {
  return liquid_enthalpy(temperature) + latent_heat(temperature);
}

SpecificEnergy evaporation_energy(Temperature inlet, Temperature exhaust) {
  return vapour_enthalpy(exhaust) - liquid_enthalpy(inlet);
}

Power evaporation_power(MassFlow water, SpecificEnergy energy) { return water * energy; }

Power web_power(Length width, Speed speed, AreaMass area_mass, SpecificHeat heat,
                TemperatureDifference rise) {
  return width * speed * area_mass * (heat * std::max(rise, TemperatureDifference()));
}

Power dryer_power(Power heat, double efficiency) { return heat / efficiency; }

Length dryer_length(MassFlow water, Length width, MassFlux rate) { return water / (width * rate); }

MassFlow exhaust_air(MassFlow water, double humidity_rise) { return water / humidity_rise; }

VolumeFlow humid_air_flow(MassFlow dry_air, double humidity, Temperature temperature,
                          Pressure total) {
  return dry_air * moist_volume(temperature, humidity, total);
}

}  // namespace calc
