#include "calc/chance.h"

#include <algorithm>
#include <optional>

#include "calc/selection.h"

namespace calc {
namespace {

constexpr double nearer_by = 0.99;  ///< a ratio of misses above this is the same miss

std::optional<P> default_of(const Question& question) {
  for (std::size_t i = 0; i < static_cast<std::size_t>(P::count); ++i) {
    if (parameter(static_cast<P>(i)).key == question.parameter) return static_cast<P>(i);
  }
  return std::nullopt;
}

/// 2: lets something pass; 1: misses by less; 0: neither, or not known.
int chance_of(Chooser& chooser, const Job& job, const Catalogue& catalogue, P id, double over) {
  int best = 0;
  for (const double end : {parameter(id).low, parameter(id).high}) {
    Parameters moved = job.parameters;
    moved.set(id, end);
    const Choice found = chooser.choose(resolve(*job.request, catalogue, job.date, moved));
    if (!found.groups.empty()) return 2;
    if (found.over > 1 && found.over < over * nearer_by) best = 1;
  }
  return best;
}

}  // namespace

void rank_by_chance(const Job& job, const Catalogue& catalogue, std::vector<Question>& questions) {
  Chooser chooser(catalogue, job.currency);
  const double over = chooser.choose(job).over;
  std::vector<std::pair<int, Question>> ranked;
  ranked.reserve(questions.size());
  for (Question& question : questions) {
    const std::optional<P> id = default_of(question);
    const int chance = id ? chance_of(chooser, job, catalogue, *id, over) : 0;
    question.lets_pass = chance == 2;
    ranked.emplace_back(chance, std::move(question));
  }
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  for (std::size_t i = 0; i < ranked.size(); ++i) questions[i] = std::move(ranked[i].second);
}

}  // namespace calc
