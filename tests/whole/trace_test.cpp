// Every step of every sample is done again from the inputs it prints.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>
#include <string>
#include <type_traits>
#include <vector>

#include "calc/calculate.h"
#include "tests/calc/support/formula.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/recorded.h"
#include "tests/whole/support/samples.h"

namespace {

using whole::RecordedStep;

constexpr double accepted = 1e-12;

bool close(double a, double b) {
  return std::abs(a - b) <= accepted * std::max({std::abs(a), std::abs(b), 1e-300});
}

/// The formula with another value for what the step finds.
double with(const RecordedStep& step, double value) {
  auto inputs = step.values();
  inputs[step.symbol] = value;
  return support::evaluate(step.formula, inputs);
}

/// Largest advance in rows without a common factor with the steps.
double advance_again(const RecordedStep& step) {
  const auto inputs = step.values();
  int j = static_cast<int>(inputs.at("N_a") / inputs.at("N_q"));
  const int s = static_cast<int>(inputs.at("s"));
  while (j > 0 && std::gcd(j, s) != 1) --j;
  return j;
}

/// Greatest advance, no group's own exceeded, that is whole rows of every lattice, none left out.
double shared_advance_again(const RecordedStep& step) {
  const auto in = step.values();
  double least = in.at("A_1");
  for (int i = 2; in.count("A_" + std::to_string(i)) == 1; ++i) {
    least = std::min(least, in.at("A_" + std::to_string(i)));
  }
  const auto suits = [&](double advance) {
    for (int i = 1; in.count("R_" + std::to_string(i)) == 1; ++i) {
      const double rows = advance * in.at("R_" + std::to_string(i)) / 25.4;
      const double whole = std::round(rows);
      const int steps = static_cast<int>(in.at("s_" + std::to_string(i)));
      if (whole < 1 || std::abs(rows - whole) > 1e-6) return false;
      if (std::gcd(static_cast<int>(whole), steps) != 1) return false;
    }
    return true;
  };
  const double pitch = 25.4 / in.at("R_1");
  for (int rows = static_cast<int>(std::floor(least / pitch + 1e-6)); rows >= 1; --rows) {
    if (suits(rows * pitch)) return rows * pitch;
  }
  return 0;
}

/// The row that the first input selects: `f_3` for 3.
double selected(const RecordedStep& step) {
  REQUIRE(step.inputs.size() > 1);
  const std::string row = "_" + std::to_string(std::lround(step.inputs.front().value));
  for (std::size_t i = 1; i < step.inputs.size(); ++i) {
    const std::string& symbol = step.inputs[i].symbol;
    if (symbol.size() > row.size() && symbol.ends_with(row)) return step.inputs[i].value;
  }
  FAIL("no row " << row << " in the table of " << step.id);
  return 0;
}

double table_again(const RecordedStep& step) {
  if (step.id.ends_with(".advance_rows")) return advance_again(step);
  if (step.id.ends_with(".carriage_advance")) return shared_advance_again(step);
  return selected(step);
}

/// What a least or solve step compares with: its last input.
double scale_of(const RecordedStep& step) { return std::abs(step.inputs.back().value); }

void check(const RecordedStep& step) {
  CAPTURE(step.id);
  CAPTURE(step.formula);
  CHECK_FALSE(step.symbol.empty());
  CHECK_FALSE(step.formula.empty());
  CHECK_FALSE(step.source.empty());
  CHECK_FALSE(step.tag.empty());
  CHECK_FALSE(step.validity.empty());
  CHECK_FALSE(step.inputs.empty());
  CAPTURE(step.value);
  if (step.kind == "formula" || step.kind == "choice") {
    const double again = support::evaluate(step.formula, step.values());
    CAPTURE(again);
    CHECK(close(again, step.value));
  } else if (step.kind == "least") {
    CHECK(with(step, step.value) >= -accepted * scale_of(step));
    if (step.value > 1) CHECK(with(step, step.value - 1) < 0);
  } else if (step.kind == "solve") {
    const double moved = with(step, step.value * (1 + 1e-9));
    CHECK(std::abs(with(step, step.value)) <= accepted * scale_of(step));
    CHECK(std::abs(moved) > std::abs(with(step, step.value)));
  } else {
    CHECK(step.kind == "table");
    const double again = table_again(step);
    CAPTURE(again);
    CHECK(close(again, step.value));
  }
  if (step.kind == "choice") {
    const bool extreme = step.formula.starts_with("min(") || step.formula.starts_with("max(");
    CHECK(extreme);
  }
}

/// No step has a dimension without its unit: only figures that are counts, shares or numbers of
/// similarity carry none.
bool may_lack_unit(const RecordedStep& step) {
  static const std::set<std::string> bare{"heads_across",
                                          "heads_total",
                                          "head_rows",
                                          "interleave",
                                          "banks",
                                          "active",
                                          "heads",
                                          "process_peak",
                                          "process_share",
                                          "sets",
                                          "units",
                                          "passes",
                                          "positions",
                                          "rows",
                                          "tilt_lines",
                                          "round_fit",
                                          "round_stations",
                                          "round_rows",
                                          "stack",
                                          "advance_rows",
                                          "strokes",
                                          "use",
                                          "idle",
                                          "spread",
                                          "cover",
                                          "bits",
                                          "lamp_rows",
                                          "supplies",
                                          "containers",
                                          "encoder_counts",
                                          "weight",
                                          "density",
                                          "printing",
                                          "lit",
                                          "guard_100mm",
                                          "guard_100mm_worst",
                                          "guard_200mm",
                                          "guard_200mm_worst",
                                          "density_worst",
                                          "bead_shape",
                                          "cap",
                                          "impact_we",
                                          "encoder_whole",
                                          "encoder_whole_error",
                                          "re",
                                          "we",
                                          "oh",
                                          "z",
                                          "z_sheared",
                                          "splash",
                                          "flow_index",
                                          "lines",
                                          "lamps"};
  const std::string last = step.id.substr(step.id.rfind('.') + 1);
  return bare.count(last) == 1 || step.id.starts_with("station.boards.") ||
         step.id.starts_with("station.spares.");
}

void check_references(const calc::Specification& spec) {
  std::map<std::string, const calc::Step*> earlier;
  for (const calc::Step& step : spec.trace) {
    CAPTURE(step.id);
    for (const calc::StepInput& input : step.inputs) {
      if (input.origin != "step") continue;
      CAPTURE(input.ref);
      REQUIRE(earlier.count(input.ref) == 1);
      CHECK(earlier.at(input.ref)->value == input.value);
      CHECK(earlier.at(input.ref)->unit == input.unit);
    }
    CHECK(earlier.emplace(step.id, &step).second);
  }
}

const calc::Step* find(const calc::Specification& spec, const std::string& id) {
  for (const calc::Step& step : spec.trace) {
    if (step.id == id) return &step;
  }
  return nullptr;
}

/// What leads the calculation where no sample goes, a step it then takes, and what that says.
struct Path {
  std::string changes, step, told;
};

const std::string carriage =
    "line.mode = scanning\nimage.length = 500 mm\nline.speed = 0.2 m/min\n";
const std::string two_lattices =
    carriage +
    "colour.white.kind = white\ncolour.white.ink = white\nink.white.family = aqueous\n"
    "ink.white.viscosity = 10 mPa.s at 25 degC\nink.white.surface_tension = 28 mN/m\n"
    "head.A.families = uv\nhead.B.families = aqueous\nhead.B.mode.grey.row_pitch = 112.5 npi\n"
    "head.B.mode.grey.nozzles = 1284\nimage.registration = 400 um\n";

/// Two rows that stand apart print unevenly when the head is tilted.
const std::string tilted =
    "image.resolution = 400 x 600 dpi\nhead.A.tilts = yes\nhead.A.mode.grey.row_pitch = 180 npi\n"
    "head.A.mode.grey.row_offsets = 0; 0.5\nhead.A.mode.grey.row_places = 0 mm; 0.57 mm\n"
    "head.A.nozzle_delay = yes\nhead.A.field_depth = 0.2 mm\nsubstrate.dot_diameter = 90 um\n";

/// At 36.87 degrees the nozzles of one row of 360 per inch print a line of 600 apart.
const std::string tilted_by_lines =
    "image.resolution = 440 x 600 dpi\nhead.A.tilts = yes\nhead.A.mode.grey.row_pitch = 360 npi\n"
    "head.A.mode.grey.row_offsets = 0\nsubstrate.dot_diameter = 90 um\n";

const std::string pinned =
    "ink.black.pinning_dose = 20 mJ/cm2\nink.cyan.pinning_dose = 20 mJ/cm2\n";
const std::string aqueous =
    "ink.black.family = aqueous\nink.cyan.family = aqueous\nsubstrate.absorbency = low\n";

const std::string third_colour =
    "colour.magenta.kind = process\ncolour.magenta.ink = magenta\nink.magenta.family = uv\n"
    "ink.magenta.viscosity = 20 mPa.s at 25 degC; 9 mPa.s at 50 degC\n"
    "ink.magenta.surface_tension = 28 mN/m\nink.magenta.pinning_dose = 20 mJ/cm2\n";

/// Two rows of heads stand round it.
const std::string round_body =
    "product.form = cylinder\nproduct.diameter = 300 mm\nimage.length = 100 mm\n"
    "product.pitch = 101 mm\n-line.throw_distance\n";

std::vector<Path> paths() {
  return {
      {two_lattices, "g1.carriage_advance", "gcd with s_i = 1"},
      {carriage + "head.A.avoid = 25..35 kHz\nhead.B.families = aqueous\n", "g1.carriage_speed",
       "b*f_b*25.4/R_b"},
      {"product.form = cylinder\nproduct.diameter = 600 mm\nproduct.axis = along\n",
       "g1.sagitta_across", "(c/2)^2"},
      {"line.encoder_step = 5 um\nimage.length = 300 mm\n", "g1.encoder_residue", "1000*L*y"},
      {"-ink.black.density\n-ink.cyan.density\n", "g1.small.tau", "rho"},
      {tilted, "g1.tilt_widest", "max(u_1+100-u_2,u_2-u_1)*254/R_row*cos(t*pi/180)"},
      {tilted, "g1.tilt", "acos(k*R_0/R_q)"},
      {tilted, "g1.widest_n", "p_n+max(0,x_w-k*p_n)"},
      {tilted, "g1.row2.along", "(y-y_1)*cos(t*pi/180)"},
      {tilted + "image.width = 160 mm\n", "g1.joint_apart", "l"},
      {two_lattices, "placement.colours_apart", "L_2*n_2-L_2"},
      {"image.placement = 5 mm\n", "placement.reach", "s+L_1*n_1"},
      {tilted, "g1.tilt_tolerance", "dx/(1000*S_0*sin(abs(t)*pi/180))"},
      {tilted, "g1.dot.nozzle.tilt", "max(x_w-1000*p,1000*p-x_n)"},
      {tilted_by_lines, "g1.tilt", "asin(j*R_0/R_m)"},
      {tilted_by_lines + "-head.A.overlap\n", "g1.overlap", "n_o*p_0"},
      {"head.A.life_drops = 100000000000\n", "g1.head_life", "min(t,D/(3600000*f*c))"},
      {"-head.A.life\nhead.A.life_drops = 100000000000\n", "g1.head_life", "D/(3600000*f*c)"},
      {pinned, "station.pinning.sets", "p_1-1"},
      {pinned, "station.pinning.rise", "a*10*H/(m*c)"},
      {pinned + third_colour, "station.pinning.rise", "s*a*10*H/(m*c)"},
      {"-lamp.LED.shape\n", "station.lamp_rows", "k*E*a*w"},
      {round_body, "g1.round_reach", "r+H"},
      {round_body + "-head.A.throw_nominal\n-head.B.throw_nominal\n", "g1.round_reach", "r+H"},
      {aqueous + "-dryer.DR.electrical\n", "station.drying.units", "ceil(l/l_d)"},
      {"-ink.black.price\n-ink.cyan.price\n", "station.running", "Y_h"},
      {aqueous, "station.drying.units", "ceil(l/l_d)"},
      {aqueous, "station.drying.air", "min(T_u,T_s)"},
      {"-substrate.dot_diameter\n-substrate.dot_volume\n", "g1.motion", "sqrt((D-p)*(D+p))"},
  };
}

void equal(const calc::Specification& spec, const std::string& id, double figure) {
  CAPTURE(id);
  const calc::Step* step = find(spec, id);
  REQUIRE(step != nullptr);
  CHECK(step->value == figure);
}

}  // namespace

TEST_CASE("every step of every sample is reproduced from its printed inputs") {
  int steps = 0;
  std::map<std::string, int> kinds;
  for (const auto& request : whole::sample_requests()) {
    const auto spec = calc::calculate(request.request, whole::sample_catalogue(), "2026-11-20");
    CAPTURE(spec.id);
    const auto recorded = whole::recorded_trace(spec);
    REQUIRE(recorded.size() == spec.trace.size());
    for (std::size_t i = 0; i < recorded.size(); ++i) {
      check(recorded[i]);
      CHECK(recorded[i].value == spec.trace[i].value);  // all 17 digits are in the file
      kinds[recorded[i].kind] += 1;
      CAPTURE(recorded[i].id);
      if (recorded[i].unit.empty()) CHECK(may_lack_unit(recorded[i]));
    }
    check_references(spec);
    steps += static_cast<int>(spec.trace.size());
  }
  CHECK(steps > 300);
  for (const char* kind : {"formula", "table", "solve", "least", "choice"}) {
    CAPTURE(kind);
    CHECK(kinds[kind] > 0);
  }
}

TEST_CASE("steps that no sample takes are reproduced too") {
  for (const Path& path : paths()) {
    CAPTURE(path.changes);
    const auto spec = whole::case_of(path.changes).specification;
    REQUIRE_FALSE(spec.chosen.empty());
    const calc::Step* const taken = find(spec, path.step);
    REQUIRE(taken != nullptr);
    CHECK(taken->formula.find(path.told) != std::string::npos);
    for (const RecordedStep& step : whole::recorded_trace(spec)) check(step);
    check_references(spec);
  }
}

TEST_CASE("the trace equals the search's figures bit for bit") {
  for (const auto& request : whole::sample_requests()) {
    const auto spec = calc::calculate(request.request, whole::sample_catalogue(), "2026-11-20");
    CAPTURE(spec.id);
    for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
      const calc::Group& group = spec.chosen[i];
      const std::string g = "g" + std::to_string(i + 1);
      equal(spec, g + ".native", calc::in_dpi(group.native));
      equal(spec, g + (group.scan ? ".along" : ".across"),
            calc::in_dpi(group.scan ? group.resolution_along : group.resolution_across));
      equal(spec, g + ".column", calc::in_khz(group.frequency_needed));
      equal(spec, g + ".per_nozzle", calc::in_khz(group.frequency_per_nozzle));
      equal(spec, g + ".usable", calc::in_khz(group.frequency_allowed));
      equal(spec, g + ".use", group.frequency_use);
      equal(spec, g + ".swath", calc::in_mm(group.swath));
      equal(spec, g + ".heads_total", group.heads_total);
      if (group.scan) continue;
      equal(spec, g + ".speed_limit", group.speed_limit.si());
      equal(spec, g + ".head_pitch", calc::in_mm(group.head_pitch));
      equal(spec, g + ".heads_across", group.heads_across);
      equal(spec, g + ".idle", group.idle_nozzle_share);
    }
  }
}

TEST_CASE("a step that was tampered with is not reproduced") {
  const auto spec = whole::case_of("").specification;
  auto recorded = whole::recorded_trace(spec);
  int tampered = 0;
  for (RecordedStep& step : recorded) {
    if (step.kind != "formula" && step.kind != "table") continue;
    const double again =
        step.kind == "table" ? table_again(step) : support::evaluate(step.formula, step.values());
    CAPTURE(step.id);
    CHECK_FALSE(close(again, step.value * (1 + 1e-11) + 1e-290));
    ++tampered;
  }
  CHECK(tampered > 30);
}

// A step cannot be made without source, unit and range of validity.
namespace construction {
using calc::SourceTag;
using calc::Step;
using calc::StepKind;
using Text = std::string;
using Inputs = std::vector<calc::StepInput>;
using Names = std::vector<Text>;
static_assert(std::is_constructible_v<Step, Text, StepKind, Text, Text, Inputs, double, Text, Text,
                                      SourceTag, Text, Names>);
static_assert(!std::is_default_constructible_v<Step>);
static_assert(!std::is_constructible_v<Step, Text, StepKind, Text, Text, Inputs, double, Text,
                                       SourceTag, Text, Names>);
static_assert(!std::is_constructible_v<Step, Text, StepKind, Text, Text, Inputs, double, Text, Text,
                                       SourceTag, Names>);
}  // namespace construction
