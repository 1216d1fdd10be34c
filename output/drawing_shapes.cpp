#include "output/drawing_shapes.h"

namespace output {

using Verb = PathStep::Verb;

Path outline(const std::vector<Point>& points, bool closed) {
  Path path;
  path.steps.reserve(points.size() + 1);
  for (const Point& point : points) {
    path.steps.push_back({path.steps.empty() ? Verb::move : Verb::line, point, {}, {}});
  }
  if (closed) path.steps.push_back({Verb::close, {}, {}, {}});
  return path;
}

Path rectangle(double x, double y, double width, double height) {
  return outline({{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}, true);
}

Path filled(double x, double y, double width, double height, Colour colour) {
  Path path = rectangle(x, y, width, height);
  path.fill = colour;
  return path;
}

Path ruled(Point from, Point to, Colour colour, double weight) {
  Path path = outline({from, to}, false);
  path.stroke = Stroke{colour, weight, {}};
  return path;
}

Path circle(Point centre, double radius) {
  const double k = radius * 0.5522847498;  // 4/3 (sqrt 2 - 1)
  const double x = centre.x, y = centre.y, r = radius;
  Path path;
  path.steps = {{Verb::move, {x + r, y}, {}, {}},
                {Verb::curve, {x + r, y + k}, {x + k, y + r}, {x, y + r}},
                {Verb::curve, {x - k, y + r}, {x - r, y + k}, {x - r, y}},
                {Verb::curve, {x - r, y - k}, {x - k, y - r}, {x, y - r}},
                {Verb::curve, {x + k, y - r}, {x + r, y - k}, {x + r, y}},
                {Verb::close, {}, {}, {}}};
  return path;
}

namespace {

struct Shift {
  double distance;
  void operator()(TextRun& run) const { run.y += distance; }
  void operator()(Link& link) const { link.y += distance; }
  void operator()(Image& image) const { image.y += distance; }
  void operator()(Path& path) const {
    for (PathStep& step : path.steps) {
      step.a.y += distance;
      step.b.y += distance;
      step.c.y += distance;
    }
  }
};

}  // namespace

void shift_down(Item& item, double distance) { std::visit(Shift{distance}, item); }

}  // namespace output
