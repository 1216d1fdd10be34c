/// Drying of water: how much, how long, how much power and air.
#pragma once

#include "calc/laydown.h"
#include "calc/quantity.h"
#include "calc/request.h"

namespace calc {

inline constexpr double default_water_share = 0.65;  ///< common practice
inline constexpr double default_drying_efficiency = 0.45;
inline constexpr double default_exhaust_humidity = 0.030;  ///< kg water taken up per kg dry air
inline constexpr MassFlux default_drying_rate = MassFlux::from_si(20.0 / 3600.0);
inline constexpr SpecificHeat water_heat = SpecificHeat::from_si(4186);

/// Share of the water [1] that must leave: 0.9 on absorbency none or low, 0.6 on high. Common
/// practice.
double evaporated_share(Absorbency absorbency);

/// Water to evaporate [kg/s]: printed ink by mass, times its water and evaporated shares.
MassFlow evaporated_water(VolumeFlow printed, Density ink, double water_share,
                          double evaporated_share);

/// Latent heat of water [J/kg]: 2500.43 - 2.30547 t - 1.29555e-3 t^2 kJ/kg, t in degC. Valid 0 to
/// 100 degC, 0.53 kJ/kg. Source: fit to steam tables (NISTIR 5078 derivatives).
SpecificEnergy latent_heat(Temperature temperature);

/// Heat to turn water at `inlet` to vapour at `exhaust` [J/kg]: latent heat at exhaust plus
/// heating the liquid at 4.186 kJ/(kg K). Valid 0 to 100 degC, 0.1 %.
SpecificEnergy evaporation_energy(Temperature inlet, Temperature exhaust);

/// Heat [W] for a flow of water.
Power evaporation_power(MassFlow water, SpecificEnergy energy);
/// Heat [W] to warm a web: width speed area mass c dT.
Power web_power(Length width, Speed speed, AreaMass area_mass, SpecificHeat heat,
                TemperatureDifference rise);
/// Connected power [W]: heat over efficiency. 0 < efficiency <= 1.
Power dryer_power(Power heat, double efficiency);

/// Length of dryer [m]: water / (width rate). width, rate > 0.
Length dryer_length(MassFlow water, Length width, MassFlux rate);

/// Dry exhaust air [kg/s]: water / humidity taken up. humidity > 0.
MassFlow exhaust_air(MassFlow water, double humidity_rise);

/// Volume flow [m3/s] of humid air holding `humidity` kg/kg at 101.325 kPa, per dry mass flow:
/// 0.287042 T (1 + 1.607858 W)/p. Source: ASHRAE Fundamentals 2017 chapter 1.
VolumeFlow humid_air_flow(MassFlow dry_air, double humidity, Temperature temperature);

}  // namespace calc
