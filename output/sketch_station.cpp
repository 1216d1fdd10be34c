/// The station along the direction of travel, schematic.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>
#include <vector>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr double paper_height = 34;
constexpr double box_top = 10, box_height = 12;
constexpr double web_y = 24;
constexpr double box_gap = 3;
constexpr double carriage_room = 9;  ///< behind the carriage, for its arrow
constexpr double rim = 1.2;          ///< of the carriage around its heads
constexpr double lamp_depth = 2;     ///< of the lamps of a carriage, on either side of its heads
constexpr double lamp_gap = 0.4;
constexpr double least_label = 2.4;   ///< height that a group's name on the carriage takes
constexpr double label_share = 0.45;  ///< of a carriage's width, left to the names of its groups
constexpr const char* stage_fill = "F2F2F2";
constexpr std::size_t most_bars = 12;    ///< rows drawn one by one; more are only counted
constexpr double character_width = 1.5;  ///< of a bold title, at most [mm]
constexpr double small_character = 1.1;  ///< of the names of inks, about [mm]
constexpr double ink_step = 2.5;         ///< from line to line of them [mm]

/// The rows of a group on a carriage, one behind the other along its stroke.
struct Stripe {
  std::string name, note;
  std::vector<std::string> rows;  ///< channels of each
};

/// One box of the strip: a name and, for heads, the rows of them.
struct Block {
  std::string title, note;
  std::string_view fill;             ///< of a box without heads
  std::vector<std::string> rows{};   ///< channels of each row of heads, in the order of travel
  std::vector<std::string> order{};  ///< the same, each once
  std::vector<Stripe> stripes{};     ///< of a carriage
  bool between_lamps = false;        ///< of a carriage
};

std::vector<std::string> rows_of(const calc::Group& group) {
  std::map<double, std::string> lines;
  for (const calc::HeadPlace& place : group.places) {
    lines.emplace(std::round(in_mm(place.y) * 1000), place.channel);
  }
  std::vector<std::string> rows;
  rows.reserve(lines.size());
  for (auto& [y, channel] : lines) rows.push_back(std::move(channel));
  if (rows.empty()) rows.emplace_back();
  return rows;
}

std::vector<std::string> each_once(const std::vector<std::string>& names) {
  std::vector<std::string> met;
  for (const std::string& name : names) {
    if (std::find(met.begin(), met.end(), name) == met.end()) met.push_back(name);
  }
  return met;
}

/// "8 heads in 4 rows", the rows only where they are not the heads.
std::string heads_note(const Context& c, const calc::Group& group, std::size_t rows) {
  const auto heads = static_cast<std::size_t>(group.heads_total);
  std::string note = c.counted("strip.heads", heads, {{"COUNT", std::to_string(heads)}});
  if (rows == heads) return note;
  return note + " " + c.counted("strip.in_rows", rows, {{"COUNT", std::to_string(rows)}});
}

std::string rows_note(const Context& c, std::optional<int> rows) {
  if (!rows) return {};
  return c.counted("strip.rows", static_cast<std::size_t>(*rows),
                   {{"COUNT", std::to_string(*rows)}});
}

/// Places of pinning between and behind the groups of a line.
int pinning_places(const Context& c) {
  int places = 0;
  for (const calc::Group& group : c.spec.chosen) places += group.pinned_places;
  return places;
}

/// The pinning of a group behind it, with its own rows of lamps.
void add_pinning(const Context& c, const calc::Group& group, std::vector<Block>& list) {
  if (group.pinned_places < 1 || !c.spec.station) return;
  const int places = std::max(pinning_places(c), group.pinned_places);  // the group's among them
  std::optional<int> rows;
  for (const calc::Stage& stage : c.spec.station->stages) {
    if (stage.kind != "pinning" || !stage.rows) continue;
    rows = *stage.rows / places * group.pinned_places;
  }
  list.push_back({c.words("stage.pinning"), rows_note(c, rows), stage_fill});
}

/// Whether lamps ride on the carriage, before and behind its heads.
bool lamps_ride(const Context& c) {
  if (!c.spec.station || !c.spec.chosen.front().scan) return false;
  const std::vector<calc::Stage>& stages = c.spec.station->stages;
  return std::any_of(stages.begin(), stages.end(),
                     [](const calc::Stage& stage) { return stage.lamps_lit.has_value(); });
}

/// The carriage as one box: what it bears stands along the stroke, square to the feed.
Block carriage_block(const Context& c) {
  Block block{c.words("strip.carriage"), "", "FFFFFF"};
  block.between_lamps = lamps_ride(c);
  for (const calc::Group& group : c.spec.chosen) {
    const std::vector<std::string> rows = rows_of(group);
    block.rows.insert(block.rows.end(), rows.begin(), rows.end());
    block.stripes.push_back({c.group_name(group.name), heads_note(c, group, rows.size()), rows});
  }
  block.order = each_once(block.rows);
  return block;
}

std::vector<Block> blocks(const Context& c) {
  std::vector<Block> list;
  list.push_back({c.words("strip.signal"), "", "FFFFFF"});
  if (c.spec.chosen.front().scan) list.push_back(carriage_block(c));
  for (const calc::Group& group : c.spec.chosen) {
    if (group.scan) continue;
    const std::vector<std::string> rows = rows_of(group);
    list.push_back({c.group_name(group.name), heads_note(c, group, rows.size()), "FFFFFF", rows,
                    each_once(rows)});
    add_pinning(c, group, list);
  }
  if (!c.spec.station) return list;
  const bool rides = std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(),
                                 [](const calc::Group& group) { return group.scan.has_value(); });
  for (const calc::Stage& stage : c.spec.station->stages) {
    // The lamps of a carriage ride on it, before and behind its heads.
    if (rides && (stage.kind == "uv" || stage.kind == "pinning")) continue;
    if (stage.kind == "pinning" && pinning_places(c) > 0) continue;
    list.push_back({c.words("stage." + stage.kind), rows_note(c, stage.rows), stage_fill});
  }
  return list;
}

/// The names of the inks under a box, in lines that fit there; none where its title says it.
std::vector<std::string> ink_lines(const Block& block, double width) {
  if (!block.stripes.empty() || block.rows.size() > most_bars) return {};
  if (block.order.size() == 1 && block.order.front() == block.title) return {};
  const auto longest = static_cast<std::size_t>(std::max(width / small_character, 4.0));
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < block.order.size(); ++i) {
    const std::string name = block.order[i] + (i + 1 < block.order.size() ? "," : "");
    if (lines.empty() || lines.back().size() + 1 + name.size() > longest) {
      lines.push_back(name);
    } else {
      lines.back() += " " + name;
    }
  }
  for (std::string& line : lines) line = shortened(line, longest);
  return lines;
}

/// A row of heads in the colours of its inks.
void draw_row(const Context& c, Sketch& sketch, const Block& block, const std::string& channels,
              const std::vector<Spot>& corners) {
  const auto colour = std::find(block.order.begin(), block.order.end(), channels);
  sketch.bands(corners, {c.templates.setting("drawing.outline"), 0.3, ""},
               fills_of(c, channels, static_cast<std::size_t>(colour - block.order.begin())));
}

/// One bar a row of heads, in the colours of their inks, and the names of those below.
void draw_bars(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  if (block.rows.empty() || block.rows.size() > most_bars) return;
  const double edge = 2;
  const double step = width / (static_cast<double>(block.rows.size()) + 1);
  const double top = box_top + edge, foot = box_top + box_height - edge;
  for (std::size_t i = 0; i < block.rows.size(); ++i) {
    const double left = x + step * (static_cast<double>(i) + 0.7), right = left + step * 0.6;
    draw_row(c, sketch, block, block.rows[i],
             {{left, top}, {left, foot}, {right, foot}, {right, top}});
  }
  double y = web_y + 3;
  for (const std::string& line : ink_lines(block, width)) {
    sketch.label({x + width / 2, y}, "middle", 6, escaped(line));
    y += ink_step;
  }
}

/// The groups of a carriage, each with its rows of nozzles along the feed and its name beside them.
void draw_stripes(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  if (block.stripes.empty()) return;
  const double edge = block.between_lamps ? lamp_depth + lamp_gap : lamp_gap;
  const double step = (box_height - 2 * edge) / static_cast<double>(block.rows.size());
  const double length = width * (1 - label_share);
  double y = box_top + edge;
  for (const Stripe& stripe : block.stripes) {
    for (std::size_t i = 0; i < stripe.rows.size(); ++i) {
      const double top = y + step * (static_cast<double>(i) + 0.15), foot = top + step * 0.7;
      const double left = x + 2, right = x + length - 2;
      draw_row(c, sketch, block, stripe.rows[i],
               {{left, top}, {right, top}, {right, foot}, {left, foot}});
    }
    const double height = step * static_cast<double>(stripe.rows.size());
    if (height >= least_label) {
      sketch.label({x + length, y + height / 2 + 0.8}, "start", 6,
                   escaped(stripe.name) + ": " + stripe.note);
    }
    y += height;
  }
}

void draw_block(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  const bool heads = !block.rows.empty();
  sketch.rect({x, box_top}, width, box_height, {c.templates.setting("drawing.outline"), 0.5, ""},
              block.fill);
  if (block.stripes.empty()) draw_bars(c, sketch, block, x, width);
  draw_stripes(c, sketch, block, x, width);
  for (const double y : {box_top, box_top + box_height - lamp_depth}) {
    if (!block.between_lamps) break;
    sketch.rect({x, y}, width, lamp_depth, {c.templates.setting("drawing.outline"), 0.3, ""},
                stage_fill);
  }
  const auto longest = static_cast<std::size_t>(std::max(width / character_width, 4.0));
  sketch.label({x + width / 2, box_top - 2}, "middle", 7,
               heads ? escaped(shortened(block.title, longest)) : block.title, true);
  if (block.note.empty()) return;
  const bool inside = !heads || block.rows.size() > most_bars;
  sketch.label({x + width / 2, inside ? box_top + box_height / 2 + 1 : box_top - 5}, "middle", 6.5,
               block.note);
}

/// The carriage around the boxes between left and right, and the way it crosses the feed.
void draw_carriage(const Context& c, Sketch& sketch, double left, double right) {
  sketch.rect({left - rim, box_top - rim}, right - left + 2 * rim, box_height + 2 * rim,
              {c.templates.setting("drawing.outline"), 1.2, ""}, "none");
  const Pen pen{c.templates.setting("drawing.travel"), 1.2, ""};
  const double x = right + rim + carriage_room / 2;
  const double middle = box_top + box_height / 2;
  sketch.arrow({x, middle}, {x, box_top - rim}, pen);
  sketch.arrow({x, middle}, {x, box_top + box_height + rim}, pen);
}

/// Speeds of the carriage, each once.
std::string carriage_speeds(const Context& c) {
  std::vector<std::string> texts;
  for (const calc::Group& group : c.spec.chosen) {
    if (!group.scan) continue;
    std::string text = escaped(c.measure(group.scan->carriage_speed.si(), "m/s", 3));
    if (std::find(texts.begin(), texts.end(), text) == texts.end()) texts.push_back(text);
  }
  return joined(c, texts);
}

std::string travel_text(const Context& c) {
  if (c.spec.chosen.front().scan) {
    Values values;
    values.set_markup("SPEED", carriage_speeds(c));
    return c.templates.words(c.language(), "strip.feed", values);
  }
  const calc::Input* const speed = c.input("line.speed");
  return speed != nullptr ? c.words("strip.travel", {{"SPEED", input_text(c, *speed)}})
                          : c.words("plan.travel");
}

}  // namespace

std::string sketch_station(const Context& c) {
  const std::vector<Block> list = blocks(c);
  const bool scanning =
      std::any_of(list.begin(), list.end(), [](const Block& b) { return !b.stripes.empty(); });
  const auto count = static_cast<double>(list.size());
  const double room = paper_width - box_gap * (count - 1) - (scanning ? carriage_room + rim : 0);
  const double width = room / count;
  Sketch sketch(paper_width, paper_height);
  double x = 0;
  double left = paper_width;
  double right = 0;
  std::size_t lines = 0;  // of names of inks under a box
  for (const Block& block : list) {
    lines = std::max(lines, ink_lines(block, width).size());
    draw_block(c, sketch, block, x, width);
    const bool leaves = !block.stripes.empty();
    if (leaves) {
      left = x;
      right = x + width;
    }
    x += width + box_gap + (leaves ? carriage_room + rim : 0);
  }
  if (scanning) draw_carriage(c, sketch, left, right);
  sketch.line({0, web_y}, {paper_width, web_y}, {c.templates.setting("drawing.outline"), 1, ""});
  const double foot = web_y + 5 + (lines > 0 ? ink_step * static_cast<double>(lines) - 1 : 0);
  sketch.arrow({0, foot}, {24, foot}, {c.templates.setting("drawing.travel"), 1.2, ""});
  sketch.label({27, foot + 1}, "start", 7, travel_text(c));
  sketch.stretch(foot + 5);
  const char* const caption = !scanning       ? "strip.caption"
                              : lamps_ride(c) ? "strip.caption_lamps"
                                              : "strip.caption_scan";
  return sketch.figure(c.words(caption), "", false);
}

}  // namespace output
