#include "output/plot.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "output/format.h"
#include "output/templates.h"

namespace output {
namespace {

constexpr double tick = 1.2;         ///< length of a tick [mm]
constexpr double number_size = 6.5;  ///< type size [pt]
constexpr double label_size = 7;     ///< [pt]
constexpr std::size_t most_across = 7, most_up = 6;
constexpr std::string_view ink = "000000", grid = "CCCCCC";
constexpr double slack = 1e-9;  ///< of a tick's step

/// In the unit told.
std::vector<double> ticks(const Axis& axis, std::size_t most) {
  const double low = axis.low * axis.told_in, high = axis.high * axis.told_in;
  return axis.logarithmic ? decade_ticks(low, high) : round_ticks(low, high, most);
}

/// From 0 at the low end to 1 at the high one.
double share(const Axis& axis, double value) {
  const double place = axis.logarithmic
                           ? std::log(value / axis.low) / std::log(axis.high / axis.low)
                           : (value - axis.low) / (axis.high - axis.low);
  return std::clamp(place, 0.0, 1.0);
}

Axis told_axis(const Context& c, const std::string& key, double low, double high, double us) {
  if (!c.in_us_units()) return {c.words(key), low, high, false, 1};
  return {c.words(key + ".us"), low, high, false, us};
}

}  // namespace

Axis length_axis(const Context& c, const std::string& key, double low, double high) {
  constexpr double inch_mm = 25.4;
  return told_axis(c, key, low, high, 1 / inch_mm);
}

Axis speed_axis(const Context& c, const std::string& key, double low, double high) {
  constexpr double foot_m = 0.3048;
  return told_axis(c, key, low, high, 1 / foot_m);
}

std::vector<double> round_ticks(double low, double high, std::size_t most) {
  const double rough = (high - low) / static_cast<double>(most - 1);
  const double decade = std::pow(10.0, std::floor(std::log10(rough)));
  double step = 10 * decade;
  for (const double factor : {5.0, 2.0, 1.0}) {
    if (factor * decade >= rough * (1 - slack)) step = factor * decade;
  }
  std::vector<double> found;
  const auto first = std::llround(std::ceil(low / step - slack));
  const auto last = std::llround(std::floor(high / step + slack));
  for (auto i = first; i <= last; ++i) found.push_back(static_cast<double>(i) * step + 0.0);
  return found;
}

std::vector<double> decade_ticks(double low, double high) {
  std::vector<double> found;
  const auto first = std::lround(std::floor(std::log10(low)));
  const auto last = std::lround(std::floor(std::log10(high)));
  for (auto exponent = first; exponent <= last; ++exponent) {
    const double decade = std::pow(10.0, static_cast<double>(exponent));
    for (const double factor : {1.0, 2.0, 5.0}) {
      const double value = factor * decade;
      if (value >= low * (1 - slack) && value <= high * (1 + slack)) found.push_back(value);
    }
  }
  return found;
}

Plot::Plot(Sketch& sketch, PlotFrame frame, Axis across, Axis up)
    : sketch_(sketch), frame_(frame), across_(std::move(across)), up_(std::move(up)) {}

double Plot::across(double x) const { return frame_.left + frame_.width * share(across_, x); }

double Plot::up(double y) const { return frame_.top + frame_.height * (1 - share(up_, y)); }

Spot Plot::at(double x, double y) const { return {across(x), up(y)}; }

void Plot::draw_ticks_across() const {
  const double foot = frame_.top + frame_.height;
  for (const double value : ticks(across_, most_across)) {
    const double x = across(value / across_.told_in);
    sketch_.line({x, frame_.top}, {x, foot}, {grid, 0.3, ""});
    sketch_.line({x, foot}, {x, foot + tick}, {ink, 0.5, ""});
    sketch_.label({x, foot + tick + 2.8}, "middle", number_size, escaped(number(value, 4)));
  }
}

void Plot::draw_ticks_up() const {
  for (const double value : ticks(up_, most_up)) {
    const double y = up(value / up_.told_in);
    sketch_.line({frame_.left, y}, {frame_.left + frame_.width, y}, {grid, 0.3, ""});
    sketch_.line({frame_.left - tick, y}, {frame_.left, y}, {ink, 0.5, ""});
    sketch_.label({frame_.left - tick - 0.8, y + 0.9}, "end", number_size,
                  escaped(number(value, 4)));
  }
}

void Plot::draw_axes() const {
  draw_ticks_across();
  draw_ticks_up();
  const double foot = frame_.top + frame_.height;
  sketch_.line({frame_.left, frame_.top}, {frame_.left, foot}, {ink, 0.6, ""});
  sketch_.line({frame_.left, foot}, {frame_.left + frame_.width, foot}, {ink, 0.6, ""});
  sketch_.label({frame_.left + frame_.width / 2, foot + tick + 6.6}, "middle", label_size,
                across_.label);
  sketch_.label({frame_.left - tick - 0.8, frame_.top - 2.2}, "start", label_size, up_.label);
}

void Plot::curve(const std::vector<std::pair<double, double>>& points, const Pen& pen) const {
  for (std::size_t i = 1; i < points.size(); ++i) {
    sketch_.line(at(points[i - 1].first, points[i - 1].second),
                 at(points[i].first, points[i].second), pen);
  }
}

/// A white ground under a label whose baseline begins or ends there, so that no line strikes it.
void Plot::clear_for(Spot at, bool ends, const std::string& label) const {
  constexpr double advance = 1.25, ascent = 2.0, descent = 0.6;  // of a letter, about [mm]
  const auto letters = std::count_if(label.begin(), label.end(), [](char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
  });
  const double width = advance * static_cast<double>(letters);
  sketch_.rect({ends ? at.x - width : at.x, at.y - ascent}, width, ascent + descent,
               {"none", 0.1, ""}, "FFFFFF");
}

void Plot::level(double y, const Pen& pen, const std::string& label) const {
  const double height = up(y);
  sketch_.line({frame_.left, height}, {frame_.left + frame_.width, height}, pen);
  const Spot end{frame_.left + frame_.width, height - 0.9};
  clear_for(end, true, label);
  sketch_.label(end, "end", number_size, label);
}

void Plot::mark(double x, double y, const std::string& label, bool below) const {
  const Spot spot = at(x, y);
  const bool right = spot.x < frame_.left + frame_.width / 2;
  const Spot text{spot.x + (right ? 1.8 : -1.8), spot.y + (below ? 3.4 : -1.2)};
  clear_for(text, !right, label);
  sketch_.circle(spot, 0.9, {ink, 0.6, ""}, ink);
  sketch_.label(text, right ? "start" : "end", number_size, label, true);
}

}  // namespace output
