#include "calc/verdict.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <iterator>
#include <optional>

#include "calc/judge.h"
#include "calc/uncertainty.h"
#include "calc/vary.h"
#include "calc/verdict_uncertain.h"

namespace calc {
namespace {

constexpr int halvings = 12;  // to a four thousandth of the range
constexpr int edge_digits = 3;

/// What an input moved to a value brings about; args: value and what is said of it.
Notice moved_to(std::string_view code, std::string field, Arg value, std::vector<Arg> said) {
  Notice notice;
  notice.code = code;
  notice.field = std::move(field);
  notice.args.push_back(std::move(value));
  std::move(said.begin(), said.end(), std::back_inserter(notice.args));
  return notice;
}

Notice edge(std::string field, double to, std::string unit, const Reason& reason) {
  return moved_to("assumption_edge", std::move(field), {"value", to, std::move(unit)},
                  {{"gate", reason.code, ""},
                   {"gate_subject", reason.subject, ""},
                   {"reached", reason.value, reason.unit},
                   {"limit", reason.limit, reason.unit}});
}

/// How far a moved value passes, and what fails just beyond.
struct Hold {
  double value = 0;
  Reason beyond;
};

void add_hold(const Hold& hold, const std::string& unit, Notice& notice) {
  notice.args.push_back({"holds", hold.value, unit});
  notice.args.push_back({"holds_gate", hold.beyond.code, ""});
  notice.args.push_back({"holds_gate_subject", hold.beyond.subject, ""});
  notice.args.push_back({"holds_limit", hold.beyond.limit, hold.beyond.unit});
}

/// A condition that only the moved value brings, with its own arguments behind it.
Notice arising(std::string field, double to, std::string unit, const Notice& condition) {
  std::vector<Arg> said{{"condition", condition.code, ""},
                        {"condition_field", condition.field, ""}};
  for (const Arg& arg : condition.args) {
    said.push_back({"condition_" + arg.name, arg.value, arg.unit});
  }
  return moved_to("assumption_condition", std::move(field), {"value", to, std::move(unit)},
                  std::move(said));
}

/// What a condition is about, whatever its figures and its axis: a budget that stands beyond its
/// limit on one axis is not told again for each value that brings the other one there.
bool same_condition(const Notice& a, const Notice& b) {
  const auto about = [](const Notice& n) {
    std::vector<std::string> texts;
    for (const Arg& arg : n.args) {
      const auto* text = std::get_if<std::string>(&arg.value);
      if (text != nullptr && arg.name != "axis") texts.push_back(*text);
    }
    return texts;
  };
  return a.code == b.code && about(a) == about(b);
}

bool holds_condition(const std::vector<Notice>& list, const Notice& condition) {
  return std::any_of(list.begin(), list.end(),
                     [&](const Notice& other) { return same_condition(other, condition); });
}

/// Moves one input after the other while the chosen groups keep their shape.
class Moves {
 public:
  Moves(const Job& job, const Catalogue& catalogue, const Selection& selection)
      : job_(job),
        catalogue_(catalogue),
        standing_(selection.conditions),
        judge_(catalogue, job.currency, selection.chosen),
        spreads_(figures(job), job.currency) {
    standing_.insert(standing_.end(), arising_.begin(), arising_.end());
  }

  void assumption(P id) {
    const Parameter& row = parameter(id);
    const double now = job_.parameters[id];
    const bool is_share = row.unit.empty() && row.high <= 1;
    const std::string unit = is_share ? "1" : unit_of(job_, id);
    std::vector<Spreads::End> ends;
    for (const double to : {row.low, row.high}) {
      if (!(to < now) && !(to > now)) continue;
      Parameters parameters = job_.parameters;
      parameters.set(id, to);
      ends.push_back({to, figures(resolve(*job_.request, catalogue_, job_.date, parameters))});
      tell_arising(std::string(row.key), to, unit);
      if (!fails() || dot_is_measured()) continue;
      conditions_.push_back(edge(std::string(row.key), to, unit, reason_));
      const std::optional<Hold> last = holds(id, now, to);
      if (last) add_hold(*last, unit, conditions_.back());
    }
    spreads_.add({std::string(row.key), unit, row.low, row.high}, ends);
  }

  /// What the request itself gives as uncertain.
  void uncertain_inputs() {
    const std::vector<MovedInput> moved = moved_inputs(*job_.request);
    for (std::size_t i = 0; i + 1 < moved.size(); i += 2) {
      const std::vector<Spreads::End> ends{{moved[i].value, uncertain_end(moved[i])},
                                           {moved[i + 1].value, uncertain_end(moved[i + 1])}};
      spreads_.add({moved[i].field, moved[i].unit, moved[i].value, moved[i + 1].value}, ends);
    }
  }

  std::vector<Notice> take_conditions() { return std::move(conditions_); }
  std::vector<Uncertainty> take_uncertainty() { return spreads_.take(); }

 private:
  Headlines figures(const Job& job) {
    const Judged& judged = judge_.of(job, Judge::Conditions::gathered);
    arising_.clear();
    for (const Notice& condition : judged.conditions) {
      if (holds_condition(standing_, condition) || holds_condition(arising_, condition)) continue;
      arising_.push_back(condition);
    }
    fails_ = !judged.failing.empty();
    if (fails_) reason_ = judged.failing.front();
    return headlines(job, judged.groups, judged.sizing);
  }

  bool fails() const { return fails_; }

  /// Whether it fails by solids that a standing condition asks to measure the dot for anyway.
  bool dot_is_measured() const {
    return reason_.code == "cover" &&
           std::any_of(standing_.begin(), standing_.end(),
                       [](const Notice& n) { return n.code == "measure_dot"; });
  }

  /// The conditions of the last job that the chosen arrangement does not have as it is.
  void tell_arising(const std::string& field, double to, const std::string& unit,
                    const Origin* where = nullptr) {
    for (const Notice& condition : arising_) {
      conditions_.push_back(arising(field, to, unit, condition));
      if (where != nullptr) conditions_.back().where.push_back(*where);
    }
  }

  /// The first failure with a value; none where it passes.
  std::optional<Reason> failing_at(P id, double value) {
    Parameters parameters = job_.parameters;
    parameters.set(id, value);
    const Judged& judged = judge_.of(resolve(*job_.request, catalogue_, job_.date, parameters));
    if (judged.failing.empty()) return std::nullopt;
    return judged.failing.front();
  }

  /// The value on the way from its other end to `to` up to which the groups pass, rounded to the
  /// safe side; none where they pass nowhere. Numbers of things go by whole ones. As it stands a
  /// tolerance counts at its kind end, so its own value is tried from just beside it.
  std::optional<Hold> holds(P id, double now, double to) {
    const Parameter& row = parameter(id);
    const bool up = to > now;
    if (row.unit == "dots" || row.unit == "nozzles" || row.unit == "passes" || row.unit == "a") {
      return holds_whole(id, now, up ? 1 : -1);
    }
    const double beside = now + (to - now) * 1e-6;
    std::optional<Reason> beyond = failing_at(id, beside);
    const bool here = !beyond;
    double pass = here ? now : up ? row.low : row.high;
    double fail = here ? to : beside;
    if (here) {
      beyond = reason_;
    } else if (failing_at(id, pass)) {
      return std::nullopt;
    }
    for (int i = 0; i < halvings; ++i) {
      const double middle = (pass + fail) / 2;
      const std::optional<Reason> failing = failing_at(id, middle);
      (failing ? fail : pass) = middle;
      if (failing) beyond = failing;
    }
    // Up to just before its own value, at which it passes, is up to that.
    if (!here && std::abs(pass - now) <= 2 * std::abs(fail - pass)) return Hold{now, *beyond};
    if (pass <= 0) return Hold{pass, *beyond};
    const double rounded = up ? rounded_down(pass, edge_digits) : rounded_up(pass, edge_digits);
    if (!here) return Hold{rounded, *beyond};
    return Hold{up ? std::max(now, rounded) : std::min(now, rounded), *beyond};
  }

  /// The same of a number of things, by steps of one.
  Hold holds_whole(P id, double pass, double step) {
    std::optional<Reason> beyond = failing_at(id, pass + step);
    while (!beyond) {
      pass += step;
      beyond = failing_at(id, pass + step);
    }
    return {pass, *beyond};
  }

  Headlines uncertain_end(const MovedInput& moved) {
    const Headlines end = figures(resolve(moved.request, catalogue_, job_.date, job_.parameters));
    tell_arising(moved.field, moved.value, moved.unit, &moved.where);
    if (fails()) {
      conditions_.push_back(edge(moved.field, moved.value, moved.unit, reason_));
      conditions_.back().where.push_back(moved.where);
    }
    return end;
  }

  const Job& job_;
  const Catalogue& catalogue_;
  std::vector<Notice> standing_;  ///< conditions as it stands
  Judge judge_;
  std::vector<Notice> arising_;  ///< of the last job, beyond those
  bool fails_ = false;
  Reason reason_;  ///< first of the last job's failures, if it has any
  Spreads spreads_;
  std::vector<Notice> conditions_;
};

/// Every default of the lists once, in their order.
std::vector<P> rows_of(std::initializer_list<const std::vector<Assumption>*> lists) {
  std::vector<P> rows;
  for (const auto* list : lists) {
    for (const Assumption& assumption : *list) {
      const std::optional<P> id = parameter_of(assumption.field);
      if (id && std::find(rows.begin(), rows.end(), *id) == rows.end()) rows.push_back(*id);
    }
  }
  return rows;
}

}  // namespace

Decision decide(const Job& job, const Catalogue& catalogue, const Selection& selection,
                const std::vector<Assumption>& of_station) {
  if (!job.missing.empty()) return {Verdict::incomplete, {}, {}};
  if (selection.chosen.empty()) return {Verdict::infeasible, {}, {}};
  Decision decision{Verdict::feasible, selection.conditions, {}};
  Moves moves(job, catalogue, selection);
  for (const P id : rows_of({&job.assumptions, &selection.assumptions, &of_station})) {
    moves.assumption(id);
  }
  moves.uncertain_inputs();
  const std::vector<Notice> edges = moves.take_conditions();
  decision.conditions.insert(decision.conditions.end(), edges.begin(), edges.end());
  decision.uncertainty = moves.take_uncertainty();
  if (!decision.conditions.empty()) decision.verdict = Verdict::conditional;
  return decision;
}

}  // namespace calc
