/// The inks in their heads: temperature, viscosity, numbers of the jet, windows, particles.
#include <algorithm>

#include "calc/ink_state.h"
#include "calc/viscosity.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

/// Channels whose inks agree in every figure.
using Alike = std::vector<const calc::InkInHead*>;

std::vector<Alike> alike(const std::vector<calc::InkInHead>& inks) {
  std::vector<Alike> rows;
  for (const calc::InkInHead& ink : inks) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const Alike& row) {
      return calc::same_figures(*row.front(), ink);
    });
    if (found != rows.end()) {
      found->push_back(&ink);
    } else {
      rows.push_back({&ink});
    }
  }
  return rows;
}

std::vector<std::string> names(const Alike& row) {
  std::vector<std::string> list;
  for (const calc::InkInHead* ink : row) list.push_back(ink->channel);
  return list;
}

std::string channels(const Context& c, const Alike& row) { return channels_text(c, names(row)); }

std::string listed(const Context& c, const Alike& row) {
  std::vector<std::string> pieces;
  for (const std::string& name : names(row)) pieces.push_back(escaped(name));
  return joined(c, pieces);
}

/// A number, or the sign that it is not known.
std::string known(const std::optional<double>& value, int digits = 3) {
  return value ? number(*value, digits) : std::string("\xE2\x80\x93");
}

template <class Q>
std::optional<double> scaled(const std::optional<Q>& value, double factor) {
  return value ? std::optional<double>(value->si() * factor) : std::nullopt;
}

/// The jetting temperature, as given or as worked out.
std::string temperature_figure(const Context& c, const calc::InkInHead& ink,
                               const std::string& text) {
  const std::string step = group_of_channel(c, ink.channel) + ".temperature";
  return c.has_step(step) ? c.figure({step}, text)
                          : c.figure_given("ink." + ink.ink + ".jetting_temperature", text);
}

void add_state(const Context& c, Values& table, const Alike& alike) {
  const calc::InkInHead& ink = *alike.front();
  Values& row = table.add("STATE");
  const std::string at = "ink." + ink.channel + ".";
  row.set("KEY", c.row_keys({at + "viscosity", at + "sheared", at + "shear"}));
  row.set_markup("CHANNEL", channels(c, alike));
  const std::string given = "ink." + ink.ink + ".", head = "head." + ink.head + ".";
  row.set_markup(
      "TEMPERATURE",
      temperature_figure(
          c, ink,
          ink.temperature ? c.in_column(ink.temperature->in_celsius(), "degC", 3) : known({})));
  row.set_markup("VISCOSITY", c.figure({at + "viscosity"}, known(scaled(ink.viscosity, 1e3))));
  row.set_markup("SHEARED", c.figure({at + "sheared"}, known(scaled(ink.sheared, 1e3))));
  row.set_markup("DENSITY",
                 c.figure_given(ink.density_assumed ? "assume.ink_density" : given + "density",
                                ink.ink.empty() ? known({}) : number(ink.density.si(), 4)));
  row.set_markup("TENSION",
                 c.figure_given(given + "surface_tension", known(scaled(ink.tension, 1e3))));
  row.set_markup("NOZZLE",
                 c.figure_given(head + "nozzle_diameter", known(scaled(ink.nozzle, 1e6))));
  row.set_markup("SPEED", c.figure_given(head + "drop_speed", known(scaled(ink.speed, 1))));
}

void add_numbers(const Context& c, Values& table, const Alike& alike) {
  const calc::InkInHead& ink = *alike.front();
  Values& row = table.add("NUMBER");
  const std::string at = "ink." + ink.channel + ".";
  row.set("KEY", c.row_keys({at + "z", at + "re", at + "we", at + "splash"}));
  row.set_markup("CHANNEL", channels(c, alike));
  row.set_markup("RE", c.figure({at + "re"}, known(ink.re)));
  row.set_markup("WE", c.figure({at + "we"}, known(ink.we)));
  row.set_markup("OH", c.figure({at + "oh"}, known(ink.oh)));
  row.set_markup("Z", c.figure({at + "z"}, known(ink.z)));
  row.set_markup("ZS", c.figure({at + "z_sheared"}, known(ink.z_sheared)));
  row.set_markup("LEAST", c.figure({at + "least_speed"}, known(scaled(ink.least_speed, 1))));
  row.set_markup("K", c.figure({at + "splash"}, known(ink.splash)));
}

std::string range_text(const Context& c, const calc::WindowVerdict& window) {
  if (!window.high) return c.words("jetting.above", {{"LOW", number(window.low)}});
  return c.words("jetting.between", {{"LOW", number(window.low)}, {"HIGH", number(*window.high)}});
}

/// The inks whose Z a window holds, or does not, as markup; a dash for none.
std::string held(const Context& c, const std::vector<Alike>& rows, std::size_t window, bool pass) {
  std::vector<std::string> held;
  std::size_t all = 0;
  for (const Alike& row : rows) {
    all += row.size();
    const auto& windows = row.front()->windows;
    if (windows.size() <= window || windows[window].pass != pass) continue;
    for (const std::string& name : names(row)) held.push_back(name);
  }
  if (all > 1 && held.size() == all) return c.words("jetting.all");
  return held.empty() ? known({}) : channels_text(c, held);
}

void add_windows(const Context& c, Values& values, const std::vector<Alike>& rows) {
  const auto tried = std::find_if(rows.begin(), rows.end(),
                                  [](const Alike& row) { return !row.front()->windows.empty(); });
  if (tried == rows.end()) return;
  Values& table = values.add("WINDOWS");
  const std::vector<calc::WindowVerdict>& windows = tried->front()->windows;
  for (std::size_t i = 0; i < windows.size(); ++i) {
    Values& row = table.add("ROW");
    row.set("NAME", windows[i].name);
    row.set_markup("RANGE", range_text(c, windows[i]));
    row.set_markup("INSIDE", held(c, rows, i, true));
    row.set_markup("OUTSIDE", held(c, rows, i, false));
    row.set_markup("SOURCE", c.said(windows[i].source + "; " + windows[i].note));
    row.set_markup("TAG", c.words(windows[i].tag == "P" ? "tag.printed" : "tag.memory"));
  }
}

/// The sentence why an ink is as warm as it is; the one that comes nearest may be the coolest that
/// heaters alone can hold.
std::string temperature_sentence(const Context& c, const calc::InkInHead& ink) {
  std::string key = "jetting.temperature." + ink.temperature_from;
  std::string warmest;
  const calc::Input* const room = c.input("line.air_temperature");
  if (ink.temperature_from == "nearest" && ink.temperature && room != nullptr) {
    const bool assumed = room->origin.kind == calc::OriginKind::assumed;
    const double high = assumed ? room->value : std::max(room->value, room->high);
    const auto least = calc::least_jetting_temperature(calc::Temperature::celsius(high));
    warmest = c.measure(high, "degC");
    if (!(least < *ink.temperature)) key += ".room";
  }
  return c.worded(key, {{"HEAD", escaped(ink.head)},
                        {"ROOM", c.figure_given("line.air_temperature", warmest)}});
}

std::string viscosity_sentence(const Context& c, const calc::InkInHead& ink) {
  const auto at = [&](const std::optional<calc::Temperature>& end) {
    const std::string text = end ? c.measure(end->in_celsius(), "degC") : std::string();
    return c.figure_given("ink." + ink.ink + ".viscosity", text);
  };
  return c.worded("jetting.viscosity." + ink.viscosity_from,
                  {{"FROM", at(ink.known_from)}, {"TO", at(ink.known_to)}});
}

std::string shear_sentence(const Context& c, const calc::InkInHead& ink) {
  if (!ink.shear_rate) return {};
  const std::string at = "ink." + ink.channel + ".";
  // In millions a second, for nobody counts noughts.
  const std::string rate =
      c.worded("jetting.shear.rate", {{"VALUE", c.figure({at + "wall_shear", at + "shear"},
                                                         number(ink.shear_rate->si() / 1e6, 2))}});
  if (!ink.sheared) return " " + c.worded("jetting.shear.unknown", {{"RATE", rate}});
  const std::string index = c.figure({at + "flow_index"}, number(*ink.flow_index));
  return " " + c.worded("jetting.shear.known", {{"RATE", rate}, {"INDEX", index}});
}

void add_text(const Context& c, Values& values, const Alike& alike) {
  const calc::InkInHead& ink = *alike.front();
  Values& text = values.add("TEXT");
  const std::string at = "ink." + ink.channel + ".";
  const std::string steps = ink.sheared ? c.step_keys({at + "wall_shear", at + "flow_index"})
                                        : c.step_keys({at + "shear"});
  text.set("KEY", steps + " " + c.place_of("ink." + ink.ink + ".viscosity"));
  text.set_markup("SENTENCE",
                  c.words("jetting.of", {{"INKS", listed(c, alike)}}) + " " +
                      temperature_sentence(c, ink) + " " + viscosity_sentence(c, ink) +
                      shear_sentence(c, ink) +
                      (ink.density_assumed ? " " + c.words("jetting.density_assumed") : ""));
}

std::string settling_word(const calc::InkInHead& ink) {
  if (!ink.settles) return "jetting.settles.unknown";
  if (!*ink.settles) return "jetting.settles.no";
  if (!ink.recirculates) return "jetting.settles.still";
  return *ink.recirculates ? "jetting.settles.moved" : "jetting.settles.without";
}

void add_particles(const Context& c, Values& values, const Alike& alike) {
  const calc::InkInHead& ink = *alike.front();
  Values& row = values.add("PARTICLE");
  const std::string at = "ink." + ink.channel + ".";
  row.set("KEY", c.row_keys({at + "settling", at + "settling_height", at + "particle_most"}));
  row.set_markup("CHANNEL", channels(c, alike));
  row.set_markup("SIZE", c.figure_given("ink." + ink.ink + ".particle_size",
                                        known(scaled(ink.particle, 1e6))));
  row.set_markup("MOST", c.figure({at + "particle_most"}, known(scaled(ink.particle_most, 1e6))));
  row.set_markup("SAFE", c.figure({at + "particle_safe"}, known(scaled(ink.particle_safe, 1e6))));
  row.set_markup("SPEED", c.figure({at + "settling"}, known(scaled(ink.settling, 86400e3))));
  row.set_markup("HEIGHT",
                 c.figure({at + "settling_height"}, known(scaled(ink.settling_height, 1e6))));
  row.set_markup("VERDICT", c.words(settling_word(ink)));
}

}  // namespace

std::string jetting_section(const Context& c) {
  const std::vector<Alike> rows = alike(c.spec.inks);
  if (rows.empty()) return {};
  Values values;
  for (const Alike& row : rows) {
    add_state(c, values, row);
    add_numbers(c, values, row);
    add_text(c, values, row);
    add_particles(c, values, row);
  }
  add_windows(c, values, rows);
  const std::string first = "ink." + rows.front().front()->channel + ".";
  values.set_markup("LEAST", c.to_step(first + "least_speed", c.words("jetting.least")));
  values.set_markup("SPLASH", c.to_step(first + "splash", "K"));
  const bool depth_assumed =
      std::any_of(c.spec.assumptions.begin(), c.spec.assumptions.end(),
                  [](const calc::Assumption& a) { return a.field == "assume.channel_depth"; });
  if (depth_assumed) values.add("DEPTH");
  return c.expand("jetting", values);
}

}  // namespace output
