#include "calc/calculate.h"

#include <algorithm>
#include <utility>

#include "calc/calculate_inputs.h"
#include "calc/carriage_pace.h"
#include "calc/chance.h"
#include "calc/checks.h"
#include "calc/edges.h"
#include "calc/ink_state.h"
#include "calc/later_questions.h"
#include "calc/nearest.h"
#include "calc/pareto.h"
#include "calc/placement.h"
#include "calc/safety.h"
#include "calc/selection.h"
#include "calc/speed_steps.h"
#include "calc/station.h"
#include "calc/station_flexibility.h"
#include "calc/trace.h"
#include "calc/verdict.h"

namespace calc {
namespace {

void identify(const Request& request, const Catalogue& catalogue, const std::string& date,
              Specification& spec) {
  const RequestHead& head = request.request;
  spec.id = head.id ? head.id->value : "";
  spec.title = head.title ? head.title->value : "";
  spec.revision = head.revision ? head.revision->value : "A";
  spec.language = head.language ? head.language->value : "en";
  spec.date = date;
  spec.catalogue_date = catalogue.date ? catalogue.date->value : "";
}

template <class T>
void append(const std::vector<T>& from, std::vector<T>& to) {
  to.insert(to.end(), from.begin(), from.end());
}

/// Appends those whose field is not yet assumed.
void append_new(const std::vector<Assumption>& from, std::vector<Assumption>& to) {
  for (const Assumption& a : from) {
    const bool known = std::any_of(to.begin(), to.end(),
                                   [&](const Assumption& other) { return other.field == a.field; });
    if (!known) to.push_back(a);
  }
}

/// Each question once, the one that moves the result further, in falling order.
std::vector<Question> ranked(const std::vector<Question>& list) {
  std::vector<Question> sorted = list;
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const Question& a, const Question& b) { return a.weight > b.weight; });
  std::vector<Question> result;
  for (const Question& q : sorted) {
    const bool known = std::any_of(result.begin(), result.end(), [&](const Question& other) {
      return other.code == q.code && other.field == q.field;
    });
    if (!known) result.push_back(q);
  }
  return result;
}

int heads_of(const std::vector<Group>& groups) {
  int sum = 0;
  for (const Group& group : groups) sum += group.heads_total;
  return sum;
}

template <class Get>
bool differ(const std::vector<Group>& a, const std::vector<Group>& b, Get get) {
  return !std::equal(a.begin(), a.end(), b.begin(), b.end(),
                     [&](const Group& x, const Group& y) { return get(x) == get(y); });
}

std::vector<std::string> differences(const std::vector<Group>& a, const std::vector<Group>& b) {
  std::vector<std::string> list;
  const auto compare = [&](const char* name, auto get) {
    if (differ(a, b, get)) list.emplace_back(name);
  };
  compare("head", [](const Group& g) { return g.head; });
  compare("mode", [](const Group& g) { return g.mode; });
  compare("family", [](const Group& g) { return g.family; });
  compare("interleave", [](const Group& g) { return g.interleave; });
  compare("stack", [](const Group& g) { return g.stack; });
  compare("heads_total", [](const Group& g) { return g.heads_total; });
  compare("resolution_along", [](const Group& g) { return g.resolution_along.si(); });
  return list;
}

/// Marks those of the stations compared that no other betters in everything.
void mark_front(Specification& spec) {
  std::vector<Merits> all{merits(spec.chosen, *spec.station, spec.placement)};
  for (const Alternative& other : spec.alternatives) {
    all.push_back(merits(other.groups, other.station, other.placement));
  }
  const std::vector<char> front = pareto_front(all);
  spec.chosen_on_front = front.front() != 0;
  for (std::size_t i = 1; i < front.size(); ++i) spec.alternatives[i - 1].on_front = front[i] != 0;
}

/// A carriage that outruns its line may place its dots worse than the line asks for.
void warn_of_pace(Specification& spec) {
  if (!spec.carriage_pace) return;
  const PaceGain gain = pace_gain(spec.placement, *spec.carriage_pace);
  if (gain.held == 0) return;
  spec.warnings.push_back({"carriage_pace",
                           {{"speed", spec.carriage_pace->speed.si(), "m/s"},
                            {"beyond", static_cast<double>(gain.beyond), ""},
                            {"held", static_cast<double>(gain.held), ""}},
                           "line.throughput",
                           {}});
}

void add_chosen(const Job& job, const Catalogue& catalogue, const Selection& selection,
                Specification& spec) {
  spec.chosen = selection.chosen;
  spec.heads_total = heads_of(spec.chosen);
  spec.inks = inks_in_heads(job, catalogue, spec.chosen);
  spec.placement = placement_budgets(job, spec.chosen, Assumed::likely);
  spec.carriage_pace = carriage_pace(job, catalogue, spec.chosen);
  spec.station = size_station(job, catalogue, spec.chosen);
  spec.flexibility = flexibility(job, catalogue, spec.chosen);
  spec.single_source_share = single_source_share(catalogue, *spec.station);
  spec.single_source_unpriced = single_source_unpriced(catalogue, *spec.station);
  spec.tests = checks(job, catalogue, spec.chosen, *spec.station);
  append(spec.station->warnings, spec.warnings);
  warn_of_pace(spec);
  append_new(selection.assumptions, spec.assumptions);
  append_new(station_assumptions(job, catalogue, spec.chosen, *spec.station), spec.assumptions);
  for (const std::vector<Group>& groups : selection.alternatives) {
    spec.alternatives.push_back(
        {groups, size_station(job, catalogue, groups), differences(spec.chosen, groups),
         placement_budgets(job, groups, Assumed::likely), flexibility(job, catalogue, groups)});
  }
  mark_front(spec);
}

/// What would make something fit, or how far what fits may be moved.
void add_room(const Job& job, const Catalogue& catalogue, const Selection& selection,
              Specification& spec) {
  if (spec.verdict == Verdict::infeasible) {
    spec.nearest_miss = nearest_miss(job, catalogue, selection);
    spec.musts_in_the_way = musts_in_the_way(job, catalogue);
  } else if (!selection.chosen.empty()) {
    spec.edges = edges(job, catalogue, selection);
  }
}

/// The registration that placement was judged by stands in for one nobody states.
void state_registration(const std::vector<Budget>& placement, std::vector<Question>& questions) {
  for (Question& question : questions) {
    if (question.code != "q_registration") continue;
    for (const Budget& budget : placement) {
      if (budget.name != "colour") continue;
      question.assumed = in_um(budget.limit);
      question.unit = "um";
    }
  }
}

/// The heads' own throw stands in for the default wherever that is named.
void tell_throw(const Assumption& taken, Specification& spec) {
  for (Question& q : spec.questions) {
    if (q.code != "q_throw") continue;
    q.assumed = taken.value;
    q.low = taken.low;
    q.high = taken.high;
  }
  append_new({taken}, spec.assumptions);
}

void add_inputs(const Job& job, const Catalogue& catalogue, Specification& spec) {
  spec.inputs = request_inputs(job, spec.assumptions);
  append(catalogue_inputs(catalogue, spec), spec.inputs);
}

}  // namespace

Specification calculate(const Request& request, const Catalogue& catalogue,
                        const std::string& date) {
  Specification spec;
  identify(request, catalogue, date, spec);
  const Job job = resolve(request, catalogue, date);
  const Selection selection = select(job, catalogue);
  spec.required = job.required;
  spec.required->substrate_ceiling = selection.substrate_ceiling;
  spec.rejected = selection.rejected;
  spec.assumptions = job.assumptions;
  spec.warnings = job.warnings;
  append(selection.warnings, spec.warnings);
  if (!selection.chosen.empty()) add_chosen(job, catalogue, selection, spec);
  const bool passes = !spec.chosen.empty() && !spec.chosen.front().scan;
  if (passes) spec.speed_steps = speed_steps(request, catalogue, date);
  Decision decision = decide(job, catalogue, selection, spec.assumptions);
  spec.verdict = decision.verdict;
  spec.conditions = std::move(decision.conditions);
  spec.uncertainty = std::move(decision.uncertainty);
  add_room(job, catalogue, selection, spec);
  place(request, spec.warnings);
  std::vector<Question> questions = job.questions;
  append(selection.questions, questions);
  state_registration(spec.placement, questions);
  spec.safety = safety_notes(job, catalogue, spec.chosen, spec.station ? &*spec.station : nullptr);
  append(later_questions(job, catalogue, spec), questions);
  rank_by_money(spec.uncertainty, job.currency, questions);
  spec.questions = ranked(questions);
  if (spec.verdict == Verdict::infeasible) rank_by_chance(job, catalogue, spec.questions);
  if (const auto taken = throw_taken(job, catalogue, spec.chosen)) tell_throw(*taken, spec);
  add_inputs(job, catalogue, spec);
  spec.trace = trace(job, catalogue, spec);
  return spec;
}

}  // namespace calc
