/// Drying of water: how much, how long, how much power and air.
#pragma once

#include "calc/laydown.h"
#include "calc/psychrometrics.h"
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

/// Latent heat of water [J/kg] by straight lines between the rows of steam_table(). Valid 0 to
/// 100 degC, 0.15 kJ/kg; beyond, the last line goes on.
SpecificEnergy latent_heat(Temperature temperature);

/// Enthalpy [J/kg] from 0 degC on: of liquid water, 4.186 t kJ/kg, within 0.2 % up to 100 degC; of
/// its vapour at saturation, the same and the latent heat. Source: definition.
SpecificEnergy liquid_enthalpy(Temperature temperature);
SpecificEnergy vapour_enthalpy(Temperature temperature);

/// Heat to turn water at `inlet` to vapour at `exhaust` [J/kg]: h_g(exhaust) - h_f(inlet). Valid 0
/// to 100 degC, 0.1 %.
SpecificEnergy evaporation_energy(Temperature inlet, Temperature exhaust);

/// Heat [W] for a flow of water.
Power evaporation_power(MassFlow water, SpecificEnergy energy);
/// Heat [W] to warm a web: width speed area mass c dT. Zero where it gets no warmer.
Power web_power(Length width, Speed speed, AreaMass area_mass, SpecificHeat heat,
                TemperatureDifference rise);
/// Connected power [W]: heat over efficiency. 0 < efficiency <= 1.
Power dryer_power(Power heat, double efficiency);

/// Length of dryer [m]: water / (width rate). width, rate > 0.
Length dryer_length(MassFlow water, Length width, MassFlux rate);

/// Dry exhaust air [kg/s]: water / humidity taken up. humidity > 0.
MassFlow exhaust_air(MassFlow water, double humidity_rise);

/// Volume flow [m3/s] of humid air holding `humidity` kg/kg, per dry mass flow: m v.
VolumeFlow humid_air_flow(MassFlow dry_air, double humidity, Temperature temperature,
                          Pressure total = standard_pressure);

}  // namespace calc
