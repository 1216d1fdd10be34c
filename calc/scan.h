/// A scanning carriage: interlacing, advance, strokes and their time.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

inline constexpr int default_quality_passes = 2;  ///< common practice
inline constexpr Acceleration default_carriage_acceleration = Acceleration::from_si(10);

/// Interlace steps [1]: ceil(R_n / native). Both > 0.
int interlace_steps(Resolution required, Resolution native);

/// Nozzles end to end [1] of heads in line less their overlaps: N + (n - 1)(N - o). heads >= 1,
/// 0 <= overlap < nozzles.
int joined_nozzles(int nozzles, int heads, int overlap_nozzles);

/// Advance in nozzle rows of the finished lattice [1]: the largest J <= N/N_q with gcd(J, s) = 1,
/// so that every row is printed exactly N_q times. None if N < N_q. Source: number theory.
std::optional<int> advance_rows(int nozzles, int interlace_steps, int quality_passes);

/// Advance [m]: J / (s native).
Length advance_length(int advance_rows, int interlace_steps, Resolution native);

/// Nozzles of a colour that print [1], heads end to end: J N_q, J the advance in rows of the
/// finished lattice. The others of the line rest.
int printing_nozzles(Length advance, Resolution nozzle_axis, int quality_passes);

/// Carriage speed [m/s]: usable frequency / R_m, times N_q only with a column-alternating mask,
/// and not above the carriage's own limit.
Speed carriage_speed(Frequency usable, Resolution motion_axis, int quality_passes,
                     bool alternating_mask, std::optional<Speed> limit);

/// Strokes [1] for an image of a length: ceil(L/A) + s N_q - 1.
int strokes(Length image_length, Length advance, int interlace_steps, int quality_passes);

/// Time of a stroke [s]: (W + array)/v + max(2 v/a + dwell, step). speed, acceleration > 0.
Time stroke_time(Length width, Length array, Speed speed, Acceleration acceleration, Time dwell,
                 Time step);

/// The carriage speed [m/s] at which a stroke takes just so long: the lesser root of
/// (W + array)/v + 2 v/a + dwell = stroke. None where no speed is so quick.
std::optional<Speed> speed_for_stroke(Length way, Time stroke, Acceleration acceleration,
                                      Time dwell);

/// Overtravel on each side [m] to come to a stop: v^2 / (2 a).
Length overtravel(Speed speed, Acceleration acceleration);

/// Least machine width [m]: W + array + v^2/a + park.
Length machine_width(Length width, Length array, Speed speed, Acceleration acceleration,
                     Length park);

/// Time to print one image [s]: strokes times a stroke.
Time image_time(int strokes, Time stroke);

/// Area printed per time [m2/s]: W L over the image's time.
AreaRate scan_throughput(Length width, Length image_length, Time image);

/// Area printed per time in an endless run [m2/s]: W A over a stroke.
AreaRate endless_throughput(Length width, Length advance, Time stroke);

}  // namespace calc
