/// Stages after the heads: cure and drying.
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

void add_row(const Context& c, Values& table, const std::string& kind, const std::string& name,
             const std::optional<double>& value, std::string_view unit) {
  if (!value) return;
  Values& row = table.add("ROW");
  row.set("KEY", c.step_keys({kind == "uv" && name == "rows" ? std::string("station.lamp_rows")
                                                             : "station." + kind + "." + name}));
  row.set_markup("NAME", c.words("property.stage_" + name));
  row.set("VALUE", with_unit(*value, unit, 3));
}

std::optional<double> as_number(const std::optional<int>& count) {
  return count ? std::optional<double>(*count) : std::nullopt;
}

void add_stage(const Context& c, Values& values, const calc::Stage& stage, std::size_t index) {
  Values& table = values.add("STAGE");
  table.set_markup("TITLE", c.words("stage." + stage.kind));
  table.set("ANCHOR", "s-stage-" + std::to_string(index + 1));
  table.set_markup("EQUIPMENT", stage.equipment.empty()
                                    ? c.words("stage_equipment_none")
                                    : c.words("stage_equipment", {{"NAME", stage.equipment}}));
  add_row(c, table, stage.kind, "dose", stage.dose_mj_per_cm2, "mJ/cm2");
  add_row(c, table, stage.kind, "dose_given", stage.dose_given_mj_per_cm2, "mJ/cm2");
  add_row(c, table, stage.kind, "dose_stroke", stage.dose_stroke_mj_per_cm2, "mJ/cm2");
  add_row(c, table, stage.kind, "strokes", stage.strokes_over_point, "");
  add_row(c, table, stage.kind, "rows", as_number(stage.rows), "");
  add_row(c, table, stage.kind, "units", as_number(stage.units), "");
  add_row(c, table, stage.kind, "lit", as_number(stage.lamps_lit), "");
  add_row(c, table, stage.kind, "water", stage.water_kg_per_h, "kg/h");
  add_row(c, table, stage.kind, "heat", stage.heat_kw, "kW");
  add_row(c, table, stage.kind, "electrical", stage.electrical_kw, "kW");
  add_row(c, table, stage.kind, "length", stage.length_m, "m");
  add_row(c, table, stage.kind, "installed", stage.installed_length_m, "m");
}

}  // namespace

std::string stages_section(const Context& c) {
  if (!c.spec.station || c.spec.station->stages.empty()) return {};
  Values values;
  const std::vector<calc::Stage>& stages = c.spec.station->stages;
  for (std::size_t i = 0; i < stages.size(); ++i) add_stage(c, values, stages[i], i);
  return c.expand("stages", values);
}

}  // namespace output
