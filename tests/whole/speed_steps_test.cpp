// What the best station costs over the line speed.
#include "calc/speed_steps.h"

#include <doctest/doctest.h>

#include <string>

#include "calc/calculate.h"
#include "output/compose_context.h"
#include "output/sketch_list.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace {

std::string figure_of(const whole::Case& made) {
  const output::Context context(made.specification, made.request.request, whole::templates());
  return output::plot_steps(context);
}

}  // namespace

TEST_CASE("each step of speed is what a request with that speed gets") {
  const whole::Case made = whole::case_of("");
  REQUIRE(made.specification.speed_steps.size() == 9);
  calc::Speed before;
  for (const calc::SpeedStep& step : made.specification.speed_steps) {
    CHECK(step.speed > before);
    before = step.speed;
    calc::Request other = made.request.request;
    other.line.speed = calc::exactly(step.speed, other.line.speed->origin);
    const auto spec = calc::calculate(other, made.catalogue, made.specification.date);
    CHECK(step.heads == spec.heads_total);
    if (!spec.station) continue;
    CHECK(step.capital == spec.station->cost.capital);
    CHECK(step.ownership == spec.station->cost.ownership);
  }
}

TEST_CASE("the step at the speed asked for is the station itself") {
  for (const auto& sample : whole::sample_requests()) {
    const auto spec = calc::calculate(sample.request, whole::sample_catalogue(), "2026-11-25");
    if (spec.speed_steps.empty()) continue;
    CAPTURE(spec.id);
    const calc::SpeedStep& middle = spec.speed_steps.at(spec.speed_steps.size() / 2);
    CHECK(middle.heads == spec.heads_total);
    CHECK(middle.ownership == spec.station->cost.ownership);
  }
}

TEST_CASE("costs over the speed are drawn where two speeds have a station") {
  CHECK(figure_of(whole::case_of("")).find("ownership over 5 years") != std::string::npos);
  CHECK(figure_of(whole::case_of("line.speed = 2900 m/min\n")).empty());
  CHECK(figure_of(whole::case_of("line.mode = scanning\n")).empty());
}
