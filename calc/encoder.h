/// Pulses of an encoder into dots: whole or fractional division, and the error that is left.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

/// Length of the product a count [m]: pi D / counts a turn, which is pulses times 1, 2 or 4 by the
/// decoding. counts >= 1.
/// Validity: the wheel rolls without slip; its diameter's error scales the print by itself.
Length count_length(Length wheel, double counts);

/// So many counts for so many dots.
struct Division {
  int counts = 1;
  int dots = 1;
};

/// Counts a dot [1] wanted: pitch / count.
double counts_per_dot(Length pitch, Length count);

/// The whole number of counts a dot nearest to what is wanted, at least one.
Division whole_division(double wanted);

/// The fraction nearest to what is wanted with at most `most_dots` dots, the fewest dots of several
/// equally near. wanted > 0, most_dots >= 1. Source: search of every number of dots.
Division nearest_division(double wanted, int most_dots);

/// Printed length over wanted less 1 [1]: counts/(dots wanted) - 1. It adds up along the print.
double division_error(Division division, double wanted);

/// Resolution printed [1/m]: dots/(counts count).
Resolution divided_resolution(Division division, Length count);

/// Standard deviation of a position set to whole counts [m]: q/sqrt(12). Source: JCGM 100:2008,
/// resolution of an indication (4.3.7, from memory).
Length rounding_rms(Length count);

/// Counts [1/s] at a speed: v / count.
Frequency count_rate(Speed speed, Length count);

}  // namespace calc
