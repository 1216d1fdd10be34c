/// What the heads of a group come to: joints to align, length along the motion, heads in all.
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis aligned{"count", SourceTag::computed, "each head against one already aligned"};
const Basis depth_rule{"plane geometry", SourceTag::computed, "rows of one kind of head"};
const Basis counting{"count", SourceTag::computed, "whole heads"};

/// Depth of a head along the motion as it stands.
StepInput depth_of(const TraceWriter& w, const Group& group, const std::string& g, Length depth) {
  if (w.has(g + ".tilted_depth")) return w.step("d", g + ".tilted_depth");
  return from_catalogue("d", in_mm(depth), "mm", "head." + group.head + ".body_depth");
}

void footprint(TraceWriter& w, const Group& group, const std::string& g) {
  const std::string id = g + ".footprint";
  if (group.round) {
    w.formula(id, "L_g", "z*L",
              {w.step("z", g + ".round_stations"), w.step("L", g + ".round_length")},
              in_mm(group.footprint), "mm", depth_rule);
    return;
  }
  const Given<Length>& depth = trace_head(w.catalogue, group).body_depth;
  if (!depth) return;
  w.formula(id, "L_g", "N_r*(d+gap)",
            {w.step("N_r", g + ".head_rows"), depth_of(w, group, g, depth->value),
             from_parameter(w.job, "gap", P::row_gap_mm)},
            in_mm(group.footprint), "mm", depth_rule);
}

}  // namespace

void trace_standing(TraceWriter& w, const Group& group, const std::string& g) {
  w.formula(g + ".joints", "n_j", "heads-1", {w.step("heads", g + ".heads_total")}, group.joints,
            "", aligned);
  footprint(w, group, g);
}

void trace_heads(TraceWriter& w) {
  if (w.spec.chosen.size() < 2) return;
  std::vector<StepInput> inputs;
  std::string list;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string number = std::to_string(i + 1);
    const std::string symbol = "heads_" + number;
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(w.step(symbol, "g" + number + ".heads_total"));
  }
  w.formula("station.heads", "heads", "sum(" + list + ")", std::move(inputs), w.spec.heads_total,
            "", counting);
}

}  // namespace calc
