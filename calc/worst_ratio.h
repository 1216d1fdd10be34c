/// How far the worst of several failed gates is from its limit.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

namespace calc {

/// By which ratio [1], at least 1, the worst of the limits is missed; none where one of them has no
/// measure (a value or limit of zero or less). `Miss` is a Finding or a Reason.
template <class Miss>
std::optional<double> worst_ratio(const std::vector<Miss>& missed) {
  double worst = 1;
  for (const Miss& m : missed) {
    if (m.value <= 0 || m.limit <= 0) return std::nullopt;
    worst = std::max(worst, m.at_least ? m.limit / m.value : m.value / m.limit);
  }
  return worst;
}

}  // namespace calc
