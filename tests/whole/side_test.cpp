// The chosen station beside its alternatives, and what moves its cost of ownership.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "calc/calculate.h"
#include "calc/pareto.h"
#include "output/compose_context.h"
#include "output/section_list.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace {

std::size_t count(const std::string& text, const std::string& piece) {
  std::size_t n = 0;
  for (std::size_t at = text.find(piece); at != std::string::npos; at = text.find(piece, at + 1)) {
    ++n;
  }
  return n;
}

calc::Specification calculated(const intake::ReadRequest& sample) {
  return calc::calculate(sample.request, whole::sample_catalogue(), "2026-11-25");
}

}  // namespace

TEST_CASE("the stations compared stand in a column each, with every figure") {
  std::size_t compared = 0;
  for (const auto& sample : whole::sample_requests()) {
    const calc::Specification spec = calculated(sample);
    if (spec.alternatives.empty()) continue;
    CAPTURE(spec.id);
    ++compared;
    const output::Context c(spec, sample.request, whole::templates());
    const std::string markup = output::heads_section(c);
    const std::size_t first = markup.find("<cell>" + c.words("side.heads") + "</cell>");
    REQUIRE(first != std::string::npos);
    const std::size_t row = markup.rfind("<row", first);
    const std::string line = markup.substr(row, markup.find("</row>", row) - row);
    CHECK(count(line, "<cell>") == spec.alternatives.size() + 2);
    for (const char* figure : {"boards", "joints", "frequency", "speed", "capital", "running",
                               "ownership", "service", "front"}) {
      CAPTURE(figure);
      CHECK(count(markup, "<cell>" + c.words(std::string("side.") + figure) + "</cell>") == 1);
    }
    // The money stands on one page: each row but the last of it with the next.
    for (const char* figure : {"capital", "running", "ownership"}) {
      CAPTURE(figure);
      const bool keeps = figure != std::string("ownership");
      CHECK(count(markup, "<row keep=\"yes\"><cell>" + c.words(std::string("side.") + figure)) ==
            (keeps ? 1U : 0U));
    }
  }
  CHECK(compared >= 5);
}

TEST_CASE("a station that registers worse than asked says so beside its figure") {
  std::size_t worse = 0;
  for (const auto& sample : whole::sample_requests()) {
    const auto& asked = sample.request.image.registration;
    if (!asked) continue;
    const calc::Specification spec = calculated(sample);
    if (spec.alternatives.empty()) continue;
    CAPTURE(spec.id);
    std::size_t beyond = 0;
    const auto judge = [&](const calc::Merits& m) {
      if (std::isfinite(m.registration.si()) && m.registration > asked->low) ++beyond;
    };
    judge(calc::merits(spec.chosen, *spec.station, spec.placement));
    for (const calc::Alternative& other : spec.alternatives) {
      judge(calc::merits(other.groups, other.station, other.placement));
    }
    const output::Context c(spec, sample.request, whole::templates());
    CHECK(count(output::heads_section(c), "beyond what is asked") == beyond);
    worse += beyond;
  }
  CHECK(worse > 0);
}

TEST_CASE("of the stations compared one at least is on the Pareto front, the cheapest always") {
  for (const auto& sample : whole::sample_requests()) {
    const calc::Specification spec = calculated(sample);
    if (spec.alternatives.empty()) continue;
    CAPTURE(spec.id);
    bool cheapest_on_front = spec.chosen_on_front;
    calc::Money least = spec.station->cost.ownership;
    for (const calc::Alternative& other : spec.alternatives) {
      if (other.station.cost.ownership < least) {
        least = other.station.cost.ownership;
        cheapest_on_front = other.on_front;
      }
    }
    // Only a station just as cheap could push it off.
    CHECK(cheapest_on_front);
  }
}

TEST_CASE("the terms of ownership add up to it where there are no more than five") {
  std::size_t whole_sums = 0;
  for (const auto& sample : whole::sample_requests()) {
    const calc::Specification spec = calculated(sample);
    if (!spec.station) continue;
    CAPTURE(spec.id);
    const calc::Cost& cost = spec.station->cost;
    double sum = 0;
    for (const calc::CostTerm& term : cost.terms) {
      sum += term.value.major();
      CHECK(std::abs(term.swing.major() - 0.2 * term.value.major()) <= 0.01);
    }
    CHECK(sum <= cost.ownership.major() + 0.05);
    if (cost.terms.size() == 5) continue;
    ++whole_sums;
    CHECK(sum == doctest::Approx(cost.ownership.major()).epsilon(1e-6));
  }
  CHECK(whole_sums >= 1);
}
