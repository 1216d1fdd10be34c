/// Ultraviolet curing: dose, rows and lamps.
#pragma once

#include "calc/laydown.h"
#include "calc/quantity.h"

namespace calc {

inline constexpr double default_lamp_ageing = 0.8;  ///< share of irradiance left, common practice

/// What counts of a lamp for the dose.
struct LampWindow {
  Irradiance peak;
  double shape = 1;  ///< mean over peak along the window: 1 flat, 0.5 triangular
  Length along, across;
  double ageing = default_lamp_ageing;
};

/// Dwell under a window [s]: w / v. speed > 0.
Time dwell(Length along, Speed speed);

/// Dose [J/m2] of one row: k E ageing w / v. speed > 0. Source: definition of radiant exposure.
Dose row_dose(const LampWindow& lamp, Speed speed);

/// Rows [1] for a dose at a speed: ceil(dose / row_dose), at least 1.
int lamp_rows(Dose dose, const LampWindow& lamp, Speed speed);

/// Lamps [1]: rows times ceil(width / uniform window). across > 0.
int lamp_count(int rows, Length width, Length across);

/// Greatest speed [m/s] at which rows give a dose: rows k E ageing w / dose. dose > 0.
Speed cure_speed_limit(int rows, const LampWindow& lamp, Dose dose);

/// Dose [J/m2] under a carriage: k E ageing w/v (window along the feed / advance) lamps lit.
/// `along` of the lamp is along the motion, `across` along the feed.
Dose carriage_dose(const LampWindow& lamp, Speed carriage, Length advance, int lamps_lit);

/// Optical power [W] at the window: mean irradiance times its area, new lamp.
Power optical_power(const LampWindow& lamp);
/// Electrical power [W]: optical over efficiency. 0 < efficiency <= 1.
Power lamp_power(Power optical, double efficiency);
/// Heat [W] left in the lamp and its coolant: electrical less optical.
Power lamp_heat(Power electrical, Power optical);
/// Flow [m3/s] of a coolant that carries heat off: P/(density c dT). All > 0.
VolumeFlow coolant_flow(Power heat, Density density, SpecificHeat heat_capacity,
                        TemperatureDifference rise);

/// Temperature rise of a web [K], warm through its thickness: (absorbed share times dose, and what
/// the ink gives off as it cures) over area mass times heat capacity. web, heat_capacity > 0.
/// Source: energy balance.
TemperatureDifference web_rise(Dose dose, double absorbed, Dose reaction, AreaMass web,
                               SpecificHeat heat_capacity);
/// Heat of reaction per area [J/m2]: ink per area times heat per mass.
Dose reaction_heat(AreaMass ink, SpecificEnergy per_mass);

}  // namespace calc
