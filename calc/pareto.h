/// Which stations no other betters in everything.
#pragma once

#include <vector>

#include "calc/money.h"
#include "calc/specification.h"

namespace calc {

/// What stations are weighed by at once: the less of the first three, the more of the last.
struct Merits {
  Money ownership;
  int heads = 0;
  Length registration;  ///< zero where one head prints all colours, infinite where not known
  Speed speed_limit;
};

/// Of a station: the greatest U of its budgets between colours, the least speed limit of its
/// groups. Precondition: groups not empty.
Merits merits(const std::vector<Group>& groups, const Station& station,
              const std::vector<Budget>& placement);

/// Per station, 1 where no other is at least as good in every merit and better in one: the Pareto
/// front.
std::vector<char> pareto_front(const std::vector<Merits>& stations);

}  // namespace calc
