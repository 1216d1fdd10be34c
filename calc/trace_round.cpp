/// Rows of heads round a body that turns, and the seam of an image all round it.
#include <algorithm>

#include "calc/arrangement.h"
#include "calc/eye.h"
#include "calc/throw.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis geometry{"plane geometry", SourceTag::computed, "plates across their radius"};
const Basis fitting{
    "common practice, no source: part of the way round is left to hold the body; "
    "no jet points up",
    SourceTag::practice, "rows of one kind of head"};
const Basis counting{"count", SourceTag::computed, "rows dealt out evenly, banks whole"};
const Basis seam_rule{"circumference of a circle", SourceTag::computed,
                      "an image made for the nominal diameter"};

/// The nominal throw, and where it comes from.
StepInput away(const TraceWriter& w, const Group& group, const Head& head) {
  const Length gap = nominal_throw(w.job, head);
  if (w.job.throw_distance) {
    return from_value("H", *w.job.throw_distance, in_mm(gap), "mm", "line.throw_distance");
  }
  if (head.throw_nominal) {
    return from_catalogue("H", in_mm(gap), "mm", "head." + group.head + ".throw_nominal");
  }
  return from_parameter(w.job, "H", P::throw_mm);
}

void angles(TraceWriter& w, const Group& group, const std::string& g) {
  const Round& r = *group.round;
  const Head& head = trace_head(w.catalogue, group);
  const StepInput radius{"r", in_mm(r.radius), "mm", "derived", "product.diameter"};
  const StepInput circle = constant("pi", pi, "");
  w.formula(g + ".round_reach", "R", "r+H", {radius, away(w, group, head)}, in_mm(r.reach), "mm",
            geometry);
  w.formula(g + ".round_angle", "phi", "2*atan((d+gap)/2/R)*180/pi",
            {from_catalogue("d", in_mm(r.depth), "mm", "head." + group.head + ".body_depth"),
             from_parameter(w.job, "gap", P::body_gap_mm), w.step("R", g + ".round_reach"), circle},
            r.pitch_angle * 180 / pi, "deg", geometry);
  w.formula(g + ".round_step", "s", "r*phi*pi/180",
            {radius, w.step("phi", g + ".round_angle"), circle}, in_mm(r.step), "mm", geometry);
  w.formula(g + ".round_fit", "f", "max(1,min(floor(a*360/phi),1+floor(180/phi)))",
            {from_parameter(w.job, "a", P::round_share), w.step("phi", g + ".round_angle")}, r.fit,
            "", fitting);
}

/// Banks of b rows that join stay whole where one fits.
void stations(TraceWriter& w, const Group& group, const std::string& g) {
  const Round& r = *group.round;
  const bool whole = r.fit >= group.rows_staggered;
  const StepInput rows = w.step("n", g + ".head_rows");
  std::vector<StepInput> dealt{rows, w.step("f", g + ".round_fit")};
  if (whole) dealt.push_back(rows_of_heads(w, group, g));
  w.formula(g + ".round_stations", "z", whole ? "ceil(n/(floor(f/r)*r))" : "ceil(n/f)", dealt,
            r.stations, "", counting);
  std::vector<StepInput> even{rows, w.step("z", g + ".round_stations")};
  if (whole) even.push_back(rows_of_heads(w, group, g));
  w.formula(g + ".round_rows", "n_z", whole ? "ceil(ceil(n/z)/r)*r" : "ceil(n/z)", even,
            r.per_station, "", counting);
}

void length(TraceWriter& w, const Group& group, const std::string& g) {
  const Round& r = *group.round;
  const std::string head = "head." + group.head;
  w.formula(g + ".round_length", "L", "2*max(r,(R+h)*sin(b*pi/180)+d/2*cos(b*pi/180))+gap",
            {{"r", in_mm(r.radius), "mm", "derived", "product.diameter"},
             w.step("R", g + ".round_reach"),
             r.height > Length{} ? from_catalogue("h", in_mm(r.height), "mm", head + ".body_height")
                                 : chosen("h", 0, "mm"),
             w.step("b", g + ".round_outermost"),
             from_catalogue("d", in_mm(r.depth), "mm", head + ".body_depth"),
             constant("pi", pi, ""),
             from_parameter(w.job, "gap", P::row_gap_mm)},
            in_mm(r.station_length), "mm", geometry);
}

/// Way by which the surface turns on under the rows of one station in a cycle.
void turn(TraceWriter& w, const Group& group, const std::string& g) {
  const Round& r = *group.round;
  const double image = in_mm(w.job.length.high), around = 2 * pi * in_mm(r.radius);
  const double rows = in_mm(r.step) * (r.per_station - 1);
  w.formula(g + ".round_turn", "l_t", "min(L_i+s*(n_z-1),max(L_i,2*pi*r))",
            {from_value("L_i", w.job.length, image, "mm", "image.length"),
             w.step("s", g + ".round_step"),
             w.step("n_z", g + ".round_rows"),
             constant("pi", pi, ""),
             {"r", in_mm(r.radius), "mm", "derived", "product.diameter"}},
            std::min(image + rows, std::max(image, around)), "mm", geometry);
}

}  // namespace

void trace_round(TraceWriter& w, const Group& group, const std::string& g) {
  if (!group.round) return;
  const Round& r = *group.round;
  angles(w, group, g);
  stations(w, group, g);
  w.formula(g + ".round_outermost", "b", "(n_z-1)/2*phi",
            {w.step("n_z", g + ".round_rows"), w.step("phi", g + ".round_angle")},
            (r.per_station - 1) / 2.0 * r.pitch_angle * 180 / pi, "deg", geometry);
  length(w, group, g);
  turn(w, group, g);
}

void trace_stations(TraceWriter& w) {
  std::vector<StepInput> inputs;
  std::string sum;
  int stations = 0;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::optional<Round>& round = w.spec.chosen[i].round;
    const std::string z = "z_" + std::to_string(i + 1);
    sum += (i == 0 ? "" : "+") + z;
    inputs.push_back(round ? w.step(z, "g" + std::to_string(i + 1) + ".round_stations")
                           : chosen(z, 1, ""));
    stations += round ? round->stations : 1;
  }
  if (!w.job.radius || inputs.size() < 2) return;
  w.formula("station.round_stations", "z", sum, std::move(inputs), stations, "", counting);
}

void trace_seam(TraceWriter& w) {
  if (w.spec.chosen.empty()) return;
  const std::optional<Length> seam = seam_of(w.job);
  if (!seam) return;
  const Value<Length>& d = *w.job.request->product.diameter;
  w.formula("seam", "e", "pi*max(D_h-D,D-D_l)",
            {constant("pi", pi, ""), from_value("D_h", d, in_mm(d.high), "mm", "product.diameter"),
             from_value("D", d, in_mm(d.value), "mm", "product.diameter"),
             from_value("D_l", d, in_mm(d.low), "mm", "product.diameter")},
            in_mm(*seam), "mm", seam_rule);
}

}  // namespace calc
