#include "calc/pareto.h"

#include <algorithm>
#include <limits>

namespace calc {
namespace {

/// Whether a is at least as good as b in every merit and better in one.
bool betters(const Merits& a, const Merits& b) {
  const bool as_good = a.ownership <= b.ownership && a.heads <= b.heads &&
                       a.registration <= b.registration && a.speed_limit >= b.speed_limit;
  const bool better = a.ownership < b.ownership || a.heads < b.heads ||
                      a.registration < b.registration || a.speed_limit > b.speed_limit;
  return as_good && better;
}

}  // namespace

Merits merits(const std::vector<Group>& groups, const Station& station,
              const std::vector<Budget>& placement) {
  Merits m{station.cost.ownership, 0, Length(), groups.front().speed_limit};
  for (const Group& group : groups) {
    m.heads += group.heads_total;
    m.speed_limit = std::min(m.speed_limit, group.speed_limit);
  }
  if (placement.empty()) {
    m.registration = Length::from_si(std::numeric_limits<double>::infinity());
  }
  for (const Budget& budget : placement) {
    if (budget.name == "colour") m.registration = std::max(m.registration, budget.expanded);
  }
  return m;
}

std::vector<char> pareto_front(const std::vector<Merits>& stations) {
  std::vector<char> front;
  front.reserve(stations.size());
  for (const Merits& one : stations) {
    const bool beaten = std::any_of(stations.begin(), stations.end(),
                                    [&](const Merits& other) { return betters(other, one); });
    front.push_back(beaten ? 0 : 1);
  }
  return front;
}

}  // namespace calc
