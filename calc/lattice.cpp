#include "calc/lattice.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/eye.h"

namespace calc {

namespace {

/// Area [m2] of a disc beyond the two sides of its cell that lie half a pitch away.
double beyond_sides(double dot, double pitch) {
  if (dot <= pitch) return 0;
  return dot * dot / 2 * std::acos(pitch / dot) - pitch / 2 * std::sqrt(dot * dot - pitch * pitch);
}

}  // namespace

Length pitch(Resolution resolution) { return 1.0 / resolution; }

Length closing_dot(Length pitch_n, Length pitch_m) {
  return metres(std::hypot(pitch_n.si(), pitch_m.si()));
}

bool closes(Length dot, Length pitch_n, Length pitch_m) {
  return at_least(dot, closing_dot(pitch_n, pitch_m));
}

double covered_fraction(Length dot, Length pitch_n, Length pitch_m) {
  if (closes(dot, pitch_n, pitch_m)) return 1;
  const double d = dot.si();
  const double inside =
      pi * d * d / 4 - beyond_sides(d, pitch_n.si()) - beyond_sides(d, pitch_m.si());
  return inside / (pitch_n.si() * pitch_m.si());
}

std::optional<std::size_t> solid_level(const std::vector<Length>& dots, Length pitch_n,
                                       Length pitch_m) {
  for (std::size_t level = 0; level < dots.size(); ++level) {
    if (closes(dots[level], pitch_n, pitch_m)) return level;
  }
  return std::nullopt;
}

Resolution finest_along(Resolution required, Resolution across) {
  return std::max(2 * required, across);
}

std::optional<Resolution> closing_resolution(Length dot, Length pitch_n, Resolution required,
                                             Resolution most) {
  if (dot <= pitch_n || closes(dot, pitch_n, pitch(required))) return std::nullopt;
  const double d = dot.si();
  const double p = pitch_n.si();
  const Resolution least = Resolution::from_si(1 / std::sqrt((d - p) * (d + p)));
  if (!at_most(least, most)) return std::nullopt;
  return least;
}

Length line_width(int dots, Length pitch, Length dot) { return (dots - 1) * pitch + dot; }

Length gap_width(int dots, Length pitch, Length dot) { return (dots + 1) * pitch - dot; }

Length edge_gain(Length pitch, Length dot) { return dot - pitch; }

int bar_reduction_dots(Length pitch, Length dot) {
  return std::max(0, static_cast<int>(std::lround((dot - pitch) / pitch)));
}

double line_deviation(int dots, Length pitch, Length dot) {
  return std::abs(edge_gain(pitch, dot) / (dots * pitch));
}

Length dead_nozzle_gap(Length pitch_n, Length dot) { return 2 * pitch_n - dot; }

Length dead_nozzle_hiding_dot(Length pitch_n, Length pitch_m) {
  return closing_dot(2 * pitch_n, pitch_m);
}

Resolution useful_ceiling(Length smallest_dot) { return 2.0 / smallest_dot; }

bool finer_than_dot(Length dot, Length pitch_n, Length pitch_m) {
  return !at_most(dot, 2 * std::max(pitch_n, pitch_m));
}

int levels_used(std::size_t solid_level) { return static_cast<int>(solid_level) + 2; }

int bits_per_dot(int levels) { return static_cast<int>(ceil_tolerant(std::log2(levels))); }

}  // namespace calc
