#include "output/sketch.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "output/format.h"
#include "output/templates.h"

namespace output {
namespace {

constexpr double tick = 0.9;          ///< half length of a dimension's tick [mm]
constexpr double head_length = 2.2;   ///< of an arrow [mm]
constexpr double head_width = 0.8;    ///< half width of its head [mm]
constexpr double dimension_size = 7;  ///< type size [pt]
constexpr double narrowest = 12;      ///< a dimension shorter than this has its text outside [mm]

/// A coordinate to a thousandth of a millimetre, which no printer shows.
std::string mm(double value) { return exact(std::round(value * 1000) / 1000 + 0.0); }

void put(std::string& to, std::string_view name, std::string_view value) {
  to += ' ';
  to += name;
  to += "=\"";
  to += value;
  to += '"';
}

void put_pen(std::string& to, const Pen& pen) {
  put(to, "stroke", pen.colour);
  put(to, "weight", mm(pen.weight));
  if (!pen.dash.empty()) put(to, "dash", pen.dash);
}

}  // namespace

void Sketch::line(Spot from, Spot to, const Pen& pen) {
  shapes_ += "<line";
  put(shapes_, "x1", mm(from.x));
  put(shapes_, "y1", mm(from.y));
  put(shapes_, "x2", mm(to.x));
  put(shapes_, "y2", mm(to.y));
  put_pen(shapes_, pen);
  shapes_ += "/>\n";
}

void Sketch::rect(Spot corner, double width, double height, const Pen& pen, std::string_view fill) {
  shapes_ += "<rect";
  put(shapes_, "x", mm(corner.x));
  put(shapes_, "y", mm(corner.y));
  put(shapes_, "width", mm(width));
  put(shapes_, "height", mm(height));
  put_pen(shapes_, pen);
  put(shapes_, "fill", fill);
  shapes_ += "/>\n";
}

void Sketch::circle(Spot centre, double radius, const Pen& pen, std::string_view fill) {
  shapes_ += "<circle";
  put(shapes_, "x", mm(centre.x));
  put(shapes_, "y", mm(centre.y));
  put(shapes_, "radius", mm(radius));
  put_pen(shapes_, pen);
  put(shapes_, "fill", fill);
  shapes_ += "/>\n";
}

void Sketch::polygon(const std::vector<Spot>& corners, const Pen& pen, std::string_view fill) {
  std::string points;
  for (const Spot& corner : corners) {
    points += (points.empty() ? "" : " ") + mm(corner.x) + "," + mm(corner.y);
  }
  shapes_ += "<poly";
  put(shapes_, "points", points);
  put(shapes_, "closed", "yes");
  put_pen(shapes_, pen);
  put(shapes_, "fill", fill);
  shapes_ += "/>\n";
}

void Sketch::bands(const std::vector<Spot>& box, const Pen& pen,
                   const std::vector<std::string>& fills) {
  if (fills.size() == 1) {
    polygon(box, pen, fills.front());
    return;
  }
  const auto between = [](Spot from, Spot to, double share) {
    return Spot{from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
  };
  const auto count = static_cast<double>(fills.size());
  const Pen seam{pen.colour, pen.weight / 2, ""};
  for (std::size_t i = 0; i < fills.size(); ++i) {
    const double near = static_cast<double>(i) / count;
    const double far = static_cast<double>(i + 1) / count;
    polygon({between(box[0], box[3], near), between(box[1], box[2], near),
             between(box[1], box[2], far), between(box[0], box[3], far)},
            seam, fills[i]);
  }
  polygon(box, pen, "none");
}

void Sketch::label(Spot at, std::string_view anchor, double size, const std::string& text,
                   bool bold, double rotate) {
  shapes_ += "<label";
  put(shapes_, "x", mm(at.x));
  put(shapes_, "y", mm(at.y));
  put(shapes_, "anchor", anchor);
  put(shapes_, "size", mm(size));
  if (bold) put(shapes_, "weight", "bold");
  if (rotate != 0) put(shapes_, "rotate", mm(rotate));
  shapes_ += ">" + text + "</label>\n";
}

void Sketch::arrow(Spot from, Spot to, const Pen& pen) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  const double ux = length > 0 ? (to.x - from.x) / length : 0;
  const double uy = length > 0 ? (to.y - from.y) / length : 1;
  const Spot neck{to.x - ux * head_length, to.y - uy * head_length};
  line(from, neck, pen);
  polygon({to,
           {neck.x - uy * head_width, neck.y + ux * head_width},
           {neck.x + uy * head_width, neck.y - ux * head_width}},
          {pen.colour, pen.weight, ""}, pen.colour);
}

bool Sketch::holds_text(double length, std::string_view text) {
  // A label wider than the way between the ticks would be struck through by them.
  constexpr double mean_advance = 0.5, point = 25.4 / 72;
  const auto letters = std::count_if(text.begin(), text.end(), [](char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
  });
  const double need = mean_advance * dimension_size * point * static_cast<double>(letters) + 3;
  return length >= std::max(narrowest, need);
}

void Sketch::dimension_across(double x1, double x2, double y, const std::string& text,
                              std::string_view colour) {
  const Pen pen{colour, 0.5, ""};
  line({x1, y}, {x2, y}, pen);
  line({x1, y - tick}, {x1, y + tick}, pen);
  line({x2, y - tick}, {x2, y + tick}, pen);
  if (holds_text(x2 - x1, text)) {
    label({(x1 + x2) / 2, y - 1.3}, "middle", dimension_size, text);
  } else {
    label({x2 + 1.6, y + 0.9}, "start", dimension_size, text);
  }
}

void Sketch::dimension_down(double x, double y1, double y2, const std::string& text,
                            std::string_view colour) {
  const Pen pen{colour, 0.5, ""};
  line({x, y1}, {x, y2}, pen);
  line({x - tick, y1}, {x + tick, y1}, pen);
  line({x - tick, y2}, {x + tick, y2}, pen);
  label({x + tick + 1.2, (y1 + y2) / 2 + 0.9}, "start", dimension_size, text);
}

std::string Sketch::figure(std::string_view caption, std::string_view key, bool wide) const {
  std::string text = "<figure";
  put(text, "caption", escaped(caption));
  if (!key.empty()) put(text, "key", escaped(key));
  if (wide) put(text, "wide", "yes");
  text += "><drawing";
  put(text, "width", mm(width_));
  put(text, "height", mm(height_));
  return text + ">\n" + shapes_ + "</drawing></figure>\n";
}

Scale fitting_scale(double real_width, double real_height, double paper_width,
                    double paper_height) {
  constexpr std::array<double, 3> steps{5, 2, 1};
  const double most = std::min(paper_width / real_width, paper_height / real_height);
  for (int exponent = 6; exponent >= -6; --exponent) {
    const double decade = std::pow(10.0, exponent);
    for (const double step : steps) {
      // Below 1:1 the series runs 1:2, 1:5, 1:10, so each factor is the inverse of a whole number.
      const double larger = step * decade;
      const double factor = decade >= 1 ? larger : 1 / std::round(1 / larger);
      if (factor > most * (1 + 1e-9)) continue;
      return {factor, factor >= 1 ? number(factor, 1) + ":1" : "1:" + number(1 / factor, 3)};
    }
  }
  return {most, number(most, 2) + ":1"};
}

}  // namespace output
