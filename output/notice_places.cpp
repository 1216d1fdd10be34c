#include "output/notice_places.h"

#include <algorithm>
#include <array>
#include <span>

namespace output {
namespace {

struct Place {
  std::string_view code, argument, at;
};

constexpr std::string_view demands =
    "required.feature required.text required.bar_code required.viewing required.across "
    "required.along";
constexpr std::string_view limits_moved =
    "moved.FIELD.limit moved.FIELD.limit.2 moved.FIELD.condition_limit "
    "moved.FIELD.condition_limit.2 .joint.motion.limit .joint.nozzle.limit .dot.motion.limit "
    ".dot.nozzle.limit "
    "placement.colour.limit placement.image.limit .diagonal required.across required.along";
constexpr std::string_view gap = ".throw_most .throw_least @line.throw_distance";
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

constexpr std::array conditions{
    Place{"soft_demand", "value", ".across .along .motion"},
    Place{"soft_demand", "limit", demands},
    Place{"high_use", "value", ".use"},
    Place{"high_use", "limit", "@assume.high_use"},
    Place{"measure_dot", "value", ".dot"},
    Place{"measure_dot", "limit", ".diagonal @image.smallest_feature"},
    Place{"pretreatment", "value", "@FIELD"},
    Place{"pretreatment", "limit", "check.wetting"},
    Place{"placement", "value", ".SUBJECT.AXIS"},
    Place{"placement", "limit",
          ".SUBJECT.AXIS.limit .SUBJECT.limit @image.registration @image.placement"},
    Place{"throw_anew", "limit", ".joint.AXIS.limit"},
    Place{"ink_limit", "value", "station.process_peak"},
    Place{"ink_limit", "limit", "@FIELD @assume.process_limit"},
    Place{"several_stations", "value", "station.round_stations .round_stations"},
    Place{"turn_travel", "value", ".round_turn"},
    Place{"turn_travel", "limit", "@product.pitch @image.length"},
    Place{"seam", "value", "seam"},
    Place{"seam", "limit", ".pitch_m .pitch_n"},
    Place{"capture_unproved", "share", captured},
    Place{"capture_unproved", "least", captured},
    Place{"assumption_edge", "reached", "moved.FIELD.reached moved.FIELD.reached.2"},
    Place{"assumption_edge", "holds", "moved.FIELD.holds moved.FIELD.holds.2"},
    Place{"assumption_edge", "limit", limits_moved},
    Place{"assumption_edge", "holds_limit", limits_moved},
    Place{"assumption_condition", "condition_value",
          "moved.FIELD.condition_value moved.FIELD.condition_value.2"},
    Place{"assumption_condition", "condition_limit", limits_moved},
};

constexpr std::array warnings{
    Place{"explicit_below_derived", "explicit", "@image.resolution"},
    Place{"explicit_below_derived", "derived", demands},
    Place{"finer_than_eye", "required", "required.across required.along"},
    Place{"finer_than_eye", "eye", "required.viewing"},
    Place{"overspray", "printed", "station.width .width"},
    Place{"overspray", "substrate", "@substrate.width"},
    Place{"impact_speed", "drop", ".small.drop"},
    Place{"impact_speed", "speed", ".small.impact_most"},
    Place{"impact_speed", "throw", ".throw_most"},
    Place{"carriage_pace", "speed", ".pace"},
    Place{"web_air_drag", "speed", ".carriage_speed @line.speed"},
    Place{"web_air_drag", "throw", ".throw_nominal"},
    Place{"web_air_drag", "drop", ".small.drop"},
    Place{"throughput_below_speed", "speed", "@line.speed"},
    Place{"throughput_below_speed", "needed", "@line.throughput"},
    Place{"speed_below_throughput", "speed", "@line.speed"},
    Place{"speed_below_throughput", "needed", "@line.throughput"},
    Place{"symbol_too_wide", "symbol", "@image.barcode_module"},
    Place{"symbol_too_wide", "room", "@image.width @image.length"},
    Place{"jetting_windows", "z", ".z_sheared .z"},
    Place{"slow_ejection", "speed", ".small.start .large.start"},
    Place{"slow_ejection", "least", ".least_speed"},
    Place{"splash", "k", ".splash"},
    Place{"settles_by_figures", "height", ".settling_height"},
    Place{"settles_by_figures", "depth", "@assume.channel_depth"},
    Place{"pump_unknown", "flow", "@FIELD"},
};

constexpr std::array notes{
    Place{"uv_led", "lamps", lamps},
    Place{"uv_arc", "lamps", lamps},
    Place{"ozone", "lamps", lamps},
    Place{"ozone", "air", ".ozone"},
    Place{"mercury_waste", "lamps", lamps},
    Place{"photobiological", "irradiance", "@FIELD"},
    Place{"photobiological", "wavelength", "@FIELD"},
    Place{"photobiological", "dose_limit", "station.uv.limit station.pinning.limit"},
    Place{"photobiological", "time", ".time"},
    Place{"stray_light", "time", ".stray_time"},
    Place{"stray_light", "safe", ".safe"},
    Place{"stray_light", "density", ".density"},
    Place{"stray_light", "share", stray},
    Place{"stray_light", "worst_share", stray},
    Place{"stray_light", "safe_worst", ".safe_worst"},
    Place{"stray_light", "density_worst", ".density_worst"},
    Place{"stray_light", "density_near", ".guard_100mm_worst .guard_200mm_worst .density_worst"},
    Place{"hot_web", "temperature", ".web"},
    Place{"uv_mist", "peak", peaks},
    Place{"uv_mist", "ml_per_hour", used},
    Place{"aqueous_ink", "peak", peaks},
    Place{"aqueous_ink", "ml_per_hour", used},
    Place{"oil_mist", "peak", peaks},
    Place{"oil_mist", "ml_per_hour", used},
    Place{"aqueous_rest", "share", "@ink.NAME.water_share @assume.water_share"},
    Place{"solvent_vapour", "vapour", "station.ventilation.vapour"},
    Place{"air_explosion", "vapour", "station.ventilation.vapour"},
    Place{"air_explosion", "air", "station.ventilation.air_lel_hot station.ventilation.air_lel"},
    Place{"air_explosion", "share", "@assume.lel_share_monitored @assume.lel_share"},
    Place{"air_explosion", "lel", "station.ventilation.lel"},
    Place{"air_health", "vapour", "safety.vapour_left station.ventilation.vapour"},
    Place{"air_health", "air", "station.ventilation.air_health"},
    Place{"air_health", "air_least", "station.ventilation.air_health_least"},
    Place{"air_health", "air_most", "station.ventilation.air_health_most"},
    Place{"air_health", "limit", "station.ventilation.limit"},
    Place{"air_health", "share", captured},
    Place{"air_health", "share_least", captured},
    Place{"lel_estimated", "lel", "station.ventilation.lel"},
    Place{"voc", "mass", "station.ventilation.voc"},
    Place{"voc", "peak", "station.ventilation.voc_peak"},
    Place{"flash_conflict", "flash_point", flash},
    Place{"flash_conflict", "other", flash},
    Place{"flash_point_table", "flash_point", flash},
    Place{"flash_point", "flash_point", flash},
    Place{"vapour_zone", "temperature", heat},
    Place{"vapour_zone", "flash_point", flash},
    Place{"classified_zone", "flash_point", flash},
    Place{"waste_ignitable", "flash_point", flash},
    Place{"exposure_limit", "limit", "@FIELD station.ventilation.limit @ink.NAME.solvent"},
    Place{"lel_monitoring", "share", "@assume.lel_share_monitored @assume.lel_share"},
    Place{"lel_monitoring", "monitored", "@assume.lel_share_monitored"},
    Place{"static", "speed", "@line.speed"},
    Place{"static_possible", "speed", "@line.speed"},
    Place{"in_running_nip", "speed", "@line.speed"},
    Place{"carriage_pinch", "speed", ".carriage_speed"},
    Place{"carriage_pinch", "width", ".machine_width"},
    Place{"head_strike", "gap", ".gap_least .throw_least @line.throw_distance"},
    Place{"hot_dryer", "heat", "station.drying.electrical @dryer.NAME.electrical"},
    Place{"hot_ink", "temperature", heat},
    Place{"compressed_air", "supplies", "safety.supplies .supplies"},
    Place{"lockout", "electrical",
          "station.heat station.drying.electrical station.uv.running station.uv.electrical"},
    Place{"waste_uv", "litres_per_year", waste},
    Place{"waste_aqueous", "litres_per_year", waste},
    Place{"waste_solvent", "litres_per_year", waste},
    Place{"waste_oil", "litres_per_year", waste},
    Place{"ink_storage", "litres", "safety.store"},
    Place{"ink_storage", "bund", "safety.bund"},
    Place{"ink_storage_flammable", "litres", "safety.store"},
    Place{"ink_storage_flammable", "bund", "safety.bund"},
};

constexpr std::array checks{
    Place{"compatibility", "", heat},
    Place{"viscosity", "", ".viscosity"},
    Place{"drop_watching", "", ".drop"},
    Place{"frequency", "", ".per_nozzle"},
    Place{"dot_diameter", "", ".diagonal .dot"},
    Place{"solid_cover", "", ".cover"},
    Place{"film", "", "@colour.NAME.film @assume.film_white @assume.film_varnish"},
    Place{"dead_nozzles", "", "@head.NAME.nozzles"},
    Place{"registration", "", "@image.registration placement.colour.limit"},
    Place{"stitch", "", ".joint.nozzle.limit .joint.motion.limit"},
    Place{"strokes", "", ".joint.nozzle.limit .joint.motion.limit"},
    Place{"tilt", "", ".joint.nozzle.limit .dot.nozzle.limit"},
    Place{"row_delays", "", ".dot.motion.limit"},
    Place{"wetting", "", "check.wetting"},
    Place{"cure_at_speed", "", "@ink.NAME.cure_dose"},
    Place{"uv_leakage", "", "check.leakage"},
    Place{"vapour_at_workplace", "", "station.ventilation.limit"},
    Place{"capture", "", captured},
    Place{"solvent_dry", "", "@line.speed"},
    Place{"absorption", "", "@line.speed"},
    Place{"web_temperature", "", "@substrate.temperature_limit"},
    Place{"barcode_module", "", ".module_across .module_along"},
    Place{"throw_trial", "", ".gap_most .throw_most"},
    Place{"ink_consumption", "", "check.ink"},
};

/// Of a head that is not chosen, whose own figures stand in its row of the catalogue: what the
/// request asks of it, and what the station chosen has.
constexpr std::array reasons{
    Place{"viscosity", "value", "@ink.NAME.viscosity"},
    Place{"tension", "value", "@ink.NAME.surface_tension"},
    Place{"throw.least", "value", gap},
    Place{"throw.most", "value", gap},
    Place{"slope", "value", "@product.diameter"},
    Place{"slope", "limit", "@assume.slope_limit"},
    Place{"driver_sources", "limit", "@service.driver_sources"},
    Place{"levels", "limit", "@image.levels"},
    Place{"resolution", "limit", "required.across required.along @image.resolution"},
    Place{"feature", "limit", "required.feature @image.smallest_feature"},
    Place{"film", "limit", "@colour.NAME.film @assume.film_white @assume.film_varnish"},
    Place{"film.limit", "limit", "@assume.process_limit"},
    Place{"frequency", "value", "@line.speed @line.throughput"},
    Place{"frequency.throughput", "limit", "@line.throughput @line.speed"},
    Place{"placement", "limit", limits_moved},
    Place{"heads", "limit", "@limits.heads"},
    Place{"space", "limit", "@limits.space"},
    Place{"budget", "limit", "@limits.budget"},
    Place{"lead_time", "limit", "@limits.lead_time"},
    Place{"lost.ownership", "limit", "station.ownership"},
    Place{"lost.joints", "limit", "station.joints .joints"},
    Place{"lost.heads", "limit", "station.heads .heads_total"},
};

std::span<const Place> table_of(std::string_view kind) {
  if (kind == "condition") return conditions;
  if (kind == "reason") return reasons;
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
