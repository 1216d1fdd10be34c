/// Outlines of plain shapes.
#pragma once

#include <vector>

#include "output/display_list.h"

namespace output {

/// A filled rectangle.
Path filled(double x, double y, double width, double height, Colour colour);
/// A straight line of the given weight [pt].
Path ruled(Point from, Point to, Colour colour, double weight);
/// The outline through the points, neither filled nor stroked; at least one point.
Path outline(const std::vector<Point>& points, bool closed);
/// A rectangle's outline, neither filled nor stroked.
Path rectangle(double x, double y, double width, double height);
/// A circle's outline of four curves, off the true circle by less than 0.03 % of the radius.
Path circle(Point centre, double radius);

/// Moves an item down by `distance` [pt].
void shift_down(Item& item, double distance);

}  // namespace output
