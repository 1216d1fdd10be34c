#include "calc/psychrometrics.h"

#include <cmath>

namespace calc {

namespace {

constexpr double mass_ratio = 0.621945;  // of water to dry air, by molecule
constexpr double coldest = 0, hottest = 200;

double hyland_wexler(double kelvin) {
  return std::exp(-5.8002206e3 / kelvin + 1.3914993 - 4.8640239e-2 * kelvin +
                  4.1764768e-5 * kelvin * kelvin - 1.4452093e-8 * kelvin * kelvin * kelvin +
                  6.5459673 * std::log(kelvin));
}

}  // namespace

std::optional<Pressure> saturation_pressure(Temperature temperature) {
  const double celsius = temperature.in_celsius();
  if (celsius < coldest || celsius > hottest) return std::nullopt;
  return Pressure::from_si(hyland_wexler(temperature.in_kelvin()));
}

double humidity_ratio(Pressure vapour, Pressure total) {
  return mass_ratio * (vapour / (total - vapour));
}

Pressure vapour_pressure(double humidity, Pressure total) {
  return total * (humidity / (mass_ratio + humidity));
}

std::optional<double> saturated_humidity(Temperature temperature, Pressure total) {
  const std::optional<Pressure> vapour = saturation_pressure(temperature);
  if (!vapour || *vapour >= total) return std::nullopt;
  return humidity_ratio(*vapour, total);
}

SpecificEnergy moist_enthalpy(Temperature temperature, double humidity) {
  const double t = temperature.in_celsius();
  return SpecificEnergy::from_si(1e3 * (1.006 * t + humidity * (2501 + 1.86 * t)));
}

SpecificVolume moist_volume(Temperature temperature, double humidity, Pressure total) {
  return SpecificVolume::from_si(287.042 * temperature.in_kelvin() * (1 + 1.607858 * humidity) /
                                 total.si());
}

std::optional<Temperature> dew_point(double humidity, Pressure total) {
  const double wanted = vapour_pressure(humidity, total).si();
  double low = Temperature::celsius(coldest).in_kelvin();
  double high = Temperature::celsius(hottest).in_kelvin();
  if (wanted < hyland_wexler(low) || wanted > hyland_wexler(high)) return std::nullopt;
  for (;;) {
    const double middle = (low + high) / 2;
    if (middle <= low || middle >= high) return Temperature::kelvin(middle);
    (hyland_wexler(middle) < wanted ? low : high) = middle;
  }
}

}  // namespace calc
