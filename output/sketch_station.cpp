/// The station along the direction of travel, schematic.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <set>

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

/// The rows of a group on a carriage, one behind the other along its stroke.
struct Stripe {
  std::string name, note;
  std::size_t rows = 1;
  std::string fill;
};

/// One box of the strip: a name and, for heads, how many rows of them.
struct Block {
  std::string title, note;
  std::size_t rows = 0;
  std::string fill;
  std::vector<Stripe> stripes = {};  ///< of a carriage
  bool between_lamps = false;        ///< of a carriage
};

std::size_t rows_of(const calc::Group& group) {
  std::set<double> lines;
  for (const calc::HeadPlace& place : group.places) {
    lines.insert(std::round(in_mm(place.y) * 1000));
  }
  return std::max<std::size_t>(lines.size(), 1);
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
  list.push_back({c.words("stage.pinning"), rows_note(c, rows), 0, stage_fill});
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
  Block block{c.words("strip.carriage"), "", 0, "FFFFFF"};
  block.between_lamps = lamps_ride(c);
  std::size_t index = 0;
  for (const calc::Group& group : c.spec.chosen) {
    const std::size_t rows = rows_of(group);
    const bool alone = group.channels.size() == 1;
    block.rows += rows;
    block.stripes.push_back({c.group_name(group.name), heads_note(c, group, rows), rows,
                             fill_of(c, alone ? group.channels.front() : std::string(), index)});
    ++index;
  }
  return block;
}

std::vector<Block> blocks(const Context& c) {
  std::vector<Block> list;
  list.push_back({c.words("strip.signal"), "", 0, "FFFFFF"});
  if (c.spec.chosen.front().scan) list.push_back(carriage_block(c));
  std::size_t index = 0;
  for (const calc::Group& group : c.spec.chosen) {
    if (group.scan) continue;
    const std::size_t rows = rows_of(group);
    const bool alone = group.channels.size() == 1;
    list.push_back({c.group_name(group.name), heads_note(c, group, rows), rows,
                    fill_of(c, alone ? group.channels.front() : std::string(), index)});
    ++index;
    add_pinning(c, group, list);
  }
  if (!c.spec.station) return list;
  const bool rides = std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(),
                                 [](const calc::Group& group) { return group.scan.has_value(); });
  for (const calc::Stage& stage : c.spec.station->stages) {
    // The lamps of a carriage ride on it, before and behind its heads.
    if (rides && (stage.kind == "uv" || stage.kind == "pinning")) continue;
    if (stage.kind == "pinning" && pinning_places(c) > 0) continue;
    list.push_back({c.words("stage." + stage.kind), rows_note(c, stage.rows), 0, stage_fill});
  }
  return list;
}

/// One bar a row of heads.
void draw_bars(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  if (block.rows > most_bars) return;
  const double edge = 2;
  const double step = width / (static_cast<double>(block.rows) + 1);
  for (std::size_t i = 0; i < block.rows; ++i) {
    sketch.rect({x + step * static_cast<double>(i + 1) - step * 0.3, box_top + edge}, step * 0.6,
                box_height - 2 * edge, {c.templates.setting("drawing.outline"), 0.3, ""},
                block.fill);
  }
}

/// The groups of a carriage, each with its rows of nozzles along the feed and its name beside them.
void draw_stripes(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  if (block.stripes.empty()) return;
  const double edge = block.between_lamps ? lamp_depth + lamp_gap : lamp_gap;
  const double step = (box_height - 2 * edge) / static_cast<double>(block.rows);
  const double length = width * (1 - label_share);
  double y = box_top + edge;
  for (const Stripe& stripe : block.stripes) {
    for (std::size_t i = 0; i < stripe.rows; ++i) {
      const double top = y + step * (static_cast<double>(i) + 0.15);
      sketch.rect({x + 2, top}, length - 4, step * 0.7,
                  {c.templates.setting("drawing.outline"), 0.3, ""}, stripe.fill);
    }
    const double height = step * static_cast<double>(stripe.rows);
    if (height >= least_label) {
      sketch.label({x + length, y + height / 2 + 0.8}, "start", 6,
                   escaped(stripe.name) + ": " + stripe.note);
    }
    y += height;
  }
}

void draw_block(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  const bool heads = block.rows > 0;
  sketch.rect({x, box_top}, width, box_height, {c.templates.setting("drawing.outline"), 0.5, ""},
              heads ? std::string_view("FFFFFF") : std::string_view(block.fill));
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
  const bool inside = block.rows == 0 || block.rows > most_bars;
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
  for (std::size_t i = 0; i < list.size(); ++i) {
    draw_block(c, sketch, list[i], x, width);
    const bool leaves = !list[i].stripes.empty();
    if (leaves) {
      left = x;
      right = x + width;
    }
    x += width + box_gap + (leaves ? carriage_room + rim : 0);
  }
  if (scanning) draw_carriage(c, sketch, left, right);
  sketch.line({0, web_y}, {paper_width, web_y}, {c.templates.setting("drawing.outline"), 1, ""});
  sketch.arrow({0, web_y + 5}, {24, web_y + 5}, {c.templates.setting("drawing.travel"), 1.2, ""});
  sketch.label({27, web_y + 6}, "start", 7, travel_text(c));
  const char* const caption = !scanning       ? "strip.caption"
                              : lamps_ride(c) ? "strip.caption_lamps"
                                              : "strip.caption_scan";
  return sketch.figure(c.words(caption), "", false);
}

}  // namespace output
