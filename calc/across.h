/// Heads side by side across the width, single pass.
#pragma once

#include "calc/quantity.h"

namespace calc {

inline constexpr int default_overlap_nozzles = 16;  ///< staggered heads, common practice
inline constexpr Length default_body_gap = micrometres(500);
inline constexpr Length default_row_gap = micrometres(10000);  ///< along the line, row to row

/// Width to print [m]: image and a margin on both sides.
Length print_width(Length image, Length margin);

/// Swath [m] of a head: every nozzle owns one pitch, N / native. nozzles >= 1.
Length swath(int nozzles, Resolution native);

/// Overlap [m] where the catalogue states none: 0 for heads that join, else 16 nozzle pitches.
Length default_overlap(bool joins, Length nozzle_pitch);

/// Pitch [m] from head to head, whole nozzle pitches: floor((S - o)/p) p. 0 <= overlap < swath.
Length head_pitch(Length swath, Length overlap, Length nozzle_pitch);

/// Heads across [1]: 1 if W <= S, else 1 + ceil((W - S)/P). pitch > 0.
int heads_across(Length width, Length swath, Length head_pitch);

/// Width [m] that n heads print: S + (n - 1) P. The width limit of an arrangement.
Length printed_width(int heads, Length swath, Length head_pitch);

/// Staggered rows [1] needed: 1 if heads join, else ceil((body + gap)/P).
int staggered_rows(bool joins, Length body_width, Length gap, Length head_pitch);

/// Rows in use [1]: min(n, r).
int rows_in_group(int heads, int rows);

/// Share of nozzles that print nothing [1]: 1 - W / (n P + (S - P)).
double idle_nozzle_share(Length width, int heads, Length swath, Length head_pitch);

/// The same of heads whose nozzles print less than their swath [1], counted nozzle by nozzle:
/// 1 - floor(W/p) / (n N). Overlaps and what a tilt cuts off the swath are idle too.
double idle_counted(Length width, int heads, int nozzles, Length pitch);

/// Position of head i (0-based) along the nozzle axis [m]: its swath's start, with the group
/// centred on the width: (W - printed)/2 + i P.
Length head_start(int index, Length width, int heads, Length swath, Length head_pitch);

/// Depth along the line [m] of r rows: r (body depth + gap).
Length rows_depth(int rows, Length body_depth, Length gap = default_row_gap);

/// Joints to align, each head against one already aligned; together heads - 1.
struct Joints {
  int stitch = 0, interleave = 0, stack = 0, colour = 0;
  int total() const { return stitch + interleave + stack + colour; }
};
/// Joints of `positions` places of n across, k interleaved, m stacked. All >= 1.
Joints joints(int positions, int across, int interleave, int stack);

/// Heads of a group [1]: positions n k m.
int heads_in_group(int positions, int across, int interleave, int stack);

}  // namespace calc
