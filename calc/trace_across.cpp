#include <optional>

#include "calc/across.h"
#include "calc/lattice.h"
#include "calc/placement_terms.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis pitch_rule{"every nozzle owns one pitch", SourceTag::computed, "whole pitches"};
const Basis width_rule{"plane geometry", SourceTag::computed, "one swath at least"};
const Basis staggering{"bodies side by side need body width and gap", SourceTag::computed,
                       "heads of one kind"};
const Basis counting{"count", SourceTag::computed, "whole heads"};

std::string head_ref(const Group& group, const std::string& field) {
  return "head." + group.head + "." + field;
}

void swath_steps(TraceWriter& w, const Group& group, const std::string& g) {
  if (is_tilted(group)) return trace_tilted_swath(w, group, g);
  const Head& head = trace_head(w.catalogue, group);
  const Length p = pitch(group.native);
  const StepInput nozzles =
      from_catalogue("N", group.nozzles, "", head_ref(group, "mode." + group.mode + ".nozzles"));
  w.formula(g + ".nozzle_pitch", "p_0", "25.4/R_0", {w.step("R_0", g + ".native")}, in_mm(p), "mm",
            pitch_rule);
  w.formula(g + ".swath", "S", "N*p_0", {nozzles, w.step("p_0", g + ".nozzle_pitch")},
            in_mm(swath(group.nozzles, group.native)), "mm", pitch_rule);
  const bool joins = head.joins && head.joins->value;
  if (!head.overlap && !joins) {
    w.formula(
        g + ".overlap", "o", "n_o*p_0",
        {from_parameter(w.job, "n_o", P::overlap_nozzles), w.step("p_0", g + ".nozzle_pitch")},
        in_mm(group.overlap), "mm", pitch_rule);
  }
}

StepInput overlap(const TraceWriter& w, const Group& group, const std::string& g) {
  if (w.has(g + ".overlap")) return w.step("o", g + ".overlap");
  return from_catalogue("o", in_mm(group.overlap), "mm",
                        head_ref(group, group.overlap.si() > 0 ? "overlap" : "joins"));
}

void heads(TraceWriter& w, const Group& group, const std::string& g) {
  trace_width(w, g);
  const Length width = print_width(w.job.width->high, w.job.margin.high);
  w.formula(g + ".head_pitch", "P", "floor((S-o)/p_0)*p_0",
            {w.step("S", g + ".swath"), overlap(w, group, g), w.step("p_0", g + ".nozzle_pitch")},
            in_mm(head_pitch(group.swath, group.overlap, group.pitch)), "mm", pitch_rule);
  w.formula(g + ".heads_across", "n", "1+max(0,ceil((W-S)/P))",
            {w.step("W", g + ".width"), w.step("S", g + ".swath"), w.step("P", g + ".head_pitch")},
            heads_across(width, group.swath, group.head_pitch), "", width_rule);
  if (is_tilted(group)) return trace_tilted_idle(w, group, g);
  w.formula(g + ".idle", "i", "1-W/(n*P+S-P)",
            {w.step("W", g + ".width"), w.step("n", g + ".heads_across"),
             w.step("P", g + ".head_pitch"), w.step("S", g + ".swath")},
            idle_nozzle_share(width, group.heads_across, group.swath, group.head_pitch), "",
            width_rule);
}

void rows(TraceWriter& w, const Group& group, const std::string& g) {
  if (is_tilted(group)) return trace_tilted_rows(w, group, g);
  const Head& head = trace_head(w.catalogue, group);
  if ((head.joins && head.joins->value) || !head.body_width) return;
  const Length gap = millimetres(w.job.parameters[P::body_gap_mm]);
  const Length body = head.body_width->value;
  w.formula(g + ".rows", "r", "min(n,ceil((b+gap)/P))",
            {w.step("n", g + ".heads_across"),
             from_catalogue("b", in_mm(body), "mm", head_ref(group, "body_width")),
             from_parameter(w.job, "gap", P::body_gap_mm), w.step("P", g + ".head_pitch")},
            rows_in_group(group.heads_across, staggered_rows(false, body, gap, group.head_pitch)),
            "", staggering);
}

/// Rows of heads of all colours of the group, one behind the other.
void row_count(TraceWriter& w, const Group& group, const std::string& g) {
  std::vector<StepInput> inputs{w.step("positions", g + ".positions"), rows_of_heads(w, group, g)};
  const std::optional<StepInput> banks = banks_of_heads(w, group, g);
  if (banks) inputs.push_back(*banks);
  w.formula(g + ".head_rows", "N_r", banks ? "positions*r*B" : "positions*r", std::move(inputs),
            rows_of_colour(group) * group.positions, "", counting);
}

}  // namespace

std::optional<StepInput> banks_of_heads(TraceWriter& w, const Group& group, const std::string& g) {
  const bool several = group.film_heads > 1;
  if (group.scan && !several) return std::nullopt;
  const std::string id = g + ".banks";
  if (w.has(id)) return w.step("B", id);
  std::vector<StepInput> inputs;
  if (several) inputs.push_back(chosen("n_f", group.film_heads, ""));
  if (!group.scan) {
    inputs.push_back(steps_input(w, group, g, "k"));
    inputs.push_back(w.step_of_value("m", {g + ".stack"}, group.stack, ""));
  }
  const std::string film = several ? "n_f" : "";
  const std::string product = group.scan ? film : several ? film + "*k*m" : "k*m";
  const int banks = rows_of_colour(group) / group.rows_staggered;
  w.formula(id, "B", product, std::move(inputs), banks, "", counting);
  return w.step("B", id);
}

StepInput rows_of_heads(const TraceWriter& w, const Group& group, const std::string& g) {
  if (!w.has(g + ".rows") && group.rows_staggered == 1) return constant("r", 1, "");
  return w.step_of_value("r", {g + ".rows"}, group.rows_staggered, "");
}

void trace_width(TraceWriter& w, const std::string& g) {
  const Value<Length>& image = *w.job.width;
  w.formula(g + ".width", "W", "W_i+2*w_m",
            {from_value("W_i", image, in_mm(image.high), "mm", "image.width"),
             margin_input(w.job, w.job.margin.high)},
            in_mm(print_width(image.high, w.job.margin.high)), "mm", width_rule);
}

void trace_across(TraceWriter& w, const Group& group, const std::string& g) {
  swath_steps(w, group, g);
  if (!group.scan) {
    heads(w, group, g);
    rows(w, group, g);
  }
  const HeadMode& mode = trace_mode(w.catalogue, group);
  w.formula(g + ".positions", "positions", "ceil(c/c_h)",
            {{"c", static_cast<double>(group.channels.size()), "", "derived", ""},
             from_catalogue("c_h", mode.colours ? mode.colours->value : 1, "",
                            head_ref(group, "mode." + group.mode + ".colours"))},
            group.positions, "", counting);
  const int end_to_end = group.scan ? group.scan->heads_per_colour : group.heads_across;
  std::vector<StepInput> inputs{w.step("positions", g + ".positions"),
                                w.step_or_chosen("n", g + ".heads_across", end_to_end, "")};
  const std::optional<StepInput> banks = banks_of_heads(w, group, g);
  if (banks) inputs.push_back(*banks);
  w.formula(g + ".heads_total", "heads", banks ? "positions*n*B" : "positions*n", std::move(inputs),
            group.heads_total, "", counting);
  row_count(w, group, g);
}

}  // namespace calc
