#include "output/json_parts.h"

namespace output {
namespace {

template <class Q>
std::optional<double> scaled(const std::optional<Q>& value, double factor) {
  return value ? std::optional<double>(value->si() * factor) : std::nullopt;
}

std::optional<double> celsius(const std::optional<calc::Temperature>& value) {
  return value ? std::optional<double>(value->in_celsius()) : std::nullopt;
}

Json window_json(const calc::WindowVerdict& window) {
  Json object{{"name", window.name}, {"low", json_number(window.low)}};
  json_set(object, "high", window.high);
  object["pass"] = window.pass;
  object["source"] = window.source;
  object["tag"] = window.tag;
  object["note"] = window.note;
  return object;
}

void set_numbers(Json& object, const calc::InkInHead& ink) {
  object["re"] = json_number_or_null(ink.re);
  object["we"] = json_number_or_null(ink.we);
  object["oh"] = json_number_or_null(ink.oh);
  object["z"] = json_number_or_null(ink.z);
  object["ink"] = ink.ink;
  object["head"] = ink.head;
  object["temperature_from"] = ink.temperature_from;
  object["viscosity_from"] = ink.viscosity_from;
  json_set(object, "viscosity_known_from_degc", celsius(ink.known_from));
  json_set(object, "viscosity_known_to_degc", celsius(ink.known_to));
  if (!ink.ink.empty()) object["density_kg_per_m3"] = json_number(ink.density.si());
  object["density_assumed"] = ink.density_assumed;
  object["surface_tension_mn_per_m"] = json_number_or_null(scaled(ink.tension, 1e3));
  object["nozzle_um"] = json_number_or_null(scaled(ink.nozzle, 1e6));
  object["drop_speed_m_per_s"] = json_number_or_null(scaled(ink.speed, 1));
  object["impact_speed_m_per_s"] = json_number_or_null(scaled(ink.impact, 1));
}

void set_shear(Json& object, const calc::InkInHead& ink) {
  object["shear_rate_per_s"] = json_number_or_null(scaled(ink.shear_rate, 1));
  json_set(object, "flow_index", ink.flow_index);
  object["viscosity_at_shear_mpas"] = json_number_or_null(scaled(ink.sheared, 1e3));
  json_set(object, "re_at_shear", ink.re_sheared);
  json_set(object, "oh_at_shear", ink.oh_sheared);
  json_set(object, "z_at_shear", ink.z_sheared);
  object["least_ejection_speed_m_per_s"] = json_number_or_null(scaled(ink.least_speed, 1));
  object["splash_k"] = json_number_or_null(ink.splash);
  object["windows"] = json_list(ink.windows, window_json);
}

void set_particles(Json& object, const calc::InkInHead& ink) {
  object["particle_um"] = json_number_or_null(scaled(ink.particle, 1e6));
  json_set(object, "particle_most_um", scaled(ink.particle_most, 1e6));
  json_set(object, "particle_safe_um", scaled(ink.particle_safe, 1e6));
  object["settling_mm_per_day"] = json_number_or_null(scaled(ink.settling, 86400 * 1e3));
  object["settling_height_um"] = json_number_or_null(scaled(ink.settling_height, 1e6));
  object["settles"] = ink.settles ? Json(*ink.settles) : Json();
  object["settles_from"] = ink.settles_from;
  object["head_recirculates"] = ink.recirculates ? Json(*ink.recirculates) : Json(nullptr);
}

Json ink_json(const calc::InkInHead& ink) {
  Json object{{"channel", ink.channel}};
  object["jetting_temperature_degc"] = json_number_or_null(celsius(ink.temperature));
  object["viscosity_mpas"] = json_number_or_null(scaled(ink.viscosity, 1e3));
  set_numbers(object, ink);
  set_shear(object, ink);
  set_particles(object, ink);
  return object;
}

}  // namespace

Json inks_json(const std::vector<calc::InkInHead>& inks) { return json_list(inks, ink_json); }

}  // namespace output
