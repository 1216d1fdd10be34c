/// Printing on a curved body with nozzle rows that lie in a plane.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

inline constexpr double slope_warning = 15 * 3.14159265358979323846 / 180;  ///< [rad]
inline constexpr double slope_limit = 25 * 3.14159265358979323846 / 180;    ///< [rad]

/// Slope of the surface [rad] where the outermost row lands: asin(c / 2r), c = depth of all rows
/// along the curve. None where c > 2r: the row misses the body. radius > 0. Plane geometry.
std::optional<double> landing_slope(Length depth, Length radius);

/// Extra gap [m] at the outermost row: r - sqrt(r^2 - c^2/4), computed without cancellation as
/// (c^2/4) / (r + sqrt(r^2 - c^2/4)). None where c > 2r.
std::optional<Length> sagitta(Length chord, Length radius);

/// Stretch of the pitch on the surface at a slope [1]: 1 / cos(slope). |slope| < pi/2.
double pitch_stretch(double slope);

/// Least radius [m] at which the slope stays within a limit: c / (2 sin(limit)). 0 < limit < pi/2.
Length least_radius(Length depth, double slope);

}  // namespace calc
