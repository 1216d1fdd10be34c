#include "calc/carriage_pace.h"

#include <algorithm>

#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/named.h"
#include "calc/placement.h"
#include "calc/scan.h"

namespace calc {
namespace {

/// Time a stroke may take [s] for the highest speed of the line.
Time stroke_wanted(const Job& job, const Scan& scan) {
  const Speed line = served_high(*job.speed);
  if (scan.strokes < 1) return scan.advance / line;
  return image_repeat(job) / (line * scan.strokes);
}

/// Image and array together [m], as the stroke's time has them.
Length way_of(const Scan& scan, Acceleration acceleration, Time dwell) {
  const Speed v = scan.carriage_speed;
  return v * (scan.stroke_time - 2 * (v / acceleration) - dwell);
}

bool jets_badly(const Catalogue& catalogue, const Group& group, Speed speed) {
  const Head* const head = named(catalogue.heads, group.head);
  if (head == nullptr || !head->avoid) return false;
  const Frequency f = column_frequency(speed, group.resolution_across);
  return in_bad_band(f, head->avoid->low, head->avoid->high);
}

}  // namespace

Length image_repeat(const Job& job) { return std::max(job.pitch.value, job.length.high); }

std::optional<CarriagePace> carriage_pace(const Job& job, const Catalogue& catalogue,
                                          const std::vector<Group>& groups) {
  if (groups.empty() || !groups.front().scan || !job.speed) return std::nullopt;
  const Scan& scan = *groups.front().scan;
  const auto acceleration = Acceleration::from_si(job.parameters[P::carriage_acceleration]);
  const Time dwell = seconds(job.parameters[P::stroke_dwell_s]);
  const Time stroke = stroke_wanted(job, scan);
  const std::optional<Speed> speed =
      speed_for_stroke(way_of(scan, acceleration, dwell), stroke, acceleration, dwell);
  if (!speed || at_least(*speed, scan.carriage_speed)) return std::nullopt;
  const auto badly = [&](const Group& g) { return jets_badly(catalogue, g, *speed); };
  if (std::any_of(groups.begin(), groups.end(), badly)) return std::nullopt;
  std::vector<Group> slowed = groups;
  for (Group& group : slowed) group.scan->carriage_speed = *speed;
  return CarriagePace{*speed, stroke, placement_budgets(job, slowed, Assumed::likely)};
}

PaceGain pace_gain(const std::vector<Budget>& placement, const CarriagePace& pace) {
  PaceGain gain;
  const std::size_t count = std::min(placement.size(), pace.placement.size());
  for (std::size_t i = 0; i < count; ++i) {
    if (placement[i].pass) continue;
    ++gain.beyond;
    if (pace.placement[i].pass) ++gain.held;
  }
  return gain;
}

}  // namespace calc
