/// A map of line speed against resolution: how fast each arrangement may run at each, and what is
/// asked.
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/plot.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr double alike = 1.03;      ///< limits closer than this share a line
constexpr double label_step = 2.9;  ///< between two labels [mm]
constexpr PlotFrame frame{16, 8, 78, 46};
constexpr double below_dot = 5.5 / frame.height;  ///< of the plot's height, for a dot's label

/// Heads of which as many stand in line.
struct Heads {
  std::vector<std::string> names;
  int in_line = 1;
};

/// Speed times resolution that heads allow; the frequency is their product, so that it stays when
/// the two change against each other.
struct Limit {
  std::vector<Heads> heads;
  double product = 0;  ///< m/min x dpi
  bool chosen = false;
};

double in_m_per_min(calc::Speed speed) { return speed.si() * 60; }

void add_heads(Limit& limit, const calc::Group& group) {
  auto alike_heads = std::find_if(limit.heads.begin(), limit.heads.end(),
                                  [&](const Heads& h) { return h.in_line == group.stack; });
  if (alike_heads == limit.heads.end()) {
    alike_heads = limit.heads.insert(limit.heads.end(), {{}, group.stack});
  }
  std::vector<std::string>& names = alike_heads->names;
  if (std::find(names.begin(), names.end(), group.head) == names.end()) {
    names.push_back(group.head);
  }
}

void add_limit(std::vector<Limit>& limits, const calc::Group& group, bool chosen) {
  const double product = in_m_per_min(group.speed_limit) * in_dpi(group.resolution_along);
  auto limit = std::find_if(limits.begin(), limits.end(), [&](const Limit& l) {
    return std::abs(std::log(l.product / product)) <= std::log(alike);
  });
  if (limit == limits.end()) limit = limits.insert(limits.end(), {{}, product, chosen});
  add_heads(*limit, group);
}

/// "ONE, OTHER, 1 in line", what is common to several told once: the labels have little room.
std::string label_of(const Context& c, const Limit& limit) {
  std::string label;
  for (const Heads& heads : limit.heads) {
    std::string names;
    for (const std::string& name : heads.names) names += (names.empty() ? "" : ", ") + name;
    label += (label.empty() ? "" : ", ") +
             c.counted("plot.head", static_cast<std::size_t>(heads.in_line),
                       {{"HEAD", names}, {"COUNT", std::to_string(heads.in_line)}});
  }
  return label;
}

std::vector<Limit> limits_of(const Context& c) {
  std::vector<Limit> limits;
  for (const calc::Group& group : c.spec.chosen) add_limit(limits, group, true);
  for (const calc::Alternative& other : c.spec.alternatives) {
    for (const calc::Group& group : other.groups) {
      if (!group.scan) add_limit(limits, group, false);
    }
  }
  std::sort(limits.begin(), limits.end(),
            [](const Limit& a, const Limit& b) { return a.product > b.product; });
  return limits;
}

/// The labels stand beside the right end of their lines, moved down where two would touch.
void draw_limits(const Context& c, Sketch& sketch, const Plot& plot,
                 const std::vector<Limit>& limits, const Axis& across) {
  double lowest = frame.top - label_step;
  for (const Limit& limit : limits) {
    const Pen pen{c.templates.setting("drawing.dimension"), limit.chosen ? 1.4 : 0.6,
                  limit.chosen ? "" : "3 2"};
    plot.curve(
        {{across.low, limit.product / across.low}, {across.high, limit.product / across.high}},
        pen);
    const Spot end = plot.at(across.high, limit.product / across.high);
    lowest = std::max(lowest + label_step, end.y + 0.9);
    sketch.label({end.x + 1.6, lowest}, "start", 6.5, label_of(c, limit), limit.chosen);
  }
}

}  // namespace

std::string plot_speed(const Context& c) {
  const bool strokes = std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(),
                                   [](const calc::Group& g) { return g.scan.has_value(); });
  if (c.spec.chosen.empty() || strokes || !c.request.line.speed || !c.spec.required) return {};
  const std::vector<Limit> limits = limits_of(c);
  const double asked = in_m_per_min(c.request.line.speed->high);
  const double along = in_dpi(c.spec.required->along);
  const double delivered = in_dpi(c.spec.chosen.front().resolution_along);
  const Axis across{c.words("plot.along"), std::min(along, delivered) / 2,
                    std::max(along, delivered) * 2, true};
  const double slowest = limits.back().product / across.high;
  const double fastest = limits.front().product / across.low;
  Sketch sketch(paper_width, 66);
  const double highest = std::max(asked, fastest) * 1.1;
  // Low enough that the label under the dot stands above the axis.
  const double label_room = asked * std::pow(highest / asked, -below_dot / (1 - below_dot));
  Axis up =
      speed_axis(c, "plot.speed", std::min({asked / 1.3, slowest / 1.3, label_room}), highest);
  up.logarithmic = true;
  const Plot plot(sketch, frame, across, up);
  plot.draw_axes();
  draw_limits(c, sketch, plot, limits, across);
  plot.mark(along, asked, c.words("plot.asked"));
  if (std::abs(std::log(delivered / along)) > std::log(alike)) {
    plot.mark(delivered, asked, c.words("plot.designed"), true);
  }
  const bool alone =
      std::all_of(limits.begin(), limits.end(), [](const Limit& limit) { return limit.chosen; });
  return sketch.figure(c.words(alone ? "plot.speed_caption_alone" : "plot.speed_caption"), "",
                       false);
}

}  // namespace output
