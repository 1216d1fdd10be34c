/// Moist air at a pressure: saturation, humidity, enthalpy, volume, dew point.
#pragma once

#include <optional>

#include "calc/air.h"
#include "calc/quantity.h"

namespace calc {

using SpecificVolume = Quantity<3, -1, 0>;  ///< per mass of dry air

/// Pressure of saturated water vapour [Pa] over liquid: Hyland and Wexler's equation. nullopt
/// outside 0 to 200 degC. Source: ASHRAE Handbook Fundamentals 2017 chapter 1, 0.025 %.
std::optional<Pressure> saturation_pressure(Temperature temperature);

/// Water per dry air [kg/kg]: 0.621945 p_w/(p - p_w). vapour < total. Ideal gas: 0.5 % too little
/// at saturation up to 25 degC, 2 % at 85 degC. Source: ASHRAE Fundamentals 2017 chapter 1.
double humidity_ratio(Pressure vapour, Pressure total = standard_pressure);
/// Partial pressure [Pa] of water in air of that humidity: the same, solved for p_w.
Pressure vapour_pressure(double humidity, Pressure total = standard_pressure);
/// Humidity ratio of saturated air [kg/kg]; nullopt outside 0 degC to the boiling point.
std::optional<double> saturated_humidity(Temperature temperature,
                                         Pressure total = standard_pressure);

/// Enthalpy [J/kg dry air] from 0 degC on: 1.006 t + W (2501 + 1.86 t) kJ/kg. Source: as above.
SpecificEnergy moist_enthalpy(Temperature temperature, double humidity);
/// Volume [m3/kg dry air]: 0.287042 T (1 + 1.607858 W)/p[kPa]. Source: as above.
SpecificVolume moist_volume(Temperature temperature, double humidity,
                            Pressure total = standard_pressure);
/// Temperature at which air of that humidity begins to drip. By halving to 1e-9 K; nullopt where it
/// lies outside 0 to 200 degC.
std::optional<Temperature> dew_point(double humidity, Pressure total = standard_pressure);

}  // namespace calc
