#include "calc/cylinder.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/eye.h"

namespace calc {

std::optional<double> landing_slope(Length depth, Length radius) {
  const double sine = depth / (2 * radius);
  if (sine > 1) return std::nullopt;
  return std::asin(sine);
}

std::optional<Length> sagitta(Length chord, Length radius) {
  const double r = radius.si();
  const double half = chord.si() / 2;
  if (half > r) return std::nullopt;
  // The difference r - sqrt(r^2 - h^2) without cancellation on flat bodies.
  return metres(half * half / (r + std::sqrt((r - half) * (r + half))));
}

double pitch_stretch(double slope) { return 1 / std::cos(slope); }

double radial_pitch_angle(Length depth, Length gap, Length radius, Length gap_to_body) {
  return 2 * std::atan((depth + gap) / (2 * (radius + gap_to_body)));
}

int rows_round(double angle, double share) {
  const double by_share = floor_tolerant(share * 2 * pi / angle);
  const double downward = 1 + floor_tolerant(pi / angle);
  return static_cast<int>(std::max(1.0, std::min(by_share, downward)));
}

Length half_room(double angle, Length reach, Length depth, Length height) {
  return (reach + height) * std::sin(angle) + depth / 2 * std::cos(angle);
}

Length seam_error(Length deviation) { return deviation * pi; }

Length least_radius(Length depth, double slope) { return depth / (2 * std::sin(slope)); }

}  // namespace calc
