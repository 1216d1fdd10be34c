#include "calc/tilt.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "calc/compare.h"

namespace calc {
namespace {

/// Whether so many heads need a tilt, and one they may have, to deliver a resolution.
bool in_reach(Resolution native, int interleave, Resolution wanted) {
  const Resolution straight = native * static_cast<double>(interleave);
  return !at_least(straight, wanted) && at_least(straight, wanted * std::cos(most_tilt));
}

/// By how much the narrowest and the widest gap round a row's pitch exceed the even one, in even
/// ones.
std::pair<double, double> gaps_over(double even, const std::vector<double>& phases) {
  const double round = phases.front() + 1 - phases.back();
  double least = round;
  double most = round;
  for (std::size_t i = 1; i < phases.size(); ++i) {
    least = std::min(least, phases[i] - phases[i - 1]);
    most = std::max(most, phases[i] - phases[i - 1]);
  }
  return {least / even - 1, most / even - 1};
}

}  // namespace

std::optional<double> tilt_for(Resolution native, int interleave, Resolution wanted) {
  if (!in_reach(native, interleave, wanted)) return std::nullopt;
  return std::acos(interleave * (native / wanted));
}

std::optional<double> tilt_by_lines(Resolution native, int interleave, Resolution wanted,
                                    Resolution lines) {
  if (!in_reach(native, interleave, wanted)) return std::nullopt;
  const double least = std::sin(std::acos(interleave * (native / wanted)));
  const double sine = ceil_tolerant(least * (lines / native)) * (native / lines);
  if (!at_most(sine, std::sin(most_tilt))) return std::nullopt;
  return std::asin(sine);
}

Resolution tilted_native(Resolution native, double tilt) { return native / std::cos(tilt); }

Length tilted_swath(Length swath, Length field, double tilt) {
  return swath * std::cos(tilt) - field * std::sin(std::abs(tilt));
}

std::vector<double> row_phases(Resolution row_pitch, const std::vector<double>& offsets,
                               const std::vector<Length>& places, double tilt) {
  std::vector<double> phases;
  phases.reserve(offsets.size());
  for (std::size_t i = 0; i < offsets.size(); ++i) {
    const double at = offsets[i] - std::tan(tilt) * (places[i] * row_pitch);
    phases.push_back(at - floor_tolerant(at));
  }
  std::sort(phases.begin(), phases.end());
  return phases;
}

double unevenness(Resolution row_pitch, Resolution native, const std::vector<double>& offsets,
                  const std::vector<Length>& places, double tilt) {
  const auto [least, most] =
      gaps_over(row_pitch / native, row_phases(row_pitch, offsets, places, tilt));
  return std::max(std::abs(least), std::abs(most));
}

double widening(Resolution row_pitch, Resolution native, const std::vector<double>& offsets,
                const std::vector<Length>& places, double tilt) {
  const double most =
      gaps_over(row_pitch / native, row_phases(row_pitch, offsets, places, tilt)).second;
  return std::max(0.0, most);
}

std::vector<Length> rows_along(Resolution row_pitch, const std::vector<double>& offsets,
                               const std::vector<Length>& places, double tilt) {
  std::vector<Length> along;
  along.reserve(offsets.size());
  for (std::size_t i = 0; i < offsets.size(); ++i) {
    const Length x = (offsets[i] - offsets.front()) / row_pitch;
    along.push_back(x * std::sin(tilt) + (places[i] - places.front()) * std::cos(tilt));
  }
  return along;
}

Resolution whole_lines(Resolution wanted, Length pitch, double tilt) {
  const Length step = pitch * std::sin(std::abs(tilt));
  const double lines = std::max(1.0, ceil_tolerant(wanted * step));
  return at_least(wanted * step, lines) ? wanted : lines / step;
}

double lines_apart(Resolution motion_axis, Length pitch, double tilt) {
  return motion_axis * pitch * std::sin(std::abs(tilt));
}

double tilt_tolerance(Length row, double tilt, Length shift) {
  return shift / (row * std::sin(std::abs(tilt)));
}

int tilted_rows(int heads, Length body_width, Length body_depth, Length gap, Length head_pitch,
                double tilt) {
  const double beside = (body_width + gap) / (head_pitch * std::cos(tilt));
  const double behind = (body_depth + gap) / (head_pitch * std::sin(std::abs(tilt)));
  return std::min(heads, static_cast<int>(ceil_tolerant(std::min(beside, behind))));
}

Length tilted_depth(Length body_width, Length body_depth, double tilt) {
  return body_width * std::sin(std::abs(tilt)) + body_depth * std::cos(tilt);
}

}  // namespace calc
