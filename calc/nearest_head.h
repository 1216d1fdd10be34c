/// Which of the heads that did not pass came nearest.
#pragma once

#include <vector>

#include "calc/specification.h"

namespace calc {

/// The head that misses the fewest limits; of several that miss as few, the one whose worst miss is
/// the least as a ratio, where a yes/no gate and one without measure are missed beyond any ratio;
/// then the first. Null for no head.
const RejectedHead* nearest_head(const std::vector<RejectedHead>& rejected);

}  // namespace calc
