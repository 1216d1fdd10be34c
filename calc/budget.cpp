#include "calc/budget.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"

namespace calc {
namespace {

constexpr double coverage_factor = 2;  // about 95 % of a normal distribution
constexpr double most_deviations = 3;  // of a normal term, in the worst case

double part(const BudgetTerm& term) {
  if (term.kind == TermKind::systematic) return term.shift.si();
  return coverage_factor * standard_uncertainty(term).si();
}

}  // namespace

std::string_view kind_word(TermKind kind) {
  switch (kind) {
    case TermKind::rectangular:
      return "rectangular";
    case TermKind::normal:
      return "normal";
    case TermKind::resolution:
      return "resolution";
    case TermKind::sinusoid:
      return "sinusoid";
    case TermKind::systematic:
      break;
  }
  return "systematic";
}

Length standard_uncertainty(const BudgetTerm& term) {
  switch (term.kind) {
    case TermKind::rectangular:
    case TermKind::resolution:
      return term.shift / std::sqrt(3.0);
    case TermKind::normal:
      return term.shift / term.coverage;
    case TermKind::sinusoid:
      return term.shift / std::sqrt(2.0);
    case TermKind::systematic:
      break;
  }
  return {};
}

Length worst_shift(const BudgetTerm& term) {
  return term.kind == TermKind::normal ? most_deviations * standard_uncertainty(term) : term.shift;
}

void add_up(Budget& budget) {
  double squares = 0;
  Length systematic;
  budget.worst = {};
  for (const BudgetTerm& term : budget.terms) {
    const double u = standard_uncertainty(term).si();
    squares += u * u;
    if (term.kind == TermKind::systematic) systematic += term.shift;
    budget.worst += worst_shift(term);
  }
  // One bounded term alone would reach beyond its own bound: 2 a / sqrt 3.
  budget.expanded =
      std::min(metres(coverage_factor * std::sqrt(squares)) + systematic, budget.worst);
  budget.pass = at_most(budget.expanded, budget.limit);
}

std::size_t largest_term(const Budget& budget) {
  const auto largest =
      std::max_element(budget.terms.begin(), budget.terms.end(),
                       [](const auto& a, const auto& b) { return part(a) < part(b); });
  return static_cast<std::size_t>(largest - budget.terms.begin());
}

}  // namespace calc
