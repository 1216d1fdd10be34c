#include "calc/nearest_head.h"

#include <algorithm>
#include <limits>

#include "calc/worst_ratio.h"

namespace calc {
namespace {

double worst_miss(const RejectedHead& head) {
  return worst_ratio(head.reasons).value_or(std::numeric_limits<double>::infinity());
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
