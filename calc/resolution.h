/// The demands on resolution, each a pure function; which one governs is decided by the caller.
#pragma once

#include "calc/quantity.h"
#include "calc/request.h"

namespace calc {

inline constexpr double default_feature_dots = 2;  ///< sampling theorem
inline constexpr int default_module_dots = 4;      ///< least whole dots a bar-code module
inline constexpr double soft_demand_share = 0.90;  ///< a soft demand counts as met from here
inline constexpr double eye_cost_note_factor = 2;  ///< finer than the eye by this: cost note
inline constexpr Resolution fallback_resolution = dpi(300);

/// Resolution [1/m] that puts `dots` dots on a feature: n / s. feature > 0, dots > 0.
/// Source: sampling theorem (n = 2).
Resolution feature_demand(Length feature, double dots = default_feature_dots);

/// Stroke width over type size [1]: regular 0.085, bold 0.13, serif hairline 0.03. Common practice.
double stroke_factor(Typeface typeface);

/// Thinnest stroke [m] of text of a type size (body height). size > 0. Common practice.
Length text_stroke(Length size, Typeface typeface);

/// Dots [1] wanted across the thinnest stroke: 2 legible, 3 good. Source: sampling theorem; common
/// practice for 3.
int stroke_dots(TextQuality quality);

/// Resolution [1/m] that text of a type size needs: dots over stroke. size > 0.
Resolution text_demand(Length size, Typeface typeface, TextQuality quality);

/// Resolution [1/m] from which `dots` whole dots are certain to come out of rounding a module:
/// (n - 1/2) / X. module > 0, dots >= 1. Source: rounding to the nearest whole dot.
Resolution barcode_demand(Length module, int dots = default_module_dots);

/// Whether a soft demand counts as met: delivered >= share of it, with the common tolerance.
bool meets_soft(Resolution delivered, Resolution demand, double share = soft_demand_share);

/// Whether a hard demand is met: delivered >= demand, with the common tolerance.
bool meets_hard(Resolution delivered, Resolution demand);

/// Whether a demand is at least `eye_cost_note_factor` finer than the eye resolves at `distance`.
bool far_beyond_eye(Resolution demand, Length distance);

}  // namespace calc
