/// Defaults that are assumptions: each with its range, effect and source, overridable for the
/// question "what if this assumption is wrong".
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace calc {

enum class P : std::size_t {
  feature_dots,
  text_dots_legible,
  text_dots_good,
  barcode_dots,
  acuity_arcmin,
  soft_share,
  stroke_regular,
  stroke_bold,
  stroke_serif,
  fallback_dpi,
  spread_none,
  spread_low,
  spread_high,
  cover_mean_process,
  cover_mean_spot,
  cover_mean_white,
  cover_mean_varnish,
  cover_mean_primer,
  cover_peak,
  printed_share,
  process_limit,
  film_white_um,
  film_varnish_um,
  overlap_nozzles,
  body_gap_mm,
  row_gap_mm,
  reserve,
  high_use,
  quality_passes,
  carriage_speed,
  carriage_acceleration,
  stroke_dwell_s,
  park_mm,
  amplitude_factor,
  throw_mm,
  throw_least_mm,
  throw_variation_mm,
  wetting_margin,
  slope_warn_deg,
  slope_limit_deg,
  room_c,
  uptime,
  hours_per_day,
  days_per_year,
  purge_share,
  purges_per_day,
  purge_ml,
  lamp_ageing,
  water_share,
  evaporated_none_low,
  evaporated_high,
  drying_rate,
  dryer_efficiency,
  service_access_mm,
  labour_per_hour,
  energy_per_kwh,
  discount,
  years,
  stale_price_days,
  head_life_h,
  alignment_h,
  spare_confidence,
  ink_density,
  flush_ml,
  flush_bottle_l,
  channel_depth_um,
  divider_most,
  web_heat_capacity,
  light_absorbed,
  arc_radiation,
  cure_heat,
  stray_share,
  room_humidity,
  dryer_air_c,
  exhaust_humidity,
  captured_share,
  lel_share,
  lel_share_monitored,
  mixing,
  vapour_exhaust_c,
  solvent_share,
  mount_um,
  straightness_mrad,
  speed_spread,
  wheel_error,
  thermal_drift_k,
  encoder_count_um,
  weave_mm,
  weave_wavelength_m,
  sensor_repeat_um,
  sensor_distance_mm,
  round_share,
  count
};

struct Parameter {
  P id;
  std::string_view
      key;  ///< "assume.feature_dots"; the request field's own key when it stands in for one
  std::string_view unit;    ///< "money/h" of a rate in the currency of the job
  double value, low, high;  ///< low = high = value when no range is claimed
  std::string_view effect;  ///< key of the figure it moves most
  std::string_view source;
};

/// The table, one row per P in its order (parameter_data.cpp).
const Parameter& parameter(P id);

/// The row of that key; none where no default has it.
std::optional<P> parameter_of(std::string_view key);

/// The values in force; starts with every default.
class Parameters {
 public:
  Parameters();
  double operator[](P id) const { return values_[static_cast<std::size_t>(id)]; }
  void set(P id, double value) { values_[static_cast<std::size_t>(id)] = value; }

 private:
  std::array<double, static_cast<std::size_t>(P::count)> values_{};
};

}  // namespace calc
