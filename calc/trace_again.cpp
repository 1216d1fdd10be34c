/// What is told of other stations and of other values than those asked or assumed: the same working
/// gone through once more.
#include "calc/trace_again.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "calc/edges.h"
#include "calc/pareto.h"
#include "calc/trace.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis other_station{"the same working with another station", SourceTag::computed,
                          "the request as asked"};
const Basis other_value{"the same working with another value", SourceTag::computed,
                        "all else as it is"};
const Basis kind_ends{"the same working with another value", SourceTag::computed,
                      "every other assumed tolerance at the kind end of its range"};
const Basis narrowed{"narrowed down between what passes and what fails", SourceTag::computed,
                     "all else as it is"};
const Basis narrowed_at_kind_ends{"narrowed down between what passes and what fails",
                                  SourceTag::computed,
                                  "every other assumed tolerance at the kind end of its range"};
const Basis looked{"as far as was looked", SourceTag::computed, "all else as it is"};
const Basis count{"count", SourceTag::computed, "whole heads"};
const Basis present_value{"present value of a yearly amount, year end", SourceTag::computed,
                          "priced items only"};

constexpr std::string_view placement = "placement";

/// Heads of another choice: the row of the catalogue beside their number.
StepInput heads_input(std::size_t index, const std::string& head, const std::string& mode,
                      int number) {
  return {"n_" + std::to_string(index + 1), static_cast<double>(number), "", "choice",
          "head." + head + ".mode." + mode};
}

std::vector<StepInput> heads_inputs(const std::vector<Group>& groups) {
  std::vector<StepInput> inputs;
  inputs.reserve(groups.size());
  for (const Group& group : groups) {
    inputs.push_back(heads_input(inputs.size(), group.head, group.mode, group.heads_total));
  }
  return inputs;
}

/// The figures of one alternative, as they stand side by side.
class Beside {
 public:
  Beside(TraceWriter& w, const Alternative& other, std::string id)
      : w_(w),
        other_(other),
        id_(std::move(id)),
        merits_(merits(other.groups, other.station, other.placement)) {}

  void machine() {
    const FigureSteps steps = steps_of(w_);
    heads();
    figure("boards", steps.boards(), other_.station.boards, "");
    int joints = 0;
    double use = 0;
    for (const Group& group : other_.groups) {
      joints += group.joints;
      use = std::max(use, group.frequency_use);
    }
    figure("joints", steps.joints(), joints, "");
    figure("use", steps.use(), use, "");
    registration(steps);
    figure("speed_limit", steps.speed(), merits_.speed_limit.si(), "m/s");
    const auto& limit = other_.station.speed_limit;
    if (limit) figure("speed", "station.speed", limit->speed.si(), "m/s");
  }

  void money() {
    const Cost& cost = other_.station.cost;
    const std::string& unit = other_.station.currency;
    figure("capital", "station.capital", cost.capital.major(), unit);
    figure("running", "station.running", cost.running_per_year.major(), unit);
    if (w_.has("station.annuity")) {
      w_.formula(id_ + "ownership", "C", "round(100*(K+Y*a))/100",
                 {w_.step("K", id_ + "capital"), w_.step("Y", id_ + "running"),
                  w_.step("a", "station.annuity")},
                 cost.ownership.major(), unit, present_value);
    }
  }

 private:
  void heads() {
    std::vector<StepInput> inputs = heads_inputs(other_.groups);
    std::string list;
    for (const StepInput& input : inputs) list += (list.empty() ? "" : ",") + input.symbol;
    w_.formula(id_ + "heads", "n", "sum(" + list + ")", std::move(inputs), merits_.heads, "",
               count);
  }

  void figure(const std::string& name, const std::string& of, double value,
              const std::string& unit) {
    again(w_, id_ + name, of, heads_inputs(other_.groups), value, unit, other_station);
  }

  /// Not reckoned with colours on several carriages, none where one head prints all of them.
  void registration(const FigureSteps& steps) {
    const std::string of = steps.widest_budget("colour");
    const bool reckoned = std::any_of(other_.placement.begin(), other_.placement.end(),
                                      [](const Budget& b) { return b.name == "colour"; });
    if (!reckoned) return;
    figure("registration", of.empty() ? "placement.colour" : of, in_um(merits_.registration), "um");
  }

  TraceWriter& w_;
  const Alternative& other_;
  std::string id_;
  Merits merits_;
};

void alternatives(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.alternatives.size(); ++i) {
    Beside beside(w, w.spec.alternatives[i], "alternative." + std::to_string(i + 1) + ".");
    beside.machine();
    beside.money();
  }
}

/// A value of the request or an assumption, moved.
StepInput moved(const std::string& symbol, const std::string& field, double value,
                const std::string& unit) {
  return {symbol, value, unit, parameter_of(field) ? "assumed" : "given", field};
}

void range_end(TraceWriter& w, const Uncertainty& entry, const std::string& side, double value,
               const std::optional<Uncertainty::End>& by) {
  if (!by) return;
  const std::string of = steps_of(w).headline(entry.figure);
  const bool is_speed = entry.unit == "m/min";  // the step has m/s
  again(w, "range." + side + "." + entry.figure, of, {moved("x", by->field, by->at, by->unit)},
        is_speed ? value / 60 : value,
        is_speed            ? "m/s"
        : entry.unit == "1" ? ""
                            : entry.unit,
        other_value);
}

void ranges(TraceWriter& w) {
  for (const Uncertainty& entry : w.spec.uncertainty) {
    range_end(w, entry, "low", entry.low, entry.low_by);
    range_end(w, entry, "high", entry.high, entry.high_by);
  }
}

/// The last value that passes a gate, from the value as it stands.
void last(TraceWriter& w, const std::string& id, const std::string& gate, StepInput from,
          const std::string& of, double value) {
  const std::string unit = from.unit;
  std::vector<StepInput> inputs{std::move(from)};
  // Of a budget its limit: what it has as it stands is with likely tolerances.
  const std::string held = gate == placement ? of + ".limit" : of;
  if (w.has(held)) inputs.push_back(w.step("y", held));
  w.add(id, StepKind::last, "x", gate, std::move(inputs), value, unit,
        gate == placement ? narrowed_at_kind_ends : narrowed);
}

void passing_edge(TraceWriter& w, const Edge& edge, const std::string& id) {
  StepInput now{"x_0", edge.now, edge.unit, "given", edge.quantity};
  if (edge.printed) {
    last(w, id, edge.beyond, std::move(now), steps_of(w).gate(edge.beyond, edge.up), *edge.printed);
    return;
  }
  const double far = edge.up ? edge.now * farthest_edge : edge.now / farthest_edge;
  w.formula(id, "x", edge.up ? "x_0*f" : "x_0/f",
            {std::move(now), constant("f", farthest_edge, "")}, far, edge.unit, looked);
}

/// Where another station is recommended before that.
void recommended_edge(TraceWriter& w, const Edge& edge, const std::string& id) {
  if (!edge.printed || edge.arrangement.empty()) return;
  std::vector<StepInput> inputs{{"x_0", edge.now, edge.unit, "given", edge.quantity}};
  for (const HeadsOf& h : edge.arrangement) {
    inputs.push_back(heads_input(inputs.size() - 1, h.head, h.mode, h.heads_total));
  }
  w.add(id, StepKind::last, "x", "recommended", std::move(inputs), *edge.printed, edge.unit,
        narrowed);
}

void edges(TraceWriter& w) {
  for (const Edge& edge : w.spec.edges) {
    const std::string id = edge_step(edge);
    if (edge.kind == EdgeKind::passes) {
      passing_edge(w, edge, id);
    } else {
      recommended_edge(w, edge, id);
    }
  }
}

const Arg* find(const Notice& notice, std::string_view name) {
  const auto found = std::find_if(notice.args.begin(), notice.args.end(),
                                  [&](const Arg& arg) { return arg.name == name; });
  return found == notice.args.end() ? nullptr : &*found;
}

std::string text_of(const Notice& notice, std::string_view name) {
  const Arg* const arg = find(notice, name);
  const auto* const text = arg == nullptr ? nullptr : std::get_if<std::string>(&arg->value);
  return text == nullptr ? std::string() : *text;
}

/// A figure at an end of a range at which a check fails or a condition comes up.
void reached(TraceWriter& w, const Notice& notice, std::string_view name, const std::string& of,
             const Basis& basis) {
  const Arg* const value = find(notice, "value");
  const Arg* const figure = find(notice, name);
  again(w, numbered(w, "moved." + notice.field + "." + figure->name), of,
        {moved("x", notice.field, std::get<double>(value->value), value->unit)},
        std::get<double>(figure->value), figure->unit, basis);
}

/// The step of the resolution that was not moved.
std::string resolution_step(const TraceWriter& w, double dpi) {
  for (std::size_t i = 1; i <= w.spec.chosen.size(); ++i) {
    for (const char* axis : {".across", ".along", ".motion"}) {
      const Step* const step = w.find("g" + std::to_string(i) + axis);
      if (step != nullptr && std::abs(step->value - dpi) <= 1e-9 * dpi) return step->id;
    }
  }
  return "resolution";
}

bool is_demand(const std::string& code) { return code == "resolution" || code == "soft_demand"; }

/// The budget of that name whose limit is nearest; those of strokes are of their joints.
std::string nearest_budget(const TraceWriter& w, const std::string& subject, double limit_um) {
  const std::string name = subject.starts_with("stroke") ? "joint" : subject;
  const Budget* nearest = nullptr;
  const auto off = [&](const Budget& b) { return std::abs(in_um(b.limit) - limit_um); };
  for (const Budget& budget : w.spec.placement) {
    if (budget.name != name) continue;
    if (nearest == nullptr || off(budget) < off(*nearest)) nearest = &budget;
  }
  return nearest == nullptr ? std::string() : budget_step(w.spec, *nearest);
}

/// What a gate or a condition is about, as a notice tells it.
struct Told {
  std::string code, subject;
  double figure = 0, limit = 0;
};

/// The step that has the figure as it stands, else the code itself.
std::string of_code(const TraceWriter& w, const Told& told) {
  if (is_demand(told.code)) return resolution_step(w, told.figure);
  const std::string of = told.code == placement
                             ? nearest_budget(w, told.subject, told.limit)
                             : steps_of(w).gate(told.code, told.subject == "most");
  return w.has(of) ? of : told.code;
}

/// The demand moves with what it is made of, those of the other axis too.
void demand(TraceWriter& w, const Notice& notice, std::string_view limit, const std::string& of) {
  const std::string axis = of.ends_with(".across") ? "across" : "along";
  reached(w, notice, limit, "required." + axis, other_value);
}

double number_of(const Notice& notice, std::string_view name) {
  const Arg* const arg = find(notice, name);
  const auto* const number = arg == nullptr ? nullptr : std::get_if<double>(&arg->value);
  return number == nullptr ? 0 : *number;
}

void failing_end(TraceWriter& w, const Notice& notice) {
  const Told told{text_of(notice, "gate"), text_of(notice, "gate_subject"),
                  number_of(notice, "reached"), number_of(notice, "limit")};
  const std::string of = of_code(w, told);
  reached(w, notice, "reached", of, told.code == placement ? kind_ends : other_value);
  if (is_demand(told.code)) demand(w, notice, "limit", of);
  const Arg* const holds = find(notice, "holds");
  const std::optional<P> id = parameter_of(notice.field);
  if (holds == nullptr || !id) return;
  const Told bound{text_of(notice, "holds_gate"), text_of(notice, "holds_gate_subject"),
                   told.figure, number_of(notice, "holds_limit")};
  last(w, numbered(w, "moved." + notice.field + ".holds"), bound.code,
       moved("x_0", notice.field, w.job.parameters[*id], holds->unit), of_code(w, bound),
       std::get<double>(holds->value));
}

/// A condition that comes up with another value.
void arising_condition(TraceWriter& w, const Notice& notice) {
  if (find(notice, "condition_value") == nullptr) return;
  const Told told{text_of(notice, "condition"), text_of(notice, "condition_subject"),
                  number_of(notice, "condition_value"), number_of(notice, "condition_limit")};
  const std::string of = of_code(w, told);
  reached(w, notice, "condition_value", of, other_value);
  if (is_demand(told.code)) demand(w, notice, "condition_limit", of);
}

void moved_ends(TraceWriter& w) {
  for (const Notice& notice : w.spec.conditions) {
    if (notice.code == "assumption_edge") failing_end(w, notice);
    if (notice.code == "assumption_condition") arising_condition(w, notice);
  }
}

}  // namespace

FigureSteps steps_of(const TraceWriter& w) {
  return {w.spec, [&w](const std::string& id) { return w.has(id); }};
}

void again(TraceWriter& w, const std::string& id, const std::string& of,
           std::vector<StepInput> inputs, double value, const std::string& unit,
           const Basis& basis) {
  const Step* const step = w.find(of);
  w.add(id, StepKind::again, step == nullptr ? "y" : step->symbol, of, std::move(inputs), value,
        unit, basis);
}

std::string numbered(const TraceWriter& w, const std::string& id) {
  std::string free = id;
  for (int number = 2; w.has(free); ++number) free = id + "." + std::to_string(number);
  return free;
}

std::string edge_step(const Edge& edge) {
  const std::string id = "edge." + edge.quantity + (edge.up ? ".up" : ".down");
  return edge.kind == EdgeKind::passes ? id : id + ".recommended";
}

void trace_again(TraceWriter& w) {
  alternatives(w);
  ranges(w);
  edges(w);
  moved_ends(w);
}

}  // namespace calc
