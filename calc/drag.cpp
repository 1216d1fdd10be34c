#include "calc/drag.h"

#include <cmath>

namespace calc {

double drag_stokes(double reynolds) { return 24 / reynolds; }

double drag_schiller_naumann(double reynolds) {
  return 24 / reynolds *
         (1 + schiller_naumann_factor * std::pow(reynolds, schiller_naumann_exponent));
}

double drag_clift(double reynolds) {
  const double w = std::log10(reynolds);
  if (reynolds < 20) return 24 / reynolds * (1 + 0.1315 * std::pow(reynolds, 0.82 - 0.05 * w));
  if (reynolds < 260) return 24 / reynolds * (1 + 0.1935 * std::pow(reynolds, 0.6305));
  return std::pow(10, 1.6435 - 1.1242 * w + 0.1558 * w * w);
}

Speed terminal_speed(Length diameter, Density sphere, Density fluid, Viscosity viscosity,
                     DragLaw law, Acceleration gravity) {
  const double d = diameter.si();
  const double rho = fluid.si();
  const double weight = 4 * gravity.si() * d * (sphere.si() - rho) / 3;
  // Drag C_D v^2 grows with v for every law here, so one root lies between the ends.
  double low = std::log(1e-12);
  double high = std::log(1e4);
  while (high - low > 1e-13) {
    const double middle = (low + high) / 2;
    const double v = std::exp(middle);
    const double drag = law(rho * v * d / viscosity.si()) * rho * v * v;
    (drag < weight ? low : high) = middle;
    if (middle <= low && high <= middle) break;
  }
  return metres_per_second(std::exp((low + high) / 2));
}

}  // namespace calc
