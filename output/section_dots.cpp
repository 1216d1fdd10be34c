/// Drops, dots and the cover of a solid on the delivered lattice.
#include <algorithm>
#include <cmath>
#include <cstddef>

#include "calc/compare.h"
#include "calc/lattice.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double laydown_to_ml_per_m2 = 1e6;  ///< 1 m of film is 1e6 mL/m2

/// Channels of one group whose dots agree in all that is printed.
struct Alike {
  std::size_t group = 0;
  const calc::ChannelDots* dots = nullptr;
  std::vector<std::string> channels;
};

bool same(const calc::ChannelDots& a, const calc::ChannelDots& b) {
  return a.levels_used == b.levels_used && a.drop == b.drop && a.dot_diameter == b.dot_diameter &&
         a.cover_fraction == b.cover_fraction && a.laydown == b.laydown &&
         a.spread_from == b.spread_from && a.edge_gain == b.edge_gain &&
         a.bar_reduction_dots == b.bar_reduction_dots && a.dead_nozzle_gap == b.dead_nozzle_gap &&
         a.impact_dot == b.impact_dot;
}

std::vector<Alike> alike(const Context& c) {
  std::vector<Alike> rows;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    for (const calc::ChannelDots& dots : c.spec.chosen[i].dots) {
      const auto found = std::find_if(rows.begin(), rows.end(), [&](const Alike& row) {
        return row.group == i && same(*row.dots, dots);
      });
      if (found != rows.end()) {
        found->channels.push_back(dots.channel);
      } else {
        rows.push_back({i, &dots, {dots.channel}});
      }
    }
  }
  return rows;
}

/// Drop, dot and cover of a channel or of one of its tones, with the steps of that prefix.
template <class Dots>
void set_dot(const Context& c, Values& row, const std::string& at, const Dots& dots) {
  row.set_markup("VOLUME", c.figure({at + ".drop"}, number(in_pl(dots.drop), 3)));
  row.set_markup("DROP", c.figure({at + ".drop_diameter"}, number(in_um(dots.drop_diameter), 3)));
  row.set_markup("DOT", c.figure({at + ".dot"}, number(in_um(dots.dot_diameter), 3)));
  row.set_markup("COVER", c.figure({at + ".cover"}, percent_down(dots.cover_fraction)));
}

void add_row(const Context& c, Values& values, const Alike& alike) {
  const calc::ChannelDots& dots = *alike.dots;
  const std::string prefix = group_prefix(alike.group) + "." + dots.channel;
  Values& row = values.add("ROW");
  row.set("KEY", c.row_keys({prefix + ".cover", prefix + ".dot", prefix + ".laydown"}));
  row.set_markup("CHANNEL", channels_text(c, alike.channels));
  row.set_markup("LEVELS", c.figure_given("head." + c.spec.chosen[alike.group].head + ".modes",
                                          std::to_string(dots.levels_used)));
  set_dot(c, row, prefix, dots);
  row.set_markup("LAYDOWN",
                 c.figure({prefix + ".laydown"}, number(dots.laydown * laydown_to_ml_per_m2, 3)));
}

std::string signed_um(const Context& c, calc::Length value) {
  const std::string text = c.measure(in_um(value), "um", 3);
  return value > calc::Length() ? "+" + text : text;
}

/// Whether the pitches of both axes are one as they are printed.
bool is_square(const calc::Group& group) {
  return number(in_um(1.0 / group.resolution_across), 4) ==
         number(in_um(1.0 / group.resolution_along), 4);
}

/// By how much lines grow, and what to take off them in the data: once, or per axis where the
/// lattice is not square.
std::string edges_of_lines(const Context& c, const Alike& alike) {
  const calc::Group& group = c.spec.chosen[alike.group];
  const calc::Length dot = alike.dots->dot_diameter;
  const calc::Length across = 1.0 / group.resolution_across;
  const calc::Length along = 1.0 / group.resolution_along;
  const std::string at = group_prefix(alike.group) + "." + alike.dots->channel;
  Values values;
  const auto set = [&](const char* name, const std::string& step, const std::string& text) {
    values.set_markup(name, c.figure({at + step}, text));
  };
  set("GAIN", ".edge_gain", c.measure(in_um(alike.dots->edge_gain), "um", 3));
  // The axes of the trace are those of nozzles and motion, which a carriage turns.
  const bool scan = group.scan.has_value();
  const std::string n = scan ? "_m" : "_n", m = scan ? "_n" : "_m";
  set("ALONG", ".edge_gain" + n, signed_um(c, calc::edge_gain(across, dot)));
  set("ACROSS", ".edge_gain" + m, signed_um(c, calc::edge_gain(along, dot)));
  set("COUNT", ".bar_reduction_n", std::to_string(alike.dots->bar_reduction_dots));
  set("OFF_ALONG", ".bar_reduction" + n, std::to_string(calc::bar_reduction_dots(across, dot)));
  set("OFF_ACROSS", ".bar_reduction" + m, std::to_string(calc::bar_reduction_dots(along, dot)));
  const bool square = is_square(group);
  const auto text = [&](const std::string& key) {
    const std::string of_axes = c.of_motion(key + ".axes");
    return " " + c.templates.words(c.language(), square ? key : of_axes, values);
  };
  std::string all;
  if (!square || alike.dots->edge_gain > calc::Length()) all += text("dots.edge_gain");
  if (alike.dots->bar_reduction_dots > 0) all += text("dots.bar_reduction");
  return all;
}

bool same_number(double a, double b) { return std::abs(a / b - 1) < 1e-6; }

/// Why the lattice is finer than the resolution needed, where solids are: lines along the motion at
/// which the likely dot just closes, and heads interleaved for it.
std::string finer_for_solids(const Context& c, const Alike& alike) {
  const calc::Group& group = c.spec.chosen[alike.group];
  if (!c.spec.required || alike.dots->cover_fraction < 1) return {};
  const calc::Required& needed = *c.spec.required;
  const bool scan = group.scan.has_value();
  const calc::Resolution lines = scan ? group.resolution_across : group.resolution_along;
  const calc::Resolution asked = scan ? needed.across : needed.along;
  const calc::Length dot = alike.dots->dot_diameter;
  const calc::Length closing =
      calc::closing_dot(1.0 / group.resolution_across + group.wider, 1.0 / group.resolution_along);
  const std::string g = group_prefix(alike.group);
  std::string all;
  if (lines > asked * 1.001 && same_number(closing / dot, 1)) {
    all += " " + c.worded("dots.just",
                          {{"LINES", c.figure({g + ".motion", g + ".across"}, dpi_text(lines))},
                           {"AXIS", c.words(c.of_motion("name.motion"))},
                           {"ASKED", c.figure({scan ? "required.across" : "required.along"},
                                              dpi_text(asked))}});
  }
  const auto least =
      static_cast<int>(calc::ceil_tolerant(needed.across / (group.native / std::cos(group.tilt))));
  const calc::Length takes = calc::closing_dot(1.0 / needed.across, 1.0 / needed.along);
  if (scan || group.interleave <= least || dot >= takes) return all;
  return all + " " +
         c.worded(
             "dots.finer",
             {{"NEEDED", c.figure({"required.across"}, lattice_text(needed.across, needed.along))},
              {"TAKES", c.figure({"required.diagonal"}, c.measure(in_um(takes), "um", 3))},
              {"DOT",
               c.figure({g + "." + alike.dots->channel + ".dot"}, c.measure(in_um(dot), "um", 3))},
              {"INTERLEAVE", c.figure({g + ".across"}, std::to_string(group.interleave))},
              {"LEAST", c.figure({g + ".interleave"}, std::to_string(least))}});
}

std::string sentence(const Context& c, const Alike& alike) {
  const calc::ChannelDots& dots = *alike.dots;
  Values values;
  values.set_markup("CHANNEL", names_text(c, alike.channels));
  values.set("DOT", c.measure(in_um(dots.dot_diameter), "um", 3));
  values.set("COVER", percent_down(dots.cover_fraction) + "\xC2\xA0%");
  values.set("GAP", c.measure(in_um(dots.dead_nozzle_gap), "um", 3));
  const auto text = [&](const std::string& key) {
    return " " + c.templates.words(c.language(), key, values);
  };
  const std::string key = dots.cover_fraction >= 1 ? "dots.closed" : "dots.open";
  std::string all = c.templates.words(c.language(), key, values);
  all += " " + c.words("spread." + dots.spread_from);
  all += finer_for_solids(c, alike);
  all += edges_of_lines(c, alike);
  if (dots.dead_nozzle_gap > calc::Length()) all += text("dots.dead_nozzle");
  return all;
}

/// Tone steps of a channel that uses several drop sizes.
void add_tones(const Context& c, Values& values, const Alike& alike) {
  const calc::ChannelDots& dots = *alike.dots;
  if (dots.levels.size() < 2) return;
  Values* table = nullptr;
  std::size_t step = 0;
  for (const calc::LevelDot& level : dots.levels) {
    if (table == nullptr) {
      table = &values.add("TONES");
      Values names;
      names.set_markup("CHANNEL", names_text(c, alike.channels));
      table->set("CAPTION", c.templates.words(c.language(), "tones.caption", names));
    }
    const std::string at = group_prefix(alike.group) + "." + dots.channel;
    const std::string tone = at + ".tone" + std::to_string(++step);
    const bool solid = level.drop == dots.drop;
    Values& row = table->add("TONE");
    row.set("KEY", solid ? c.row_keys({at + ".cover", at + ".dot"})
                         : c.row_keys({tone + ".cover", tone + ".dot"}));
    row.set("STEP", std::to_string(step));
    set_dot(c, row, solid ? at : tone, level);
  }
}

/// What a line of drops and the impact do where the contact angle tells.
std::string bead_text(const Context& c, const calc::ChannelDots& dots) {
  std::string all;
  if (dots.straight_pitch) {
    const bool straight = dots.bead_width.has_value();
    const calc::Length width = dots.bead_width.value_or(calc::Length());
    all += " " + c.words(c.of_motion(straight ? "dots.straight" : "dots.scalloped"),
                         {{"PITCH", with_unit(in_um(*dots.straight_pitch), "um", 3)},
                          {"WIDTH", with_unit(in_um(width), "um", 3)}});
  }
  if (dots.impact_dot) {
    all += " " + c.words("dots.impact", {{"DOT", with_unit(in_um(*dots.impact_dot), "um", 3)}});
  }
  return all;
}

/// The steps of the figures the sentences tell.
std::string text_keys(const Context& c, const Alike& alike) {
  const calc::ChannelDots& dots = *alike.dots;
  const std::string at = group_prefix(alike.group) + "." + dots.channel;
  const auto told = [&](bool is_told, const char* step) {
    return is_told ? at + step : std::string();
  };
  const bool grows = !is_square(c.spec.chosen[alike.group]) || dots.edge_gain > calc::Length();
  return c.step_keys({at + ".dot", at + ".cover", told(grows, ".edge_gain"), at + ".spread",
                      told(dots.dead_nozzle_gap > calc::Length(), ".dead_nozzle_gap"),
                      told(dots.straight_pitch.has_value(), ".straight_pitch"),
                      told(dots.bead_width.has_value(), ".bead_width"), at + ".impact_dot"});
}

}  // namespace

std::string dots_section(const Context& c) {
  const std::vector<Alike> rows = alike(c);
  if (rows.empty()) return {};
  Values values;
  for (const Alike& row : rows) {
    add_row(c, values, row);
    Values& text = values.add("TEXT");
    text.set("KEY", text_keys(c, row));
    text.set_markup("SENTENCE", sentence(c, row) + bead_text(c, *row.dots));
    add_tones(c, values, row);
  }
  values.set_markup("DRAWING", sketch_dots(c));
  return c.expand("dots", values);
}

}  // namespace output
