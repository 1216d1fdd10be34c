#include "calc/dot.h"

#include <algorithm>
#include <cmath>

#include "calc/eye.h"

namespace calc {

Length drop_diameter(Volume volume) { return metres(std::cbrt(6 * volume.si() / pi)); }

Volume drop_volume(Length diameter) { return diameter * diameter * diameter * (pi / 6); }

double cap_spread(double angle) {
  const double t = std::tan(angle / 2);
  return std::cbrt(8 / (t * (3 + t * t)));
}

double cap_height(double angle) { return cap_spread(angle) / 2 * std::tan(angle / 2); }

double capped_cap_spread(double angle) { return cap_spread(std::max(angle, least_cap_angle)); }

double visible_spread(double angle) {
  const double contact = capped_cap_spread(angle);
  return angle > pi / 2 ? contact / std::sin(angle) : contact;
}

double impact_spread(double weber, double angle) {
  const double area_ratio = 2 / (1 + std::cos(angle));
  return std::exp(0.090 * std::log(weber / (area_ratio - std::cos(angle))) + 0.151);
}

SpreadRange class_spread(Absorbency absorbency) {
  switch (absorbency) {
    case Absorbency::low:
      return {1.8, 1.5, 2.2};
    case Absorbency::high:
      return {2.2, 1.8, 2.8};
    case Absorbency::none:
      break;
  }
  return {1.6, 1.3, 2.4};
}

namespace {

DotEstimate single(Length diameter, DotRule rule) { return {diameter, diameter, diameter, rule}; }

DotEstimate measured_dot(Volume volume, const DotEvidence& evidence) {
  const Length dot = evidence.measured.value_or(Length{});
  if (!evidence.measured_with) return single(dot, DotRule::measured);
  return single(dot * std::cbrt(volume / *evidence.measured_with), DotRule::measured_scaled);
}

}  // namespace

DotEstimate dot_diameter(Volume volume, const DotEvidence& evidence) {
  if (evidence.measured) return measured_dot(volume, evidence);
  const Length drop = drop_diameter(volume);
  if (evidence.factor) return single(drop * *evidence.factor, DotRule::factor);
  if (evidence.angle && evidence.absorbency == Absorbency::none) {
    const bool capped = *evidence.angle < least_cap_angle;
    return single(drop * visible_spread(*evidence.angle),
                  capped ? DotRule::angle_capped : DotRule::angle);
  }
  const SpreadRange spread = class_spread(evidence.absorbency);
  return {drop * spread.value, drop * spread.low, drop * spread.high, DotRule::class_default};
}

double bead_shape(double angle) {
  const double s = std::sin(angle);
  return angle / (s * s) - std::cos(angle) / s;
}

Length bead_width(Length drop, Length spacing, double angle) {
  return drop * std::sqrt(2 * pi * (drop / spacing) / (3 * bead_shape(angle)));
}

Length scalloping_spacing(Length drop, double angle) {
  const double spread = cap_spread(angle);
  return drop * (2 * pi / (3 * spread * spread * bead_shape(angle)));
}

}  // namespace calc
