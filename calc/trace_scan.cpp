#include <algorithm>
#include <cmath>

#include "calc/arrangement.h"
#include "calc/carriage_pace.h"
#include "calc/compare.h"
#include "calc/lattice.h"
#include "calc/scan.h"
#include "calc/station_cure.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis interlace{
    "every row is printed once if the advance and the steps have no common factor",
    SourceTag::computed, "whole nozzles"};
const Basis shared{"all groups ride one carriage", SourceTag::computed,
                   "every group prints whole rows of its lattice"};
const Basis kinematics{"uniform acceleration, both ways printing", SourceTag::computed,
                       "acceleration outside the print zone"};

/// Nozzles that two neighbours print alike.
int overlapped(const Group& group) {
  return static_cast<int>(ceil_tolerant(group.overlap / pitch(group.native)));
}

Length own_advance(const Group& group) {
  return advance_length(group.scan->advance_nozzles, group.scan->interlace_steps, group.native);
}

std::string numbered(const std::string& symbol, std::size_t i) {
  return symbol + "_" + std::to_string(i + 1);
}

/// The nozzles of a colour end to end, "N_a".
StepInput nozzles_in_line(const Group& group) {
  const int heads = group.scan->heads_per_colour;
  if (heads == 1) {
    return from_catalogue("N_a", group.nozzles, "",
                          "head." + group.head + ".mode." + group.mode + ".nozzles");
  }
  return chosen("N_a", joined_nozzles(group.nozzles, heads, overlapped(group)), "");
}

/// The advance that a group alone would make.
void advance_of_group(TraceWriter& w, const Group& group, const std::string& g) {
  if (w.has(g + ".advance")) return;
  const Scan& scan = *group.scan;
  w.add(g + ".advance_rows", StepKind::table, "J", "largest J <= N_a/N_q with gcd(J,s) = 1",
        {nozzles_in_line(group), from_parameter(w.job, "N_q", P::quality_passes),
         steps_input(w, group, g, "s")},
        scan.advance_nozzles, "", interlace);
  w.formula(g + ".advance", "A", "25.4*J/(s*R_0)",
            {w.step("J", g + ".advance_rows"), steps_input(w, group, g, "s"),
             w.step("R_0", g + ".native")},
            in_mm(own_advance(group)), "mm", interlace);
}

/// The least of the groups' own advances; a table where their lattices agree only on a shorter one.
void carriage_advance(TraceWriter& w, const Group& group, const std::string& g) {
  const std::vector<Group>& groups = w.spec.chosen;
  if (groups.size() < 2) return;
  std::vector<StepInput> inputs;
  std::string list;
  double least = in_mm(own_advance(groups.front()));
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const double own = in_mm(own_advance(groups[i]));
    const std::string symbol = numbered("A", i);
    list += (i == 0 ? "" : ",") + symbol;
    const std::string other = "g" + std::to_string(i + 1);
    advance_of_group(w, groups[i], other);
    inputs.push_back(w.step(symbol, other + ".advance"));
    least = std::min(least, own);
  }
  const double advance = in_mm(group.scan->advance);
  const bool is_least = !(advance < least) && !(advance > least);
  if (is_least) {
    w.add(g + ".carriage_advance", StepKind::choice, "A", "min(" + list + ")", inputs, advance,
          "mm", shared);
    return;
  }
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const std::string other = "g" + std::to_string(i + 1);
    inputs.push_back(w.step(numbered("R", i), nozzle_axis_step(groups[i], other)));
    inputs.push_back(steps_input(w, groups[i], other, numbered("s", i)));
  }
  w.add(g + ".carriage_advance", StepKind::table, "A",
        "greatest A <= min A_i with whole A*R_i/25.4, gcd with s_i = 1", inputs, advance, "mm",
        shared);
}

void advance(TraceWriter& w, const Group& group, const std::string& g) {
  advance_of_group(w, group, g);
  carriage_advance(w, group, g);
}

/// The lamp of a stage on the carriage: the one chosen, else the catalogue's deepest.
const Lamp* lamp_aboard(const TraceWriter& w, const Stage& stage) {
  const Lamp* found = nullptr;
  for (const Lamp& lamp : w.catalogue.lamps) {
    if (lamp.name == stage.equipment) return &lamp;
    if (found == nullptr || lamp_depth(lamp) > lamp_depth(*found)) found = &lamp;
  }
  return found;
}

/// Adds the lamp of a kind of stage, which stands on both ends of the carriage.
void add_lamp(const TraceWriter& w, const char* kind, const std::string& symbol, std::string& list,
              std::vector<StepInput>& inputs) {
  const Stage* stage = stage_of(w.spec, kind);
  const Lamp* lamp = stage == nullptr ? nullptr : lamp_aboard(w, *stage);
  if (lamp == nullptr) return;
  list += "+2*" + symbol;
  const std::string field = lamp->depth ? ".depth" : ".window_along";
  inputs.push_back(
      from_catalogue(symbol, in_mm(lamp_depth(*lamp)), "mm", "lamp." + lamp->name + field));
}

void array(TraceWriter& w, const Group& group, const std::string& g) {
  std::vector<StepInput> inputs;
  std::string list;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& other = w.spec.chosen[i];
    const std::string d = numbered("d", i), n = numbered("n", i);
    const Given<Length>& depth = trace_head(w.catalogue, other).body_depth;
    if (!depth) continue;  // its rows are counted as nothing
    list.append(list.empty() ? "" : "+").append(n).append("*(").append(d).append("+gap)");
    inputs.push_back(w.step(n, "g" + std::to_string(i + 1) + ".head_rows"));
    inputs.push_back(
        from_catalogue(d, in_mm(depth->value), "mm", "head." + other.head + ".body_depth"));
  }
  if (list.empty()) list = "0";
  inputs.push_back(from_parameter(w.job, "gap", P::row_gap_mm));
  add_lamp(w, "pinning", "l_p", list, inputs);
  add_lamp(w, "uv", "l", list, inputs);
  w.formula(g + ".array", "L_a", list, inputs, in_mm(group.scan->array_length), "mm",
            {"rows of heads one behind the other, the lamps chosen on either side with UV ink",
             SourceTag::computed, "all rows on one carriage"});
}

/// The groups as riders of the carriage, for its speed alone.
std::vector<Rider> riders(const TraceWriter& w, bool bands) {
  std::vector<Rider> list;
  for (const Group& group : w.spec.chosen) {
    const Head& head = trace_head(w.catalogue, group);
    Rider r;
    r.allowed = group.frequency_allowed;
    r.motion_axis = motion_axis(group);
    if (bands && head.avoid) r.avoid = &*head.avoid;
    list.push_back(r);
  }
  return list;
}

bool same(Speed a, Speed b) { return at_most(a, b) && at_most(b, a); }

/// The lower end of the band that the speed was lowered below, with what it takes to follow it.
void add_band(const TraceWriter& w, Speed used, std::string& list, std::vector<StepInput>& inputs) {
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& group = w.spec.chosen[i];
    const Head& head = trace_head(w.catalogue, group);
    if (!head.avoid) continue;
    if (!same(below_band * head.avoid->low / motion_axis(group), used)) continue;
    list += ",b*f_b*25.4/R_b";
    inputs.push_back(constant("b", below_band, ""));
    inputs.push_back(
        from_catalogue("f_b", in_khz(head.avoid->low), "kHz", "head." + head.name + ".avoid"));
    inputs.push_back(motion_resolution(w, group, "g" + std::to_string(i + 1), "R_b"));
    return;
  }
}

void speed(TraceWriter& w, const Group& group, const std::string& g) {
  const Speed used = group.scan->carriage_speed;
  const double high = w.job.parameters[P::high_use];
  const bool spared = same(shared_speed(w.job.parameters, riders(w, true), high), used);
  std::vector<StepInput> inputs{from_parameter(w.job, "v_lim", P::carriage_speed),
                                from_parameter(w.job, "q", P::high_use)};
  if (!spared) inputs.back() = constant("q", 1, "");
  std::string list = "v_lim";
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& other = w.spec.chosen[i];
    const std::string f = numbered("f", i);
    const std::string r = numbered("R", i);
    list.append(",q*").append(f).append("*25.4/").append(r);
    const std::string of = "g" + std::to_string(i + 1);
    inputs.push_back(w.step(f, of + ".usable"));
    inputs.push_back(motion_resolution(w, other, of, r));
  }
  const Speed free = shared_speed(w.job.parameters, riders(w, false), spared ? high : 1);
  if (!same(free, used)) add_band(w, used, list, inputs);
  w.formula(g + ".carriage_speed", "v_c", "min(" + list + ")", inputs, used.si(), "m/s",
            kinematics);
}

void carriage(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  array(w, group, g);
  speed(w, group, g);
  w.formula(
      g + ".stroke_time", "t", "(W+L_a)/(1000*v_c)+2*v_c/a+t_d",
      {w.step("W", g + ".width"), w.step("L_a", g + ".array"), w.step("v_c", g + ".carriage_speed"),
       from_parameter(w.job, "a", P::carriage_acceleration),
       from_parameter(w.job, "t_d", P::stroke_dwell_s)},
      scan.stroke_time.si(), "s", kinematics);
  w.formula(
      g + ".machine_width", "W_m", "W+L_a+1000*v_c^2/a+l_p",
      {w.step("W", g + ".width"), w.step("L_a", g + ".array"), w.step("v_c", g + ".carriage_speed"),
       from_parameter(w.job, "a", P::carriage_acceleration),
       from_parameter(w.job, "l_p", P::park_mm)},
      in_mm(scan.machine_width), "mm", kinematics);
}

/// "s", the most interlace steps of all groups: the carriage goes on until the last is done.
StepInput most_steps(const TraceWriter& w) {
  std::size_t most = 0;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    if (lattice_steps(w.spec.chosen[most]) < lattice_steps(w.spec.chosen[i])) most = i;
  }
  return steps_input(w, w.spec.chosen[most], "g" + std::to_string(most + 1), "s");
}

/// Image by image where the image has a length, else endless.
void throughput(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  const double rate = scan.throughput.si() * 3600;
  const std::string moved = advance_step(w, g);
  if (scan.strokes < 1) {
    w.formula(g + ".throughput", "Q", "W*A*3600/(t*1e6)",
              {w.step("W", g + ".width"), w.step("A", moved), w.step("t", g + ".stroke_time")},
              rate, "m2/h", kinematics);
    return;
  }
  const StepInput length =
      from_value("L", w.job.length, in_mm(w.job.length.high), "mm", "image.length");
  w.formula(
      g + ".strokes", "n_s", "ceil(L/A)+s*N_q-1",
      {length, w.step("A", moved), most_steps(w), from_parameter(w.job, "N_q", P::quality_passes)},
      scan.strokes, "", interlace);
  w.formula(g + ".throughput", "Q", "W*L*3600/(n_s*t*1e6)",
            {w.step("W", g + ".width"), length, w.step("n_s", g + ".strokes"),
             w.step("t", g + ".stroke_time")},
            rate, "m2/h", kinematics);
}

/// Feed of the line that the carriage reaches.
void feed(TraceWriter& w, const Group& group, const std::string& g) {
  const StepInput stroke = w.step("t", g + ".stroke_time");
  if (group.scan->strokes < 1) {
    w.formula(g + ".speed_limit", "v_max", "A/(1000*t)", {w.step("A", advance_step(w, g)), stroke},
              group.speed_limit.si(), "m/s", kinematics);
    return;
  }
  w.formula(g + ".speed_limit", "v_max", "max(p,L)/(1000*t*n_s)",
            {from_value("p", w.job.pitch, in_mm(w.job.pitch.value), "mm", "product.pitch"),
             from_value("L", w.job.length, in_mm(w.job.length.high), "mm", "image.length"), stroke,
             w.step("n_s", g + ".strokes")},
            group.speed_limit.si(), "m/s", kinematics);
}

/// The nozzles of a colour that print, and the share of the others.
void nozzles(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  w.formula(g + ".printing", "N_p", "A*R/25.4*N_q",
            {w.step("A", advance_step(w, g)), w.step("R", g + ".along"),
             from_parameter(w.job, "N_q", P::quality_passes)},
            printing_nozzles(scan.advance, group.resolution_along, scan.quality_passes), "",
            interlace);
  const StepInput nozzles = from_catalogue(
      "N", group.nozzles, "", "head." + group.head + ".mode." + group.mode + ".nozzles");
  std::vector<StepInput> inputs{w.step("N_p", g + ".printing"), nozzles};
  const bool several = scan.heads_per_colour > 1;
  if (several) inputs.push_back(chosen("n", scan.heads_per_colour, ""));
  w.formula(g + ".idle", "i", several ? "1-N_p/(N*n)" : "1-N_p/N", std::move(inputs),
            group.idle_nozzle_share, "", interlace);
}

/// The carriage speed that just serves the line, where that is less than the one it runs at.
void pace(TraceWriter& w, const Group& group, const std::string& g) {
  if (!w.spec.carriage_pace || &group != &w.spec.chosen.front()) return;
  const CarriagePace& pace = *w.spec.carriage_pace;
  const Speed line = served_high(*w.job.speed);
  std::vector<StepInput> inputs{from_value("v", *w.job.speed, line.si(), "m/s", "line.speed")};
  if (group.scan->strokes < 1) {
    inputs.push_back(w.step("A", advance_step(w, g)));
    w.formula(g + ".pace_time", "t_n", "A/(1000*v)", inputs, pace.stroke_time.si(), "s",
              kinematics);
  } else {
    inputs.push_back(from_value("p", w.job.pitch, in_mm(w.job.pitch.value), "mm", "product.pitch"));
    inputs.push_back(from_value("L", w.job.length, in_mm(w.job.length.high), "mm", "image.length"));
    inputs.push_back(w.step("n_s", g + ".strokes"));
    w.formula(g + ".pace_time", "t_n", "max(p,L)/(1000*v*n_s)", inputs, pace.stroke_time.si(), "s",
              kinematics);
  }
  w.formula(g + ".pace", "v_n", "a/4*(t_n-t_d-((t_n-t_d)^2-8*(W+L_a)/(1000*a))^0.5)",
            {from_parameter(w.job, "a", P::carriage_acceleration), w.step("t_n", g + ".pace_time"),
             from_parameter(w.job, "t_d", P::stroke_dwell_s), w.step("W", g + ".width"),
             w.step("L_a", g + ".array")},
            pace.speed.si(), "m/s", kinematics);
}

}  // namespace

std::string advance_step(const TraceWriter& w, const std::string& g) {
  return g + (w.has(g + ".carriage_advance") ? ".carriage_advance" : ".advance");
}

void trace_scan(TraceWriter& w, const Group& group, const std::string& g) {
  trace_width(w, g);
  advance(w, group, g);
  carriage(w, group, g);
  throughput(w, group, g);
  feed(w, group, g);
  nozzles(w, group, g);
  pace(w, group, g);
}

}  // namespace calc
