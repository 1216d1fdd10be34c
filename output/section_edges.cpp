/// How far each number of the request may move, and what would have to give way when nothing fits.
#include <algorithm>
#include <map>
#include <string_view>

#include "calc/edges.h"
#include "calc/moves.h"
#include "calc/trace.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

constexpr int given_digits = 9, converted_digits = 4;
const std::string dash = "\u2013";

/// As far as the calculation looks.
double far_of(const calc::Edge& edge) {
  return edge.up ? edge.now * calc::farthest_edge : edge.now / calc::farthest_edge;
}

bool converted(const Context& c, const std::string& unit) {
  return c.in_us_units() && has_us_unit(unit);
}

std::string value_text(const Context& c, double value, const std::string& unit) {
  if (unit.empty()) return escaped(number(value, given_digits));
  return escaped(c.measure(value, unit, converted(c, unit) ? converted_digits : given_digits));
}

/// A value that has to be reached from another, its counterpart no less far from it.
std::string reached_text(const Context& c, double value, double from, const std::string& unit) {
  if (!converted(c, unit)) return value_text(c, value, unit);
  const Rounding outwards = value < from ? Rounding::down : Rounding::up;
  return escaped(in_us_unit(value, unit, converted_digits, outwards) + " (" +
                 c.plain(value, unit, given_digits) + ")");
}

/// For a column whose unit stands beside it; the counterpart in United States units behind.
std::string cell_text(const Context& c, double value, const std::string& unit,
                      Rounding way = Rounding::nearest) {
  std::string text = number(value, given_digits);
  if (converted(c, unit)) text += " (" + in_us_unit(value, unit, converted_digits, way) + ")";
  return escaped(text);
}

/// "8 × ONE and 2 × OTHER".
std::string heads_text(const Context& c, const std::vector<calc::HeadsOf>& heads) {
  std::vector<std::string> pieces;
  pieces.reserve(heads.size());
  for (const calc::HeadsOf& h : heads) {
    pieces.push_back(
        c.words("room.heads", {{"COUNT", std::to_string(h.heads_total)}, {"HEAD", h.head}}));
  }
  return joined(c, pieces);
}

/// The edge, or that there is none as far as was looked.
std::string edge_text(const Context& c, const calc::Edge& edge) {
  // The counterpart too is rounded to the side that passes.
  const Rounding inwards = edge.up ? Rounding::down : Rounding::up;
  if (edge.printed) return cell_text(c, *edge.printed, edge.unit, inwards);
  Values values;
  values.set_markup("VALUE", cell_text(c, far_of(edge), edge.unit));
  return c.templates.words(c.language(), edge.up ? "room.over" : "room.under", values);
}

const calc::Edge* find(const std::vector<calc::Edge>& all, const calc::Edge& like,
                       calc::EdgeKind kind) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const calc::Edge& e) {
    return e.quantity == like.quantity && e.up == like.up && e.unit == like.unit && e.kind == kind;
  });
  return found == all.end() ? nullptr : &*found;
}

void add_row(const Context& c, const Links& links, Values& values, const calc::Edge& passes) {
  const calc::Edge* const rec = find(c.spec.edges, passes, calc::EdgeKind::recommended);
  if (rec == nullptr) return;
  Values name;
  name.set_markup("FIELD", c.field(passes.quantity));
  Values& row = values.add("ROW");
  row.set_markup("NAME",
                 c.templates.words(c.language(), passes.up ? "room.up" : "room.down", name));
  row.set("UNIT", pretty_unit(c.unit(passes.unit)));
  row.set_markup("NOW", c.linked(passes.quantity, cell_text(c, passes.now, passes.unit)));
  const std::string edge = calc::edge_step(passes);
  row.set_markup("PASSES", c.quiet({edge}, edge_text(c, passes)));
  row.set_markup("GATE", passes.beyond.empty()
                             ? dash
                             : links.step({gate_step(c, passes.beyond, passes.up)},
                                          c.words("gate." + passes.beyond)));
  row.set_markup("RECOMMENDED", c.quiet({calc::edge_step(*rec), edge}, edge_text(c, *rec)));
  row.set_markup("BEYOND", rec->arrangement.empty() ? dash : heads_text(c, rec->arrangement));
}

/// That nothing helps, with the numbers that were tried.
std::string no_miss_text(const Context& c) {
  std::vector<std::string> fields;
  for (const calc::Movable& m : calc::movables(c.request)) fields.push_back(m.field);
  if (fields.empty()) return c.words("front.no_miss.none");
  Values values;
  values.set_markup("FIELDS", fields_text(c, fields));
  const std::string key = fields.size() == 1 ? "front.no_miss.one" : "front.no_miss";
  return c.templates.words(c.language(), key, values);
}

}  // namespace

std::string edges_section(const Context& c) {
  if (c.spec.edges.empty()) return {};
  Values values;
  const Links links(c);
  for (const calc::Edge& edge : c.spec.edges) {
    if (edge.kind == calc::EdgeKind::passes) add_row(c, links, values, edge);
  }
  const bool scans = c.spec.chosen.front().scan.has_value();
  Values speed;
  speed.set_markup("SPEED", links.step({"station.speed"}, c.words("edges.highest")));
  values.set_markup("INSTALLED", scans ? c.words("edges.installed_scan")
                                       : c.templates.words(c.language(), "edges.installed", speed));
  return c.expand("edges", values);
}

std::string nearest_miss_text(const Context& c) {
  if (!c.spec.nearest_miss) return no_miss_text(c);
  const calc::NearestMiss& miss = *c.spec.nearest_miss;
  const std::string change = with_unit(miss.relative * 100, "%", 2);
  Values values;
  values.set_markup("FIELD", c.field(miss.field));
  values.set_markup("TO", reached_text(c, miss.to, miss.from, miss.unit));
  values.set_markup("FROM", value_text(c, miss.from, miss.unit));
  values.set("CHANGE", miss.relative > 0 ? "+" + change : change);
  values.set_markup("HEADS", heads_text(c, miss.arrangement));
  const bool curve = Context::pattern(miss.field) == "ink.NAME.viscosity";
  return c.templates.words(c.language(), curve ? "front.miss.viscosity" : "front.miss", values);
}

std::string musts_text(const Context& c) {
  if (c.spec.musts_in_the_way.empty()) return {};
  Values values;
  values.set_markup("FIELDS", fields_text(c, c.spec.musts_in_the_way));
  return c.templates.words(c.language(), "front.musts", values);
}

}  // namespace output
