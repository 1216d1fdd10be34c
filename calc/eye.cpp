#include "calc/eye.h"

#include <cmath>

namespace calc {

double acuity_angle(double acuity) { return one_arc_minute / acuity; }

Length subtended_length(Length distance, double angle) {
  return distance * (2 * std::tan(angle / 2));
}

Resolution eye_limit(Length distance, double angle) {
  return 1.0 / subtended_length(distance, angle);
}

Length eye_limit_distance(Resolution resolution, double angle) {
  return 1.0 / (resolution * (2 * std::tan(angle / 2)));
}

Length vernier_limit(Length distance, double angle) { return subtended_length(distance, angle); }

}  // namespace calc
