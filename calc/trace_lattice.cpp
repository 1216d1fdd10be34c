#include <algorithm>
#include <cmath>

#include "calc/eye.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis geometry{"plane geometry", SourceTag::computed, "pitches > 0"};
const Basis steps_rule{"the least whole number of steps that meets the demand", SourceTag::computed,
                       "no more are taken for closed solids"};
const Basis rows_even{"equally spaced rows add up", SourceTag::computed,
                      "offsets of the rows equally spaced"};

/// The largest gap round a nozzle pitch counts, of rows that do not stand equally spaced.
void uneven_rows(TraceWriter& w, const HeadMode& mode, const NativeResolution& value,
                 const std::string& g, const std::string& ref) {
  std::vector<double> places = trace_offsets(mode);
  for (double& place : places) place -= std::floor(place);
  std::sort(places.begin(), places.end());
  std::vector<StepInput> inputs{
      from_catalogue("R_row", in_dpi(mode.row_pitch->value), "dpi", ref + ".row_pitch")};
  std::string gaps;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const std::string symbol = "o_" + std::to_string(i + 1);
    inputs.push_back(from_catalogue(symbol, places[i], "", ref + ".row_offsets"));
    if (i > 0) gaps += symbol + "-o_" + std::to_string(i) + ",";
  }
  gaps += "1-o_" + std::to_string(places.size()) + "+o_1";
  w.formula(
      g + ".native", "R_0", "R_row/max(" + gaps + ")", inputs, in_dpi(value.value), "dpi",
      {"the largest gap between rows counts", SourceTag::computed, "rows not equally spaced"});
}

void native(TraceWriter& w, const Group& group, const std::string& g) {
  const HeadMode& mode = trace_mode(w.catalogue, group);
  const std::string ref = "head." + group.head + ".mode." + group.mode;
  const NativeResolution value = native_resolution(mode.row_pitch->value, trace_offsets(mode));
  if (value.even) {
    w.formula(g + ".native", "R_0", "rows*R_row",
              {from_catalogue("rows", value.distinct_rows, "", ref + ".row_offsets"),
               from_catalogue("R_row", in_dpi(mode.row_pitch->value), "dpi", ref + ".row_pitch")},
              in_dpi(value.value), "dpi", rows_even);
  } else {
    uneven_rows(w, mode, value, g, ref);
  }
}

/// The least steps of the native resolution that meet the demand, where no more were taken.
void steps(TraceWriter& w, const Group& group, const std::string& g) {
  const std::string demand = group.scan ? "required.along" : "required.across";
  if (is_tilted(group) || !w.has(demand)) return;
  const StepInput native = w.step("R_0", g + ".native"), asked = w.step("R_q", demand);
  const int k = lattice_steps(group);
  const double enough = asked.value * (1 - 1e-13);  // but for the last bits
  if (k * native.value < enough || (k - 1) * native.value >= enough) return;
  w.add(g + ".interleave", StepKind::least, "k", "k*R_0-R_q", {native, asked}, k, "", steps_rule);
}

/// The lattice along the nozzle rows.
void nozzle_pitches(TraceWriter& w, const Group& group, const std::string& g) {
  const Length p_n = pitch(nozzle_axis(group));
  const std::string across = nozzle_axis_step(group, g);
  steps(w, group, g);
  const StepInput step = steps_input(w, group, g, "k");
  std::vector<StepInput> inputs{step, w.step("R_0", g + ".native")};
  if (is_tilted(group)) {
    trace_tilt(w, group, g);
    inputs.push_back(w.step("t", g + ".tilt"));
    inputs.push_back(constant("pi", pi, ""));
  }
  w.formula(across, "R_n", is_tilted(group) ? "k*R_0/cos(t*pi/180)" : "k*R_0", std::move(inputs),
            in_dpi(nozzle_axis(group)), "dpi", geometry);
  w.formula(g + ".pitch_n", "p_n", "25400/R_n", {w.step("R_n", across)}, in_um(p_n), "um",
            geometry);
  if (w.has(g + ".tilt_widest")) {
    w.formula(g + ".widest_n", "p_w", "p_n+max(0,x_w-k*p_n)",
              {w.step("p_n", g + ".pitch_n"), w.step("x_w", g + ".tilt_widest"), step},
              in_um(p_n + group.wider), "um", geometry);
  }
}

/// The lattice along the motion, and both together; after the resolution along the motion.
void motion_pitches(TraceWriter& w, const Group& group, const std::string& g) {
  const Length p_n = pitch(nozzle_axis(group));
  const Length p_m = pitch(motion_axis(group));
  w.formula(g + ".pitch_m", "p_m", "25400/R_m", {motion_resolution(w, group, g)}, in_um(p_m), "um",
            geometry);
  w.formula(g + ".diagonal", "p_d", "sqrt(p_n^2+p_m^2)",
            {w.step("p_n", closing_pitch(w, g)), w.step("p_m", g + ".pitch_m")},
            in_um(closing_dot(p_n + group.wider, p_m)), "um", geometry);
}
}  // namespace

std::string closing_pitch(const TraceWriter& w, const std::string& g) {
  return g + (w.has(g + ".widest_n") ? ".widest_n" : ".pitch_n");
}

int lattice_steps(const Group& group) {
  return group.scan ? group.scan->interlace_steps : group.interleave;
}

StepInput steps_input(const TraceWriter& w, const Group& group, const std::string& g,
                      const std::string& symbol) {
  return w.step_of_value(symbol, {g + ".interleave"}, lattice_steps(group), "");
}

void trace_lattice(TraceWriter& w, const Group& group, const std::string& g) {
  native(w, group, g);
  nozzle_pitches(w, group, g);
  trace_drops(w, group, g);
  trace_motion(w, group, g);
  motion_pitches(w, group, g);
  trace_dots(w, group, g);
}

}  // namespace calc
