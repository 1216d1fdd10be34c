/// Which steps of the trace may stand in one row: properties of the rule itself, no figures.
#include "output/trace_rows.h"

#include <doctest/doctest.h>

#include <functional>
#include <limits>
#include <string>
#include <vector>

namespace {

using Trace = std::vector<calc::Step>;

/// Bits an hour from heads and frequency, of one channel.
calc::Step data_of(const std::string& channel) {
  return {"station." + channel + ".data",
          calc::StepKind::formula,
          "B",
          "N*f",
          {{"N", 4, "", "constant", ""}, {"f", 30, "kHz", "step", "g1.rating"}},
          120,
          "Mbit/s",
          "a source",
          calc::SourceTag::computed,
          "no limit",
          {"line.speed"}};
}

calc::Step year_of(const std::string& channel) {
  calc::Step step = data_of(channel);
  step.id = "station." + channel + ".year";
  step.inputs = {{"B", 120, "Mbit/s", "step", "station." + channel + ".data"}};
  return step;
}

}  // namespace

TEST_CASE("trace rows: steps that agree stand at the first of them, in order") {
  const Trace trace{data_of("black"), year_of("black"), data_of("cyan"), data_of("red")};
  const auto rows = output::trace_rows(trace);
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].step == &trace[0]);
  CHECK(rows[0].others == std::vector<std::string>{"station.cyan.data", "station.red.data"});
  CHECK(rows[1].step == &trace[1]);
  CHECK(rows[1].others.empty());
}

TEST_CASE("trace rows: an input that is a step agrees with the steps of its row") {
  const Trace trace{data_of("black"), data_of("cyan"), year_of("black"), year_of("cyan")};
  const auto rows = output::trace_rows(trace);
  REQUIRE(rows.size() == 2);
  CHECK(rows[1].others == std::vector<std::string>{"station.cyan.year"});
}

TEST_CASE("trace rows: any difference but the id keeps steps apart") {
  const std::vector<std::function<void(calc::Step&)>> changes{
      [](calc::Step& s) { s.kind = calc::StepKind::choice; },
      [](calc::Step& s) { s.symbol = "C"; },
      [](calc::Step& s) { s.formula = "f*N"; },
      [](calc::Step& s) { s.value += 120 * std::numeric_limits<double>::epsilon(); },
      [](calc::Step& s) { s.unit = "Mbit/h"; },
      [](calc::Step& s) { s.source = "another source"; },
      [](calc::Step& s) { s.tag = calc::SourceTag::memory; },
      [](calc::Step& s) { s.validity = "below 5"; },
      [](calc::Step& s) { s.assumptions.clear(); },
      [](calc::Step& s) { s.inputs.pop_back(); },
      [](calc::Step& s) { s.inputs[0].symbol = "M"; },
      [](calc::Step& s) { s.inputs[0].value = 5; },
      [](calc::Step& s) { s.inputs[0].unit = "head"; },
      [](calc::Step& s) { s.inputs[0].origin = "given"; },
      [](calc::Step& s) { s.inputs[1].ref = "g2.rating"; },
  };
  for (std::size_t i = 0; i < changes.size(); ++i) {
    CAPTURE(i);
    Trace trace{data_of("black"), data_of("cyan")};
    changes[i](trace[1]);
    CHECK(output::trace_rows(trace).size() == 2);
  }
}

TEST_CASE("trace rows: names by the one part that differs") {
  using Names = std::vector<std::string>;
  CHECK(output::differing_parts("station.black.data", {"station.cyan.data", "station.red.data"}) ==
        Names{"cyan", "red"});
  CHECK(output::differing_parts("g1.along", {"g2.along"}) == Names{"g2"});
  CHECK(output::differing_parts("g1.a.drop", {"g1.b.drop", "g2.a.drop"}).empty());
  CHECK(output::differing_parts("g1.a.drop", {"g2.b.drop"}).empty());
  CHECK(output::differing_parts("g1.viscosity", {"ink.white.viscosity"}).empty());
  CHECK(output::differing_parts("g1.along", {}).empty());
}
