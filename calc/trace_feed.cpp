#include "calc/named.h"
#include "calc/station_cure.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis feed_basis{
    "plane geometry", SourceTag::computed,
    "swath and windows begin together; what stands along the stroke is not in it"};

/// Heads of a colour end to end, with the body of the last.
void heads(TraceWriter& w, const Group& group, const std::string& g) {
  const Head& head = trace_head(w.catalogue, group);
  const bool several = group.scan->heads_per_colour > 1;
  std::vector<StepInput> inputs;
  if (several) {
    inputs.push_back(chosen("n", group.scan->heads_per_colour, ""));
    inputs.push_back(chosen("P", in_mm(group.head_pitch), "mm"));
  }
  inputs.push_back(head.body_width ? from_catalogue("b", in_mm(head.body_width->value), "mm",
                                                    "head." + head.name + ".body_width")
                                   : w.step("b", g + ".swath"));
  w.formula(g + ".heads_along", "l", several ? "(n-1)*P+b" : "b", inputs,
            in_mm(group.scan->heads_along), "mm", feed_basis);
}

/// The windows lit side by side of a stage, where it has a lamp.
void add_windows(const TraceWriter& w, const char* kind, std::string& list,
                 std::vector<StepInput>& inputs) {
  const Stage* const stage = stage_of(w.spec, kind);
  const Lamp* const lamp = stage == nullptr ? nullptr : named(w.catalogue.lamps, stage->equipment);
  if (lamp == nullptr || !stage->lamps_lit) return;
  const std::string end = "_" + std::string(kind);
  list += ",n" + end + "*w" + end;
  inputs.push_back(w.step("n" + end, "station." + std::string(kind) + ".lit"));
  inputs.push_back(from_catalogue("w" + end, in_mm(lamp->window_across->value), "mm",
                                  "lamp." + lamp->name + ".window_across"));
}

}  // namespace

void trace_feed(TraceWriter& w) {
  if (!w.spec.chosen.front().scan) return;
  std::string list;
  std::vector<StepInput> inputs;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    heads(w, w.spec.chosen[i], g);
    const std::string symbol = "l_" + std::to_string(i + 1);
    list += (i == 0 ? "" : ",") + symbol;
    inputs.push_back(w.step(symbol, g + ".heads_along"));
  }
  add_windows(w, "pinning", list, inputs);
  add_windows(w, "uv", list, inputs);
  std::string formula = "max(" + list + ")+l_s";
  inputs.push_back(from_parameter(w.job, "l_s", P::service_access_mm));
  const Stage* const drying = stage_of(w.spec, "drying");
  if (drying != nullptr) {
    formula += "+1000*l_d";
    const std::string id = "station.drying.";
    inputs.push_back(w.step_of_value("l_d", {id + "installed", id + "length"},
                                     drying->installed_length_m.value_or(*drying->length_m), "m"));
  }
  w.formula("station.footprint", "L_s", formula, inputs, in_mm(w.spec.station->footprint), "mm",
            feed_basis);
}

}  // namespace calc
