#include "calc/trace_apart.h"

#include <cmath>
#include <optional>

#include "calc/eye.h"
#include "calc/named.h"
#include "calc/placement_terms.h"
#include "calc/trace_find.h"

namespace calc {
namespace {

const Basis rows{"rows of heads stand one behind the other", SourceTag::computed,
                 "heads of one kind"};
const Basis joints{
    "plane geometry: rows between the heads of a joint, less or more what the tilt puts its ends "
    "apart",
    SourceTag::computed, "nozzles that print at one place of the line"};
const Basis along{"rows of heads and pinning of all groups, one behind the other",
                  SourceTag::computed, "in the order of travel"};

std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

/// From one row of heads to the next.
void row_step_of(TraceWriter& w, const Group& group, const std::string& g) {
  const Head& head = trace_head(w.catalogue, group);
  if (group.round || !head.body_depth) return;
  const StepInput depth = w.has(g + ".tilted_depth")
                              ? w.step("d", g + ".tilted_depth")
                              : from_catalogue("d", in_mm(head.body_depth->value), "mm",
                                               "head." + group.head + ".body_depth");
  w.formula(g + ".row_step", "L_r", "d+gap", {depth, from_parameter(w.job, "gap", P::row_gap_mm)},
            in_mm(row_step(group)), "mm", rows);
}

StepInput row_step_input(const TraceWriter& w, const Group& group, const std::string& g,
                         const std::string& symbol) {
  const std::string id = g + (group.round ? ".round_step" : ".row_step");
  return w.step_or_chosen(symbol, w.has(id) ? id : "", in_mm(row_step(group)), "mm");
}

/// What the tilt puts the two ends of a joint apart.
void lean_of(TraceWriter& w, const Group& group, const std::string& g) {
  if (!is_tilted(group) || group.heads_across < 2) return;
  w.formula(g + ".lean", "l", "P*tan(abs(t)*pi/180)",
            {w.step("P", g + ".head_pitch"), w.step("t", g + ".tilt"), constant("pi", pi, "")},
            in_mm(group.head_pitch) * std::tan(std::abs(group.tilt)), "mm", joints);
}

/// The part of joint_apart() that lies between heads side by side.
std::string beside(const Group& group, bool leans) {
  if (group.heads_across < 2) return "";
  if (group.rows_staggered < 2) return leans ? "+l" : "";
  const std::string next = leans ? "abs(L_r-l)" : "L_r";
  if (group.heads_across <= group.rows_staggered) return "+" + next;
  return leans ? "+max(" + next + ",L_r*(r-1)+l)" : "+max(L_r,L_r*(r-1))";
}

void joint_of(TraceWriter& w, const Group& group, const std::string& g) {
  if (joint_apart(group) <= Length{}) return;
  std::vector<StepInput> inputs{row_step_input(w, group, g, "L_r"), rows_of_heads(w, group, g)};
  const std::optional<StepInput> banks = banks_of_heads(w, group, g);
  if (banks) inputs.push_back(*banks);
  const bool leans = w.has(g + ".lean");
  if (leans) inputs.push_back(w.step("l", g + ".lean"));
  const std::string side = beside(group, leans);
  const std::string formula = banks ? "L_r*r*(B-1)" + side : side.substr(1);
  w.formula(g + ".joint_apart", "L", formula, std::move(inputs), in_mm(joint_apart(group)), "mm",
            joints);
}

/// Over the rows of all groups, as the budgets of colours and of the image have it.
void all_rows(TraceWriter& w, bool to_last_row, const std::string& id, double before,
              double value) {
  std::vector<StepInput> inputs;
  std::string sum;
  if (before > 0) {
    inputs.push_back(from_parameter(w.job, "s", P::sensor_distance_mm));
    sum = "s";
  }
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& group = w.spec.chosen[i];
    const std::string n = std::to_string(i + 1);
    inputs.push_back(row_step_input(w, group, group_id(i), "L_" + n));
    inputs.push_back(w.step("n_" + n, group_id(i) + ".head_rows"));
    if (!sum.empty()) sum += "+";
    sum.append("L_").append(n).append("*n_").append(n);
    if (pinned_length(group) <= Length{}) continue;
    inputs.push_back(chosen("q_" + n, in_mm(pinned_length(group)), "mm"));
    sum += "+q_" + n;
  }
  if (to_last_row) sum += "-L_" + std::to_string(w.spec.chosen.size());
  w.formula(id, "L", sum, std::move(inputs), value, "mm", along);
}

const BudgetTerm* farthest(const Specification& spec, std::string_view name) {
  for (const Budget& budget : spec.placement) {
    if (budget.name != name || !budget.motion) continue;
    if (const auto* term = named(budget.terms, "thermal")) return term;
  }
  return nullptr;
}

}  // namespace

std::string budget_prefix(const Specification& spec, const Budget& budget) {
  for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
    if (spec.chosen[i].name == budget.group) return group_id(i);
  }
  return "placement";
}

void trace_apart(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& group = w.spec.chosen[i];
    const std::string g = group_id(i);
    row_step_of(w, group, g);
    lean_of(w, group, g);
    joint_of(w, group, g);
  }
  if (const BudgetTerm* const term = farthest(w.spec, "colour")) {
    all_rows(w, true, "placement.colours_apart", 0, in_mm(term->over));
  }
  if (const BudgetTerm* const term = farthest(w.spec, "image")) {
    all_rows(w, false, "placement.reach", w.job.parameters[P::sensor_distance_mm],
             in_mm(term->over));
  }
}

StepInput apart_input(const TraceWriter& w, const Budget& budget, const BudgetTerm& term) {
  const std::string g = budget_prefix(w.spec, budget);
  std::string id = budget.name == "joint"    ? g + ".joint_apart"
                   : budget.name == "colour" ? "placement.colours_apart"
                                             : "placement.reach";
  if (budget.name == "joint" && !budget.motion) {
    if (term.name == "thermal") id = g + ".head_pitch";
    if (term.name == "wheel") {
      id = g + (w.has(g + ".carriage_advance") ? ".carriage_advance" : ".advance");
    }
  }
  return w.step_or_chosen("L", w.has(id) ? id : "", in_mm(term.over), "mm");
}

}  // namespace calc
