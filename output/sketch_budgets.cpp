/// Budgets of placement as bars against their limits.
#include <algorithm>
#include <cmath>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double width = 127;         ///< [mm on paper] of labels and bars
constexpr double letter_width = 1.3;  ///< of a label, on average
constexpr double least_label = 43, most_label = 64;
constexpr double row_height = 6;
constexpr double bar_height = 3;
constexpr double head_room = 3, axis_room = 11, edge = 3;
constexpr double label_size = 7;
constexpr std::size_t most_rows = 24;

/// The least of 1, 2, 5 times a power of ten that is at least `value` > 0.
double round_step(double value) {
  const double decade = std::pow(10, std::floor(std::log10(value)));
  for (const double step : {1.0, 2.0, 5.0}) {
    if (step * decade >= value) return step * decade;
  }
  return 10 * decade;
}

/// Micrometres to paper.
struct Axis {
  double step = 1, most = 1;
  double label = least_label;  ///< room of the labels
  double x(double um) const { return label + um / most * (width - label); }
};

std::string row_label(const Context& c, const calc::Budget& budget) {
  std::string name = c.words("budget." + std::string(budget.name));
  if (!budget.group.empty() && c.spec.chosen.size() > 1) {
    name += ", " + escaped(shortened(c.group_name(budget.group), 18));
  }
  return name + ", " + c.words(c.of_motion(budget.motion ? "budget.motion" : "budget.nozzle"));
}

Axis axis_of(const Context& c, const std::vector<calc::Budget>& budgets, std::size_t shown) {
  double most = 0;
  std::size_t letters = 0;
  for (std::size_t i = 0; i < shown; ++i) {
    most = std::max(
        {most, in_um(budgets[i].expanded), in_um(budgets[i].worst), in_um(budgets[i].limit)});
    letters = std::max(letters, row_label(c, budgets[i]).size());
  }
  const double step = round_step(most / 6);
  const double label = letter_width * static_cast<double>(letters);
  return {step, std::ceil(most / step) * step, std::clamp(label, least_label, most_label)};
}

void draw_axis(const Context& c, Sketch& sketch, const Axis& axis, double bottom) {
  for (int i = 0; i * axis.step <= axis.most * (1 + 1e-9); ++i) {
    const double x = axis.x(i * axis.step);
    sketch.line({x, head_room}, {x, bottom + 1}, {"C0C0C0", 0.3, ""});
    sketch.label({x, bottom + 4}, "middle", label_size, number(i * axis.step, 4));
  }
  sketch.line({axis.x(0), bottom}, {axis.x(axis.most), bottom}, {"000000", 0.5, ""});
  sketch.label({axis.x(axis.most / 2), bottom + 8.5}, "middle", label_size,
               c.words("budget.axis_label"));
}

/// The bar is U, the thin line on it the worst case, the upright stroke the limit.
void draw_row(const Context& c, Sketch& sketch, const Axis& axis, const calc::Budget& budget,
              double top) {
  const std::string& outline = c.templates.setting("drawing.outline");
  const double middle = top + row_height / 2;
  sketch.label({0, middle + 0.9}, "start", label_size, row_label(c, budget));
  const std::string fill = budget.pass ? c.templates.setting("drawing.bar") : std::string("FFFFFF");
  sketch.rect({axis.x(0), middle - bar_height / 2}, axis.x(in_um(budget.expanded)) - axis.x(0),
              bar_height, {outline, 0.4, ""}, fill);
  const double worst = axis.x(in_um(budget.worst));
  const Pen whisker{outline, 0.4, "2 1"};
  sketch.line({axis.x(in_um(budget.expanded)), middle}, {worst, middle}, whisker);
  sketch.line({worst, middle - 0.8}, {worst, middle + 0.8}, {outline, 0.4, ""});
  const double limit = axis.x(in_um(budget.limit));
  sketch.line({limit, middle - 2.4}, {limit, middle + 2.4},
              {c.templates.setting("drawing.travel"), 1.6, ""});
}

}  // namespace

std::string sketch_budgets(const Context& c) {
  const std::vector<calc::Budget>& budgets = c.spec.placement;
  const std::size_t shown = std::min(budgets.size(), most_rows);
  const Axis axis = axis_of(c, budgets, shown);
  const double bottom = head_room + row_height * static_cast<double>(shown);
  Sketch sketch(width + edge, bottom + axis_room);
  draw_axis(c, sketch, axis, bottom);
  for (std::size_t i = 0; i < shown; ++i) {
    draw_row(c, sketch, axis, budgets[i], head_room + row_height * static_cast<double>(i));
  }
  const std::string key = budgets.size() > shown ? "budget.caption_some" : "budget.caption";
  return sketch.figure(
      c.words(key, {{"SHOWN", std::to_string(shown)}, {"COUNT", std::to_string(budgets.size())}}),
      "", false);
}

}  // namespace output
