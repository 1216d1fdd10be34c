#include "tests/calc/support/placement_case.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace placed {

const Budget* find(const Specification& spec, std::string_view name, bool motion) {
  for (const Budget& b : spec.placement) {
    if (b.name == name && b.motion == motion) return &b;
  }
  return nullptr;
}
const BudgetTerm& term(const Budget& budget, std::string_view name) {
  const auto found = std::find_if(budget.terms.begin(), budget.terms.end(),
                                  [&](const BudgetTerm& t) { return t.name == name; });
  REQUIRE(found != budget.terms.end());
  return *found;
}
double shift_um(const Specification& spec, std::string_view budget, bool motion,
                std::string_view name) {
  const Budget* found = find(spec, budget, motion);
  REQUIRE(found != nullptr);
  return in_um(term(*found, name).shift);
}

bool says(const std::vector<Notice>& list, const std::string& code) {
  return std::any_of(list.begin(), list.end(), [&](const Notice& n) { return n.code == code; });
}
bool rejects(const Specification& spec, const std::string& code, const std::string& subject) {
  for (const RejectedHead& head : spec.rejected) {
    for (const Reason& r : head.reasons) {
      if (r.code == code && r.subject == subject) return true;
    }
  }
  return false;
}

}  // namespace placed
