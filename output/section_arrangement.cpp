/// The heads: which, how many, how they stand, drawn to scale.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

#include "calc/scan.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

std::string family_key(calc::Family family) {
  switch (family) {
    case calc::Family::straight:
      return "family.straight";
    case calc::Family::staggered:
      return "family.staggered";
    case calc::Family::joined:
      return "family.joined";
    case calc::Family::tilted:
      return "family.tilted";
    case calc::Family::scanning:
      return "family.scanning";
  }
  return {};
}

constexpr std::size_t groups_per_table = 3;

/// A row of the table of arrangements: what it is called, and each group's value and trace steps.
struct Property {
  std::string name;
  std::string (*value)(const Context&, const calc::Group&);
  std::string_view step;        ///< last part of the trace step's id, or empty
  std::string_view taken = {};  ///< of the one that takes the figure where none works it out
  std::string_view field = {};  ///< of the head's row in the catalogue that has it
};

std::string channels(const Context& c, const calc::Group& group) {
  std::vector<std::string> names;
  for (const std::string& channel : group.channels) names.push_back(escaped(channel));
  return joined(c, names);
}

template <int calc::Group::*member>
std::string count_of(const Context&, const calc::Group& group) {
  return std::to_string(group.*member);
}
/// The same, empty for the 1 that needs no row.
template <int calc::Group::*member>
std::string multiple_of(const Context&, const calc::Group& group) {
  return group.*member > 1 ? std::to_string(group.*member) : std::string();
}
template <calc::Length calc::Group::*member>
std::string length_of(const Context& c, const calc::Group& group) {
  return length_text(c, group.*member, 4);
}
/// The same where heads stand side by side.
template <calc::Length calc::Group::*member>
std::string length_between(const Context& c, const calc::Group& group) {
  return group.heads_across > 1 ? length_text(c, group.*member, 4) : std::string();
}
std::string family(const Context& c, const calc::Group& group) {
  return c.words(family_key(group.family));
}
std::string mode_name(const Context&, const calc::Group& group) { return escaped(group.mode); }
std::string head_name(const Context&, const calc::Group& group) {
  return "<b>" + escaped(group.head) + "</b>";
}
std::string nozzle_pitch(const Context& c, const calc::Group& group) {
  return c.measure(in_um(group.pitch), "um", 4);
}
std::string idle(const Context&, const calc::Group& group) {
  return with_unit(group.idle_nozzle_share * 100, "%", 2);
}
/// Nozzles of a colour that print on a carriage, where some rest.
std::string printing(const Context&, const calc::Group& group) {
  if (!group.scan || group.idle_nozzle_share <= 0) return {};
  return std::to_string(calc::printing_nozzles(group.scan->advance, group.resolution_along,
                                               group.scan->quality_passes));
}
std::string temperature(const Context& c, const calc::Group& group) {
  if (!group.jetting_temperature) return {};
  return c.measure(group.jetting_temperature->in_celsius(), "degC", 3);
}
std::string viscosity(const Context&, const calc::Group& group) {
  return group.viscosity ? with_unit(in_mpas(*group.viscosity), "mPa.s", 3) : std::string();
}

/// Angle and lost part of the swath of tilted heads: empty where they stand straight.
std::string tilt(const Context& c, const calc::Group& group) {
  if (group.family != calc::Family::tilted) return {};
  return c.measure(group.tilt * 180 / std::numbers::pi, "deg", 4);
}
std::string tilt_tolerance(const Context& c, const calc::Group& group) {
  if (group.family != calc::Family::tilted) return {};
  return "±" + c.measure(group.tilt_tolerance * 180 / std::numbers::pi, "deg", 2);
}
std::string plate_pitch(const Context& c, const calc::Group& group) {
  if (group.family != calc::Family::tilted) return {};
  return c.measure(in_um(1.0 / group.native), "um", 4);
}

/// Of rows of heads round a body: empty where there are none.
std::string stations(const Context&, const calc::Group& group) {
  return group.round ? std::to_string(group.round->stations) : std::string();
}
std::string rows_round(const Context&, const calc::Group& group) {
  return group.round ? std::to_string(group.round->per_station) : std::string();
}
std::string round_fit(const Context&, const calc::Group& group) {
  return group.round ? std::to_string(group.round->fit) : std::string();
}
std::string round_angle(const Context& c, const calc::Group& group) {
  if (!group.round) return {};
  return c.measure(group.round->pitch_angle * 180 / std::numbers::pi, "deg", 3);
}
std::string round_reach(const Context& c, const calc::Group& group) {
  return group.round ? length_text(c, group.round->reach, 4) : std::string();
}
std::string round_step(const Context& c, const calc::Group& group) {
  return group.round ? length_text(c, group.round->step, 4) : std::string();
}
std::string station_length(const Context& c, const calc::Group& group) {
  return group.round ? length_text(c, group.round->station_length, 4) : std::string();
}

const std::vector<Property>& properties() {
  using G = calc::Group;
  static const std::vector<Property> list{
      {"head", head_name, ""},
      {"mode", mode_name, ""},
      {"channels", channels, ""},
      {"family", family, ""},
      {"heads_across", count_of<&G::heads_across>, "heads_across", "heads_total"},
      {"interleave", count_of<&G::interleave>, "interleave", "across"},
      {"stack", count_of<&G::stack>, "stack", "heads_total"},
      {"film_heads", multiple_of<&G::film_heads>, "", "banks"},
      {"positions", count_of<&G::positions>, "positions"},
      {"rows_staggered", multiple_of<&G::rows_staggered>, "rows", "head_rows"},
      {"heads_total", count_of<&G::heads_total>, "heads_total"},
      {"tilt", tilt, "tilt"},
      {"tilt_tolerance", tilt_tolerance, "tilt_tolerance"},
      {"nozzles", count_of<&G::nozzles>, "", "", "nozzles"},
      {"printing", printing, "printing"},
      {"plate_pitch", plate_pitch, "plate_pitch"},
      {"nozzle_pitch", nozzle_pitch, "nozzle_pitch"},
      {"swath", length_of<&G::swath>, "swath"},
      {"head_pitch", length_between<&G::head_pitch>, "head_pitch"},
      {"overlap", length_between<&G::overlap>, "overlap", "", "overlap"},
      {"round_stations", stations, "round_stations"},
      {"round_rows", rows_round, "round_rows"},
      {"round_fit", round_fit, "round_fit"},
      {"round_angle", round_angle, "round_angle"},
      {"round_reach", round_reach, "round_reach"},
      {"round_step", round_step, "round_step"},
      {"round_length", station_length, "round_length"},
      {"footprint", length_of<&G::footprint>, "footprint"},
      {"joints", count_of<&G::joints>, "joints"},
      {"idle", idle, "idle"},
      {"temperature", temperature, "temperature"},
      {"viscosity", viscosity, "viscosity"},
  };
  return list;
}

/// Which groups a table has: from `first`, `count` of them.
struct Range {
  std::size_t first = 0, count = 0;
};

/// Whether a cell is empty or a zero, which says that its row does not apply.
bool says_nothing(const std::string& cell) {
  return cell.empty() || cell == "0" || cell.starts_with("0\xC2\xA0");
}

/// A figure that no step works out, as a link to the step that takes it, or to the head's row.
std::string led(const Context& c, const Property& property, const calc::Group& group,
                const std::string& g, const std::string& text) {
  if (!property.taken.empty()) return c.to_step(g + "." + std::string(property.taken), text);
  if (property.field.empty()) return text;
  const std::string head = "head." + group.head + ".", field(property.field);
  const std::string of_mode = head + "mode." + group.mode + "." + field;
  return c.linked(c.input(of_mode) != nullptr ? of_mode : head + field, text);
}

/// What a row is called for groups that stand so.
std::string called(const calc::Group& group, const std::string& name) {
  if (name == "footprint" && group.scan) return name + "_scan";
  // The share of tilted heads and of a carriage is counted nozzle by nozzle.
  const bool overlaps =
      group.heads_across > 1 && !group.scan && group.family != calc::Family::tilted;
  return name == "idle" && overlaps ? name + "_overlapped" : name;
}

void add_property(const Context& c, Values& table, const Property& property, const Range& range) {
  std::vector<std::string> cells;
  std::string first;
  std::vector<std::string> keys;
  bool empty = true;
  for (std::size_t i = range.first; i < range.first + range.count; ++i) {
    const calc::Group& group = c.spec.chosen[i];
    cells.push_back(property.value(c, group));
    empty = empty && says_nothing(cells.back());
    if (cells.back().empty()) continue;
    const std::string key = c.step_keys({group_prefix(i) + "." + std::string(property.step)});
    if (key.empty()) cells.back() = led(c, property, group, group_prefix(i), cells.back());
    const bool alike = !keys.empty() && cells.back() == first;  // a like figure has a like step
    if (keys.empty()) first = cells.back();
    if (!key.empty() && !alike) keys.push_back(group_prefix(i) + "." + std::string(property.step));
  }
  if (empty) return;
  Values& row = table.add("ROW");
  row.set("KEY", c.row_keys(keys));
  row.set_markup("NAME", c.words("property." + called(c.spec.chosen[range.first], property.name)));
  for (std::string& cell : cells) row.add("CELL").set_markup("VALUE", std::move(cell));
}

void add_table(const Context& c, Values& values, const Range& range) {
  Values& table = values.add("TABLE");
  std::string columns = "l:*";
  for (std::size_t i = 0; i < range.count; ++i) {
    columns += range.count == 1 ? " r:60" : range.count == 2 ? " r:40" : " r:31";
    table.add("GROUP").set("NAME", c.group_name(c.spec.chosen[range.first + i].name));
  }
  table.set("COLUMNS", columns);
  table.set_markup("CAPTION", c.words("arrangement_caption"));
  for (const Property& property : properties()) add_property(c, table, property, range);
}

/// Whether a film is asked of one of the group's channels.
bool asks_film(const Context& c, const calc::Group& group) {
  return std::any_of(group.channels.begin(), group.channels.end(), [&](const std::string& name) {
    return c.input("colour." + name + ".film") != nullptr;
  });
}

/// What the heads are multiplied by, without factors that are one and not asked for, and what it
/// comes to.
std::string factors(const Context& c, const calc::Group& group) {
  std::string all;
  int several = 0;
  const auto times = [&](const char* what, int count, bool told) {
    if (count == 1 && !told) return;
    ++several;
    all += all.empty() ? "" : " \xC3\x97 ";
    all += c.words(std::string("stacking.factor.") + what, {{"COUNT", std::to_string(count)}});
  };
  if (group.scan) {
    times("colour", group.scan->heads_per_colour, true);
  } else {
    times("across", group.heads_across, true);
  }
  times("interleave", group.interleave, false);
  times("stack", group.stack, false);
  times("positions", group.positions, false);
  times("film", group.film_heads, asks_film(c, group));
  if (several < 2) return all;
  Values values;
  values.set_markup("FACTORS", all);
  values.set("TOTAL", std::to_string(group.heads_total));
  return c.templates.words(c.language(), "stacking.product", values);
}

/// One sentence on why the heads are multiplied as they are.
std::string stacking(const Context& c, const calc::Group& group) {
  const std::string key = group.scan        ? "stacking.scan"
                          : group.stack > 1 ? "stacking.many"
                                            : "stacking.one";
  Values values;
  values.set("GROUP", c.group_name(group.name));
  values.set_markup("FACTORS", factors(c, group));
  values.set("STACK", std::to_string(group.stack));
  return c.templates.words(c.language(), key, values);
}

/// What the tilt is for and what it costs.
std::string tilting(const Context& c, const calc::Group& group, const std::string& g) {
  const double angle = std::abs(group.tilt);
  const calc::Length plate = static_cast<double>(group.nozzles) / group.native;
  const auto of = [&](const char* step, const std::string& text) {
    return c.figure({g + step}, text);
  };
  const auto um = [&](calc::Length pitch) { return c.measure(in_um(pitch), "um", 4); };
  return c.worded("stacking.tilted",
                  {{"GROUP", escaped(c.group_name(group.name))},
                   {"TILT", of(".tilt", c.measure(angle * 180 / std::numbers::pi, "deg", 4))},
                   {"PLATE_PITCH", of(".plate_pitch", um(1.0 / group.native))},
                   {"PITCH", of(".nozzle_pitch", um(group.pitch))},
                   {"PLATE", of(".plate_swath", length_text(c, plate, 4))},
                   {"SWATH", of(".swath", length_text(c, group.swath, 4))},
                   {"SLANT", of(".slant", length_text(c, group.slant, 4))}});
}

/// How the rows of a tilted head follow each other, and what a drive that delays whole lines only
/// leaves of it.
std::string row_delays(const Context& c, const calc::Group& group, const std::string& g) {
  if (group.row_delays.size() < 2) return {};
  std::string all;
  double left = 0;
  for (std::size_t i = 1; i < group.row_delays.size(); ++i) {
    const calc::RowDelay& row = group.row_delays[i];
    const std::string key = row.along < calc::Length() ? "rows.ahead" : "rows.behind";
    const std::string step = g + ".row" + std::to_string(i + 1);
    const std::string way = length_text(c, calc::metres(std::abs(row.along.si())), 4);
    const std::string time = with_unit(std::abs(row.late.si()) * 1e3, "ms", 4);
    all += c.worded(key, {{"ROW", std::to_string(i + 1)},
                          {"WAY", c.figure({step + ".along"}, way)},
                          {"LINES", c.figure({step + ".lines"}, number(std::abs(row.lines), 5))},
                          {"TIME", c.figure({step + ".late"}, time)}}) +
           " ";
    left = std::max(left, std::abs(row.lines - std::round(row.lines)));
  }
  if (!group.one_clock) return all + c.words("rows.own_delays");
  const double um = left * in_um(1.0 / group.resolution_along);
  return all + c.words("rows.one_clock", {{"LEFT", c.measure(um, "um", 3)}});
}

void add_text(Values& values, const std::string& key, std::string text) {
  Values& paragraph = values.add("STACKING");
  paragraph.set("KEY", key);
  paragraph.set_markup("TEXT", std::move(text));
}

bool has_places(const Context& c) {
  return std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(),
                     [](const calc::Group& group) { return !group.places.empty(); });
}

bool stands_round(const Context& c) {
  return std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(), [](const calc::Group& group) {
    return group.round && group.round->per_station > 1;
  });
}

}  // namespace

std::string arrangement_section(const Context& c) {
  if (c.spec.chosen.empty()) return {};
  Values values;
  values.set("KEY", station_keys(c));
  values.set_markup("SUMMARY", station_sentence(c));
  const std::size_t groups = c.spec.chosen.size();
  for (std::size_t first = 0; first < groups; first += groups_per_table) {
    add_table(c, values, {first, std::min(groups_per_table, groups - first)});
  }
  for (const calc::Group& group : c.spec.chosen) {
    const auto g = static_cast<std::size_t>(&group - c.spec.chosen.data());
    const std::string at = group_prefix(g);
    add_text(values, c.step_keys({at + ".heads_total"}), stacking(c, group));
    if (group.family != calc::Family::tilted) continue;
    add_text(values, c.step_keys({at + ".slant"}), tilting(c, group, at));
    std::string rows = row_delays(c, group, at);
    if (!rows.empty()) add_text(values, c.step_keys({at + ".row2.lines"}), std::move(rows));
  }
  if (has_places(c)) {
    Values& plan = values.add("PLAN");
    plan.set_markup("DRAWING", sketch_plan(c));
    if (stands_round(c)) plan.add("ROUND");
    std::string joint = sketch_joint(c);
    if (!joint.empty()) plan.add("DETAIL").set_markup("DRAWING", std::move(joint));
  }
  return c.expand("arrangement", values);
}

}  // namespace output
