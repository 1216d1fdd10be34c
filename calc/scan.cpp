#include "calc/scan.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "calc/compare.h"

namespace calc {

int interlace_steps(Resolution required, Resolution native) {
  return static_cast<int>(ceil_tolerant(required / native));
}

int joined_nozzles(int nozzles, int heads, int overlap_nozzles) {
  return nozzles + (heads - 1) * (nozzles - overlap_nozzles);
}

std::optional<int> advance_rows(int nozzles, int interlace_steps, int quality_passes) {
  for (int rows = nozzles / quality_passes; rows >= 1; --rows) {
    if (std::gcd(rows, interlace_steps) == 1) return rows;
  }
  return std::nullopt;
}

Length advance_length(int advance_rows, int interlace_steps, Resolution native) {
  return static_cast<double>(advance_rows) / (interlace_steps * native);
}

int printing_nozzles(Length advance, Resolution nozzle_axis, int quality_passes) {
  return static_cast<int>(std::lround(advance * nozzle_axis)) * quality_passes;
}

Speed carriage_speed(Frequency usable, Resolution motion_axis, int quality_passes,
                     bool alternating_mask, std::optional<Speed> limit) {
  const Speed by_frequency = (alternating_mask ? quality_passes : 1) * usable / motion_axis;
  return limit ? std::min(*limit, by_frequency) : by_frequency;
}

int strokes(Length image_length, Length advance, int interlace_steps, int quality_passes) {
  const int sweeps = static_cast<int>(ceil_tolerant(image_length / advance));
  return sweeps + interlace_steps * quality_passes - 1;
}

Time stroke_time(Length width, Length array, Speed speed, Acceleration acceleration, Time dwell,
                 Time step) {
  const Time turn = 2 * (speed / acceleration) + dwell;
  return (width + array) / speed + std::max(turn, step);
}

std::optional<Speed> speed_for_stroke(Length way, Time stroke, Acceleration acceleration,
                                      Time dwell) {
  const double left = (stroke - dwell).si();
  const double root = left * left - 8 * way.si() / acceleration.si();
  if (left <= 0 || root < 0) return std::nullopt;
  return Speed::from_si(acceleration.si() / 4 * (left - std::sqrt(root)));
}

Length overtravel(Speed speed, Acceleration acceleration) {
  return speed * speed / (2 * acceleration);
}

Length machine_width(Length width, Length array, Speed speed, Acceleration acceleration,
                     Length park) {
  return width + array + 2 * overtravel(speed, acceleration) + park;
}

Time image_time(int strokes, Time stroke) { return strokes * stroke; }

AreaRate scan_throughput(Length width, Length image_length, Time image) {
  return width * image_length / image;
}

AreaRate endless_throughput(Length width, Length advance, Time stroke) {
  return width * advance / stroke;
}

}  // namespace calc
