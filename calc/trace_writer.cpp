#include "calc/trace_writer.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace calc {

std::string origin_word(OriginKind kind) {
  switch (kind) {
    case OriginKind::given:
      return "given";
    case OriginKind::derived:
      return "derived";
    case OriginKind::assumed:
      return "assumed";
    case OriginKind::catalogue:
      return "catalogue";
  }
  throw std::logic_error("origin without a word");
}

StepInput constant(std::string symbol, double value, std::string unit) {
  return {std::move(symbol), value, std::move(unit), "constant", ""};
}

StepInput chosen(std::string symbol, double value, std::string unit) {
  return {std::move(symbol), value, std::move(unit), "choice", ""};
}

StepInput from_catalogue(std::string symbol, double value, std::string unit, std::string ref) {
  return {std::move(symbol), value, std::move(unit), "catalogue", std::move(ref)};
}

StepInput from_parameter(const Job& job, std::string symbol, P id) {
  return {std::move(symbol), job.parameters[id], unit_of(job, id), "assumed",
          std::string(parameter(id).key)};
}

StepInput from_range(const Job& job, std::string symbol, P id, double end) {
  StepInput input = from_parameter(job, std::move(symbol), id);
  input.value = end;
  return input;
}

StepInput printed_share(const TraceWriter& w) {
  const std::string_view key = parameter(P::printed_share).key;
  const std::vector<Assumption>& all = w.job.assumptions;
  const bool is_assumed =
      std::any_of(all.begin(), all.end(), [&](const Assumption& a) { return a.field == key; });
  if (is_assumed) return from_parameter(w.job, "s", P::printed_share);
  if (w.has("derived.printed_share")) return w.step("s", "derived.printed_share");
  return constant("s", w.job.printed_share, "");
}

StepInput margin_input(const Job& job, Length margin) {
  const Request& r = *job.request;
  if (!r.image.margin && r.line.weave) {
    return from_value("w_m", *r.line.weave, in_mm(margin), "mm", "line.weave");
  }
  return from_value("w_m", job.margin, in_mm(margin), "mm",
                    r.image.margin ? "image.margin" : "line.weave");
}

Resolution nozzle_axis(const Group& group) {
  return group.scan ? group.resolution_along : group.resolution_across;
}
Resolution motion_axis(const Group& group) {
  return group.scan ? group.resolution_across : group.resolution_along;
}
StepInput motion_resolution(const TraceWriter& w, const Group& group, const std::string& g,
                            const std::string& symbol) {
  const std::string demand = group.scan ? "required.across" : "required.along";
  return w.step_of_value(symbol, {g + ".motion", demand}, in_dpi(motion_axis(group)), "dpi");
}
std::string nozzle_axis_step(const Group& group, const std::string& prefix) {
  return prefix + (group.scan ? ".along" : ".across");
}

void TraceWriter::add(std::string id, StepKind kind, std::string symbol, std::string formula,
                      std::vector<StepInput> inputs, double value, std::string unit,
                      const Basis& basis, std::vector<std::string> assumptions) {
  if (has(id)) throw std::logic_error("two trace steps called " + id);
  const bool moves = kind == StepKind::again || kind == StepKind::last;
  for (const StepInput& input : inputs) {
    if (input.origin != "assumed" || moves) continue;
    const bool known =
        std::find(assumptions.begin(), assumptions.end(), input.ref) != assumptions.end();
    if (!known) assumptions.push_back(input.ref);
  }
  steps_.emplace_back(std::move(id), kind, std::move(symbol), std::move(formula), std::move(inputs),
                      value, std::move(unit), basis.source, basis.tag, basis.validity,
                      std::move(assumptions));
}

void TraceWriter::formula(std::string id, std::string symbol, std::string formula,
                          std::vector<StepInput> inputs, double value, std::string unit,
                          const Basis& basis) {
  add(std::move(id), StepKind::formula, std::move(symbol), std::move(formula), std::move(inputs),
      value, std::move(unit), basis);
}

StepInput TraceWriter::step(std::string symbol, const std::string& id) const {
  const Step* const found = find(id);
  if (found == nullptr) throw std::logic_error("no trace step called " + id);
  return {std::move(symbol), found->value, found->unit, "step", id};
}

StepInput TraceWriter::step_or_chosen(std::string symbol, const std::string& id, double value,
                                      std::string unit) const {
  if (has(id)) return step(std::move(symbol), id);
  return chosen(std::move(symbol), value, std::move(unit));
}

StepInput TraceWriter::step_of_value(std::string symbol, const std::vector<std::string>& ids,
                                     double value, std::string unit) const {
  constexpr double last_bits = 1e-13;
  for (const std::string& id : ids) {
    if (!has(id)) continue;
    StepInput found = step(symbol, id);
    const bool same = std::abs(found.value - value) <= last_bits * std::abs(value);
    if (same && found.unit == unit) return found;
  }
  return chosen(std::move(symbol), value, std::move(unit));
}

const Step* TraceWriter::find(const std::string& id) const {
  const auto found =
      std::find_if(steps_.begin(), steps_.end(), [&](const Step& step) { return step.id == id; });
  return found == steps_.end() ? nullptr : &*found;
}

}  // namespace calc
