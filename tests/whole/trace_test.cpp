// Every step of every sample is done again from the inputs it prints.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "calc/calculate.h"
#include "tests/calc/support/formula.h"
#include "tests/whole/support/samples.h"

namespace {

constexpr double accepted = 1e-12;

std::map<std::string, double> inputs_of(const calc::Step& step) {
  std::map<std::string, double> inputs;
  for (const calc::StepInput& input : step.inputs) {
    const bool inserted = inputs.emplace(input.symbol, input.value).second;
    CHECK_MESSAGE(inserted, step.id << ": symbol twice: " << input.symbol);
  }
  return inputs;
}

bool close(double a, double b) {
  return std::abs(a - b) <= accepted * std::max({std::abs(a), std::abs(b), 1e-300});
}

double with(const calc::Step& step, double value) {
  auto inputs = inputs_of(step);
  inputs[step.symbol] = value;
  return support::evaluate(step.formula, inputs);
}

/// The one table whose entry is a rule of number theory: largest advance coprime to the steps.
void check_advance(const calc::Step& step) {
  const auto inputs = inputs_of(step);
  const int most = static_cast<int>(inputs.at("N_a") / inputs.at("N_q"));
  const int s = static_cast<int>(inputs.at("s"));
  int j = most;
  while (j > 0 && std::gcd(j, s) != 1) --j;
  CHECK(step.value == j);
}

void check(const calc::Step& step) {
  CAPTURE(step.id);
  CAPTURE(step.formula);
  CHECK_FALSE(step.source.empty());
  CHECK_FALSE(step.validity.empty());
  CHECK(std::isfinite(step.value));
  switch (step.kind) {
    case calc::StepKind::formula:
    case calc::StepKind::choice: {
      const double again = support::evaluate(step.formula, inputs_of(step));
      CAPTURE(again);
      CAPTURE(step.value);
      CHECK(close(again, step.value));
      break;
    }
    case calc::StepKind::least:
      CHECK(with(step, step.value) >= -1e-9 * std::abs(inputs_of(step).begin()->second));
      if (step.value > 1) CHECK(with(step, step.value - 1) < 0);
      break;
    case calc::StepKind::solve:
      CHECK(std::abs(with(step, step.value)) <= 1e-9);
      break;
    case calc::StepKind::table:
      if (step.id.find(".advance_rows") != std::string::npos) check_advance(step);
      CHECK_FALSE(step.formula.empty());
      break;
  }
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
  for (const auto& request : whole::sample_requests()) {
    const auto spec = calc::calculate(request.request, whole::sample_catalogue(), "2026-11-20");
    CAPTURE(spec.id);
    for (const calc::Step& step : spec.trace) check(step);
    check_references(spec);
    steps += static_cast<int>(spec.trace.size());
  }
  CHECK(steps > 300);
}

TEST_CASE("the trace equals the search's figures bit for bit") {
  for (const auto& request : whole::sample_requests()) {
    const auto spec = calc::calculate(request.request, whole::sample_catalogue(), "2026-11-20");
    CAPTURE(spec.id);
    for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
      const calc::Group& group = spec.chosen[i];
      const std::string g = "g" + std::to_string(i + 1);
      equal(spec, g + ".native", calc::in_dpi(group.native));
      equal(spec, g + ".across", calc::in_dpi(group.resolution_across));
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
