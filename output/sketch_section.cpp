/// Section along the motion through a head, the way of the drops and the product.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr double left_margin = 8, right_margin = 46;  ///< [mm on paper]
constexpr double top_margin = 9, bottom_margin = 15;
constexpr double tallest = 62;  ///< [mm on paper]
constexpr double width_over_body = 1.3;
constexpr double head_shown = 0.30;     ///< of the drawn width: how much of the head's height
constexpr double product_shown = 0.08;  ///< the same of a product whose thickness is not given
constexpr int arc_points = 60;

/// What the section shows [mm, real].
struct Section {
  double body = 0, field = 0;
  double nominal = 0, least = 0, most = 0;  ///< gap
  std::optional<double> radius, thickness;
  double width = 0;     ///< drawn
  std::string channel;  ///< of the head shown

  /// How far the surface lies below its top at x.
  double drop_at(double x) const {
    if (!radius) return 0;
    const double reach = std::min(std::abs(x), *radius);
    return *radius - std::sqrt(*radius * *radius - reach * reach);
  }
  /// Whether all of the upper half of a round body is drawn.
  bool whole_arc() const { return radius && *radius <= width / 2; }
  double half_product() const { return radius ? std::min(width / 2, *radius) : width / 2; }
  double head_height() const { return width * head_shown; }
  double product_height() const {
    const double below = drop_at(half_product());
    if (whole_arc()) return below;
    return below + (thickness && !radius ? std::min(*thickness, width / 4) : width * product_shown);
  }
};

std::optional<double> length_of(const Context& c, const std::string& key) {
  const calc::Input* const input = c.input(key);
  if (input == nullptr || input->unit != "mm" || input->value <= 0) return std::nullopt;
  return input->value;
}

std::optional<Section> section_of(const Context& c) {
  const calc::Group& group = c.spec.chosen.front();
  const std::string head = "head." + group.head;
  const auto body = length_of(c, head + ".body_depth");
  const auto field = length_of(c, head + ".field_depth");
  if (!body || !field) return std::nullopt;
  Section s;
  s.body = *body;
  s.field = *field;
  const calc::Input* throw_distance = c.input("line.throw_distance");
  if (throw_distance == nullptr) throw_distance = c.input(head + ".throw_nominal");
  if (throw_distance == nullptr || throw_distance->unit != "mm") return std::nullopt;
  s.nominal = throw_distance->value;
  const bool spread = throw_distance->spread != calc::Spread::none;
  s.least = spread ? throw_distance->low : s.nominal;
  s.most = spread ? throw_distance->high : s.nominal;
  const calc::Input* const form = c.input("product.form");
  const auto diameter = length_of(c, "product.diameter");
  if (form != nullptr && form->text == "cylinder" && diameter) s.radius = *diameter / 2;
  s.thickness = length_of(c, "product.thickness");
  s.width = s.body * width_over_body;
  if (!group.places.empty()) s.channel = group.places.front().channel;
  return s;
}

/// Real millimetres from the nozzle plate's middle to paper, y down.
struct Frame {
  double factor, left, top;
  Spot at(double x, double y) const { return {left + x * factor, top + y * factor}; }
};

/// The head without its upper part, which a broken line cuts off.
void draw_head(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const double half = s.body / 2;
  const double top = -s.head_height();
  const double tooth = s.body / 40;
  std::vector<Spot> corners{frame.at(-half, 0)};
  constexpr int teeth = 12;
  for (int i = 0; i <= teeth; ++i) {
    const double x = -half + s.body * i / teeth;
    corners.push_back(frame.at(x, top + (i % 2 == 0 ? tooth : -tooth)));
  }
  corners.push_back(frame.at(half, 0));
  sketch.polygon(corners, {c.templates.setting("drawing.outline"), 0.5, ""},
                 c.templates.setting("drawing.body"));
  const Spot plate = frame.at(-s.field / 2, 0);
  const double right = plate.x + s.field * frame.factor;
  const double upper = plate.y - 0.7;
  sketch.bands({{plate.x, upper}, {plate.x, plate.y}, {right, plate.y}, {right, upper}},
               {c.templates.setting("drawing.outline"), 0.4, ""}, fills_of(c, s.channel, 0));
}

/// The surface at a gap, as corners from left to right.
std::vector<Spot> surface(const Frame& frame, const Section& s, double gap) {
  std::vector<Spot> line;
  // Evenly in the angle: evenly across, a steep flank would have but one point.
  const double reach = s.radius ? std::asin(std::min(1.0, s.half_product() / *s.radius)) : 0;
  for (int i = 0; i <= arc_points; ++i) {
    const double part = 2.0 * i / arc_points - 1;
    const double angle = reach * part;
    line.push_back(
        s.radius ? frame.at(*s.radius * std::sin(angle), gap + *s.radius * (1 - std::cos(angle)))
                 : frame.at(s.half_product() * part, gap));
  }
  return line;
}

void draw_product(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  std::vector<Spot> corners = surface(frame, s, s.nominal);
  corners.push_back(frame.at(s.half_product(), s.nominal + s.product_height()));
  corners.push_back(frame.at(-s.half_product(), s.nominal + s.product_height()));
  sketch.polygon(corners, {c.templates.setting("drawing.outline"), 0.6, ""}, "E6E6E6");
  for (const double gap : {s.least, s.most}) {
    if (std::abs(gap - s.nominal) * frame.factor < 0.2) continue;
    const std::vector<Spot> line = surface(frame, s, gap);
    for (std::size_t i = 2; i < line.size(); i += 4) {
      sketch.line(line[i - 2], line[i], {c.templates.setting("drawing.outline"), 0.3, ""});
    }
  }
}

void draw_drops(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const Pen way{c.templates.setting("drawing.travel"), 0.5, "1 1"};
  for (const double x : {-s.field / 2, 0.0, s.field / 2}) {
    sketch.line(frame.at(x, 0), frame.at(x, s.nominal + s.drop_at(x)), way);
  }
}

void draw_sizes(const Context& c, Sketch& sketch, const Frame& frame, const Section& s) {
  const std::string& colour = c.templates.setting("drawing.dimension");
  const auto text = [&](const std::string& key, double value) {
    return c.words(key, {{"VALUE", c.measure(value, "mm", 3)}});
  };
  const double above = frame.at(0, -s.head_height()).y - 3;
  sketch.dimension_across(frame.at(-s.body / 2, 0).x, frame.at(s.body / 2, 0).x, above,
                          text("section.body", s.body), colour);
  const double below = frame.at(0, s.nominal + s.product_height()).y + 6;
  sketch.dimension_across(frame.at(-s.field / 2, 0).x, frame.at(s.field / 2, 0).x, below,
                          text("section.field", s.field), colour);
  const double right = frame.at(s.width / 2, 0).x + 4;
  const double gap = frame.at(0, s.nominal).y;
  const Pen guide{colour, 0.3, "1 2"};
  sketch.line(frame.at(s.body / 2, 0), {right + 1, frame.top}, guide);
  sketch.line({frame.at(0, 0).x, gap}, {right + 1, gap}, guide);
  sketch.dimension_down(right, frame.top, gap, text("section.throw", s.nominal), colour);
  double next = std::max((frame.top + gap) / 2 + 4.4, frame.top + 4.4);
  const auto note = [&](const std::string& markup) {
    sketch.label({right + 1.9, next}, "start", 7, markup);
    next += 3.5;
  };
  if (s.least < s.most) {
    note(c.words("section.range",
                 {{"LEAST", c.measure(s.least, "mm", 3)}, {"MOST", c.measure(s.most, "mm", 3)}}));
  }
  if (s.radius) {
    note(text("section.diameter", 2 * *s.radius));
    note(text("section.sagitta", s.drop_at(s.field / 2)));
  }
}

}  // namespace

std::string sketch_section(const Context& c) {
  if (c.spec.chosen.empty()) return {};
  const std::optional<Section> s = section_of(c);
  if (!s) return {};
  const double height = s->head_height() + s->nominal + s->product_height();
  const Scale scale =
      fitting_scale(s->width, height, paper_width - left_margin - right_margin, tallest);
  const Frame frame{scale.factor, left_margin + s->width / 2 * scale.factor,
                    top_margin + s->head_height() * scale.factor};
  Sketch sketch(paper_width, top_margin + height * scale.factor + bottom_margin);
  draw_product(c, sketch, frame, *s);
  draw_drops(c, sketch, frame, *s);
  draw_head(c, sketch, frame, *s);
  draw_sizes(c, sketch, frame, *s);
  const double foot = top_margin + height * scale.factor + 11.5;
  sketch.arrow({left_margin, foot}, {left_margin + 14, foot},
               {c.templates.setting("drawing.travel"), 1.2, ""});
  const calc::Group& group = c.spec.chosen.front();
  // A tilted head is cut square to its rows, so that its body and field show their true size.
  const bool tilted = group.family == calc::Family::tilted;
  const double degrees = std::abs(group.tilt) * 180 / std::numbers::pi;
  sketch.label({left_margin + 16, foot + 0.9}, "start", 7,
               tilted ? c.words("section.motion_tilted", {{"TILT", c.measure(degrees, "deg", 4)}})
                      : c.words("section.motion"));
  return sketch.figure(c.words(c.of_motion(tilted ? "section.caption_tilted" : "section.caption"),
                               {{"HEAD", group.head}, {"SCALE", scale.text}}),
                       "", false);
}

}  // namespace output
