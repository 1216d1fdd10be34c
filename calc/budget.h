/// A budget of errors of place: terms of known kind added up after the Guide to the Expression of
/// Uncertainty in Measurement (ISO/IEC Guide 98-3).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "calc/quantity.h"

namespace calc {

/// How an error lies within its half width a: rectangular a/sqrt 3; normal a/c with a stated to
/// hold c standard deviations; resolution of a whole step 2 a, a/sqrt 3; sinusoid a/sqrt 2;
/// systematic the same at every dot, added linearly and never rooted.
enum class TermKind { rectangular, normal, resolution, sinusoid, systematic };

/// One term. `shift` = |sensitivity| x half width, the displacement it can make.
struct BudgetTerm {
  std::string_view name;
  TermKind kind = TermKind::rectangular;
  double half_width = 0;  ///< in `unit`
  std::string_view unit;
  Length shift;            ///< displacement of the half width [m], >= 0
  double coverage = 1;     ///< c of a normal term: half width over standard deviation
  std::string_view field;  ///< key that says it, to attack it by
  Length over{};           ///< distance between the rows concerned; zero where none matters
  Speed at{};              ///< of the dots over the surface; zero where it does not matter
  Time late{};             ///< by which a drop of the half width is late
  double ways = 1;         ///< 2 where it parts strokes to and fro, all late in opposite ways
};

/// Word of a kind: "rectangular", ...
std::string_view kind_word(TermKind kind);

/// Standard uncertainty [m] of a term; 0 for a systematic one.
Length standard_uncertainty(const BudgetTerm& term);

/// Most a term displaces [m]: its shift; three standard deviations of a normal one.
Length worst_shift(const BudgetTerm& term);

/// A budget on one axis: U = 2 sqrt(sum u^2) + sum of the systematic terms, but no more than the
/// worst case, against the limit.
struct Budget {
  std::string_view name;  ///< dot, joint, colour, image
  bool motion = false;    ///< axis: along the motion while jetting, else along the nozzle rows
  std::string group;      ///< empty: of the whole station
  std::vector<BudgetTerm> terms;
  Length limit;
  Length expanded;  ///< U
  Length worst;     ///< sum of the worst shifts
  bool pass = false;
};

/// Fills expanded, worst and pass from terms and limit. The terms are independent of each other.
void add_up(Budget& budget);

/// Index of the term to attack first: the largest part of U. Precondition: terms not empty.
std::size_t largest_term(const Budget& budget);

}  // namespace calc
