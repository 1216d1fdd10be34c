/// Plan of the heads and of one joint between two of them.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double left_margin = 26;    ///< for the names of the rows [mm on paper]
constexpr double right_margin = 24;   ///< for the dimension along the line
constexpr double top_margin = 16;     ///< for the dimensions across
constexpr double bottom_margin = 10;  ///< for the direction of travel
constexpr double paper_width = 178;
constexpr double paper_height = 140;
constexpr double thinnest_field = 0.5;    ///< a nozzle field is drawn at least so deep
constexpr double least_label = 6;         ///< heads narrower on paper carry no number
constexpr double label_step = 3.2;        ///< row names nearer than this would touch
constexpr std::size_t longest_name = 16;  ///< characters of a line in the left margin
constexpr double degree = 3.14159265358979323846 / 180;

/// A length of the catalogue as it stands among the inputs [mm], when it does.
std::optional<double> catalogue_mm(const Context& c, const std::string& key) {
  const calc::Input* const input = c.input(key);
  if (input == nullptr || !input->text.empty()) return std::nullopt;
  if (input->unit == "mm") return input->value;
  if (input->unit == "um") return input->value / 1000;
  if (input->unit == "m") return input->value * 1000;
  return std::nullopt;
}

/// One head as it is drawn [mm, real].
struct Outline {
  const calc::HeadPlace* place = nullptr;
  const calc::Group* group = nullptr;
  int number = 0;
  double x = 0, y = 0, swath = 0, field = 0;
  double plate = 0;  ///< the rows' length on the nozzle plate; the swath of a head not tilted
  std::optional<double> body_width, body_depth;
  std::size_t order = 0;  ///< of its colour along the travel, from 0
};

double plate_of(const calc::Group& group) {
  if (group.family != calc::Family::tilted) return in_mm(group.swath);
  return in_mm(static_cast<double>(group.nozzles) / group.native);
}

std::vector<Outline> outlines(const Context& c) {
  std::vector<Outline> list;
  for (const calc::Group& group : c.spec.chosen) {
    const std::string head = "head." + group.head;
    const double field =
        std::max(catalogue_mm(c, head + ".field_depth").value_or(0), in_mm(group.field));
    for (const calc::HeadPlace& place : group.places) {
      const double seen = std::cos(place.angle_deg * degree);  // of plates round a body, from above
      std::optional<double> depth = catalogue_mm(c, head + ".body_depth");
      if (depth) *depth *= seen;
      list.push_back({&place, &group, static_cast<int>(list.size()) + 1, in_mm(place.x),
                      in_mm(place.y), in_mm(group.swath), field * seen, plate_of(group),
                      catalogue_mm(c, head + ".body_width"), depth});
    }
  }
  return list;
}

/// Half the room of a body that stands at the head's angle, across and along the line.
double half_width(const Outline& head) {
  const double angle = std::abs(head.place->rotation_deg) * degree;
  return (std::max(head.plate, head.body_width.value_or(0)) * std::cos(angle) +
          std::max(head.field, head.body_depth.value_or(0)) * std::sin(angle)) /
         2;
}
double half_depth(const Outline& head) {
  const double angle = std::abs(head.place->rotation_deg) * degree;
  return (std::max(head.plate, head.body_width.value_or(0)) * std::sin(angle) +
          std::max(head.field, head.body_depth.value_or(0)) * std::cos(angle)) /
         2;
}

/// Numbers the colours in the order the product meets them.
void order_colours(std::vector<Outline>& heads) {
  std::vector<Outline*> rows;
  rows.reserve(heads.size());
  for (Outline& head : heads) rows.push_back(&head);
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Outline* a, const Outline* b) { return a->y < b->y; });
  std::vector<const std::string*> met;
  for (Outline* head : rows) {
    const std::string& channel = head->place->channel;
    const auto found = std::find_if(met.begin(), met.end(),
                                    [&](const std::string* name) { return *name == channel; });
    head->order = static_cast<std::size_t>(found - met.begin());
    if (found == met.end()) met.push_back(&channel);
  }
}

struct Extent {
  double left = 0, right = 0, top = 0, bottom = 0;
};

Extent extent(const std::vector<Outline>& heads) {
  Extent e{heads[0].x, heads[0].x, heads[0].y, heads[0].y};
  for (const Outline& head : heads) {
    e.left = std::min(e.left, head.x - half_width(head));
    e.right = std::max(e.right, head.x + half_width(head));
    e.top = std::min(e.top, head.y - half_depth(head));
    e.bottom = std::max(e.bottom, head.y + half_depth(head));
  }
  return e;
}

/// Maps real millimetres to paper.
struct Frame {
  double factor, left, top;
  Spot at(double x, double y) const {
    return {left_margin + (x - left) * factor, top_margin + (y - top) * factor};
  }
};

std::vector<Spot> turned_box(const Frame& frame, const Outline& head, double width, double depth) {
  const double angle = head.place->rotation_deg * degree;
  std::vector<Spot> corners;
  for (const auto& [sx, sy] : {std::pair{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
    const double x = sx * width / 2;
    const double y = sy * depth / 2;
    corners.push_back(frame.at(head.x + x * std::cos(angle) - y * std::sin(angle),
                               head.y + x * std::sin(angle) + y * std::cos(angle)));
  }
  return corners;
}

/// The inks of the head's nozzle field; places for colours that stay free look like its body.
std::vector<std::string> field_fills(const Context& c, const Outline& head) {
  std::vector<std::string> fills = fills_of(c, head.place->channel, head.order);
  const calc::Input* const colours =
      c.input("head." + head.group->head + ".mode." + head.group->mode + ".colours");
  const double places = colours == nullptr ? 0 : colours->value;
  while (static_cast<double>(fills.size()) < places) {
    fills.push_back(c.templates.setting("drawing.body"));
  }
  return fills;
}

void draw_head(const Context& c, Sketch& sketch, const Frame& frame, const Outline& head) {
  const Pen outline{c.templates.setting("drawing.outline"), 0.4, ""};
  if (head.body_width && head.body_depth) {
    sketch.polygon(turned_box(frame, head, *head.body_width, *head.body_depth), outline,
                   c.templates.setting("drawing.body"));
  }
  const std::vector<std::string> fills = field_fills(c, head);
  const double least = thinnest_field * static_cast<double>(fills.size());
  const double depth = std::max(head.field, least / frame.factor);
  sketch.bands(turned_box(frame, head, head.plate, depth), outline, fills);
}

/// The head's number along its edge, beside its nozzle field where there is room.
void number_head(Sketch& sketch, const Frame& frame, const Outline& head) {
  const double width = head.body_width.value_or(head.swath) * frame.factor;
  const double depth = std::max(head.field, head.body_depth.value_or(0)) * frame.factor;
  const double field = std::max(head.field * frame.factor, thinnest_field);
  if (width < least_label || depth - field < 5) return;
  const double angle = head.place->rotation_deg * degree;
  const Spot centre = frame.at(head.x, head.y);
  const double off = depth / 2 - 0.9;
  sketch.label({centre.x - off * std::sin(angle), centre.y + off * std::cos(angle)}, "middle", 5.5,
               "PH" + std::to_string(head.number), false, -head.place->rotation_deg);
}

/// "cyan+magenta+yellow" in lines short enough for the margin, broken behind a plus.
std::vector<std::string> short_lines(std::string_view name) {
  std::vector<std::string> lines(1);
  while (!name.empty()) {
    const std::size_t end = std::min(name.find('+'), name.size() - 1) + 1;
    if (!lines.back().empty() && lines.back().size() + end > longest_name) lines.emplace_back();
    lines.back() += name.substr(0, end);
    name.remove_prefix(end);
  }
  return lines;
}

/// The names of the rows at the left, in the order of travel, each joined to its row by a line
/// where the rows stand closer than the names.
void name_rows(const Context& c, Sketch& sketch, const Frame& frame,
               const std::vector<Outline>& heads) {
  std::vector<Outline> rows(heads);
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Outline& a, const Outline& b) { return a.y < b.y; });
  const Pen leader{c.templates.setting("drawing.outline"), 0.25, ""};
  double next = 0;
  std::size_t named = 0;
  for (const Outline& head : rows) {
    if (head.order < named) continue;
    named = head.order + 1;
    const double row = frame.at(head.x, head.y).y;
    double y = std::max(row, next);
    sketch.line({left_margin - 3.5, y}, {left_margin - 0.5, row}, leader);
    std::vector<std::string> lines = short_lines(head.place->channel);
    for (std::string& line : lines) line = shortened(line, longest_name);
    lines.front() = std::to_string(named) + "\xC2\xA0" + lines.front();
    for (const std::string& line : lines) {
      sketch.label({left_margin - 4, y + 0.9}, "end", 7, escaped(line));
      y += label_step;
    }
    next = y;
  }
  sketch.stretch(next);
}

/// The first two heads of a group that stand side by side, or none.
std::optional<std::pair<Outline, Outline>> neighbours(const std::vector<Outline>& heads) {
  for (const Outline& first : heads) {
    const double pitch = in_mm(first.group->head_pitch);
    if (first.group->heads_across < 2 || pitch <= 0) continue;
    for (const Outline& other : heads) {
      const bool next = other.group == first.group &&
                        other.place->position == first.place->position &&
                        std::abs(other.x - first.x - pitch) < 1e-3 * pitch;
      if (next) return std::pair{first, other};
    }
  }
  return std::nullopt;
}

/// The width the nozzles are told to reach over [mm], the same as answers the requirement: heads
/// whose nozzles stand between those of others reach less than a pitch further, and alone.
double told_width(const Context& c, double drawn) {
  const calc::Group& group = c.spec.chosen.front();
  if (group.scan || group.native <= calc::Resolution()) return drawn;
  const double all = in_mm(group.head_pitch * (group.heads_across - 1) + group.swath);
  return std::abs(drawn - all) < in_mm(1.0 / group.native) ? all : drawn;
}

void draw_sizes(const Context& c, Sketch& sketch, const Frame& frame, const Extent& e,
                const std::vector<Outline>& heads) {
  const std::string& colour = c.templates.setting("drawing.dimension");
  double first = heads[0].x - heads[0].swath / 2;
  double last = heads[0].x + heads[0].swath / 2;
  for (const Outline& head : heads) {
    first = std::min(first, head.x - head.swath / 2);
    last = std::max(last, head.x + head.swath / 2);
  }
  const Spot left = frame.at(first, e.top);
  const Spot right = frame.at(last, e.bottom);
  sketch.dimension_across(
      left.x, right.x, top_margin - 9,
      c.words("plan.array", {{"VALUE", c.measure(told_width(c, last - first), "mm", 4)}}), colour);
  if (const auto pair = neighbours(heads)) {
    sketch.dimension_across(
        frame.at(pair->first.x, 0).x, frame.at(pair->second.x, 0).x, top_margin - 3,
        c.words("plan.head_pitch", {{"VALUE", c.measure(pair->second.x - pair->first.x, "mm", 4)}}),
        colour);
  }
  const double edge = frame.at(e.right, 0).x + 4;
  sketch.dimension_down(edge, frame.at(0, e.top).y, frame.at(0, e.bottom).y,
                        c.words("plan.rows", {{"VALUE", c.measure(e.bottom - e.top, "mm", 4)}}),
                        colour);
}

void draw_travel(const Context& c, Sketch& sketch, double x, double bottom, bool scanning) {
  const Pen pen{c.templates.setting("drawing.travel"), 1.2, ""};
  sketch.arrow({x, bottom + 1.5}, {x, bottom + 8.5}, pen);
  if (scanning) sketch.arrow({x, bottom + 6}, {x, bottom + 1}, pen);
  sketch.label({x + 3, bottom + 6}, "start", 7,
               c.words(scanning ? "plan.carriage" : "plan.travel"));
}

bool is_scanning(const Context& c) {
  return std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(), [](const calc::Group& group) {
    return group.family == calc::Family::scanning;
  });
}

}  // namespace

std::string sketch_plan(const Context& c) {
  std::vector<Outline> heads = outlines(c);
  order_colours(heads);
  const Extent e = extent(heads);
  const double depth = std::max(e.bottom - e.top, 1e-3);
  const Scale scale = fitting_scale(std::max(e.right - e.left, 1e-3), depth,
                                    paper_width - left_margin - right_margin,
                                    paper_height - top_margin - bottom_margin);
  const Frame frame{scale.factor, e.left, e.top};
  const double bottom = top_margin + depth * scale.factor;
  Sketch sketch(paper_width, bottom + bottom_margin);
  name_rows(c, sketch, frame, heads);
  for (const Outline& head : heads) draw_head(c, sketch, frame, head);
  for (const Outline& head : heads) number_head(sketch, frame, head);
  draw_sizes(c, sketch, frame, e, heads);
  draw_travel(c, sketch, left_margin, bottom, is_scanning(c));
  return sketch.figure(c.counted("plan.caption", heads.size(),
                                 {{"COUNT", std::to_string(heads.size())}, {"SCALE", scale.text}}),
                       "", true);
}

std::string sketch_joint(const Context& c) {
  std::vector<Outline> heads = outlines(c);
  order_colours(heads);
  const auto pair = neighbours(heads);
  if (!pair) return {};
  const auto& [first, second] = *pair;
  const std::string& colour = c.templates.setting("drawing.dimension");
  const double width = second.x - first.x + first.swath;
  const double slant = first.plate * std::sin(std::abs(first.place->rotation_deg) * degree);
  const double rows = std::abs(second.y - first.y) + slant;
  const Scale scale = fitting_scale(width, rows + 1, 120, 60);
  const Frame frame{scale.factor, first.x - first.swath / 2,
                    std::min(first.y, second.y) - slant / 2};
  const double bottom = top_margin + rows * scale.factor;
  Sketch sketch(paper_width, bottom + 14);
  const Pen guide{colour, 0.4, "2 2"};
  for (const Outline& head : {first, second}) {
    Outline bare = head;
    bare.body_width.reset();
    bare.field = thinnest_field * 2 / scale.factor;
    draw_head(c, sketch, frame, bare);
  }
  const double x1 = frame.at(first.x - first.swath / 2, 0).x;
  const double x2 = frame.at(first.x + first.swath / 2, 0).x;
  const double x3 = frame.at(second.x - second.swath / 2, 0).x;
  const double x4 = frame.at(second.x + second.swath / 2, 0).x;
  // Each guide to its dimension, and short of the label of the other.
  const double above = top_margin - 7, below = bottom + 8, short_of = 4;
  sketch.line({x1, above}, {x1, below}, guide);
  sketch.line({x2, above}, {x2, below - short_of}, guide);
  sketch.line({x3, above + short_of}, {x3, below}, guide);
  sketch.line({x4, above + short_of}, {x4, below - short_of}, guide);
  const auto size = [&](const std::string& key, double value) {
    return c.words(key, {{"VALUE", c.measure(value, "mm", 4)}});
  };
  sketch.dimension_across(x1, x2, above, size("plan.swath", first.swath), colour);
  const std::string pitch = size("plan.head_pitch", second.x - first.x);
  sketch.dimension_across(x1, x3, below, pitch, colour);
  if (first.group->overlap > calc::Length()) {
    const bool beside = !Sketch::holds_text(x3 - x1, pitch);  // the other label then stands here
    sketch.label({x2 + 2, bottom + (beside ? 12.5 : 9)}, "start", 7,
                 size("plan.overlap", in_mm(first.group->overlap)));
  }
  return sketch.figure(c.words("plan.joint_caption", {{"SCALE", scale.text},
                                                      {"FIRST", std::to_string(first.number)},
                                                      {"SECOND", std::to_string(second.number)}}),
                       "", true);
}

}  // namespace output
