#include "calc/cylinder.h"

#include <cmath>

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

Length least_radius(Length depth, double slope) { return depth / (2 * std::sin(slope)); }

}  // namespace calc
