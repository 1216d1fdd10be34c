/// A plot as part of a sketch: two axes with ticks at round numbers, curves and marks with their
/// labels beside them, so that no legend is needed and grey print reads too.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output/compose_context.h"
#include "output/sketch.h"

namespace output {

/// Multiples of 1, 2 or 5 times a power of ten from `low` to `high`, at most `most` of them.
/// Finite, low < high, most >= 2.
std::vector<double> round_ticks(double low, double high, std::size_t most);
/// 1, 2 and 5 times each power of ten within 0 < low < high.
std::vector<double> decade_ticks(double low, double high);

struct Axis {
  std::string label;  ///< quantity and unit, as markup
  double low = 0, high = 1;
  bool logarithmic = false;
  double told_in = 1;  ///< how many of the unit told at the ticks make one of the values
};

/// An axis of lengths in mm, or of speeds in m/min, told in the units of the document; the words
/// `key`, with `.us` behind it in those of the United States, are its label.
Axis length_axis(const Context& context, const std::string& key, double low, double high);
Axis speed_axis(const Context& context, const std::string& key, double low, double high);

/// Where the axes stand on the sketch [mm].
struct PlotFrame {
  double left = 0, top = 0, width = 0, height = 0;
};

class Plot {
 public:
  /// The sketch must outlive the plot.
  Plot(Sketch& sketch, PlotFrame frame, Axis across, Axis up);

  /// Axes, ticks, numbers and labels.
  void draw_axes() const;
  /// The place of a point; beyond the axes it is moved to their end.
  Spot at(double x, double y) const;
  void curve(const std::vector<std::pair<double, double>>& points, const Pen& pen) const;
  /// A line across the plot at a height, its label above its right end.
  void level(double y, const Pen& pen, const std::string& label) const;
  /// A dot with a label above or below it, on the side that has room.
  void mark(double x, double y, const std::string& label, bool below = false) const;

 private:
  double across(double x) const;
  double up(double y) const;
  void draw_ticks_across() const;
  void draw_ticks_up() const;
  void clear_for(Spot at, bool ends, const std::string& label) const;

  Sketch& sketch_;
  PlotFrame frame_;
  Axis across_, up_;
};

}  // namespace output
