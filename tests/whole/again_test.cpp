// What the trace tells of alternatives, of ends of ranges and of edges, worked out once more.
#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "calc/calculate.h"
#include "calc/carriage_pace.h"
#include "calc/figure_steps.h"
#include "calc/headline.h"
#include "calc/ink_state.h"
#include "calc/judge.h"
#include "calc/trace.h"
#include "calc/verdict_uncertain.h"
#include "tests/whole/support/samples.h"

namespace {

constexpr const char* date = "2026-11-20";

const calc::Step* find(const std::vector<calc::Step>& trace, const std::string& id) {
  const auto found = std::find_if(trace.begin(), trace.end(),
                                  [&](const calc::Step& step) { return step.id == id; });
  return found == trace.end() ? nullptr : &*found;
}

/// A sample with the job it was worked out from.
struct Made {
  const calc::Request* request = nullptr;
  calc::Job job;
  calc::Specification spec;
};

std::vector<Made> made() {
  std::vector<Made> all;
  for (const auto& sample : whole::sample_requests()) {
    all.push_back({&sample.request, calc::resolve(sample.request, whole::sample_catalogue(), date),
                   calc::calculate(sample.request, whole::sample_catalogue(), date)});
  }
  return all;
}

/// As if an alternative had been chosen.
calc::Specification as_chosen(const Made& m, const calc::Alternative& other) {
  calc::Specification spec = m.spec;
  spec.chosen = other.groups;
  spec.station = other.station;
  spec.heads_total = 0;
  for (const calc::Group& group : other.groups) spec.heads_total += group.heads_total;
  spec.placement = other.placement;
  spec.flexibility = other.flexibility;
  spec.inks = calc::inks_in_heads(m.job, whole::sample_catalogue(), other.groups);
  spec.carriage_pace = calc::carriage_pace(m.job, whole::sample_catalogue(), other.groups);
  spec.single_source_share.reset();
  spec.alternatives.clear();
  spec.uncertainty.clear();
  spec.edges.clear();
  spec.conditions.clear();
  return spec;
}

/// The figure of an alternative is that of the step in its own whole trace.
void same(const Made& m, const std::vector<calc::Step>& own, const std::string& id,
          const std::string& of, std::size_t& seen) {
  const calc::Step* const told = find(m.spec.trace, id);
  const calc::Step* const worked = find(own, of);
  CAPTURE(id);
  CAPTURE(of);
  if (told == nullptr) {
    CHECK(worked == nullptr);
    return;
  }
  REQUIRE(worked != nullptr);
  CHECK(told->value == worked->value);
  CHECK(told->unit == worked->unit);
  ++seen;
}

/// The request's job with one input at a value; none where no input is of that name.
std::optional<calc::Job> moved(const Made& m, const std::string& field, double value,
                               calc::Request& request) {
  if (const auto id = calc::parameter_of(field)) {
    calc::Parameters parameters = m.job.parameters;
    parameters.set(*id, value);
    return calc::resolve(*m.request, whole::sample_catalogue(), date, parameters);
  }
  for (const calc::MovedInput& input : calc::moved_inputs(*m.request)) {
    if (input.field != field || input.value != value) continue;
    request = input.request;
    return calc::resolve(request, whole::sample_catalogue(), date, m.job.parameters);
  }
  return std::nullopt;
}

/// The figure of that key of a station worked out anew.
std::optional<double> headline(const calc::Job& job, const calc::Judged& judged,
                               const std::string& figure) {
  const calc::Headlines all = calc::headlines(job, judged.groups, judged.sizing);
  for (std::size_t i = 0; i < calc::headlines_count; ++i) {
    if (calc::headline_key(static_cast<calc::Headline>(i)) == figure) return all.at(i);
  }
  return std::nullopt;
}

void check_end(const Made& m, const calc::Uncertainty& entry, const std::string& side, double value,
               const std::optional<calc::Uncertainty::End>& by, std::size_t& seen) {
  CAPTURE(entry.figure);
  const calc::Step* const step = find(m.spec.trace, "range." + side + "." + entry.figure);
  REQUIRE((step != nullptr) == by.has_value());
  if (!by) {
    CHECK(value == entry.value);
    return;
  }
  REQUIRE(step->inputs.size() == 1);
  CHECK(step->inputs.front().ref == by->field);
  CHECK(step->inputs.front().value == by->at);
  const calc::Step* const followed = find(m.spec.trace, step->formula);
  REQUIRE(followed != nullptr);
  CHECK(followed->unit == step->unit);
  calc::Request request;
  const std::optional<calc::Job> job = moved(m, by->field, by->at, request);
  REQUIRE(job.has_value());
  calc::Judge judge(whole::sample_catalogue(), m.job.currency, m.spec.chosen);
  const std::optional<double> anew = headline(*job, judge.of(*job), entry.figure);
  REQUIRE(anew.has_value());
  CHECK(*anew == value);
  CHECK(step->value == (entry.unit == "m/min" ? value / 60 : value));
  ++seen;
}

}  // namespace

TEST_CASE("figures of an alternative are those of its own trace") {
  std::size_t seen = 0;
  for (const Made& m : made()) {
    CAPTURE(m.spec.id);
    for (std::size_t i = 0; i < m.spec.alternatives.size(); ++i) {
      const calc::Specification other = as_chosen(m, m.spec.alternatives[i]);
      const std::vector<calc::Step> own = calc::trace(m.job, whole::sample_catalogue(), other);
      const calc::FigureSteps steps(
          other, [&](const std::string& id) { return find(own, id) != nullptr; });
      const std::string start = "alternative." + std::to_string(i + 1) + ".";
      same(m, own, start + "heads", steps.heads(), seen);
      same(m, own, start + "boards", steps.boards(), seen);
      same(m, own, start + "joints", steps.joints(), seen);
      same(m, own, start + "use", steps.use(), seen);
      same(m, own, start + "registration", steps.widest_budget("colour"), seen);
      same(m, own, start + "speed_limit", steps.speed(), seen);
      same(m, own, start + "speed", "station.speed", seen);
      same(m, own, start + "capital", "station.capital", seen);
      same(m, own, start + "running", "station.running", seen);
      same(m, own, start + "ownership", "station.ownership", seen);
    }
  }
  CHECK(seen > 100);
}

TEST_CASE("ends of ranges are reached with the value that their step names") {
  std::size_t seen = 0;
  for (const Made& m : made()) {
    CAPTURE(m.spec.id);
    for (const calc::Uncertainty& entry : m.spec.uncertainty) {
      check_end(m, entry, "low", entry.low, entry.low_by, seen);
      check_end(m, entry, "high", entry.high, entry.high_by, seen);
    }
  }
  CHECK(seen > 100);
}

TEST_CASE("each edge has its step, of which the gate's figure is an input") {
  std::size_t seen = 0;
  for (const Made& m : made()) {
    CAPTURE(m.spec.id);
    for (const calc::Edge& edge : m.spec.edges) {
      const calc::Step* const step = find(m.spec.trace, calc::edge_step(edge));
      CAPTURE(calc::edge_step(edge));
      if (edge.kind == calc::EdgeKind::recommended && edge.arrangement.empty()) {
        CHECK(step == nullptr);  // no other than the heads' own edge
        continue;
      }
      REQUIRE(step != nullptr);
      ++seen;
      CHECK(step->unit == edge.unit);
      CHECK(step->inputs.front().ref == edge.quantity);
      CHECK(step->inputs.front().value == edge.now);
      CHECK((edge.up ? step->value >= edge.now : step->value <= edge.now));
      if (!edge.printed) continue;
      CHECK(step->kind == calc::StepKind::last);
      CHECK(step->value == *edge.printed);
      CHECK(step->formula ==
            (edge.kind == calc::EdgeKind::passes ? edge.beyond : std::string("recommended")));
    }
  }
  CHECK(seen > 30);
}

TEST_CASE("what a head left out comes to has its step, but for what is stated") {
  const std::set<std::string, std::less<>> worked_out{
      "frequency", "heads", "resolution", "throw", "slope", "feature", "placement", "budget"};
  std::size_t seen = 0;
  for (const Made& m : made()) {
    CAPTURE(m.spec.id);
    for (const calc::RejectedHead& head : m.spec.rejected) {
      for (const calc::Reason& reason : head.reasons) {
        const bool dearer = reason.code == "lost" && reason.subject == "ownership";
        if (!dearer && !worked_out.contains(reason.code)) continue;
        const std::string id = calc::left_out_step(head.head, reason);
        CAPTURE(id);
        CHECK(std::any_of(m.spec.trace.begin(), m.spec.trace.end(), [&](const calc::Step& step) {
          return step.id.starts_with(id) && step.value == reason.value && step.unit == reason.unit;
        }));
        ++seen;
      }
    }
  }
  CHECK(seen > 100);
}

TEST_CASE("what a check reaches at an end of a range is reached again") {
  std::size_t seen = 0;
  for (const Made& m : made()) {
    CAPTURE(m.spec.id);
    for (const calc::Step& step : m.spec.trace) {
      if (!step.id.starts_with("moved.") || step.id.find(".reached") == std::string::npos) continue;
      CAPTURE(step.id);
      const calc::StepInput& to = step.inputs.front();
      calc::Request request;
      const std::optional<calc::Job> job = moved(m, to.ref, to.value, request);
      REQUIRE(job.has_value());
      calc::Judge judge(whole::sample_catalogue(), m.job.currency, m.spec.chosen);
      const std::vector<calc::Reason>& failing = judge.of(*job).failing;
      REQUIRE_FALSE(failing.empty());
      CHECK(failing.front().value == step.value);
      CHECK(failing.front().unit == step.unit);
      if (failing.front().code == "placement") {
        CHECK(step.formula.find(failing.front().subject) != std::string::npos);
      }
      ++seen;
    }
  }
  CHECK(seen > 20);
}
