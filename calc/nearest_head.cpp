#include "calc/nearest_head.h"

#include <algorithm>
#include <limits>

namespace calc {
namespace {

/// By which ratio the worst of the limits is missed [1].
double worst_miss(const RejectedHead& head) {
  double worst = 1;
  for (const Reason& r : head.reasons) {
    const bool measured = r.value > 0 && r.limit > 0;
    if (!measured) return std::numeric_limits<double>::infinity();
    worst = std::max(worst, r.at_least ? r.limit / r.value : r.value / r.limit);
  }
  return worst;
}

bool nearer(const RejectedHead& a, const RejectedHead& b) {
  if (a.reasons.size() != b.reasons.size()) return a.reasons.size() < b.reasons.size();
  return worst_miss(a) < worst_miss(b);
}

}  // namespace

const RejectedHead* nearest_head(const std::vector<RejectedHead>& rejected) {
  const auto nearest = std::min_element(rejected.begin(), rejected.end(), nearer);
  return nearest == rejected.end() ? nullptr : &*nearest;
}

}  // namespace calc
