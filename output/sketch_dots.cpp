/// Dots of a solid on their lattice.
#include <algorithm>
#include <cmath>

#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr int columns = 6;          ///< dots along the nozzle axis
constexpr int rows = 5;             ///< dots along the motion axis
constexpr double panel_width = 55;  ///< [mm on paper]
constexpr double panel_height = 46;
constexpr double gap = 13;
constexpr double head_room = 9, foot_room = 12;
constexpr std::size_t most_panels = 2;

/// One lattice with one dot, and the channels it stands for.
struct Panel {
  const calc::Group* group = nullptr;
  const calc::ChannelDots* dots = nullptr;
  std::vector<std::string> channels;
};

bool same(const Panel& panel, const calc::Group& group, const calc::ChannelDots& dots) {
  return panel.dots->dot_diameter == dots.dot_diameter &&
         panel.group->resolution_across == group.resolution_across &&
         panel.group->resolution_along == group.resolution_along;
}

std::vector<Panel> panels(const Context& c) {
  std::vector<Panel> list;
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::ChannelDots& dots : group.dots) {
      const auto found = std::find_if(list.begin(), list.end(),
                                      [&](const Panel& p) { return same(p, group, dots); });
      if (found != list.end()) {
        found->channels.push_back(escaped(dots.channel));
      } else {
        list.push_back({&group, &dots, {escaped(dots.channel)}});
      }
    }
  }
  return list;
}

double pitch_mm(calc::Resolution resolution) { return 1000 / resolution.si(); }

struct Size {
  double across = 0, along = 0, dot = 0;  ///< [mm, real]
  double width() const { return (columns - 1) * across + dot; }
  double height() const { return (rows - 1) * along + dot; }
};

Size size_of(const Panel& panel) {
  return {pitch_mm(panel.group->resolution_across), pitch_mm(panel.group->resolution_along),
          in_mm(panel.dots->dot_diameter)};
}

void draw_lattice(const Context& c, Sketch& sketch, const Size& size, double scale, Spot corner,
                  std::string_view colour) {
  const double radius = size.dot / 2 * scale;
  const auto each = [&](const Pen& pen, std::string_view fill) {
    for (int row = 0; row < rows; ++row) {
      for (int column = 0; column < columns; ++column) {
        sketch.circle({corner.x + radius + column * size.across * scale,
                       corner.y + radius + row * size.along * scale},
                      radius, pen, fill);
      }
    }
  };
  each({"none", 0.1, ""}, colour);
  each({c.templates.setting("drawing.outline"), 0.3, ""}, "none");
}

void draw_sizes(const Context& c, Sketch& sketch, const Size& size, double scale, Spot corner) {
  const std::string& colour = c.templates.setting("drawing.dimension");
  const double radius = size.dot / 2 * scale;
  const double bottom = corner.y + size.height() * scale;
  const auto text = [&](const std::string& key, double value) {
    return c.words(c.of_motion(key), {{"VALUE", c.measure(value * 1000, "um", 3)}});
  };
  sketch.dimension_across(corner.x + radius, corner.x + radius + size.across * scale, bottom + 3,
                          text("dots.pitch", size.across), colour);
  sketch.dimension_across(corner.x, corner.x + 2 * radius, bottom + 7.5, text("dots.dot", size.dot),
                          colour);
  const double right = corner.x + size.width() * scale + 2.5;
  sketch.dimension_down(right, corner.y + radius, corner.y + radius + size.along * scale,
                        c.measure(size.along * 1000, "um", 3), colour);
}

}  // namespace

std::string sketch_dots(const Context& c) {
  const std::vector<Panel> list = panels(c);
  const std::size_t shown = std::min(list.size(), most_panels);
  double width = 0;
  double height = 0;
  for (std::size_t i = 0; i < shown; ++i) {
    width = std::max(width, size_of(list[i]).width());
    height = std::max(height, size_of(list[i]).height());
  }
  const Scale scale = fitting_scale(width, height, panel_width, panel_height);
  const double panel = panel_width + gap;
  Sketch sketch(panel * static_cast<double>(shown), head_room + height * scale.factor + foot_room);
  for (std::size_t i = 0; i < shown; ++i) {
    const Size size = size_of(list[i]);
    const Spot corner{panel * static_cast<double>(i) + 1, head_room};
    sketch.label({corner.x, 5}, "start", 8, names_text(c, list[i].channels), true);
    const bool alone = list[i].channels.size() == 1;  // dots of several inks are grey
    draw_lattice(c, sketch, size, scale.factor, corner,
                 fill_of(c, alone ? list[i].channels.front() : std::string(), 0));
    draw_sizes(c, sketch, size, scale.factor, corner);
  }
  const std::string key = list.size() > shown ? "dots.caption_some" : "dots.caption";
  return sketch.figure(c.words(c.of_motion(key), {{"SCALE", scale.text},
                                                  {"SHOWN", std::to_string(shown)},
                                                  {"COUNT", std::to_string(list.size())}}),
                       "", false);
}

}  // namespace output
