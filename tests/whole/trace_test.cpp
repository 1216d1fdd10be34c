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
#include "tests/whole/support/trace_paths.h"

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

/// A step of another station or another value says what stands in place of what; again_test.cpp
/// works it out once more.
void check_gone_through(const RecordedStep& step) {
  const bool last = step.kind == "last";
  for (const char* start : {"alternative.", "range.", "moved.", "left_out."}) {
    if (!last && step.id.starts_with(start)) return;
  }
  CAPTURE(step.kind);
  CHECK(last);
  CHECK((step.id.starts_with("edge.") || step.id.ends_with(".holds") ||
         step.id.ends_with(".holds.2")));
  CHECK(step.inputs.front().unit == step.unit);
}

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
  } else if (step.kind == "again" || step.kind == "last") {
    check_gone_through(step);
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
                                          "bar_reduction_m",
                                          "bar_reduction_n",
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
                                          "joints",
                                          "waste_share",
                                          "bar_code_across",
                                          "bar_code_along",
                                          "encoder_fraction",
                                          "boards",
                                          "free_colours",
                                          "single_source",
                                          "printed_share",
                                          "cover_fraction",
                                          "lamps"};
  const std::string last = step.id.substr(step.id.rfind('.') + 1);
  return bare.count(last) == 1 || step.id.starts_with("station.boards.") ||
         step.id.starts_with("station.count.") || step.id.starts_with("moved.assume.spread") ||
         step.id.starts_with("left_out.") || step.id.starts_with("station.spares.");
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
  for (const char* kind : {"formula", "table", "solve", "least", "choice", "again", "last"}) {
    CAPTURE(kind);
    CHECK(kinds[kind] > 0);
  }
}

TEST_CASE("steps that no sample takes are reproduced too") {
  for (const whole::TracePath& path : whole::trace_paths()) {
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
