#include "calc/station_speed.h"

#include <algorithm>

namespace calc {
namespace {

std::optional<Speed> lamps_limit(const Job& job, const Curing& curing) {
  if (curing.lamp == nullptr || !curing.dose || curing.stroke) return std::nullopt;
  const LampWindow window = window_of(job, *curing.lamp->item);
  return cure_speed_limit(curing.rows / curing.sets, window, *curing.dose);
}

std::optional<Speed> dryer_limit(const Job& job, const Drying& drying) {
  if (drying.dryer == nullptr || !job.speed || drying.length <= Length()) return std::nullopt;
  double spare = drying.along / drying.length;
  const Given<Power>& power = drying.dryer->item->electrical;
  if (power && drying.electrical > Power()) {
    spare = std::min(spare, drying.units * power->value / drying.electrical);
  }
  return job.speed->high * spare;
}

}  // namespace

void add_speed_limits(const Job& job, const std::vector<Group>& groups, const Sizing& sizing,
                      Station& station) {
  const bool scans = std::any_of(groups.begin(), groups.end(),
                                 [](const Group& group) { return group.scan.has_value(); });
  if (groups.empty() || scans) return;
  StationSpeed least{groups.front().speed_limit, "heads"};
  for (const Group& group : groups) least.speed = std::min(least.speed, group.speed_limit);
  for (Stage& stage : station.stages) {
    std::optional<Speed> limit;
    if (stage.kind == "pinning") limit = lamps_limit(job, sizing.pinning);
    if (stage.kind == "uv") limit = lamps_limit(job, sizing.curing);
    if (stage.kind == "drying") limit = dryer_limit(job, sizing.drying);
    if (!limit) continue;
    stage.speed_limit_m_per_s = limit->si();
    least.at_most |= stage.heat_at_least;
    if (*limit < least.speed) least = {*limit, stage.kind, least.at_most};
  }
  station.speed_limit = least;
}

}  // namespace calc
