#include "calc/frequency.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"

namespace calc {

Frequency column_frequency(Speed speed, Resolution motion_axis) { return speed * motion_axis; }

Frequency nozzle_frequency(Frequency column, int stack) { return column / stack; }

Frequency usable_frequency(Frequency rating, double reserve) { return rating * (1 - reserve); }

int least_stack(Frequency column, Frequency usable) {
  return std::max(1, static_cast<int>(ceil_tolerant(column / usable)));
}

double frequency_use(Frequency per_nozzle, Frequency usable) { return per_nozzle / usable; }

Speed speed_limit(int stack, Frequency usable, Resolution motion_axis) {
  return stack * usable / motion_axis;
}

AllowedFrequency allowed_frequency(const std::vector<Frequency>& ratings, int drops,
                                   GreyMethod method, int levels_used) {
  const auto highest = static_cast<std::size_t>(std::max(levels_used - 2, 0));
  const bool binary_only = ratings.size() == 1 && drops > 1;
  if (!binary_only || highest == 0) return {ratings[std::min(highest, ratings.size() - 1)], false};
  if (method == GreyMethod::amplitude) return {ratings[0] * amplitude_grey_factor, true};
  return {ratings[0] / (levels_used - 1), true};
}

bool in_bad_band(Frequency per_nozzle, Frequency low, Frequency high) {
  return at_least(per_nozzle, low) && at_most(per_nozzle, high);
}

namespace {

/// Two rows nearer than this, in nozzle pitches, stand at one place.
constexpr double same_place = 1e-6;
constexpr double spacing_tolerance = 0.01;

/// Fractions of the offsets in [0, 1), ascending, each place once.
std::vector<double> places(const std::vector<double>& offsets) {
  std::vector<double> fractions;
  fractions.reserve(offsets.size());
  for (const double offset : offsets) {
    const double fraction = offset - std::floor(offset);
    fractions.push_back(fraction > 1 - same_place ? 0 : fraction);
  }
  std::sort(fractions.begin(), fractions.end());
  const auto same = [](double a, double b) { return b - a < same_place; };
  fractions.erase(std::unique(fractions.begin(), fractions.end(), same), fractions.end());
  return fractions;
}

/// Gap from a place to the next round the pitch; all sum to 1.
double gap_behind(const std::vector<double>& places, std::size_t i) {
  return i + 1 < places.size() ? places[i + 1] - places[i] : 1 - places.back() + places.front();
}

}  // namespace

NativeResolution native_resolution(Resolution row_pitch, const std::vector<double>& offsets) {
  const std::vector<double> rows = places(offsets);
  const auto count = static_cast<double>(rows.size());
  NativeResolution native;
  native.distinct_rows = static_cast<int>(rows.size());
  native.even = true;
  double largest = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const double gap = gap_behind(rows, i);
    largest = std::max(largest, gap);
    if (!(std::abs(gap - 1 / count) <= spacing_tolerance / count)) native.even = false;
  }
  native.value = native.even ? row_pitch * count : row_pitch / largest;
  return native;
}

std::optional<int> least_interleave(Resolution native, Resolution required) {
  for (int k = 1; k <= most_interleave; ++k) {
    if (at_least(interleaved(native, k), required)) return k;
  }
  return std::nullopt;
}

Resolution interleaved(Resolution native, int interleave) { return interleave * native; }

}  // namespace calc
