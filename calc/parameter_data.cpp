/// The table of defaults. "common practice, no source" marks values of the trade for which nothing
/// printed is cited; the range says how far such a value is seen to vary.
#include "calc/parameter.h"

namespace calc {
namespace {

constexpr std::string_view practice = "common practice, no source";
constexpr std::size_t rows = static_cast<std::size_t>(P::count);

// Row by row in the order of P; a test holds both orders against each other.
constexpr std::array<Parameter, rows> table{{
    {P::feature_dots, "assume.feature_dots", "dots", 2, 2, 3, "resolution_across_dpi",
     "sampling theorem (Shannon 1949): two samples a period"},
    {P::text_dots_legible, "assume.text_dots_legible", "dots", 2, 2, 3, "resolution_across_dpi",
     practice},
    {P::text_dots_good, "assume.text_dots_good", "dots", 3, 3, 4, "resolution_across_dpi",
     practice},
    {P::barcode_dots, "assume.barcode_dots", "dots", 4, 3, 4, "resolution_across_dpi", practice},
    {P::acuity_arcmin, "assume.acuity", "arcmin", 1, 0.8, 1.5, "resolution_across_dpi",
     "ISO 8596: grade 1 resolves a gap of 1 minute of arc"},
    {P::soft_share, "assume.soft_share", "", 0.90, 0.85, 1.0, "resolution_across_dpi", practice},
    {P::stroke_regular, "assume.stroke_regular", "", 0.085, 0.07, 0.10, "resolution_across_dpi",
     practice},
    {P::stroke_bold, "assume.stroke_bold", "", 0.13, 0.11, 0.15, "resolution_across_dpi", practice},
    {P::stroke_serif, "assume.stroke_serif", "", 0.03, 0.02, 0.04, "resolution_across_dpi",
     practice},
    {P::fallback_dpi, "image.resolution", "dpi", 300, 200, 600, "resolution_across_dpi", practice},
    {P::spread_none, "assume.spread_none", "", 1.6, 1.3, 2.4, "cover_fraction", practice},
    {P::spread_low, "assume.spread_low", "", 1.8, 1.5, 2.2, "cover_fraction", practice},
    {P::spread_high, "assume.spread_high", "", 2.2, 1.8, 2.8, "cover_fraction", practice},
    {P::cover_mean_process, "assume.cover_mean_process", "", 0.15, 0.05, 0.30, "ml_per_hour",
     practice},
    {P::cover_mean_spot, "assume.cover_mean_spot", "", 0.10, 0.05, 0.30, "ml_per_hour", practice},
    {P::cover_mean_white, "assume.cover_mean_white", "", 0.70, 0.40, 1.0, "ml_per_hour", practice},
    {P::cover_mean_varnish, "assume.cover_mean_varnish", "", 0.90, 0.50, 1.0, "ml_per_hour",
     practice},
    {P::cover_mean_primer, "assume.cover_mean_primer", "", 1.0, 0.80, 1.0, "ml_per_hour", practice},
    {P::cover_peak, "assume.cover_peak", "", 1.0, 1.0, 1.0, "ml_per_hour", practice},
    {P::process_limit, "assume.process_limit", "", 2.4, 2.0, 3.0, "water_kg_per_h", practice},
    {P::film_white_um, "assume.film_white", "um", 10, 8, 15, "wet_film_um", practice},
    {P::film_varnish_um, "assume.film_varnish", "um", 10, 10, 100, "wet_film_um", practice},
    {P::overlap_nozzles, "assume.overlap", "nozzles", 16, 8, 32, "heads_total", practice},
    {P::body_gap_mm, "assume.body_gap", "mm", 0.5, 0.3, 1.0, "rows_staggered", practice},
    {P::row_gap_mm, "assume.row_gap", "mm", 10, 5, 20, "footprint", practice},
    {P::reserve, "assume.reserve", "", 0, 0, 0, "speed_limit_m_per_s", practice},
    {P::high_use, "assume.high_use", "", 0.90, 0.90, 0.90, "speed_limit_m_per_s", practice},
    {P::quality_passes, "assume.quality_passes", "passes", 2, 1, 4, "heads_total", practice},
    {P::carriage_speed, "assume.carriage_speed", "m/s", 1.5, 1.0, 2.0, "heads_total", practice},
    {P::carriage_acceleration, "assume.carriage_acceleration", "m/s2", 10, 5, 15, "heads_total",
     practice},
    {P::stroke_dwell_s, "assume.stroke_dwell", "s", 0.1, 0.05, 0.3, "heads_total", practice},
    {P::park_mm, "assume.park", "mm", 200, 150, 400, "machine_width_mm", practice},
    {P::amplitude_factor, "assume.amplitude_factor", "", 0.6, 0.5, 0.7, "frequency_allowed_hz",
     practice},
    {P::throw_mm, "line.throw_distance", "mm", 1, 0.8, 1.5, "throw_nominal_mm", practice},
    {P::throw_least_mm, "assume.throw_least", "mm", 0.5, 0.3, 0.8, "throw_least_mm", practice},
    {P::throw_variation_mm, "line.throw_variation", "mm", 0.1, 0, 0.3, "throw_least_mm", practice},
    {P::wetting_margin, "assume.wetting_margin", "mN/m", 10, 5, 10, "dot_diameter_um", practice},
    {P::slope_warn_deg, "assume.slope_warn", "deg", 15, 15, 15, "dot_diameter_um", practice},
    {P::slope_limit_deg, "assume.slope_limit", "deg", 25, 25, 25, "dot_diameter_um", practice},
    {P::room_c, "line.air_temperature", "degC", 25, 18, 32, "jetting_temperature_degc", practice},
    {P::uptime, "assume.uptime", "", 0.85, 0.70, 0.95, "ownership", practice},
    {P::hours_per_day, "line.hours_per_day", "h", 8, 8, 24, "ownership", practice},
    {P::days_per_year, "line.days_per_year", "d", 250, 220, 350, "ownership", practice},
    {P::purge_share, "assume.purge_share", "", 0.03, 0.02, 0.05, "ml_per_hour", practice},
    {P::purges_per_day, "assume.purges_per_day", "1/d", 2, 1, 6, "ml_per_hour", practice},
    {P::purge_ml, "assume.purge", "mL", 2, 1, 5, "ml_per_hour", practice},
    {P::lamp_ageing, "assume.lamp_ageing", "", 0.8, 0.7, 0.9, "lamps", practice},
    {P::water_share, "assume.water_share", "", 0.65, 0.50, 0.80, "water_kg_per_h", practice},
    {P::evaporated_none_low, "assume.evaporated_none_low", "", 0.9, 0.8, 1.0, "water_kg_per_h",
     practice},
    {P::evaporated_high, "assume.evaporated_high", "", 0.6, 0.4, 0.8, "water_kg_per_h", practice},
    {P::drying_rate, "assume.drying_rate", "kg/(m2 h)", 20, 10, 40, "length_m", practice},
    {P::dryer_efficiency, "assume.dryer_efficiency", "", 0.45, 0.30, 0.60, "electrical_kw",
     practice},
    {P::service_access_mm, "assume.service_access", "mm", 600, 500, 800, "footprint", practice},
    {P::labour_per_hour, "costs.labour", "money/h", 40, 20, 70, "ownership", practice},
    {P::energy_per_kwh, "costs.energy", "money/kWh", 0.20, 0.10, 0.35, "ownership", practice},
    {P::discount, "costs.discount", "1/a", 0.08, 0.05, 0.12, "ownership", practice},
    {P::years, "costs.years", "a", 5, 3, 10, "ownership", practice},
    {P::stale_price_days, "assume.stale_price", "d", 180, 180, 180, "capital", practice},
    {P::head_life_h, "assume.head_life", "h", 8000, 4000, 12000, "ownership", practice},
    {P::alignment_h, "assume.alignment", "h", 1, 0.5, 2, "capital", practice},
    {P::spare_confidence, "assume.spare_confidence", "", 0.95, 0.90, 0.99, "quantity", practice},
    {P::ink_density, "assume.ink_density", "kg/m3", 1050, 950, 1200, "z", practice},
    {P::flush_ml, "assume.flush", "mL", 1, 0.5, 5, "ml_per_hour", practice},
    {P::flush_bottle_l, "assume.flush_bottle", "L", 1, 1, 1, "ownership", practice},
    {P::channel_depth_um, "assume.channel_depth", "um", 100, 50, 1000, "head", practice},
    {P::divider_most, "assume.divider", "dots", 255, 255, 255, "encoder_residue_um", practice},
}};

}  // namespace

const Parameter& parameter(P id) { return table.at(static_cast<std::size_t>(id)); }

}  // namespace calc
