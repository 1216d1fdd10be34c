#include "calc/chance.h"

#include <algorithm>
#include <optional>

#include "calc/selection.h"

namespace calc {
namespace {

/// The heads that pass at an end of a default's range, the low end first; empty where none do.
std::vector<std::string> heads_let_pass(Chooser& chooser, const Job& job,
                                        const Catalogue& catalogue, P id) {
  for (const double end : {parameter(id).low, parameter(id).high}) {
    Parameters moved = job.parameters;
    moved.set(id, end);
    const Choice found = chooser.choose(resolve(*job.request, catalogue, job.date, moved), nullptr,
                                        Chooser::Told::winner);
    if (found.groups.empty()) continue;
    std::vector<std::string> heads;
    heads.reserve(found.groups.size());
    for (const Group& group : found.groups) heads.push_back(group.head);
    return heads;
  }
  return {};
}

}  // namespace

void rank_by_chance(const Job& job, const Catalogue& catalogue, std::vector<Question>& questions) {
  Chooser chooser(catalogue, job.currency);
  for (Question& question : questions) {
    if (const std::optional<P> id = parameter_of(question.parameter)) {
      question.lets_pass = heads_let_pass(chooser, job, catalogue, *id);
    }
  }
  std::stable_partition(questions.begin(), questions.end(),
                        [](const Question& q) { return !q.lets_pass.empty(); });
}

}  // namespace calc
