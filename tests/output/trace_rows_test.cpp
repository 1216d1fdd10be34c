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

/// The ids of the others of a row.
std::vector<std::string> names(const output::TraceRow& row) {
  std::vector<std::string> ids;
  ids.reserve(row.others.size());
  for (const calc::Step* other : row.others) ids.push_back(other->id);
  return ids;
}

/// The part in which each id differs from the first.
std::vector<std::string> differing(const std::string& first, const std::vector<std::string>& ids) {
  Trace trace;
  for (const std::string& id : ids) {
    trace.push_back(data_of("black"));
    trace.back().id = id;
  }
  std::vector<const calc::Step*> others;
  for (const calc::Step& step : trace) others.push_back(&step);
  return output::differing_parts(first, others);
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
  CHECK(rows[0].step == &trace.front());
  CHECK(names(rows[0]) == std::vector<std::string>{"station.cyan.data", "station.red.data"});
  CHECK(rows[1].step == &trace[1]);
  CHECK(rows[1].others.empty());
}

TEST_CASE("trace rows: an input that is a step agrees with the steps of its row") {
  const Trace trace{data_of("black"), data_of("cyan"), year_of("black"), year_of("cyan")};
  const auto rows = output::trace_rows(trace);
  REQUIRE(rows.size() == 2);
  CHECK(names(rows[1]) == std::vector<std::string>{"station.cyan.year"});
}

TEST_CASE("trace rows: keys of the request agree where each names the channel of its own step") {
  const auto printed = [](const std::string& channel, const std::string& key) {
    calc::Step step = data_of(channel);
    step.inputs[0].ref = key;
    step.assumptions = {key};
    return step;
  };
  const std::string black = "colour.black.cover_mean", cyan = "colour.cyan.cover_mean";
  CHECK(output::trace_rows({printed("black", black), printed("cyan", cyan)}).size() == 1);
  CHECK(output::trace_rows({printed("black", black), printed("cyan", black)}).size() == 2);
  CHECK(output::trace_rows({printed("black", black), printed("cyan", "colour.cyan.cover_peak")})
            .size() == 2);
  CHECK(output::trace_rows(
            {printed("black", "ink.black.density"), printed("cyan", "ink.cyan.density")})
            .size() == 2);
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
  CHECK(differing("station.black.data", {"station.cyan.data", "station.red.data"}) ==
        Names{"cyan", "red"});
  CHECK(differing("g1.along", {"g2.along"}) == Names{"g2"});
  CHECK(differing("g1.a.drop", {"g1.b.drop", "g2.a.drop"}).empty());
  CHECK(differing("g1.a.drop", {"g2.b.drop"}).empty());
  CHECK(differing("g1.viscosity", {"ink.white.viscosity"}).empty());
  CHECK(differing("g1.along", {}).empty());
}
