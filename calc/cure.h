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

/// Whole strokes of a carriage [1] that light ink after it landed, its own among them, of lamps lit
/// side by side along the feed: their windows, w each, begin where the swath begins and reach
/// beyond it where the product leaves. Ink of the last of `passes` strokes over a point, at the
/// swath's end, has passed passes x A of them: floor((n w - passes A)/A) + 1, at least 0.
/// advance > 0, passes >= 1. Source: geometry.
double carriage_strokes(Length window, Length advance, int passes, int lamps_lit);

/// Lamps lit side by side [1] that such ink gets so many whole strokes:
/// ceil((passes + strokes - 1) A / w), at least 1. window > 0.
double carriage_lit(Length window, Length advance, int passes, double strokes);

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
