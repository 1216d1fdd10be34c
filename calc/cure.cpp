#include "calc/cure.h"

#include <algorithm>

#include "calc/compare.h"

namespace calc {

namespace {

/// Mean irradiance along the window, aged.
Irradiance effective(const LampWindow& lamp) { return lamp.peak * (lamp.shape * lamp.ageing); }

}  // namespace

Time dwell(Length along, Speed speed) { return along / speed; }

Dose row_dose(const LampWindow& lamp, Speed speed) {
  return effective(lamp) * dwell(lamp.along, speed);
}

int lamp_rows(Dose dose, const LampWindow& lamp, Speed speed) {
  return std::max(1, static_cast<int>(ceil_tolerant(dose / row_dose(lamp, speed))));
}

int lamp_count(int rows, Length width, Length across) {
  return rows * static_cast<int>(ceil_tolerant(width / across));
}

Speed cure_speed_limit(int rows, const LampWindow& lamp, Dose dose) {
  return rows * (effective(lamp) * lamp.along / dose);
}

double carriage_strokes(Length window, Length advance, int passes, int lamps_lit) {
  return std::max(0.0, floor_tolerant(lamps_lit * (window / advance)) - passes + 1);
}

double carriage_lit(Length window, Length advance, int passes, double strokes) {
  return std::max(1.0, ceil_tolerant((passes + strokes - 1) * (advance / window)));
}

Power optical_power(const LampWindow& lamp) {
  return lamp.peak * lamp.shape * lamp.along * lamp.across;
}

Power lamp_power(Power optical, double efficiency) { return optical / efficiency; }

Power lamp_heat(Power electrical, Power optical) { return electrical - optical; }

VolumeFlow coolant_flow(Power heat, Density density, SpecificHeat heat_capacity,
                        TemperatureDifference rise) {
  return heat / (density * (heat_capacity * rise));
}

TemperatureDifference web_rise(Dose dose, double absorbed, Dose reaction, AreaMass web,
                               SpecificHeat heat_capacity) {
  return (absorbed * dose + reaction) / (web * heat_capacity);
}

Dose reaction_heat(AreaMass ink, SpecificEnergy per_mass) { return ink * per_mass; }

}  // namespace calc
