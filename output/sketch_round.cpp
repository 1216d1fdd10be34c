/// Section through a station whose heads stand round a body that turns under them.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 160;
constexpr double left_margin = 8, right_margin = 46;  ///< [mm on paper]
constexpr double top_margin = 10, bottom_margin = 12;
constexpr double tallest = 90;       ///< [mm on paper]
constexpr double cut_height = 0.8;   ///< of the depth: what is drawn of a head of unknown height
constexpr double least_plate = 0.7;  ///< a nozzle plate is drawn at least so thick [mm on paper]
constexpr int arc_points = 24;
constexpr double degree = std::numbers::pi / 180;

/// One row of heads round the body, seen from the end.
struct Seen {
  double angle = 0;  ///< [rad]
  std::string name, channel;
  std::size_t order = 0;  ///< of its colour, from 0
};

/// What the section shows [mm, real]; the body's axis is the origin, z up.
struct Section {
  const calc::Group* group = nullptr;
  std::vector<Seen> rows;
  double radius = 0, reach = 0, depth = 0, height = 0;
  double half_width = 0, top = 0;
};

/// "PH3", or "PH3 to PH9" of heads side by side.
void count_in(Seen& row, int number) {
  const std::string name = "PH" + std::to_string(number);
  if (row.name.empty()) {
    row.name = name;
  } else {
    row.name = row.name.substr(0, row.name.find(' ')) + " \xE2\x80\xA6 " + name;
  }
}

std::vector<Seen> rows_of(const calc::Group& group, int number) {
  std::vector<Seen> rows;
  std::vector<std::string> channels;
  for (const calc::HeadPlace& place : group.places) {
    ++number;
    if (place.station != 0) continue;
    const double angle = place.angle_deg * degree;
    auto row = std::find_if(rows.begin(), rows.end(),
                            [&](const Seen& s) { return std::abs(s.angle - angle) < 1e-6; });
    if (row == rows.end()) {
      auto channel = std::find(channels.begin(), channels.end(), place.channel);
      if (channel == channels.end()) channel = channels.insert(channels.end(), place.channel);
      const auto order = static_cast<std::size_t>(channel - channels.begin());
      row = rows.insert(rows.end(), {angle, {}, place.channel, order});
    }
    count_in(*row, number);
  }
  return rows;
}

/// The section through the first station of a group; `number`: of the heads before it.
Section section_of(const calc::Group& group, int number) {
  const calc::Round& r = *group.round;
  Section s;
  s.group = &group;
  s.rows = rows_of(group, number);
  s.radius = in_mm(r.radius);
  s.reach = in_mm(r.reach);
  s.depth = in_mm(r.depth);
  s.height = r.height > calc::Length{} ? in_mm(r.height) : s.depth * cut_height;
  return s;
}

struct Point {
  double y, z;
};

/// The corners of a head: plate left and right, then its far end right and left.
std::vector<Point> corners(const Section& s, const Seen& row) {
  const double sine = std::sin(row.angle), cosine = std::cos(row.angle);
  const auto at = [&](double along, double out) {
    return Point{(s.reach + out) * sine + along * cosine, (s.reach + out) * cosine - along * sine};
  };
  const double half = s.depth / 2;
  return {at(-half, 0), at(half, 0), at(half, s.height), at(-half, s.height)};
}

void measure_out(Section& s) {
  s.half_width = s.radius;
  s.top = s.radius;
  for (const Seen& row : s.rows) {
    for (const Point& p : corners(s, row)) {
      s.half_width = std::max(s.half_width, std::abs(p.y));
      s.top = std::max(s.top, p.z);
    }
  }
}

/// Real millimetres to paper, z up to y down.
struct Frame {
  double factor, centre, axis;
  Spot at(const Point& p) const { return {centre + p.y * factor, axis - p.z * factor}; }
};

void draw_rows(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const Pen outline{c.templates.setting("drawing.outline"), 0.5, ""};
  for (const Seen& row : s.rows) {
    const std::vector<Point> real = corners(s, row);
    std::vector<Spot> box;
    box.reserve(real.size());
    for (const Point& p : real) box.push_back(frame.at(p));
    sketch.polygon(box, outline, c.templates.setting("drawing.body"));
    const double thick = least_plate / frame.factor;
    const auto inward = [&](const Point& p) {
      return frame.at({p.y + thick * std::sin(row.angle), p.z + thick * std::cos(row.angle)});
    };
    sketch.bands({frame.at(real[0]), inward(real[0]), inward(real[1]), frame.at(real[1])}, outline,
                 fills_of(c, row.channel, row.order));
    const double middle = s.reach + s.height / 2;
    const Spot name = frame.at({middle * std::sin(row.angle), middle * std::cos(row.angle)});
    // The long line on the head's axis: beside it a head that leans has less room across.
    sketch.label({name.x, name.y + 0.6}, "middle", 6.5, escaped(row.name));
    sketch.label({name.x, name.y + 3.4}, "middle", 6.5,
                 escaped(c.measure(row.angle / degree, "deg", 3)));
  }
}

void draw_ways(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const Pen way{c.templates.setting("drawing.travel"), 0.5, "1 1"};
  for (const Seen& row : s.rows) {
    sketch.line(frame.at({s.radius * std::sin(row.angle), s.radius * std::cos(row.angle)}),
                frame.at({s.reach * std::sin(row.angle), s.reach * std::cos(row.angle)}), way);
  }
}

/// The angle between the first two rows, on an arc within the body.
void draw_angle(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const Pen guide{c.templates.setting("drawing.dimension"), 0.4, "1 1"};
  const Pen arc{c.templates.setting("drawing.dimension"), 0.5, ""};
  const double at = s.radius * 0.55;
  const auto on = [&](double angle, double r) {
    return frame.at({r * std::sin(angle), r * std::cos(angle)});
  };
  const double first = s.rows[0].angle, second = s.rows[1].angle;
  for (const double angle : {first, second}) sketch.line(on(angle, 0), on(angle, s.radius), guide);
  for (int i = 0; i < arc_points; ++i) {
    const double from = first + (second - first) * i / arc_points;
    const double to = first + (second - first) * (i + 1) / arc_points;
    sketch.line(on(from, at), on(to, at), arc);
  }
}

void draw_sizes(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const std::string& colour = c.templates.setting("drawing.dimension");
  const calc::Round& r = *s.group->round;
  const double above = frame.at({0, s.top}).y - 4;
  sketch.dimension_across(
      frame.at({-s.half_width, 0}).x, frame.at({s.half_width, 0}).x, above,
      c.words("round.length", {{"VALUE", c.measure(2 * s.half_width, "mm", 4)}}), colour);
  double y = frame.at({0, 0}).y - 8;
  const double x = frame.at({s.half_width, 0}).x + 4;
  const auto note = [&](const std::string& markup) {
    sketch.label({x, y}, "start", 7, markup);
    y += 3.6;
  };
  note(c.words("round.angle", {{"VALUE", c.measure(r.pitch_angle / degree, "deg", 3)}}));
  note(c.words("section.diameter", {{"VALUE", c.measure(2 * s.radius, "mm", 3)}}));
  note(c.words("round.reach", {{"VALUE", c.measure(s.reach, "mm", 4)}}));
  note(c.words("section.throw", {{"VALUE", c.measure(s.reach - s.radius, "mm", 3)}}));
  if (r.height <= calc::Length{}) note(c.words("round.cut"));
}

/// The way the body turns, below it.
void draw_turn(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const Pen pen{c.templates.setting("drawing.travel"), 1.0, ""};
  const double r = s.radius + 3 / frame.factor;
  const auto on = [&](double angle) {
    return frame.at({r * std::sin(angle), r * std::cos(angle)});
  };
  const double from = 150 * degree, to = 205 * degree;
  for (int i = 0; i < arc_points - 3; ++i) {
    sketch.line(on(from + (to - from) * i / arc_points),
                on(from + (to - from) * (i + 1) / arc_points), pen);
  }
  sketch.arrow(on(from + (to - from) * (arc_points - 4) / arc_points), on(to), pen);
  const Spot foot = frame.at({0, -r});
  sketch.label({foot.x, foot.y + 4}, "middle", 7, c.words("round.turn"));
}

std::string figure_of(const Context& c, Section s) {
  measure_out(s);
  const double height = s.top + s.radius;
  const Scale scale =
      fitting_scale(2 * s.half_width, height, paper_width - left_margin - right_margin, tallest);
  const Frame frame{scale.factor, left_margin + s.half_width * scale.factor,
                    top_margin + s.top * scale.factor};
  Sketch sketch(paper_width, top_margin + height * scale.factor + bottom_margin);
  sketch.circle(frame.at({0, 0}), s.radius * scale.factor,
                {c.templates.setting("drawing.outline"), 0.6, ""}, "E6E6E6");
  draw_rows(c, sketch, frame, s);
  draw_ways(c, sketch, frame, s);
  draw_angle(c, sketch, frame, s);
  draw_sizes(c, sketch, frame, s);
  draw_turn(c, sketch, frame, s);
  return sketch.figure(
      c.words("round.caption", {{"STATION", "1"},
                                {"STATIONS", std::to_string(s.group->round->stations)},
                                {"GROUP", c.group_name(s.group->name)},
                                {"HEAD", s.group->head},
                                {"SCALE", scale.text}}),
      "", true);
}

}  // namespace

std::string sketch_round(const Context& c) {
  std::string figures;
  int number = 0;
  for (const calc::Group& group : c.spec.chosen) {
    if (group.round && group.round->per_station > 1 && !group.places.empty()) {
      figures += figure_of(c, section_of(group, number));
    }
    number += group.heads_total;
  }
  return figures;
}

}  // namespace output
