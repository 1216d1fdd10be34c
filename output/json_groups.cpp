#include <cmath>
#include <numbers>
#include <stdexcept>

#include "output/json_parts.h"
#include "output/json_words.h"
#include "output/plain_number.h"

namespace output {
namespace {

/// A number as JSON; whole ones without a fraction.
Json whole_or_fraction(double value) {
  constexpr double exact_integers = 9007199254740992.0;
  if (std::trunc(value) == value && std::abs(value) < exact_integers) {
    return static_cast<std::int64_t>(value);
  }
  return value;
}

Json scan_json(const calc::Scan& scan) {
  return {{"heads_per_colour", scan.heads_per_colour},
          {"interlace_steps", scan.interlace_steps},
          {"quality_passes", scan.quality_passes},
          {"advance_nozzles", scan.advance_nozzles},
          {"strokes", json_number(scan.strokes)},
          {"advance_mm", json_number(in_mm(scan.advance))},
          {"carriage_speed_m_per_s", json_number(scan.carriage_speed.si())},
          {"machine_width_mm", json_number(in_mm(scan.machine_width))},
          {"array_length_mm", json_number(in_mm(scan.array_length))},
          {"stroke_time_s", json_number(scan.stroke_time.si())},
          {"throughput_m2_per_h", json_number(scan.throughput.si() * 3600)}};
}

Json round_json(const calc::Round& round) {
  return {{"stations", round.stations},
          {"rows_per_station", round.per_station},
          {"rows_that_fit", round.fit},
          {"pitch_angle_deg", json_number(round.pitch_angle * 180 / std::numbers::pi)},
          {"body_radius_mm", json_number(in_mm(round.radius))},
          {"reach_mm", json_number(in_mm(round.reach))},
          {"surface_step_mm", json_number(in_mm(round.step))},
          {"station_length_mm", json_number(in_mm(round.station_length))}};
}

void json_set_um(Json& object, const char* key, const std::optional<calc::Length>& value) {
  if (value) object[key] = json_number(in_um(*value));
}

Json level_dot_json(const calc::LevelDot& level) {
  return {{"drop_volume_pl", json_number(in_pl(level.drop))},
          {"drop_diameter_um", json_number(in_um(level.drop_diameter))},
          {"dot_diameter_um", json_number(in_um(level.dot_diameter))},
          {"cover_fraction", json_number(level.cover_fraction)}};
}

/// Square metres times metres: a litre a square metre is 1e-3 m; 1 mL/m2 is a film of 1 um.
void set_dots(Json& object, const calc::ChannelDots& dots) {
  object["levels_used"] = dots.levels_used;
  object["drop_volume_pl"] = json_number(in_pl(dots.drop));
  object["drop_diameter_um"] = json_number(in_um(dots.drop_diameter));
  object["dot_diameter_um"] = json_number(in_um(dots.dot_diameter));
  object["cover_fraction"] = json_number(dots.cover_fraction);
  object["laydown_ml_per_m2"] = json_number(dots.laydown * 1e6);
  object["wet_film_um"] = json_number(dots.laydown * 1e6);
  object["edge_gain_um"] = json_number(in_um(dots.edge_gain));
  object["bar_reduction_dots"] = dots.bar_reduction_dots;
  object["dead_nozzle_gap_um"] = json_number(in_um(dots.dead_nozzle_gap));
  object["hiding_dot_um"] = json_number(in_um(dots.hiding_dot));
  object["finer_than_dot"] = dots.finer_than_dot;
  if (dots.scalloped) object["scalloped"] = *dots.scalloped;
  json_set_um(object, "straight_pitch_um", dots.straight_pitch);
  json_set_um(object, "bead_width_um", dots.bead_width);
  json_set_um(object, "impact_dot_um", dots.impact_dot);
}

Json dots_json(const calc::ChannelDots& dots) {
  Json object{{"channel", dots.channel}};
  set_dots(object, dots);
  object["spread_from"] = dots.spread_from;
  if (!dots.levels.empty()) object["tones"] = json_list(dots.levels, level_dot_json);
  return object;
}

Json place_json(const calc::HeadPlace& place) {
  return {{"x_mm", json_number(in_mm(place.x))},
          {"y_mm", json_number(in_mm(place.y))},
          {"rotation_deg", json_number(place.rotation_deg)},
          {"channel", place.channel},
          {"position", place.position},
          {"row", place.row}};
}

/// Of a head round a body: which station, and where about the body's axis.
Json place_round_json(const calc::HeadPlace& place) {
  Json object = place_json(place);
  object["station"] = place.station;
  object["angle_deg"] = json_number(place.angle_deg);
  object["z_mm"] = json_number(in_mm(place.z));
  return object;
}

Json barcode_json(const calc::BarcodeFit& fit) {
  return {{"symbol", fit.symbol},
          {"axis", fit.across ? "across" : "along"},
          {"dots", fit.dots},
          {"module_asked_mm", json_number(in_mm(fit.module_asked))},
          {"module_printed_mm", json_number(in_mm(fit.module_printed))},
          {"module_least_mm", json_number(in_mm(fit.module_least))},
          {"module_most_mm", json_number(in_mm(fit.module_most))},
          {"pass", fit.pass}};
}

Json row_delay_json(const calc::RowDelay& row) {
  return {{"along_mm", json_number(in_mm(row.along))},
          {"lines", json_number(row.lines)},
          {"late_ms", json_number(row.late.si() * 1e3)}};
}

void set_tilt(Json& object, const calc::Group& group) {
  object["tilt_deg"] = json_number(group.tilt * 180 / std::numbers::pi);
  object["tilt_tolerance_deg"] = json_number(group.tilt_tolerance * 180 / std::numbers::pi);
  object["slant_mm"] = json_number(in_mm(group.slant));
  object["one_clock"] = group.one_clock;
  object["gap_over_pitch_um"] = json_number(in_um(group.wider));
  if (!group.row_delays.empty()) object["rows"] = json_list(group.row_delays, row_delay_json);
}

void set_arrangement(Json& object, const calc::Group& group) {
  object["name"] = group.name;
  object["channels"] = group.channels;
  object["head"] = group.head;
  object["mode"] = group.mode;
  object["family"] = json_word(group.family);
  object["heads_across"] = group.heads_across;
  object["interleave"] = group.interleave;
  object["stack"] = group.stack;
  object["positions"] = group.positions;
  object["rows_staggered"] = group.rows_staggered;
  if (group.family == calc::Family::tilted) set_tilt(object, group);
  object["film_heads"] = group.film_heads;
  if (group.scan) object["scan"] = scan_json(*group.scan);
  if (group.round) object["round"] = round_json(*group.round);
  object["heads_total"] = group.heads_total;
  object["joints"] = group.joints;
  object["idle_nozzle_share"] = json_number(group.idle_nozzle_share);
}

void set_rates(Json& object, const calc::Group& group) {
  object["resolution_across_dpi"] = json_number(in_dpi(group.resolution_across));
  object["resolution_along_dpi"] = json_number(in_dpi(group.resolution_along));
  object["frequency_needed_hz"] = json_number(group.frequency_needed.si());
  object["frequency_per_nozzle_hz"] = json_number(group.frequency_per_nozzle.si());
  object["frequency_allowed_hz"] = json_number(group.frequency_allowed.si());
  object["frequency_use"] = json_number(group.frequency_use);
  object["speed_limit_m_per_s"] = json_number(group.speed_limit.si());
}

void set_geometry(Json& object, const calc::Group& group) {
  object["native_npi"] = json_number(in_dpi(group.native));
  object["nozzles"] = group.nozzles;
  object["nozzle_pitch_um"] = json_number(in_um(group.pitch));
  object["swath_mm"] = json_number(in_mm(group.swath));
  object["overlap_mm"] = json_number(in_mm(group.overlap));
  object["head_pitch_mm"] = json_number(in_mm(group.head_pitch));
  object["footprint_mm"] = json_number(in_mm(group.footprint));
  object["pinning_places"] = group.pinned_places;
  object["bits"] = group.bits;
}

void set_group(Json& object, const calc::Group& group) {
  set_arrangement(object, group);
  set_rates(object, group);
  if (!group.dots.empty()) set_dots(object, group.dots.front());
  object["heads"] = json_list(group.places, group.round ? place_round_json : place_json);
  object["dots"] = json_list(group.dots, dots_json);
  set_geometry(object, group);
  if (!group.barcodes.empty()) object["bar_codes"] = json_list(group.barcodes, barcode_json);
}

bool is_process(const calc::Specification& specification, const std::string& channel) {
  const std::string key = "colour." + channel + ".kind";
  for (const calc::Input& input : specification.inputs) {
    if (input.key == key) return input.text == "process";
  }
  return true;
}

}  // namespace

Json json_number(double value) { return whole_or_fraction(round_12(value)); }

Json json_exact(double value) {
  if (!std::isfinite(value)) throw std::logic_error("a figure of the trace is not finite");
  return whole_or_fraction(value == 0 ? 0 : value);
}

Json json_number_or_null(const std::optional<double>& value) {
  return value ? json_number(*value) : Json();
}
Json json_money(calc::Money amount) { return json_number(amount.major()); }
Json json_money_or_null(const std::optional<calc::Money>& amount) {
  return amount ? json_money(*amount) : Json();
}

void json_set(Json& object, const char* key, const std::optional<double>& value) {
  if (value) object[key] = json_number(*value);
}
void json_set(Json& object, const char* key, const std::optional<int>& value) {
  if (value) object[key] = *value;
}
void json_set(Json& object, const char* key, const std::string& text) {
  if (!text.empty()) object[key] = text;
}
void json_set_dpi(Json& object, const char* key, const std::optional<calc::Resolution>& value) {
  if (value) object[key] = json_number(in_dpi(*value));
}

Json group_json(const calc::Group& group) {
  Json object = Json::object();
  set_group(object, group);
  return object;
}

const calc::Group& leading_group(const calc::Specification& specification) {
  for (const calc::Group& group : specification.chosen) {
    for (const std::string& channel : group.channels) {
      if (is_process(specification, channel)) return group;
    }
  }
  return specification.chosen.front();
}

Json chosen_json(const calc::Specification& specification) {
  Json object{{"groups", json_list(specification.chosen, group_json)}, {"heads_total", 0}};
  set_group(object, leading_group(specification));
  object["heads_total"] = specification.heads_total;  // of all groups, not of the leading one
  return object;
}

}  // namespace output
