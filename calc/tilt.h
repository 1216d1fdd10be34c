/// Heads turned about the normal of their nozzle plate, so that their nozzles lie closer together
/// across the line: plane geometry. Angles in radians, positive from the nozzle axis to the motion
/// axis, so that a nozzle at (x, y) of its plate prints at x cos t - y sin t across the line.
#pragma once

#include <optional>
#include <vector>

#include "calc/quantity.h"

namespace calc {

inline constexpr double most_tilt = 3.14159265358979323846 / 3;  ///< [rad]
inline constexpr double most_uneven = 0.10;  ///< of the pitch, by which two nozzles may be off it

/// Angle [rad], above 0, at which k heads deliver a resolution exactly: acos(k native / wanted).
/// None where they meet it untilted, or not at most_tilt. All > 0.
std::optional<double> tilt_for(Resolution native, int interleave, Resolution wanted);

/// Least angle [rad] at which k heads deliver at least a resolution and neighbouring nozzles print
/// a whole number of lines apart along the motion: asin(j native / lines), j = 1, 2... None where
/// they meet the resolution untilted, or no angle up to most_tilt does. All > 0.
std::optional<double> tilt_by_lines(Resolution native, int interleave, Resolution wanted,
                                    Resolution lines);

/// Resolution of one head's nozzles across the line [1/m]: native / cos t. |tilt| <= most_tilt.
Resolution tilted_native(Resolution native, double tilt);

/// Swath [m] in which no row of a field of that depth is missing: S cos t - b sin t; may be
/// negative.
Length tilted_swath(Length swath, Length field, double tilt);

/// How far the widest or the narrowest gap between neighbouring nozzles is off the tilted pitch
/// [1]: of rows at `offsets` (in nozzle pitches of a row) and `places` along the motion, one for
/// each row. A head's ends, where a row is missing, do not count. Lists of one length, not empty.
double unevenness(Resolution row_pitch, Resolution native, const std::vector<double>& offsets,
                  const std::vector<Length>& places, double tilt);

/// By how much of the tilted pitch the widest of those gaps exceeds it [1], at least 0. As before.
double widening(Resolution row_pitch, Resolution native, const std::vector<double>& offsets,
                const std::vector<Length>& places, double tilt);

/// Where the first nozzle of each row prints along the motion [m], against that of the first row:
/// x sin t + y cos t. Lists of one length, not empty.
std::vector<Length> rows_along(Resolution row_pitch, const std::vector<double>& offsets,
                               const std::vector<Length>& places, double tilt);

/// Where each row prints within the pitch of a row, from 0 to 1 and ascending.
std::vector<double> row_phases(Resolution row_pitch, const std::vector<double>& offsets,
                               const std::vector<Length>& places, double tilt);

/// Least resolution along the motion [1/m], from a wanted one on, at which neighbouring nozzles
/// print whole lines apart, so that one clock fires them all: j / (p sin t). `pitch` untilted, > 0;
/// tilt not 0.
Resolution whole_lines(Resolution wanted, Length pitch, double tilt);

/// Angle error [rad] that moves the first against the last nozzle of a row by `shift` across the
/// line: shift / (row sin t), for small ones, from d(row cos t) = -row sin t dt. row > 0; tilt not
/// 0.
double tilt_tolerance(Length row, double tilt, Length shift);

/// Lines [1] that neighbouring nozzles print apart: p sin t R_m.
double lines_apart(Resolution motion_axis, Length pitch, double tilt);

/// Rows [1] that n tilted heads stand in, so that the bodies of one row keep a gap: the least r
/// with r P sin t >= depth + gap or r P cos t >= width + gap, at most n. One row of slanted bodies
/// needs P sin t >= depth + gap. head_pitch > 0.
int tilted_rows(int heads, Length body_width, Length body_depth, Length gap, Length head_pitch,
                double tilt);

/// Room of a tilted body along the motion [m]: w sin t + d cos t.
Length tilted_depth(Length body_width, Length body_depth, double tilt);

}  // namespace calc
