/// What the eye resolves at a distance. Angles in radians.
#pragma once

#include "calc/quantity.h"

namespace calc {

inline constexpr double pi = 3.14159265358979323846;
inline constexpr double one_arc_minute = pi / (180.0 * 60.0);
inline constexpr double one_arc_second = one_arc_minute / 60.0;

/// Angle [rad] that the finest detail subtends for a visual acuity (decimal, 1 = normal sight):
/// one arc minute over the acuity. acuity > 0. Source: ISO 8596.
double acuity_angle(double acuity);

/// Length [m] that subtends `angle` at `distance`: 2 D tan(a/2). distance >= 0, 0 < angle < pi.
/// Holds for the height of text as for the pitch of dots. Source: plane geometry.
Length subtended_length(Length distance, double angle);

/// Least resolution [1/m] whose dots the eye no longer separates at `distance`:
/// 1 / (2 D tan(a/2)). distance > 0, 0 < angle < pi. Source: plane geometry, ISO 8596 for 1'.
Resolution eye_limit(Length distance, double angle = one_arc_minute);

/// Distance [m] from which dots of `resolution` are no longer separated: 1 / (2 R tan(a/2)).
/// resolution > 0. Source: plane geometry.
Length eye_limit_distance(Resolution resolution, double angle = one_arc_minute);

/// Largest step [m] between two lines that vernier acuity does not see at `distance`, at 10 arc
/// seconds unless told otherwise. Source: Regan 2000, quoted by Bernal, Allebach and Pizlo 2007.
Length vernier_limit(Length distance, double angle = 10 * one_arc_second);

}  // namespace calc
