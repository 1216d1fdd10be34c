/// What heads that are not chosen come to, where their reasons tell it.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "calc/named.h"
#include "calc/trace.h"
#include "calc/trace_again.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis other_head{"the same working with another head", SourceTag::computed,
                       "the request as asked"};
const Basis definition{"definition", SourceTag::computed, "the most heads stacked that were tried"};

/// Reasons whose value is stated, by the catalogue or by the request, or counts what is lacking.
bool is_stated(const Reason& reason) {
  constexpr std::array<std::string_view, 3> worked_out{"ownership", "joints", "heads"};
  if (reason.code == "lost") {
    return std::find(worked_out.begin(), worked_out.end(), reason.subject) == worked_out.end();
  }
  constexpr std::array<std::string_view, 11> stated{
      "ink_family", "ink_substrate",  "viscosity", "tension",   "serviceable", "waveform",
      "levels",     "driver_sources", "lead_time", "head_data", "indexing"};
  return std::find(stated.begin(), stated.end(), reason.code) != stated.end();
}

/// The step of the station chosen that has the same figure; the code where none has.
std::string followed(const TraceWriter& w, const Reason& reason) {
  if (w.spec.chosen.empty() || !w.spec.station) return reason.code;
  const FigureSteps steps = steps_of(w);
  if (reason.code == "frequency") return steps.frequency();
  if (reason.code == "placement") return steps.widest_budget(reason.subject);
  if (reason.code != "lost") return steps.gate(reason.code, reason.subject == "most");
  if (reason.subject == "ownership") return "station.ownership";
  if (reason.subject == "joints") return steps.joints();
  return steps.heads();
}

/// How many heads stand one behind the other ("6 stacked"); 0 where a reason is of something else.
int stack_of(const Reason& reason) {
  return reason.code == "frequency" && reason.subject.ends_with(" stacked")
             ? std::stoi(reason.subject)
             : 0;
}

/// The frequency at the resolution asked for, in full; false where the head was tried at another.
bool frequency(TraceWriter& w, const std::string& id, const Head& head, const Reason& reason) {
  const int stack = stack_of(reason);
  if (stack < 1 || !w.job.speed || !w.has("required.along")) return false;
  const StepInput r = w.step("R_m", "required.along");
  const double v = served_high(*w.job.speed).si();
  const double khz = v * r.value / (25.4 * stack);
  if (std::abs(khz - reason.value) > 1e-12 * khz) return false;
  w.formula(id, "f", "v*R_m/(25.4*m)",
            {from_value("v", *w.job.speed, v, "m/s", "line.speed"),
             r,
             {"m", static_cast<double>(stack), "", "choice", "head." + head.name}},
            reason.value, reason.unit, definition);
  return true;
}

void left_out(TraceWriter& w, const Head& head, const Reason& reason) {
  const std::string id = numbered(w, left_out_step(head.name, reason));
  if (frequency(w, id, head, reason)) return;
  if (is_stated(reason) || head.modes.empty() || !head.modes.front().nozzles) return;
  const HeadMode& mode = head.modes.front();
  const std::string of = followed(w, reason);
  again(w, id, w.has(of) ? of : reason.code,
        {from_catalogue("N", mode.nozzles->value, "",
                        "head." + head.name + ".mode." + mode.name + ".nozzles")},
        reason.value, reason.unit, other_head);
}

}  // namespace

std::string left_out_step(const std::string& head, const Reason& reason) {
  return "left_out." + head + "." + reason.code;
}

void trace_left_out(TraceWriter& w) {
  for (const RejectedHead& rejected : w.spec.rejected) {
    const Head* const head = named(w.catalogue.heads, rejected.head);
    if (head == nullptr) continue;
    for (const Reason& reason : rejected.reasons) left_out(w, *head, reason);
  }
}

}  // namespace calc
