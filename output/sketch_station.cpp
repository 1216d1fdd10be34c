/// The station along the direction of travel, schematic.
#include <algorithm>
#include <cmath>
#include <set>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr double paper_height = 32;
constexpr double box_top = 9, box_height = 12;
constexpr double web_y = 25;
constexpr double box_gap = 3;
constexpr std::size_t most_bars = 16;

/// One box of the strip: a name and, for heads, how many rows of them.
struct Block {
  std::string title, note;
  std::size_t rows = 0;
  std::string fill;
};

std::size_t rows_of(const calc::Group& group) {
  std::set<double> lines;
  for (const calc::HeadPlace& place : group.places) {
    lines.insert(std::round(in_mm(place.y) * 1000));
  }
  return std::max<std::size_t>(lines.size(), 1);
}

std::vector<Block> blocks(const Context& c) {
  std::vector<Block> list;
  list.push_back({c.words("strip.signal"), "", 0, "FFFFFF"});
  const std::string& fills = c.templates.setting("drawing.fills");
  std::size_t index = 0;
  for (const calc::Group& group : c.spec.chosen) {
    list.push_back({escaped(group.name),
                    c.counted("strip.heads", static_cast<std::size_t>(group.heads_total),
                              {{"COUNT", std::to_string(group.heads_total)}}),
                    rows_of(group), fills.substr(index % ((fills.size() + 1) / 7) * 7, 6)});
    ++index;
  }
  if (!c.spec.station) return list;
  for (const calc::Stage& stage : c.spec.station->stages) {
    const std::string rows = stage.rows
                                 ? c.counted("strip.rows", static_cast<std::size_t>(*stage.rows),
                                             {{"COUNT", std::to_string(*stage.rows)}})
                                 : std::string();
    list.push_back({c.words("stage." + stage.kind), rows, 0, "F2F2F2"});
  }
  return list;
}

void draw_block(const Context& c, Sketch& sketch, const Block& block, double x, double width) {
  const Pen outline{c.templates.setting("drawing.outline"), 0.5, ""};
  sketch.rect({x, box_top}, width, box_height, outline,
              block.rows > 0 ? std::string_view("FFFFFF") : std::string_view(block.fill));
  const std::size_t bars = std::min(block.rows, most_bars);
  const double step = width / (static_cast<double>(bars) + 1);
  for (std::size_t i = 0; i < bars; ++i) {
    sketch.rect({x + step * static_cast<double>(i + 1) - step * 0.3, box_top + 2}, step * 0.6,
                box_height - 4, {outline.colour, 0.3, ""}, block.fill);
  }
  sketch.label({x + width / 2, box_top - 1.2}, "middle", 7, block.title, true);
  if (block.rows == 0 && !block.note.empty()) {
    sketch.label({x + width / 2, box_top + box_height / 2 + 1}, "middle", 6.5, block.note);
  } else if (!block.note.empty()) {
    sketch.label({x + width / 2, box_top - 4.2}, "middle", 6.5, block.note);
  }
}

std::string travel_text(const Context& c) {
  const calc::Group& group = c.spec.chosen.front();
  if (group.scan) {
    return c.words("strip.feed", {{"SPEED", with_unit(group.scan->carriage_speed.si(), "m/s", 3)}});
  }
  const calc::Input* const speed = c.input("line.speed");
  return speed != nullptr ? c.words("strip.travel", {{"SPEED", input_text(c, *speed)}})
                          : c.words("plan.travel");
}

}  // namespace

std::string sketch_station(const Context& c) {
  const std::vector<Block> list = blocks(c);
  const auto count = static_cast<double>(list.size());
  const double width = (paper_width - box_gap * (count - 1)) / count;
  Sketch sketch(paper_width, paper_height);
  double x = 0;
  for (const Block& block : list) {
    draw_block(c, sketch, block, x, width);
    x += width + box_gap;
  }
  sketch.line({0, web_y - 2}, {paper_width, web_y - 2},
              {c.templates.setting("drawing.outline"), 1, ""});
  sketch.arrow({0, web_y + 2}, {24, web_y + 2}, {c.templates.setting("drawing.travel"), 1.2, ""});
  sketch.label({27, web_y + 3}, "start", 7, travel_text(c));
  return sketch.figure(c.words("strip.caption"), "", false);
}

}  // namespace output
