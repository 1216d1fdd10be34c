#include "output/notice_places.h"

#include <algorithm>
#include <span>

namespace output {
namespace {

struct Place {
  std::string_view code, argument, at;
};

constexpr std::string_view demands =
    "required.feature required.text required.bar_code required.viewing required.across "
    "required.along";
constexpr std::string_view lamps = ".lamps station.uv.units station.pinning.units";
constexpr std::string_view flash = "@FIELD @ink.NAME.solvent";
constexpr std::string_view heat =
    ".temperature @ink.NAME.jetting_temperature @line.air_temperature";
constexpr std::string_view stray = "@assume.stray_share";
constexpr std::string_view captured = "@assume.captured_share";
constexpr std::string_view peaks = "safety.uv.peak safety.aqueous.peak safety.oil.peak";
constexpr std::string_view used = "safety.uv.used safety.aqueous.used safety.oil.used";
constexpr std::string_view waste =
    "safety.uv.waste safety.aqueous.waste safety.solvent.waste safety.oil.waste";

constexpr Place conditions[]{
    {"soft_demand", "value", ".across .along .motion"},
    {"soft_demand", "limit", demands},
    {"high_use", "value", ".use"},
    {"high_use", "limit", "@assume.high_use"},
    {"measure_dot", "value", ".dot"},
    {"measure_dot", "limit", ".diagonal @image.smallest_feature"},
    {"pretreatment", "value", "@FIELD"},
    {"pretreatment", "limit", "check.wetting"},
    {"placement", "value", ".SUBJECT.AXIS"},
    {"placement", "limit",
     ".SUBJECT.AXIS.limit .SUBJECT.limit @image.registration @image.placement"},
    {"throw_anew", "limit", ".joint.AXIS.limit"},
    {"ink_limit", "value", "station.process_peak"},
    {"ink_limit", "limit", "@FIELD @assume.process_limit"},
    {"several_stations", "value", "station.round_stations .round_stations"},
    {"turn_travel", "value", ".round_turn"},
    {"turn_travel", "limit", "@product.pitch @image.length"},
    {"seam", "value", "seam"},
    {"seam", "limit", ".pitch_m .pitch_n"},
    {"capture_unproved", "share", captured},
    {"capture_unproved", "least", captured},
};

constexpr Place warnings[]{
    {"explicit_below_derived", "explicit", "@image.resolution"},
    {"explicit_below_derived", "derived", demands},
    {"finer_than_eye", "required", "required.across required.along"},
    {"finer_than_eye", "eye", "required.viewing"},
    {"overspray", "printed", "station.width .width"},
    {"overspray", "substrate", "@substrate.width"},
    {"impact_speed", "drop", ".small.drop"},
    {"impact_speed", "speed", ".small.impact_most"},
    {"impact_speed", "throw", ".throw_most"},
    {"carriage_pace", "speed", ".pace"},
    {"web_air_drag", "speed", ".carriage_speed @line.speed"},
    {"web_air_drag", "throw", ".throw_nominal"},
    {"web_air_drag", "drop", ".small.drop"},
    {"throughput_below_speed", "speed", "@line.speed"},
    {"throughput_below_speed", "needed", "@line.throughput"},
    {"speed_below_throughput", "speed", "@line.speed"},
    {"speed_below_throughput", "needed", "@line.throughput"},
    {"symbol_too_wide", "symbol", "@image.barcode_module"},
    {"symbol_too_wide", "room", "@image.width @image.length"},
    {"jetting_windows", "z", ".z_sheared .z"},
    {"slow_ejection", "speed", ".small.start .large.start"},
    {"slow_ejection", "least", ".least_speed"},
    {"splash", "k", ".splash"},
    {"settles_by_figures", "height", ".settling_height"},
    {"settles_by_figures", "depth", "@assume.channel_depth"},
    {"pump_unknown", "flow", "@FIELD"},
};

constexpr Place notes[]{
    {"uv_led", "lamps", lamps},
    {"uv_arc", "lamps", lamps},
    {"ozone", "lamps", lamps},
    {"ozone", "air", ".ozone"},
    {"mercury_waste", "lamps", lamps},
    {"photobiological", "irradiance", "@FIELD"},
    {"photobiological", "wavelength", "@FIELD"},
    {"photobiological", "dose_limit", "station.uv.limit station.pinning.limit"},
    {"photobiological", "time", ".time"},
    {"stray_light", "time", ".stray_time"},
    {"stray_light", "safe", ".safe"},
    {"stray_light", "density", ".density"},
    {"stray_light", "share", stray},
    {"stray_light", "worst_share", stray},
    {"stray_light", "safe_worst", ".safe_worst"},
    {"stray_light", "density_worst", ".density_worst"},
    {"stray_light", "density_near", ".guard_100mm_worst .guard_200mm_worst .density_worst"},
    {"hot_web", "temperature", ".web"},
    {"uv_mist", "peak", peaks},
    {"uv_mist", "ml_per_hour", used},
    {"aqueous_ink", "peak", peaks},
    {"aqueous_ink", "ml_per_hour", used},
    {"oil_mist", "peak", peaks},
    {"oil_mist", "ml_per_hour", used},
    {"aqueous_rest", "share", "@ink.NAME.water_share @assume.water_share"},
    {"solvent_vapour", "vapour", "station.ventilation.vapour"},
    {"air_explosion", "vapour", "station.ventilation.vapour"},
    {"air_explosion", "air", "station.ventilation.air_lel_hot station.ventilation.air_lel"},
    {"air_explosion", "share", "@assume.lel_share_monitored @assume.lel_share"},
    {"air_explosion", "lel", "station.ventilation.lel"},
    {"air_health", "vapour", "safety.vapour_left station.ventilation.vapour"},
    {"air_health", "air", "station.ventilation.air_health"},
    {"air_health", "air_least", "station.ventilation.air_health_least"},
    {"air_health", "air_most", "station.ventilation.air_health_most"},
    {"air_health", "limit", "station.ventilation.limit"},
    {"air_health", "share", captured},
    {"air_health", "share_least", captured},
    {"lel_estimated", "lel", "station.ventilation.lel"},
    {"voc", "mass", "station.ventilation.voc"},
    {"voc", "peak", "station.ventilation.voc_peak"},
    {"flash_conflict", "flash_point", flash},
    {"flash_conflict", "other", flash},
    {"flash_point_table", "flash_point", flash},
    {"flash_point", "flash_point", flash},
    {"vapour_zone", "temperature", heat},
    {"vapour_zone", "flash_point", flash},
    {"classified_zone", "flash_point", flash},
    {"waste_ignitable", "flash_point", flash},
    {"exposure_limit", "limit", "@FIELD station.ventilation.limit @ink.NAME.solvent"},
    {"lel_monitoring", "share", "@assume.lel_share_monitored @assume.lel_share"},
    {"lel_monitoring", "monitored", "@assume.lel_share_monitored"},
    {"static", "speed", "@line.speed"},
    {"static_possible", "speed", "@line.speed"},
    {"in_running_nip", "speed", "@line.speed"},
    {"carriage_pinch", "speed", ".carriage_speed"},
    {"carriage_pinch", "width", ".machine_width"},
    {"head_strike", "gap", ".gap_least .throw_least @line.throw_distance"},
    {"hot_dryer", "heat", "station.drying.electrical @dryer.NAME.electrical"},
    {"hot_ink", "temperature", heat},
    {"compressed_air", "supplies", "safety.supplies .supplies"},
    {"lockout", "electrical",
     "station.heat station.drying.electrical station.uv.running station.uv.electrical"},
    {"waste_uv", "litres_per_year", waste},
    {"waste_aqueous", "litres_per_year", waste},
    {"waste_solvent", "litres_per_year", waste},
    {"waste_oil", "litres_per_year", waste},
    {"ink_storage", "litres", "safety.store"},
    {"ink_storage", "bund", "safety.bund"},
    {"ink_storage_flammable", "litres", "safety.store"},
    {"ink_storage_flammable", "bund", "safety.bund"},
};

constexpr Place checks[]{
    {"compatibility", "", heat},
    {"viscosity", "", ".viscosity"},
    {"drop_watching", "", ".drop"},
    {"frequency", "", ".per_nozzle"},
    {"dot_diameter", "", ".diagonal .dot"},
    {"solid_cover", "", ".cover"},
    {"film", "", "@colour.NAME.film @assume.film_white @assume.film_varnish"},
    {"dead_nozzles", "", "@head.NAME.nozzles"},
    {"registration", "", "@image.registration placement.colour.limit"},
    {"stitch", "", ".joint.nozzle.limit .joint.motion.limit"},
    {"strokes", "", ".joint.nozzle.limit .joint.motion.limit"},
    {"tilt", "", ".joint.nozzle.limit .dot.nozzle.limit"},
    {"row_delays", "", ".dot.motion.limit"},
    {"wetting", "", "check.wetting"},
    {"cure_at_speed", "", "@ink.NAME.cure_dose"},
    {"uv_leakage", "", "check.leakage"},
    {"vapour_at_workplace", "", "station.ventilation.limit"},
    {"capture", "", captured},
    {"solvent_dry", "", "@line.speed"},
    {"absorption", "", "@line.speed"},
    {"web_temperature", "", "@substrate.temperature_limit"},
    {"barcode_module", "", ".module_across .module_along"},
    {"throw_trial", "", ".gap_most .throw_most"},
    {"ink_consumption", "", "check.ink"},
};

std::span<const Place> table_of(std::string_view kind) {
  if (kind == "condition") return conditions;
  if (kind == "warning") return warnings;
  return kind == "safety" ? std::span<const Place>(notes) : std::span<const Place>(checks);
}

}  // namespace

std::string_view places_of(std::string_view kind, std::string_view code,
                           std::string_view argument) {
  const std::span<const Place> table = table_of(kind);
  const auto found = std::find_if(table.begin(), table.end(), [&](const Place& place) {
    return place.code == code && place.argument == argument;
  });
  return found == table.end() ? std::string_view() : found->at;
}

}  // namespace output
