/// Stages after the heads: pinning, cure, drying, ventilation.

#include <algorithm>
#include <set>
#include <string>

#include "calc/trace.h"
#include "calc/vary.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

/// One figure of a stage's table. `must`: where it is not known, the table says so.
struct Figure {
  std::string_view name;
  std::optional<double> value;
  std::string_view unit;
  bool must = false;
  Rounding way = Rounding::nearest;
  std::string_view bound = {};  ///< words "stage_at_least" or "stage_at_most" put round it
};

std::optional<double> as_number(const std::optional<int>& count) {
  return count ? std::optional<double>(*count) : std::nullopt;
}

/// The trace step of a figure.
std::string step_of(const std::string& kind, std::string_view name) {
  if (kind == "uv" && name == "rows") return "station.lamp_rows";
  if (name == "installed_kw") return "station." + kind + ".installed_power";
  if (kind == "uv" && name == "dose_given") return "station.lamp_dose";
  if (name == "connected") return "station." + kind + ".electrical";
  return "station." + kind + "." + std::string(name);
}

std::string value_text(const Context& c, const Figure& figure) {
  const std::string text = c.bound(*figure.value, figure.unit, figure.way);
  if (figure.bound.empty()) return escaped(text);
  return c.words(std::string(figure.bound), {{"VALUE", text}});
}

void add_row(const Context& c, Values& table, const std::string& kind, const Figure& figure) {
  if (!figure.value && !figure.must) return;
  Values& row = table.add("ROW");
  row.set("KEY", c.step_keys({step_of(kind, figure.name)}));
  row.set_markup("NAME", c.words(c.of_motion("property.stage_" + std::string(figure.name))));
  row.set_markup("VALUE", figure.value ? value_text(c, figure) : c.words("stage_unknown"));
}

/// The highest speed of the line [m/min], not rounded up.
std::optional<double> speed_of(const calc::Stage& s) {
  constexpr double minute = 60;
  if (!s.speed_limit_m_per_s) return std::nullopt;
  return calc::rounded_down(*s.speed_limit_m_per_s * minute, 3);
}

std::vector<Figure> figures_of(const calc::Stage& s) {
  const bool lamps = s.kind == "uv" || s.kind == "pinning";
  const std::string_view least = s.heat_at_least ? "stage_at_least" : "";
  const std::string_view most = s.heat_at_least ? "stage_at_most" : "";
  constexpr Rounding up = Rounding::up, down = Rounding::down;
  return {{"dose", s.dose_mj_per_cm2, "mJ/cm2", lamps, up},
          {"dose_given", s.dose_given_mj_per_cm2, "mJ/cm2", false, down},
          {"dose_stroke", s.dose_stroke_mj_per_cm2, "mJ/cm2"},
          {"strokes", s.strokes_over_point, ""},
          {"after", s.time_after_s, "s", false, up},
          {"speed", speed_of(s), "m/min", false, Rounding::nearest, most},
          {"rows", s.lamps_lit ? std::nullopt : as_number(s.rows), ""},
          {"units", as_number(s.units), "", false, Rounding::nearest, least},
          {"lit", as_number(s.lamps_lit), ""},
          {"water", s.water_kg_per_h, "kg/h"},
          {"vapour", s.vapour_kg_per_h, "kg/h", false, up},
          {"heat", s.heat_kw, "kW", false, Rounding::nearest, least},
          {s.running_kw ? "connected" : "electrical", s.electrical_kw, "kW", false,
           Rounding::nearest, least},
          {"running", s.running_kw, "kW"},
          {"installed_kw", s.installed_kw, "kW"},
          {"cooling", s.cooling_m3_per_h, "m3/h", false, up},
          {"air", s.air_degc, "degC"},
          {"exhaust", s.exhaust_m3_per_h, "m3/h", false, up},
          {"dew_point", s.dew_point_degc, "degC", false, up},
          {"web", s.web_degc, "degC", false, up},
          {"ozone", s.ozone_m3_per_h, "m3/h", false, up},
          {"safe", s.safe_distance_m, "m", false, up},
          {"safe_worst", s.safe_distance_worst_m, "m", false, up},
          {"length", s.length_m, "m", false, up},
          {"installed", s.installed_length_m, "m"}};
}

std::vector<Figure> figures_of(const calc::Airing& a) {
  constexpr Rounding up = Rounding::up, down = Rounding::down;
  std::vector<Figure> list;
  if (a.captures) {
    list.push_back({"captured", a.captured_kg_per_h, "kg/h", false, up});
    list.push_back({"room", a.room_kg_per_h, "kg/h", false, up});
  }
  list.push_back({"lel", a.lel_percent, "%", true, down});
  list.push_back({"limit", a.limit_ppm, "ppm", true, down});
  if (a.captures) list.push_back({"air_lel", a.lel_m3_per_h, "m3/h", true, up});
  list.push_back({"air_lel_hot", a.lel_hot_m3_per_h, "m3/h", false, up});
  list.push_back({"air_health", a.health_m3_per_h, "m3/h", true, up});
  list.push_back({"air_health_least", a.health_least_m3_per_h, "m3/h", false, up});
  list.push_back({"air_health_most", a.health_most_m3_per_h, "m3/h", false, up});
  list.push_back({"voc", a.voc_kg_per_year, "kg"});
  list.push_back({"voc_peak", a.voc_peak_kg_per_year, "kg", false, up});
  return list;
}

std::string duration(const Context& c, const calc::StrayLight& light) {
  if (!light.time_s) return c.words("stray_unknown");
  if (light.governs == "day") return c.words("stray_day");
  constexpr double minute = 60, hour = 3600;
  // A time that is allowed is never told longer than it is.
  const auto told = [&](double unit, std::string_view name) {
    return escaped(with_unit(rounded(*light.time_s / unit, 2, Rounding::down), name, 2));
  };
  if (*light.time_s >= hour) return told(hour, "h");
  if (*light.time_s >= minute) return told(minute, "min");
  return told(1, "s");
}

void add_stray(const Context& c, Values& values, const calc::Stage& stage) {
  if (stage.stray.empty()) return;
  Values& table = values.add("STRAY");
  bool first = true;
  for (const calc::StrayLight& light : stage.stray) {
    Values& row = table.add("ROW");
    const std::string name = first ? "stray" : calc::stray_name(light.distance_m);
    const std::string at = "station." + stage.kind + "." + name;
    row.set("KEY", c.row_keys({at, at + "_time"}));
    row.set("DISTANCE", c.in_column(light.distance_m, "m", 3));
    row.set("IRRADIANCE", number(rounded(light.irradiance_w_per_m2, 3, Rounding::up), 3));
    row.set_markup("TIME", c.quiet({at + "_time"}, duration(c, light)));
    row.set_markup("GOVERNS",
                   light.governs.empty() ? std::string() : c.words("stray." + light.governs));
    first = false;
  }
}

/// Optical density of a guard by its distance; the steps of the last are those of its stage.
void add_guards(const Context& c, Values& values, const calc::Stage& stage) {
  if (stage.guards.empty()) return;
  Values& table = values.add("GUARDS");
  const std::string at = "station." + stage.kind + ".";
  constexpr double mm = 1000;
  for (const calc::Guard& guard : stage.guards) {
    const bool last = &guard == &stage.guards.back();
    const std::string near = at + "guard_" + number(guard.distance_m * mm, 3) + "mm";
    Values& row = table.add("ROW");
    const std::string assumed = last ? at + "density" : near;
    const std::string worst = assumed + "_worst";
    row.set("KEY", c.row_keys({assumed, worst}));
    row.set("DISTANCE", c.in_column(guard.distance_m, "m", 3));
    row.set_markup("DENSITY",
                   c.figure({assumed}, number(rounded(guard.density, 3, Rounding::up), 3)));
    row.set_markup("WORST",
                   c.figure({worst}, number(rounded(guard.density_worst, 3, Rounding::up), 3)));
  }
}

std::string figure(const std::optional<double>& value, int digits = 3) {
  return value ? number(*value, digits) : std::string("\xE2\x80\x93");
}

std::string explosive_limit(const Context& c, const calc::SolventUse& use) {
  if (!use.lel_percent || !use.lel_estimated) return escaped(figure(use.lel_percent));
  return c.words("solvent_estimated", {{"VALUE", number(*use.lel_percent, 2)}});
}

std::string flash_points(const calc::SolventUse& use) {
  if (!use.other_flash_degc) return figure(use.flash_degc, 2);
  return figure(use.flash_degc, 2) + "; " + figure(use.other_flash_degc, 2);
}

/// A sentence, its arguments ready markup, and the steps of its figures.
void add_text(const Context& c, Values& values, const std::string& key, Arguments arguments = {},
              const std::string& steps = {}) {
  Values words;
  for (const auto& [name, text] : arguments) words.set_markup(name, text);
  Values& row = values.add("TEXT");
  row.set("KEY", steps);
  row.set_markup("SENTENCE", c.templates.words(c.language(), "stage_text." + key, words));
}

/// Where the figures of each solvent come from, once.
void add_sources(const Context& c, Values& values, const calc::Airing& airing) {
  std::set<std::string> seen;
  for (const calc::SolventUse& use : airing.solvents) {
    if (!seen.insert(use.solvent).second) continue;
    const char* key = use.source.empty() ? "solvent_unknown"
                      : use.seen         ? "solvent_source"
                                         : "solvent_unseen";
    Values arguments;
    arguments.set("NAME", use.solvent);
    arguments.set_markup("SOURCE", c.said(use.source));
    const std::string sentence = std::string("stage_text.") + key;
    Values& row = values.add("TEXT");
    row.set("KEY", "");
    row.set_markup("SENTENCE", c.templates.words(c.language(), sentence, arguments));
  }
}

void add_solvents(const Context& c, Values& values, const calc::Airing& airing) {
  if (airing.solvents.empty()) return;
  Values& table = values.add("SOLVENTS");
  for (const calc::SolventUse& use : airing.solvents) {
    Values& row = table.add("ROW");
    row.set("INK", use.ink);
    const std::string field = "ink." + use.ink + ".solvent";
    row.set_markup("NAME", c.linked(field, escaped(use.solvent)));
    row.set_markup("SHARE", c.linked(field, number(use.share * 100, 3)));
    row.set_markup("MOLAR", c.figure_given(field, figure(use.molar_g, 4)));
    row.set_markup("LEL", explosive_limit(c, use));
    row.set_markup("LIMIT", c.figure_given(field, figure(use.limit_ppm)));
    row.set_markup("SHORT", c.figure_given(field, figure(use.short_ppm)));
    row.set_markup("SKIN", use.skin ? c.words("solvent_skin") : escaped("\xE2\x80\x93"));
    row.set_markup("FLASH", c.figure_given(field, flash_points(use)));
  }
}

/// Behind which groups the pinning of a line stands.
void add_pinned(const Context& c, Values& values) {
  for (const calc::Group& group : c.spec.chosen) {
    if (group.pinned_places < 1) continue;
    add_text(c, values, group.positions > 1 ? "pinned_each" : "pinned",
             {{"GROUP", escaped(c.group_name(group.name))},
              {"COUNT", std::to_string(group.pinned_places)}},
             c.step_keys({"station.pinning.sets"}));
  }
}

/// How the lamps of a carriage stand, and what must follow its last stroke that prints.
void add_carriage(const Context& c, Values& values, const calc::Stage& stage) {
  if (!stage.strokes_after) return;
  add_text(c, values, "carriage_window");
  const auto strokes = static_cast<std::size_t>(*stage.strokes_after);
  if (strokes == 0) return;
  const std::string sentence =
      c.counted("stage_text.carriage_after", strokes,
                {{"COUNT", std::to_string(strokes)},
                 {"TIME", c.bound(*stage.time_after_s, "s", Rounding::up)}});
  Values& row = values.add("TEXT");
  row.set("KEY", c.step_keys({"station." + stage.kind + ".after"}));
  row.set_markup("SENTENCE", sentence);
}

/// What the heat of a dryer is for, and what it leaves out.
void add_dryer_texts(const Context& c, Values& values) {
  add_text(c, values, "dryer_mean");
  if (cosolvents_unknown(c)) add_text(c, values, "dryer_cosolvents");
  if (c.request.substrate.area_mass) return add_text(c, values, "dryer_with_web");
  const auto& form = c.request.product.form;
  const bool bodies = form && form->value == calc::Form::cylinder;
  add_text(c, values, bodies ? "dryer_without_bodies" : "dryer_without_web");
}

std::string percent(double share) { return with_unit(share * 100, "%", 3); }

/// On which shares and factors the air rests, and which end the fans are chosen by.
void add_air_texts(const Context& c, Values& values, const calc::Airing& airing) {
  add_text(c, values, airing.captures ? "separate" : "open");
  const calc::Input* const mixing = c.input("assume.mixing");
  const calc::Input* const captured = c.input("assume.captured_share");
  const auto end_of_captured = [&](double share) {
    return c.linked("assume.captured_share", percent(share));
  };
  if (airing.health_most_m3_per_h && mixing != nullptr) {
    const bool enclosed = airing.captures && captured != nullptr;
    add_text(c, values, enclosed ? "air_ends" : "air_ends_open",
             {{"LOW", c.linked("assume.mixing", number(mixing->low, 2))},
              {"HIGH", c.linked("assume.mixing", number(mixing->high, 2))},
              {"LEAST", enclosed ? end_of_captured(captured->low) : ""},
              {"MOST", enclosed ? end_of_captured(captured->high) : ""}});
  }
  if (airing.captures && airing.lel_hot) add_text(c, values, "hot");
  if (!airing.solvents.empty()) add_text(c, values, "short_term");
  add_text(c, values, "zones");
  add_sources(c, values, airing);
}

void add_texts(const Context& c, Values& values, const calc::Stage& stage) {
  if (stage.kind == "pinning" && stage.rows) add_pinned(c, values);
  if (stage.kind == "pinning" && stage.rows) add_text(c, values, "dimmed");
  add_carriage(c, values, stage);
  if (!stage.stray.empty()) {
    const calc::Input* share = c.input("assume.stray_share");
    const auto scattered = [&](double value) {
      return c.linked("assume.stray_share", with_unit(value * 100, "%", 2));
    };
    add_text(c, values, "stray", {{"SHARE", scattered(share == nullptr ? 0 : share->value)}});
    if (stage.guard_density_worst && share != nullptr) {
      add_text(c, values, "stray_range",
               {{"LOW", scattered(share->low)},
                {"HIGH", scattered(share->high)},
                {"FACTOR", number(rounded(share->high / share->value, 2, Rounding::up), 2)},
                {"DISTANCE", c.bound(*stage.safe_distance_worst_m, "m", Rounding::up)}},
               c.step_keys({"station." + stage.kind + ".safe_worst"}));
    }
    if (!stage.guards.empty()) add_text(c, values, "guards");
    if (!stage.stray.front().time_s) add_text(c, values, "spectrum_unknown");
    if (!stage.web_degc) add_text(c, values, "web_unknown");
  }
  if (stage.web_degc) add_text(c, values, "web_through");
  if (stage.web_degc && stage.lamps_lit) add_text(c, values, "web_stroke");
  if (stage.cooling_m3_per_h) add_text(c, values, "cooling_not_contained");
  if (stage.condenses_degc) {
    add_text(c, values, "condenses",
             {{"DEW", c.bound(*stage.dew_point_degc, "degC", Rounding::up)},
              {"MOST", c.bound(stage.dew_point_most_degc.value_or(*stage.dew_point_degc), "degC",
                               Rounding::up)},
              {"ROOM", c.linked("line.air_temperature", c.measure(*stage.condenses_degc, "degC"))}},
             c.step_keys({"station.drying.dew_point", "station.drying.dew_point_most"}));
  }
  if (stage.kind == "drying") add_dryer_texts(c, values);
  if (!stage.airing) return;
  add_air_texts(c, values, *stage.airing);
}

std::string equipment(const Context& c, const calc::Stage& stage) {
  if (stage.airing) return {};
  return stage.equipment.empty() ? c.words("stage_equipment_none")
                                 : c.words("stage_equipment", {{"NAME", stage.equipment}});
}

void add_stage(const Context& c, Values& values, const calc::Stage& stage, std::size_t index) {
  Values& table = values.add("STAGE");
  table.set_markup("TITLE", c.words("stage." + stage.kind));
  table.set("ANCHOR", "s-stage-" + std::to_string(index + 1));
  const std::string by = equipment(c, stage);
  if (!by.empty()) table.add("BY").set_markup("EQUIPMENT", by);
  for (const Figure& figure : figures_of(stage)) add_row(c, table, stage.kind, figure);
  if (stage.airing) {
    for (const Figure& figure : figures_of(*stage.airing)) add_row(c, table, stage.kind, figure);
    add_solvents(c, table, *stage.airing);
  }
  add_stray(c, table, stage);
  add_guards(c, table, stage);
  add_texts(c, table, stage);
}

}  // namespace

std::string stage_power_text(const Context& c, const calc::Stage& stage) {
  return value_text(c, {"electrical", stage.electrical_kw, "kW", true, Rounding::nearest,
                        stage.heat_at_least ? "stage_at_least" : ""});
}

bool cosolvents_unknown(const Context& c) {
  return std::any_of(c.spec.safety.begin(), c.spec.safety.end(),
                     [](const calc::Notice& note) { return note.code == "aqueous_rest"; });
}

std::string stages_section(const Context& c) {
  if (!c.spec.station || c.spec.station->stages.empty()) return {};
  Values values;
  const std::vector<calc::Stage>& stages = c.spec.station->stages;
  for (std::size_t i = 0; i < stages.size(); ++i) add_stage(c, values, stages[i], i);
  return c.expand("stages", values);
}

}  // namespace output
