/// The steps of heads that stand tilted.
#include <algorithm>
#include <cmath>
#include <utility>

#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/lattice.h"
#include "calc/placement.h"
#include "calc/tilt.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis turned{"plane geometry: a nozzle at (x, y) prints at x cos t - y sin t",
                   SourceTag::computed, "up to 60 degrees"};
const Basis clocked{
    "plane geometry: one clock fires all nozzles, so neighbours print whole lines apart",
    SourceTag::computed, "up to 60 degrees"};
const Basis steady{"plane geometry: d(L cos t) = -L sin t dt", SourceTag::computed,
                   "small errors of the angle"};
const Basis along_motion{
    "plane geometry: a nozzle at (x, y) prints x sin t + y cos t along the motion",
    SourceTag::computed, "up to 60 degrees"};
const Basis nozzle_count{"count of nozzles that print", SourceTag::computed, "whole nozzles"};
const Basis bodies{"plane geometry: slanted bodies clear each other behind or beside",
                   SourceTag::computed, "bodies of one size and angle"};

constexpr double degree = pi / 180;

std::string mode_ref(const Group& group) { return "head." + group.head + ".mode." + group.mode; }

StepInput angle(const TraceWriter& w, const std::string& g) { return w.step("t", g + ".tilt"); }
StepInput circle() { return constant("pi", pi, ""); }

/// Whether the angle is the one that meets the demand across exactly.
bool meets_exactly(const TraceWriter& w, const Group& group) {
  const Resolution asked = w.spec.required->across;
  return at_most(group.resolution_across, asked) && at_least(group.resolution_across, asked);
}

void angle_step(TraceWriter& w, const Group& group, const std::string& g) {
  const std::string sense = group.tilt < 0 ? "0-" : "";
  const double degrees = group.tilt / degree;
  const StepInput native = w.step("R_0", g + ".native");
  if (meets_exactly(w, group)) {
    w.formula(
        g + ".tilt", "t", sense + "acos(k*R_0/R_q)*180/pi",
        {chosen("k", group.interleave, ""), native, w.step("R_q", "required.across"), circle()},
        degrees, "deg", turned);
    return;
  }
  const Resolution along = w.spec.required->along;
  const double lines = std::round(std::abs(std::sin(group.tilt)) * (along / group.native));
  w.formula(g + ".tilt", "t", sense + "asin(j*R_0/R_m)*180/pi",
            {chosen("j", lines, ""), native, w.step("R_m", "required.along"), circle()}, degrees,
            "deg", clocked);
}

void lines_step(TraceWriter& w, const Group& group, const std::string& g) {
  const Head& head = trace_head(w.catalogue, group);
  if (head.nozzle_delay && head.nozzle_delay->value) return;
  const double lines = lines_apart(group.resolution_along, pitch(group.native), group.tilt);
  w.formula(g + ".tilt_lines", "j", "round(R_m/R_0*sin(abs(t)*pi/180))",
            {motion_resolution(w, group, g), w.step("R_0", g + ".native"), angle(w, g), circle()},
            std::round(lines), "", clocked);
}

std::vector<Length> places_of(const HeadMode& mode) {
  return mode.row_places ? mode.row_places->value : std::vector<Length>{Length{}};
}

/// Where every row prints within the pitch of a row, ascending; returned as inputs u_1, u_2...
std::vector<StepInput> phase_steps(TraceWriter& w, const Group& group, const std::string& g) {
  const HeadMode& mode = trace_mode(w.catalogue, group);
  const std::vector<double> offsets = trace_offsets(mode);
  const std::vector<Length> places = places_of(mode);
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t i = 0; i < offsets.size(); ++i) {
    order.emplace_back(
        row_phases(mode.row_pitch->value, {offsets[i]}, {places[i]}, group.tilt).front(), i);
  }
  std::sort(order.begin(), order.end());
  std::vector<StepInput> phases;
  for (const auto& [phase, row] : order) {
    const std::string id = g + ".tilt_row" + std::to_string(row + 1);
    const std::string at = "o-y*R_row/25.4*tan(t*pi/180)";
    std::string formula = "100*(";
    formula += at;
    formula += "-floor(";
    formula += at;
    formula += "))";
    w.formula(id, "u", formula,
              {from_catalogue("o", offsets[row], "", mode_ref(group) + ".row_offsets"),
               from_catalogue("y", in_mm(places[row]), "mm", mode_ref(group) + ".row_places"),
               from_catalogue("R_row", in_dpi(mode.row_pitch->value), "dpi",
                              mode_ref(group) + ".row_pitch"),
               angle(w, g), circle()},
              100 * phase, "%", turned);
    phases.push_back(w.step("u_" + std::to_string(phases.size() + 1), id));
  }
  return phases;
}

/// The widest and the narrowest gap between the nozzles of several rows.
void gap_steps(TraceWriter& w, const Group& group, const std::string& g) {
  const HeadMode& mode = trace_mode(w.catalogue, group);
  if (trace_offsets(mode).size() < 2) return;
  std::vector<StepInput> inputs = phase_steps(w, group, g);
  const std::size_t rows = inputs.size();
  std::string gaps = "u_1+100-u_" + std::to_string(rows);
  double widest = inputs.front().value + 100 - inputs.back().value;
  double narrowest = widest;
  for (std::size_t i = 1; i < rows; ++i) {
    const double gap = inputs[i].value - inputs[i - 1].value;
    gaps += ",u_" + std::to_string(i + 1) + "-u_" + std::to_string(i);
    widest = std::max(widest, gap);
    narrowest = std::min(narrowest, gap);
  }
  inputs.push_back(from_catalogue("R_row", in_dpi(mode.row_pitch->value), "dpi",
                                  mode_ref(group) + ".row_pitch"));
  inputs.push_back(angle(w, g));
  inputs.push_back(circle());
  const double percent = in_um(pitch(mode.row_pitch->value)) * std::cos(group.tilt) / 100;
  const std::string scale = "*254/R_row*cos(t*pi/180)";
  w.formula(g + ".tilt_widest", "x_w", "max(" + gaps + ")" + scale, inputs, widest * percent, "um",
            turned);
  w.formula(g + ".tilt_narrowest", "x_n", "min(" + gaps + ")" + scale, inputs, narrowest * percent,
            "um", turned);
}

/// The depth of the rows by the field of the whole head, or by the rows of one colour.
StepInput field_input(const TraceWriter& w, const Group& group) {
  const Head& head = trace_head(w.catalogue, group);
  const bool by_field = head.field_depth && at_least(head.field_depth->value, group.field);
  return from_catalogue(
      "b", in_mm(group.field), "mm",
      by_field ? "head." + group.head + ".field_depth" : mode_ref(group) + ".row_places");
}

void overlap_step(TraceWriter& w, const Group& group, const std::string& g) {
  const Head& head = trace_head(w.catalogue, group);
  if (head.overlap) {
    w.formula(
        g + ".overlap", "o", "o_0*cos(t*pi/180)",
        {from_catalogue("o_0", in_mm(head.overlap->value), "mm", "head." + group.head + ".overlap"),
         angle(w, g), circle()},
        in_mm(group.overlap), "mm", turned);
    return;
  }
  w.formula(g + ".overlap", "o", "n_o*p_0",
            {from_parameter(w.job, "n_o", P::overlap_nozzles), w.step("p_0", g + ".nozzle_pitch")},
            in_mm(group.overlap), "mm", turned);
}

/// How far the first nozzle of each row prints behind that of the first row.
void delay_steps(TraceWriter& w, const Group& group, const std::string& g) {
  const HeadMode& mode = trace_mode(w.catalogue, group);
  const std::vector<double> offsets = trace_offsets(mode);
  const std::vector<Length> places = places_of(mode);
  const std::string ref = mode_ref(group);
  const StepInput pitch_of_row =
      from_catalogue("R_row", in_dpi(mode.row_pitch->value), "dpi", ref + ".row_pitch");
  const auto rows = static_cast<double>(offsets.size());
  w.formula(g + ".slant", "l_s", "(floor(N/r)-1)*25.4/R_row*sin(abs(t)*pi/180)",
            {from_catalogue("N", mode.nozzles->value, "", ref + ".nozzles"), chosen("r", rows, ""),
             pitch_of_row, angle(w, g), circle()},
            in_mm(group.slant), "mm", turned);
  const Value<Speed>& speed = *w.job.speed;
  for (std::size_t i = 1; i < group.row_delays.size(); ++i) {
    const RowDelay& delay = group.row_delays[i];
    const std::string row = g + ".row" + std::to_string(i + 1);
    w.formula(row + ".along", "l", "(o-o_1)*25.4/R_row*sin(t*pi/180)+(y-y_1)*cos(t*pi/180)",
              {from_catalogue("o", offsets[i], "", ref + ".row_offsets"),
               from_catalogue("o_1", offsets.front(), "", ref + ".row_offsets"), pitch_of_row,
               from_catalogue("y", in_mm(places[i]), "mm", ref + ".row_places"),
               from_catalogue("y_1", in_mm(places.front()), "mm", ref + ".row_places"), angle(w, g),
               circle()},
              in_mm(delay.along), "mm", along_motion);
    const StepInput along = w.step("l", row + ".along");
    w.formula(row + ".lines", "n_l", "l*R_m/25.4", {along, motion_resolution(w, group, g)},
              delay.lines, "", along_motion);
    w.formula(row + ".late", "t_l", "l/v",
              {along, from_value("v", speed, served_high(speed).si(), "m/s", "line.speed")},
              delay.late.si() * 1e3, "ms", along_motion);
  }
}

}  // namespace

bool is_tilted(const Group& group) { return group.family == Family::tilted; }

void trace_tilt(TraceWriter& w, const Group& group, const std::string& g) {
  angle_step(w, group, g);
  lines_step(w, group, g);
  gap_steps(w, group, g);
  delay_steps(w, group, g);
}

void trace_tilted_idle(TraceWriter& w, const Group& group, const std::string& g) {
  w.formula(g + ".idle", "i", "1-floor(W/p_0)/(n*N)",
            {w.step("W", g + ".width"), w.step("p_0", g + ".nozzle_pitch"),
             w.step("n", g + ".heads_across"),
             from_catalogue("N", group.nozzles, "", mode_ref(group) + ".nozzles")},
            group.idle_nozzle_share, "", nozzle_count);
}

void trace_tilted_swath(TraceWriter& w, const Group& group, const std::string& g) {
  const Length pitch_0 = pitch(group.native);
  w.formula(g + ".plate_pitch", "p", "25.4/R_0", {w.step("R_0", g + ".native")}, in_mm(pitch_0),
            "mm", turned);
  w.formula(g + ".nozzle_pitch", "p_0", "p*cos(t*pi/180)",
            {w.step("p", g + ".plate_pitch"), angle(w, g), circle()}, in_mm(group.pitch), "mm",
            turned);
  w.formula(g + ".plate_swath", "S_0", "N*p",
            {from_catalogue("N", group.nozzles, "", mode_ref(group) + ".nozzles"),
             w.step("p", g + ".plate_pitch")},
            group.nozzles * in_mm(pitch_0), "mm", turned);
  w.formula(g + ".swath", "S", "S_0*cos(t*pi/180)-b*sin(abs(t)*pi/180)",
            {w.step("S_0", g + ".plate_swath"), field_input(w, group), angle(w, g), circle()},
            in_mm(group.swath), "mm", turned);
  overlap_step(w, group, g);
  w.formula(g + ".tilt_tolerance", "dt", "dx/(1000*S_0*sin(abs(t)*pi/180))*180/pi",
            {chosen("dx", in_um(joint_limit(w.job, 1.0 / group.resolution_across)), "um"),
             w.step("S_0", g + ".plate_swath"), angle(w, g), circle()},
            group.tilt_tolerance / degree, "deg", steady);
}

void trace_tilted_rows(TraceWriter& w, const Group& group, const std::string& g) {
  const Head& head = trace_head(w.catalogue, group);
  const std::string ref = "head." + group.head;
  const StepInput width =
      from_catalogue("b", in_mm(head.body_width->value), "mm", ref + ".body_width");
  const StepInput depth =
      from_catalogue("d", in_mm(head.body_depth->value), "mm", ref + ".body_depth");
  w.formula(
      g + ".rows", "r",
      "min(n,ceil(min((b+gap)/(P*cos(t*pi/180)),(d+gap)/(P*sin(abs(t)*pi/180)))))",
      {w.step("n", g + ".heads_across"), width, depth, from_parameter(w.job, "gap", P::body_gap_mm),
       w.step("P", g + ".head_pitch"), angle(w, g), circle()},
      group.rows_staggered, "", bodies);
  w.formula(g + ".tilted_depth", "d_t", "b*sin(abs(t)*pi/180)+d*cos(t*pi/180)",
            {width, depth, angle(w, g), circle()},
            in_mm(tilted_depth(head.body_width->value, head.body_depth->value, group.tilt)), "mm",
            turned);
}

}  // namespace calc
