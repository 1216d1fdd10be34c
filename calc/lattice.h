/// Dots on a rectangular lattice: cover, solids, lines and gaps.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "calc/quantity.h"

namespace calc {

/// Pitch [m] of a resolution: 1 / R. resolution > 0.
Length pitch(Resolution resolution);

/// Least dot [m] that leaves no gap between four neighbours: sqrt(p_n^2 + p_m^2).
Length closing_dot(Length pitch_n, Length pitch_m);

/// Whether solids close: dot >= closing_dot, with the common tolerance.
bool closes(Length dot, Length pitch_n, Length pitch_m);

/// Share of area under dots [1], exact for any rectangular lattice: the disc within its own cell,
/// (pi D^2/4 - sum over axes with D > p of (D^2/2 acos(p/D) - p/2 sqrt(D^2 - p^2))) / (p_n p_m),
/// and 1 from the diagonal on. Pitches > 0, dot >= 0. Source: plane geometry.
double covered_fraction(Length dot, Length pitch_n, Length pitch_m);

/// Index of the smallest level whose dot closes solids; none if no level does. Dots ascending.
std::optional<std::size_t> solid_level(const std::vector<Length>& dots, Length pitch_n,
                                       Length pitch_m);

/// Least resolution along the motion [1/m] in (required, most] at which a dot closes solids:
/// 1 / sqrt(D^2 - p_n^2). None where it closes at `required` already, needs more than `most`, or
/// D <= p_n.
std::optional<Resolution> closing_resolution(Length dot, Length pitch_n, Resolution required,
                                             Resolution most);

/// Finest resolution along the motion [1/m] worth trying to close solids: twice the required, or
/// as fine as across where a coarse demand meets a fine head.
Resolution finest_along(Resolution required, Resolution across);

/// Width [m] of a line of n dots: (n - 1) p + D. dots >= 1.
Length line_width(int dots, Length pitch, Length dot);
/// Width [m] left white by n empty dots: (n + 1) p - D; negative = closed. dots >= 1.
Length gap_width(int dots, Length pitch, Length dot);
/// Growth of a bar or line over n p [m], and the reduction to take off in the data: D - p.
Length edge_gain(Length pitch, Length dot);
/// Whole dots [1] to take off a bar: the nearest to (D - p)/p, at least 0.
int bar_reduction_dots(Length pitch, Length dot);
/// Deviation of a line or gap from n p over n p [1]; warn beyond `line_deviation_limit`.
double line_deviation(int dots, Length pitch, Length dot);
inline constexpr double line_deviation_limit = 0.25;

/// White gap [m] a dead nozzle leaves between its neighbours' edges: 2 p_n - D; negative = hidden
/// where dots are at their widest.
Length dead_nozzle_gap(Length pitch_n, Length dot);
/// Least dot [m] that closes the gap of a dead nozzle wholly: sqrt((2 p_n)^2 + p_m^2).
Length dead_nozzle_hiding_dot(Length pitch_n, Length pitch_m);

/// Resolution [1/m] beyond which the substrate shows nothing finer: two dots a dot diameter,
/// 2 / D of the smallest dot. dot > 0.
Resolution useful_ceiling(Length smallest_dot);
/// Whether the lattice is finer than its dot can show: D > 2 max(p_n, p_m).
bool finer_than_dot(Length dot, Length pitch_n, Length pitch_m);

/// Grey levels in use [1], the empty dot counted: all up to the solid level (0-based) and empty.
int levels_used(std::size_t solid_level);
/// Bits a dot [1]: ceil(log2 levels). levels >= 2.
int bits_per_dot(int levels);

}  // namespace calc
