/// The stages after the heads in the JSON.
#include "output/json_parts.h"

namespace output {
namespace {

bool has_lamps(const calc::Stage& stage) { return stage.kind == "uv" || stage.kind == "pinning"; }

Json stray_json(const calc::StrayLight& light) {
  Json object{{"distance_m", json_number(light.distance_m)},
              {"irradiance_w_per_m2", json_number(light.irradiance_w_per_m2)},
              {"time_s", json_number_or_null(light.time_s)}};
  json_set(object, "governs", light.governs);
  return object;
}

Json guard_json(const calc::Guard& guard) {
  return {{"distance_m", json_number(guard.distance_m)},
          {"irradiance_w_per_m2", json_number(guard.irradiance_w_per_m2)},
          {"density", json_number(guard.density)},
          {"density_worst", json_number(guard.density_worst)}};
}

Json solvent_json(const calc::SolventUse& use) {
  Json object{{"ink", use.ink}, {"solvent", use.solvent}, {"share", json_number(use.share)}};
  object["molar_mass_g_per_mol"] = json_number_or_null(use.molar_g);
  object["lel_percent"] = json_number_or_null(use.lel_percent);
  object["lel_estimated"] = use.lel_estimated;
  object["limit_ppm"] = json_number_or_null(use.limit_ppm);
  object["short_term_ppm"] = json_number_or_null(use.short_ppm);
  object["skin"] = use.skin;
  object["flash_point_degc"] = json_number_or_null(use.flash_degc);
  json_set(object, "other_flash_point_degc", use.other_flash_degc);
  json_set(object, "source", use.source);
  return object;
}

/// An air flow that is not known is null; one that nothing asks for is absent.
void set_airing(Json& object, const calc::Airing& airing) {
  if (airing.captures) object["air_lel_m3_per_h"] = json_number_or_null(airing.lel_m3_per_h);
  object["air_health_m3_per_h"] = json_number_or_null(airing.health_m3_per_h);
  object["air_health_least_m3_per_h"] = json_number_or_null(airing.health_least_m3_per_h);
  object["air_health_most_m3_per_h"] = json_number_or_null(airing.health_most_m3_per_h);
  object["captured_kg_per_h"] = json_number(airing.captured_kg_per_h);
  object["room_kg_per_h"] = json_number(airing.room_kg_per_h);
  object["lel_percent"] = json_number_or_null(airing.lel_percent);
  object["lel_estimated"] = airing.lel_estimated;
  object["limit_ppm"] = json_number_or_null(airing.limit_ppm);
  if (airing.captures) {
    object["lel_share_percent"] = json_number(airing.lel_share_percent);
    object["exhaust_degc"] = json_number(airing.exhaust_degc);
    object["air_lel_hot_m3_per_h"] = json_number_or_null(airing.lel_hot_m3_per_h);
  }
  object["voc_kg_per_year"] = json_number(airing.voc_kg_per_year);
  object["voc_peak_kg_per_year"] = json_number(airing.voc_peak_kg_per_year);
  object["solvents"] = json_list(airing.solvents, solvent_json);
}

void set_light(Json& object, const calc::Stage& stage) {
  json_set(object, "web_degc", stage.web_degc);
  json_set(object, "cooling_m3_per_h", stage.cooling_m3_per_h);
  json_set(object, "ozone_m3_per_h", stage.ozone_m3_per_h);
  json_set(object, "safe_distance_m", stage.safe_distance_m);
  json_set(object, "guard_density", stage.guard_density);
  json_set(object, "safe_distance_worst_m", stage.safe_distance_worst_m);
  json_set(object, "guard_density_worst", stage.guard_density_worst);
  if (!stage.stray.empty()) object["stray"] = json_list(stage.stray, stray_json);
  if (!stage.guards.empty()) object["guards"] = json_list(stage.guards, guard_json);
}

}  // namespace

Json stage_json(const calc::Stage& stage) {
  Json object{{"kind", stage.kind}};
  json_set(object, "dose_mj_per_cm2", stage.dose_mj_per_cm2);
  json_set(object, "rows", stage.rows);
  json_set(object, has_lamps(stage) ? "lamps" : "units", stage.units);
  json_set(object, "water_kg_per_h", stage.water_kg_per_h);
  json_set(object, "heat_kw", stage.heat_kw);
  json_set(object, "electrical_kw", stage.electrical_kw);
  json_set(object, "exhaust_m3_per_h", stage.exhaust_m3_per_h);
  json_set(object, "length_m", stage.length_m);
  json_set(object, "vapour_kg_per_h", stage.vapour_kg_per_h);
  json_set(object, "speed_limit_m_per_s", stage.speed_limit_m_per_s);
  if (stage.airing) set_airing(object, *stage.airing);
  json_set(object, "equipment", stage.equipment);
  json_set(object, "dose_given_mj_per_cm2", stage.dose_given_mj_per_cm2);
  json_set(object, "dose_stroke_mj_per_cm2", stage.dose_stroke_mj_per_cm2);
  json_set(object, "strokes_over_point", stage.strokes_over_point);
  json_set(object, "strokes_after", stage.strokes_after);
  json_set(object, "time_after_s", stage.time_after_s);
  json_set(object, "lamps_lit", stage.lamps_lit);
  json_set(object, "running_kw", stage.running_kw);
  json_set(object, "installed_length_m", stage.installed_length_m);
  json_set(object, "installed_kw", stage.installed_kw);
  if (stage.heat_at_least) object["heat_at_least"] = true;
  json_set(object, "dew_point_degc", stage.dew_point_degc);
  json_set(object, "dew_point_most_degc", stage.dew_point_most_degc);
  json_set(object, "air_degc", stage.air_degc);
  json_set(object, "condenses_degc", stage.condenses_degc);
  set_light(object, stage);
  return object;
}

}  // namespace output
