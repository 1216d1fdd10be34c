/// Jetting frequency against the rating, and the speed it allows; strokes of a scanning carriage.
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

std::string khz(calc::Frequency frequency) { return number(in_khz(frequency), 4); }

std::string sentence(const Context& c, const calc::Group& group, const std::string& g) {
  const std::string key = group.scan        ? "frequency.scan"
                          : group.stack > 1 ? "frequency.stacked"
                                            : "frequency.single";
  const calc::Speed carriage = group.scan ? group.scan->carriage_speed : calc::Speed();
  // The carriage moves across the line: there the dots of a column follow one another across.
  const calc::Resolution motion = group.scan ? group.resolution_across : group.resolution_along;
  const auto of = [&](const char* step, const std::string& text) {
    return c.figure({g + step}, text);
  };
  const auto rate = [](calc::Frequency f) { return with_unit(in_khz(f), "kHz", 4); };
  return c.worded(
      key, {{"GROUP", escaped(c.group_name(group.name))},
            {"ALONG", of(group.scan ? ".across" : ".motion", with_unit(in_dpi(motion), "dpi", 4))},
            {"COLUMN", of(".column", rate(group.frequency_needed))},
            {"NOZZLE", of(".per_nozzle", rate(group.frequency_per_nozzle))},
            {"STACK", of(".stack", std::to_string(group.stack))},
            {"ALLOWED", of(".usable", rate(group.frequency_allowed))},
            {"CARRIAGE", of(".carriage_speed", c.measure(carriage.si(), "m/s", 3))},
            {"LIMIT", of(".speed_limit", speed_limit_text(c, group.speed_limit))}});
}

void add_frequency(const Context& c, Values& values, const calc::Group& group,
                   const std::string& g) {
  Values& row = values.add("ROW");
  row.set("KEY", c.row_keys({g + ".speed_limit", g + ".per_nozzle", g + ".column", g + ".usable"}));
  row.set("GROUP", c.group_name(group.name));
  row.set_markup("COLUMN", c.figure({g + ".column"}, khz(group.frequency_needed)));
  row.set_markup("NOZZLE", c.figure({g + ".per_nozzle"}, khz(group.frequency_per_nozzle)));
  row.set_markup("ALLOWED", c.figure({g + ".usable"}, khz(group.frequency_allowed)));
  row.set_markup("USE", c.figure({g + ".use"}, number(group.frequency_use * 100, 3)));
  row.set_markup("LIMIT", c.figure({g + ".speed_limit"}, speed_limit_number(c, group.speed_limit)));
  Values& text = values.add("TEXT");
  text.set("KEY", c.step_keys({g + ".column", g + ".per_nozzle", g + ".usable", g + ".speed_limit",
                               g + ".carriage_speed"}));
  text.set_markup("SENTENCE", sentence(c, group, g));
}

void add_row(const Context& c, Values& table, const std::string& name, const std::string& value,
             const std::string& keys) {
  Values& row = table.add("ROW");
  row.set("KEY", keys);
  row.set_markup("NAME", c.words("property." + name));
  row.set_markup("VALUE", value);
}

void add_scan(const Context& c, Values& values, const calc::Group& group, const std::string& g) {
  const calc::Scan& scan = *group.scan;
  Values& table = values.add("SCAN");
  table.set("TITLE", c.words("scan_title", {{"GROUP", c.group_name(group.name)}}));
  table.set("ANCHOR", "s-scan-" + g);
  add_row(c, table, "heads_per_colour",
          c.to_step(g + ".heads_total", std::to_string(scan.heads_per_colour)), "");
  const std::string steps = std::to_string(scan.interlace_steps);
  const std::string least = c.step_keys({g + ".interleave"});
  add_row(c, table, "interlace_steps", least.empty() ? c.to_step(g + ".along", steps) : steps,
          least);
  add_row(c, table, "quality_passes",
          c.linked("assume.quality_passes", std::to_string(scan.quality_passes)), "");
  const std::string shared = c.step_keys({g + ".carriage_advance"});
  add_row(c, table, "advance", length_text(c, scan.advance, 4),
          shared.empty() ? c.step_keys({g + ".advance"}) : shared);
  add_row(c, table, "strokes", count_text(scan.strokes), c.step_keys({g + ".strokes"}));
  add_row(c, table, "stroke_time", with_unit(scan.stroke_time.si(), "s", 3),
          c.step_keys({g + ".stroke_time"}));
  add_row(c, table, "carriage_speed", c.measure(scan.carriage_speed.si(), "m/s", 3),
          c.step_keys({g + ".carriage_speed"}));
  add_row(c, table, "machine_width",
          escaped(c.bound(in_mm(scan.machine_width), "mm", Rounding::up, 4)),
          c.step_keys({g + ".machine_width"}));
  if (c.spec.carriage_pace) {
    add_row(c, table, "pace", c.measure(c.spec.carriage_pace->speed.si(), "m/s", 3),
            c.step_keys({"g1.pace"}));
  }
  add_row(c, table, "throughput", c.measure(scan.throughput.si() * 3600, "m2/h", 3),
          c.step_keys({g + ".throughput"}));
}

}  // namespace

std::string frequency_section(const Context& c) {
  if (c.spec.chosen.empty()) return {};
  Values values;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    add_frequency(c, values, c.spec.chosen[i], group_prefix(i));
    if (c.spec.chosen[i].scan) add_scan(c, values, c.spec.chosen[i], group_prefix(i));
  }
  const std::string plot = plot_speed(c);
  if (!plot.empty()) values.add("PLOT").set_markup("FIGURE", plot);
  return c.expand("frequency", values);
}

}  // namespace output
