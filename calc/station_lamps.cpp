/// What a lamp is in a job: its window, its depth, its heat; and the carriage that gives least.
#include "calc/station_cure.h"

namespace calc {
namespace {

constexpr double shape_not_stated = 0.5;  // triangular, the safe side

}  // namespace

Length lamp_depth(const Lamp& lamp) {
  if (lamp.depth) return lamp.depth->value;
  return lamp.window_along ? lamp.window_along->value : Length();
}

const Scan* fastest_scan(const std::vector<Group>& groups) {
  const Scan* fastest = nullptr;
  for (const Group& group : groups) {
    if (!group.scan) continue;
    const bool more = fastest == nullptr || fastest->advance * fastest->carriage_speed <
                                                group.scan->advance * group.scan->carriage_speed;
    if (more) fastest = &*group.scan;
  }
  return fastest;
}

Dose heating_dose(const Job& job, const Lamp& lamp, const Scan* scan) {
  LampWindow window = window_of(job, lamp);
  window.ageing = 1;
  const Speed slowest = job.speed ? served_low(*job.speed) : Speed();
  return row_dose(window, scan != nullptr ? scan->carriage_speed : slowest);
}

double prints_over_point(const Scan& scan) {
  return std::max(1, scan.interlace_steps * scan.quality_passes);
}

LampWindow window_of(const Job& job, const Lamp& lamp) {
  return {lamp.irradiance->value, lamp.shape ? lamp.shape->value : shape_not_stated,
          lamp.window_along->value, lamp.window_across->value, job.parameters[P::lamp_ageing]};
}

}  // namespace calc
