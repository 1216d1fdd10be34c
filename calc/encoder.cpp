#include "calc/encoder.h"

#include <algorithm>
#include <cmath>

#include "calc/eye.h"

namespace calc {
namespace {

constexpr double machine_rounding = 1e-12;  ///< a gain below it is none

int nearest_whole(double x) { return static_cast<int>(std::max(1L, std::lround(x))); }

}  // namespace

Length count_length(Length wheel, double counts) { return pi * wheel / counts; }

double counts_per_dot(Length pitch, Length count) { return pitch / count; }

Division whole_division(double wanted) { return {nearest_whole(wanted), 1}; }

Division nearest_division(double wanted, int most_dots) {
  Division best = whole_division(wanted);
  for (int dots = 2; dots <= most_dots; ++dots) {
    const Division next{nearest_whole(wanted * dots), dots};
    const double gain =
        std::abs(division_error(best, wanted)) - std::abs(division_error(next, wanted));
    if (gain > machine_rounding) best = next;
  }
  return best;
}

double division_error(Division division, double wanted) {
  return division.counts / (division.dots * wanted) - 1;
}

Resolution divided_resolution(Division division, Length count) {
  return division.dots / (static_cast<double>(division.counts) * count);
}

Length rounding_rms(Length count) { return count / std::sqrt(12.0); }

Frequency count_rate(Speed speed, Length count) { return speed / count; }

}  // namespace calc
