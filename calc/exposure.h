/// Ultraviolet light on eyes and skin: weights, daily limits, times, distances, filters.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "calc/quantity.h"
#include "calc/step.h"

namespace calc {

/// Daily limits of unprotected eyes and skin, not for photosensitised persons. Source: ICNIRP 2004,
/// Health Phys. 87(2):171-186; Directive 2006/25/EC Annex I. In the form of a dose, which is the
/// stricter one: a threshold of 10 W/m2 beyond 1000 s allows 29 times as much in 8 h.
inline constexpr Dose actinic_limit = Dose::from_si(30);  ///< weighted, 180 to 400 nm
inline constexpr Dose uva_limit = Dose::from_si(1e4);     ///< on the eye, 315 to 400 nm
inline constexpr Time working_day = seconds(8 * 3600.0);

/// A node of the spectral weighting; between nodes the logarithm is linear.
struct SpectralRow {
  double nm, weight;
};
/// The nodes in rising order, 180 to 400 nm, with where they come from.
struct SpectralTable {
  std::span<const SpectralRow> rows;
  std::string_view source, edition, validity;
  SourceTag tag;
};
const SpectralTable& spectral_table();  ///< spectral_data.cpp

/// The two nodes a wavelength lies between. 180 to 400 nm.
struct SpectralInterval {
  SpectralRow low, high;
};
std::optional<SpectralInterval> spectral_interval(Length wavelength);

/// Weight [1] of a wavelength for actinic harm; nullopt outside 180 to 400 nm, where the table says
/// nothing. Source: spectral_table(), within 1 % of the entries of Directive 2006/25/EC.
std::optional<double> spectral_weight(Length wavelength);

/// What limits a stay: actinic harm to eyes and skin, UV-A to the eye, or the working day.
enum class LightHazard { actinic, uva, day };
struct PermittedTime {
  Time time;
  LightHazard governs = LightHazard::day;
};

/// Time [s] until a daily limit is reached at an irradiance of one wavelength, at most a working
/// day: min(30/(S E), 10^4/E from 315 nm on, 28800). nullopt outside the table. irradiance > 0.
std::optional<PermittedTime> permitted_time(Irradiance irradiance, Length wavelength);

/// The daily limit as unweighted dose [J/m2] of one wavelength: the lesser of 30/S and, from 315 nm
/// on, 10^4. nullopt outside the table.
std::optional<Dose> daily_limit(Length wavelength);

/// Irradiance [W/m2] on the axis of light scattered evenly by a surface (Lambert): P/(pi d^2).
/// Valid at distances of at least five times the lit length. distance > 0.
Irradiance scattered_irradiance(Power scattered, Length distance);

/// The same close to the print [W/m2], an upper bound at every distance: no point of the print is
/// nearer than the distance, so that a point of all its light gives more; and light that leaves a
/// surface evenly is nowhere more than at the surface. distance > 0.
Irradiance near_irradiance(Power scattered, Irradiance leaving, Length distance);

/// Distance [m] at which a time in the light of a point reaches a limit: d sqrt(E t/H). limit > 0.
Length distance_for(Irradiance irradiance, Length distance, Time time, Dose limit);

/// Optical density [1] a guard needs so that a time stays within a limit: log10(E t/H), least 0.
double optical_density(Irradiance irradiance, Time time, Dose limit);

/// Risk group [0 exempt to 3] after IEC 62471 from weighted and UV-A irradiance at 200 mm: limits
/// 0.001/0.003/0.03 and 10/33/100 W/m2. From memory; 30 J/m2 over 30000/10000/1000 s and 10^4 J/m2
/// over 1000/300/100 s give the same figures.
int risk_group(Irradiance actinic, Irradiance uva);

}  // namespace calc
