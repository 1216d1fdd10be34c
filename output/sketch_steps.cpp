/// What the best station costs over the line speed.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/plot.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr PlotFrame frame{16, 8, 84, 46};
constexpr double in_thousands = 1e-3;
constexpr double label_room = 3;  ///< between two labels [mm]

double in_m_per_min(calc::Speed speed) { return speed.si() * 60; }

using Points = std::vector<std::pair<double, double>>;

/// Pieces of a curve: it is broken where no station is feasible.
std::vector<Points> pieces(const std::vector<calc::SpeedStep>& steps,
                           calc::Money calc::SpeedStep::*sum) {
  std::vector<Points> list(1);
  for (const calc::SpeedStep& step : steps) {
    if (step.heads > 0) {
      list.back().emplace_back(in_m_per_min(step.speed), (step.*sum).major() * in_thousands);
    } else if (!list.back().empty()) {
      list.emplace_back();
    }
  }
  if (list.back().empty()) list.pop_back();
  return list;
}

void draw_sum(Sketch& sketch, const Plot& plot, const std::vector<Points>& curve, const Pen& pen,
              const std::string& label, double& lowest) {
  for (const Points& piece : curve) {
    plot.curve(piece, pen);
    for (const auto& [x, y] : piece) sketch.circle(plot.at(x, y), 0.5, pen, pen.colour);
  }
  const Spot end = plot.at(curve.back().back().first, curve.back().back().second);
  lowest = std::max(lowest + label_room, end.y + 0.9);
  sketch.label({frame.left + frame.width + 1.6, lowest}, "start", 6.5, label);
}

}  // namespace

std::string plot_steps(const Context& c) {
  const std::vector<calc::SpeedStep>& steps = c.spec.speed_steps;
  const auto feasible =
      std::count_if(steps.begin(), steps.end(), [](const auto& step) { return step.heads > 0; });
  if (feasible < 2 || !c.spec.station) return {};
  const auto owned = pieces(steps, &calc::SpeedStep::ownership);
  const auto bought = pieces(steps, &calc::SpeedStep::capital);
  double most = 0;
  for (const calc::SpeedStep& step : steps) {
    most = std::max({most, step.ownership.major(), step.capital.major()});
  }
  Sketch sketch(paper_width, 66);
  const double asked = in_m_per_min(c.request.line.speed->high);
  const Plot plot(sketch, frame,
                  speed_axis(c, "plot.speed", 0, in_m_per_min(steps.back().speed) * 1.02),
                  {c.words("plot.money", {{"CURRENCY", c.spec.station->currency}}), 0,
                   most * in_thousands * 1.1});
  plot.draw_axes();
  plot.curve({{asked, 0}, {asked, most * in_thousands * 1.1}}, {"000000", 0.6, "3 2"});
  double lowest = frame.top - label_room;
  draw_sum(sketch, plot, owned, {c.templates.setting("drawing.dimension"), 1.2, ""},
           c.words("plot.ownership", {{"YEARS", std::to_string(c.spec.station->cost.years)}}),
           lowest);
  draw_sum(sketch, plot, bought, {c.templates.setting("drawing.travel"), 1.2, ""},
           c.words("plot.capital"), lowest);
  return sketch.figure(c.words("plot.steps_caption"), "", false);
}

}  // namespace output
