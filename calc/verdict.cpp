#include "calc/verdict.h"

#include <algorithm>
#include <optional>

#include "calc/verdict_uncertain.h"

namespace calc {
namespace {

/// The row of the table behind an assumption; none for assumptions that are no number.
std::optional<P> row_of(const Assumption& assumption) {
  for (std::size_t i = 0; i < static_cast<std::size_t>(P::count); ++i) {
    if (parameter(static_cast<P>(i)).key == assumption.field) return static_cast<P>(i);
  }
  return std::nullopt;
}

/// The gates that the chosen groups fail when one assumption is moved and all else stays.
std::vector<Reason> moved(const Job& job, const Catalogue& catalogue,
                          const std::vector<Group>& chosen, P id, double to) {
  Parameters parameters = job.parameters;
  parameters.set(id, to);
  const Job other = resolve(*job.request, catalogue, job.date, parameters);
  return failing_gates(other, catalogue, chosen);
}

Notice edge(std::string field, double to, std::string unit, const Reason& reason) {
  Notice notice;
  notice.code = "assumption_edge";
  notice.field = std::move(field);
  notice.args = {{"value", to, std::move(unit)},
                 {"gate", reason.code, ""},
                 {"reached", reason.value, reason.unit},
                 {"limit", reason.limit, reason.unit}};
  return notice;
}

void edges_of(const Job& job, const Catalogue& catalogue, const Selection& selection, P id,
              std::vector<Notice>& out) {
  const Parameter& row = parameter(id);
  const double now = job.parameters[id];
  for (const double to : {row.low, row.high}) {
    if (!(to < now) && !(to > now)) continue;
    const std::vector<Reason> failing = moved(job, catalogue, selection.chosen, id, to);
    if (failing.empty()) continue;
    const bool is_share = row.unit.empty() && row.high <= 1;
    out.push_back(
        edge(std::string(row.key), to, is_share ? "1" : unit_of(job, id), failing.front()));
  }
}

/// The same for what the request itself gives as uncertain.
void uncertain_edges(const Job& job, const Catalogue& catalogue, const Selection& selection,
                     std::vector<Notice>& out) {
  for (const MovedInput& moved : moved_inputs(*job.request)) {
    const Job other = resolve(moved.request, catalogue, job.date, job.parameters);
    const std::vector<Reason> failing = failing_gates(other, catalogue, selection.chosen);
    if (failing.empty()) continue;
    out.push_back(edge(moved.field, moved.value, moved.unit, failing.front()));
    out.back().where.push_back(moved.where);
  }
}

}  // namespace

Decision decide(const Job& job, const Catalogue& catalogue, const Selection& selection) {
  if (!job.missing.empty()) return {Verdict::incomplete, {}};
  if (selection.chosen.empty()) return {Verdict::infeasible, {}};
  Decision decision{Verdict::feasible, selection.conditions};
  for (const auto* list : {&job.assumptions, &selection.assumptions}) {
    for (const Assumption& assumption : *list) {
      const std::optional<P> id = row_of(assumption);
      if (id) edges_of(job, catalogue, selection, *id, decision.conditions);
    }
  }
  uncertain_edges(job, catalogue, selection, decision.conditions);
  if (!decision.conditions.empty()) decision.verdict = Verdict::conditional;
  return decision;
}

}  // namespace calc
