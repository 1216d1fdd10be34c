#include "calc/exposure.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "calc/compare.h"
#include "calc/eye.h"

namespace calc {

namespace {

constexpr Length uva_from = Length::from_si(315e-9);

double in_nm(Length v) { return v.si() * 1e9; }

/// The group whose limits a value exceeds: the count of limits below it.
int above(Irradiance value, const std::array<double, 3>& limits) {
  return static_cast<int>(std::count_if(limits.begin(), limits.end(),
                                        [&](double limit) { return !at_most(value.si(), limit); }));
}

}  // namespace

std::optional<SpectralInterval> spectral_interval(Length wavelength) {
  const auto rows = spectral_table().rows;
  const double nm = in_nm(wavelength);
  if (!at_least(nm, rows.front().nm) || !at_most(nm, rows.back().nm)) return std::nullopt;
  const auto next = std::find_if(rows.begin() + 1, rows.end() - 1,
                                 [&](const SpectralRow& row) { return row.nm >= nm; });
  return SpectralInterval{*(next - 1), *next};
}

std::optional<double> spectral_weight(Length wavelength) {
  const std::optional<SpectralInterval> i = spectral_interval(wavelength);
  if (!i) return std::nullopt;
  const double share = (in_nm(wavelength) - i->low.nm) / (i->high.nm - i->low.nm);
  return i->low.weight * std::pow(i->high.weight / i->low.weight, share);
}

std::optional<Dose> daily_limit(Length wavelength) {
  const std::optional<double> weight = spectral_weight(wavelength);
  if (!weight) return std::nullopt;
  const Dose actinic = actinic_limit / *weight;
  return at_least(wavelength, uva_from) ? std::min(actinic, uva_limit) : actinic;
}

std::optional<PermittedTime> permitted_time(Irradiance irradiance, Length wavelength) {
  const std::optional<Dose> limit = daily_limit(wavelength);
  if (!limit) return std::nullopt;
  const Time time = *limit / irradiance;
  if (time >= working_day) return PermittedTime{working_day, LightHazard::day};
  const bool uva = at_least(wavelength, uva_from) && *limit >= uva_limit;
  return PermittedTime{time, uva ? LightHazard::uva : LightHazard::actinic};
}

Irradiance scattered_irradiance(Power scattered, Length distance) {
  return scattered / (pi * distance * distance);
}

Irradiance near_irradiance(Power scattered, Irradiance leaving, Length distance) {
  return std::min(scattered_irradiance(scattered, distance), leaving);
}

Length distance_for(Irradiance irradiance, Length distance, Time time, Dose limit) {
  return distance * std::sqrt(irradiance * time / limit);
}

double optical_density(Irradiance irradiance, Time time, Dose limit) {
  return std::max(0.0, std::log10(irradiance * time / limit));
}

int risk_group(Irradiance actinic, Irradiance uva) {
  return std::max(above(actinic, {0.001, 0.003, 0.03}), above(uva, {10, 33, 100}));
}

}  // namespace calc
