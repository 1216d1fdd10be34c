/// A drawing as markup: shapes in millimetres on paper, collected into a figure.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace output {

/// How an outline is drawn: colour RRGGBB or "none", weight [pt], dash "on off" or empty.
struct Pen {
  std::string_view colour = "000000";
  double weight = 0.5;
  std::string_view dash;
};

struct Spot {
  double x = 0, y = 0;  ///< [mm on paper], y down
};

class Sketch {
 public:
  /// width, height > 0 [mm on paper]
  Sketch(double width, double height) : width_(width), height_(height) {}

  /// Makes the drawing at least so high [mm on paper].
  void stretch(double height) { height_ = height > height_ ? height : height_; }
  void line(Spot from, Spot to, const Pen& pen);
  void rect(Spot corner, double width, double height, const Pen& pen, std::string_view fill);
  void circle(Spot centre, double radius, const Pen& pen, std::string_view fill);
  void polygon(const std::vector<Spot>& corners, const Pen& pen, std::string_view fill);
  /// A four-cornered field cut into bands, one a fill, from its edge 0-1 to its edge 3-2.
  void bands(const std::vector<Spot>& box, const Pen& pen, const std::vector<std::string>& fills);
  /// `text` is markup (escaped); anchor is start, middle or end.
  void label(Spot at, std::string_view anchor, double size, const std::string& text,
             bool bold = false, double rotate = 0);
  /// A line with a head at its end.
  void arrow(Spot from, Spot to, const Pen& pen);
  /// Whether a dimension across of that length [mm on paper] has room for its text above the line.
  static bool holds_text(double length, std::string_view text);
  /// A horizontal dimension: ticks at both ends, the text above the line, or beside it when the
  /// line is too short for it. `text` is markup.
  void dimension_across(double x1, double x2, double y, const std::string& text,
                        std::string_view colour);
  /// A vertical dimension, the text to the right of the line.
  void dimension_down(double x, double y1, double y2, const std::string& text,
                      std::string_view colour);

  /// The whole figure; caption is plain text, key a margin key or empty.
  std::string figure(std::string_view caption, std::string_view key, bool wide) const;

 private:
  double width_, height_;
  std::string shapes_;
};

/// Paper millimetres per real millimetre: the largest of the scales of ISO 5455 at which a drawing
/// of that real size fits into the paper size; all > 0.
struct Scale {
  double factor = 1;
  std::string text;  ///< "1:10", "500:1"
};
Scale fitting_scale(double real_width, double real_height, double paper_width, double paper_height);

}  // namespace output
