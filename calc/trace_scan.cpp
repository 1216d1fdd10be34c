#include "calc/compare.h"
#include "calc/lattice.h"
#include "calc/scan.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis interlace{
    "every row is printed once if the advance and the steps have no common factor",
    SourceTag::computed, "number theory"};
const Basis kinematics{"uniform acceleration, both ways printing", SourceTag::computed,
                       "acceleration outside the print zone"};

/// Nozzles that two neighbours print alike.
int overlapped(const Group& group) {
  return static_cast<int>(ceil_tolerant(group.overlap / pitch(group.native)));
}

void advance(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  w.add(g + ".advance_rows", StepKind::table, "J", "largest J <= N_a/N_q with gcd(J,s) = 1",
        {chosen("N_a", joined_nozzles(group.nozzles, scan.heads_per_colour, overlapped(group)), ""),
         from_parameter(w.job, "N_q", P::quality_passes), chosen("s", scan.interlace_steps, "")},
        scan.advance_nozzles, "", interlace);
  w.formula(g + ".advance", "A", "25.4*J/(s*R_0)",
            {w.step("J", g + ".advance_rows"), chosen("s", scan.interlace_steps, ""),
             w.step("R_0", g + ".native")},
            in_mm(advance_length(scan.advance_nozzles, scan.interlace_steps, group.native)), "mm",
            interlace);
}

void carriage(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  w.formula(g + ".carriage_speed", "v_c", "min(v_lim,f_u*25.4/R_m)",
            {from_parameter(w.job, "v_lim", P::carriage_speed), w.step("f_u", g + ".usable"),
             chosen("R_m", in_dpi(group.resolution_along), "dpi")},
            scan.carriage_speed.si(), "m/s", kinematics);
  w.formula(
      g + ".stroke_time", "t", "(W+L_a)/(1000*v_c)+2*v_c/a+t_d",
      {w.step("W", g + ".width"), chosen("L_a", in_mm(scan.array_length), "mm"),
       w.step("v_c", g + ".carriage_speed"), from_parameter(w.job, "a", P::carriage_acceleration),
       from_parameter(w.job, "t_d", P::stroke_dwell_s)},
      scan.stroke_time.si(), "s", kinematics);
  w.formula(
      g + ".machine_width", "W_m", "W+L_a+1000*v_c^2/a+l_p",
      {w.step("W", g + ".width"), chosen("L_a", in_mm(scan.array_length), "mm"),
       w.step("v_c", g + ".carriage_speed"), from_parameter(w.job, "a", P::carriage_acceleration),
       from_parameter(w.job, "l_p", P::park_mm)},
      in_mm(scan.machine_width), "mm", kinematics);
}

/// Image by image where the image has a length, else endless.
void throughput(TraceWriter& w, const Group& group, const std::string& g) {
  const Scan& scan = *group.scan;
  const double rate = scan.throughput.si() * 3600;
  if (scan.strokes == 0) {
    w.formula(
        g + ".throughput", "Q", "W*A*3600/(t*1e6)",
        {w.step("W", g + ".width"), w.step("A", g + ".advance"), w.step("t", g + ".stroke_time")},
        rate, "m2/h", kinematics);
    return;
  }
  const StepInput length =
      from_value("L", w.job.length, in_mm(w.job.length.high), "mm", "image.length");
  w.formula(g + ".strokes", "n_s", "ceil(L/A)+s*N_q-1",
            {length, w.step("A", g + ".advance"), chosen("s", scan.interlace_steps, ""),
             from_parameter(w.job, "N_q", P::quality_passes)},
            scan.strokes, "", interlace);
  w.formula(g + ".throughput", "Q", "W*L*3600/(n_s*t*1e6)",
            {w.step("W", g + ".width"), length, w.step("n_s", g + ".strokes"),
             w.step("t", g + ".stroke_time")},
            rate, "m2/h", kinematics);
}

}  // namespace

void trace_scan(TraceWriter& w, const Group& group, const std::string& g) {
  trace_width(w, g);
  advance(w, group, g);
  carriage(w, group, g);
  throughput(w, group, g);
}

}  // namespace calc
