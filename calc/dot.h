/// From a drop to its dot on the substrate.
#pragma once

#include <optional>

#include "calc/quantity.h"
#include "calc/request.h"

namespace calc {

/// Diameter [m] of a free spherical drop: (6 V / pi)^(1/3). volume >= 0.
Length drop_diameter(Volume volume);

/// Volume [m3] of a sphere: pi d^3 / 6.
Volume drop_volume(Length diameter);

/// Contact circle over drop diameter of a spherical cap [1]:
/// (8 / (tan(a/2) (3 + tan(a/2)^2)))^(1/3). 0 < angle < pi [rad]. Valid: no absorption, no
/// evaporation, far below the capillary length. Source: van Dam and Le Clerc 2004; Derby 2010.
double cap_spread(double angle);

/// Height of the cap over drop diameter [1]: cap_spread tan(a/2) / 2. Same validity.
double cap_height(double angle);

/// Below this angle the cap's spread factor is held at its value here; no real drop follows on.
inline constexpr double least_cap_angle = 10 * 3.14159265358979323846 / 180;

/// cap_spread of the angle, or of `least_cap_angle` where the angle is below it.
double capped_cap_spread(double angle);

/// Visible dot over drop diameter [1]: contact circle, or above 90 degrees the sphere's own
/// diameter. Capped as capped_cap_spread. 0 < angle < pi.
double visible_spread(double angle);

/// Greatest spread at impact over drop diameter [1]: exp(0.151) (We/(fs - cos a))^0.090 with
/// fs = 2/(1 + cos a). weber > 0, 0 < angle < pi. Valid: water, 46 um, We 0.05-2, Re 10-100,
/// Oh 0.017. Source: Son, Kim, Yang, Ahn 2008.
double impact_spread(double weber, double angle);

/// A spread factor with the range that is plausible for it.
struct SpreadRange {
  double value = 0, low = 0, high = 0;
};

/// Spread factor by class of substrate: none 1.6 [1.3, 2.4], low 1.8 [1.5, 2.2], high 2.2
/// [1.8, 2.8]. Common practice.
SpreadRange class_spread(Absorbency absorbency);

/// What is known of the dot, best evidence first.
struct DotEvidence {
  std::optional<Length> measured;       ///< measured dot
  std::optional<Volume> measured_with;  ///< drop it was measured with; absent: any drop gives it
  std::optional<double> factor;         ///< measured spread factor
  std::optional<double> angle;          ///< contact angle [rad]; used on absorbency none only
  Absorbency absorbency = Absorbency::none;
};
enum class DotRule { measured, measured_scaled, factor, angle, angle_capped, class_default };

/// A dot with its range; low = diameter = high unless the rule is class_default.
struct DotEstimate {
  Length diameter, low, high;
  DotRule rule = DotRule::class_default;
};

/// Dot [m] of a drop by the best evidence: measured dot (times (V/V_ref)^(1/3) where its drop is
/// known) > measured factor > contact angle (absorbency none; held below 10 degrees) > class
/// default. volume > 0.
DotEstimate dot_diameter(Volume volume, const DotEvidence& evidence);

/// Shape factor of a bead's cross section [1]: a/sin(a)^2 - cos(a)/sin(a). 0 < angle < pi.
double bead_shape(double angle);

/// Width [m] of a line of drops `spacing` apart: d sqrt(2 pi d / (3 p f)). Valid: stable bead, no
/// absorption, spacing <= scalloping_spacing. Source: Smith et al. 2006; mass balance.
Length bead_width(Length drop, Length spacing, double angle);

/// Greatest spacing [m] at which drops merge to a line with straight edges:
/// 2 pi d / (3 beta^2 f). Source: Stringer and Derby 2010; mass balance.
Length scalloping_spacing(Length drop, double angle);

}  // namespace calc
