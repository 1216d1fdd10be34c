#include "output/json_words.h"

#include <array>

namespace output {
namespace {

/// The word at an enumerator's place; the tables below follow the order of the enumerations.
template <std::size_t N, class E>
std::string_view at(const std::array<std::string_view, N>& words, E place) {
  return words.at(static_cast<std::size_t>(place));
}

}  // namespace

std::string_view json_word(calc::Verdict verdict) {
  return at(std::array<std::string_view, 4>{"feasible", "conditional", "infeasible", "incomplete"},
            verdict);
}

std::string_view json_word(calc::Family family) {
  return at(
      std::array<std::string_view, 5>{"straight", "staggered", "joined", "tilted", "scanning"},
      family);
}

std::string_view json_word(calc::EdgeKind kind) {
  return at(std::array<std::string_view, 2>{"passes", "recommended"}, kind);
}

std::string_view json_word(calc::OriginKind kind) {
  return at(std::array<std::string_view, 4>{"given", "derived", "assumed", "catalogue"}, kind);
}

std::string_view json_word(calc::StepKind kind) {
  return at(std::array<std::string_view, 7>{"formula", "table", "solve", "least", "choice", "again",
                                            "last"},
            kind);
}

std::string_view json_word(calc::SourceTag tag) {
  return at(std::array<std::string_view, 6>{"P", "L", "T", "C", "M", "cp"}, tag);
}

std::string_view json_word(intake::Severity severity) {
  return at(std::array<std::string_view, 2>{"error", "warning"}, severity);
}

}  // namespace output
