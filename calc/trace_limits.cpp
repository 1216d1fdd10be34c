/// What is allowed at joints and between rows and colours, and what checks and answers state of it.
#include <algorithm>
#include <cmath>

#include "calc/eye.h"
#include "calc/named.h"
#include "calc/placement.h"
#include "calc/placement_terms.h"
#include "calc/station_load.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis half_pitch{"common practice, no source: half a pitch", SourceTag::practice,
                       "dots of one head"};
const Basis vernier{
    "common practice, no source: half a pitch; Regan 2000: vernier acuity of 10 seconds of arc",
    SourceTag::practice, "the acuity only where a viewing distance is given"};
const Basis one_pitch{"common practice, no source: one pitch", SourceTag::practice,
                      "the finest group, by its coarser axis"};
const Basis geometry{"plane geometry", SourceTag::computed, "heads side by side"};
const Basis wetting_rule{"common practice, no source: ink wets what has more energy",
                         SourceTag::practice, "after pre-treatment"};

void of_joints(TraceWriter& w, const std::string& id, const StepInput& pitch, Length limit) {
  const Given<Length>& distance = w.job.request->image.viewing_distance;
  if (!distance) {
    w.formula(id, "e", "p/2", {pitch}, in_um(limit), "um", half_pitch);
    return;
  }
  w.formula(
      id, "e", "min(p/2,2000*D*tan(a*pi/1296000))",
      {pitch,
       from_value("D", *distance, in_mm(served_low(*distance)), "mm", "image.viewing_distance"),
       constant("a", 10, "arcsec"), constant("pi", pi, "")},
      in_um(limit), "um", vernier);
}

void of_group(TraceWriter& w, const Group& group, const std::string& g) {
  const StepInput nozzle = w.step("p", g + ".pitch_n"), motion = w.step("p", g + ".pitch_m");
  const auto half = [&](const std::string& id, const StepInput& pitch) {
    w.formula(id, "e", "p/2", {pitch}, pitch.value / 2, "um", half_pitch);
  };
  half(g + ".dot.nozzle.limit", nozzle);
  half(g + ".dot.motion.limit", motion);
  if (!has_joints(group) && group.joints <= 0) return;
  of_joints(w, g + ".joint.nozzle.limit", nozzle, joint_limit(w.job, nozzle_pitch(group)));
  of_joints(w, g + ".joint.motion.limit", motion, joint_limit(w.job, motion_pitch(group)));
}

/// How far colours may lie apart where nobody says so.
void of_colours(TraceWriter& w) {
  if (w.job.request->image.registration || w.job.channels.size() < 2) return;
  std::vector<StepInput> inputs;
  std::string list;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1), number = std::to_string(i + 1);
    const std::string n = "n_" + number, m = "m_" + number;
    inputs.push_back(w.step(n, g + ".pitch_n"));
    inputs.push_back(w.step(m, g + ".pitch_m"));
    list.append(list.empty() ? "" : ",").append("max(").append(n).append(",").append(m);
    list += ")";
  }
  w.formula("placement.colour.limit", "e", "min(" + list + ")", std::move(inputs),
            in_um(registration_limit(w.job, w.spec.chosen)), "um", one_pitch);
}

/// What the nozzles of heads side by side cover.
void of_width(TraceWriter& w, const Group& group, const std::string& g) {
  if (group.scan || !w.has(g + ".head_pitch")) return;
  w.formula(
      g + ".nozzles_over", "W_h", "P*(n-1)+S",
      {w.step("P", g + ".head_pitch"), w.step("n", g + ".heads_across"), w.step("S", g + ".swath")},
      in_mm(group.head_pitch * (group.heads_across - 1) + group.swath), "mm", geometry);
}

/// What the surface must have after pre-treatment, for the ink that it is checked for.
void of_wetting(TraceWriter& w) {
  for (const Channel& channel : w.job.channels) {
    if (!wants_pretreatment(w.job, channel)) continue;
    if (channel.ink == nullptr || !channel.ink->surface_tension) return;
    const double tension = in_mn_per_m(served_high(*channel.ink->surface_tension));
    w.formula("check.wetting", "s_s", "s+m",
              {from_value("s", *channel.ink->surface_tension, tension, "mN/m",
                          "ink." + channel.ink->name + ".surface_tension"),
               from_parameter(w.job, "m", P::wetting_margin)},
              tension + w.job.parameters[P::wetting_margin], "mN/m", wetting_rule);
    return;
  }
}

}  // namespace

void trace_limits(TraceWriter& w) {
  if (w.spec.chosen.empty()) return;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    of_group(w, w.spec.chosen[i], g);
    of_width(w, w.spec.chosen[i], g);
  }
  of_colours(w);
  of_wetting(w);
}

}  // namespace calc
