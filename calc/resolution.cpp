#include "calc/resolution.h"

#include "calc/compare.h"
#include "calc/eye.h"

namespace calc {

Resolution feature_demand(Length feature, double dots) { return dots / feature; }

double stroke_factor(Typeface typeface) {
  switch (typeface) {
    case Typeface::bold:
      return 0.13;
    case Typeface::serif:
      return 0.03;
    case Typeface::regular:
      break;
  }
  return 0.085;
}

Length text_stroke(Length size, Typeface typeface) { return stroke_factor(typeface) * size; }

int stroke_dots(TextQuality quality) { return quality == TextQuality::good ? 3 : 2; }

Resolution text_demand(Length size, Typeface typeface, TextQuality quality) {
  return feature_demand(text_stroke(size, typeface), stroke_dots(quality));
}

Resolution barcode_demand(Length module, int dots) { return (dots - 0.5) / module; }

bool meets_soft(Resolution delivered, Resolution demand, double share) {
  return at_least(delivered, demand * share);
}

bool meets_hard(Resolution delivered, Resolution demand) { return at_least(delivered, demand); }

bool far_beyond_eye(Resolution demand, Length distance) {
  return at_least(demand, eye_limit(distance) * eye_cost_note_factor);
}

}  // namespace calc
