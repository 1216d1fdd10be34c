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

/// Angle [rad] that a row of heads takes round a body: 2 atan(((depth + gap)/2)/(r + H)), so that
/// the plates of neighbours, each across its own radius, stand a gap apart at their nearest
/// corners. r + H > 0. Plane geometry.
double radial_pitch_angle(Length depth, Length gap, Length radius, Length gap_to_body);

/// Rows [1] of that angle that fit round a body, at least one: they take no more than `share` of
/// the way round, and none jets upward, so that the outermost stand at most half a turn apart.
/// angle > 0.
int rows_round(double angle, double share);

/// Half the room along the line [m] that heads need whose outermost stands at an angle from the
/// top, 0 to pi/2, its plate at `reach` from the axis, `height` above the plate.
Length half_room(double angle, Length reach, Length depth, Length height);

/// By how much the end of an image all round a body misses its start [m]: pi dD, dD the deviation
/// of the diameter from that the image was made for.
Length seam_error(Length deviation);

/// Least radius [m] at which the slope stays within a limit: c / (2 sin(limit)). 0 < limit < pi/2.
Length least_radius(Length depth, double slope);

}  // namespace calc
