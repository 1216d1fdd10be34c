#include "calc/speed_steps.h"

#include <cmath>

#include "calc/selection.h"
#include "calc/station.h"

namespace calc {
namespace {

constexpr int steps_to_double = 4;  // to half as well

SpeedStep step_at(const Request& request, const Catalogue& catalogue, const std::string& date,
                  Speed speed) {
  Request other = request;
  other.line.speed = exactly(speed, request.line.speed->origin);
  const Job job = resolve(other, catalogue, date);
  const Selection selection = select(job, catalogue);
  SpeedStep step;
  step.speed = speed;
  if (selection.chosen.empty()) return step;
  const Station station = size_station(job, catalogue, selection.chosen);
  for (const Group& group : selection.chosen) {
    step.heads += group.heads_total;
    step.kinds.push_back(group.head);
    step.rows.push_back("head." + group.head);
  }
  for (const BomLine& line : station.bom) {
    if (!line.source.empty()) step.rows.push_back(line.source);
  }
  step.capital = station.cost.capital;
  step.ownership = station.cost.ownership;
  return step;
}

}  // namespace

std::vector<SpeedStep> speed_steps(const Request& request, const Catalogue& catalogue,
                                   const std::string& date) {
  std::vector<SpeedStep> steps;
  if (!request.line.speed) return steps;
  for (int i = -steps_to_double; i <= steps_to_double; ++i) {
    const double factor = std::exp2(static_cast<double>(i) / steps_to_double);
    steps.push_back(step_at(request, catalogue, date, request.line.speed->high * factor));
  }
  return steps;
}

}  // namespace calc
