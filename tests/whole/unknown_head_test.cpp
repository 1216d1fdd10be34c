// A figure that a gate needs and the catalogue lacks is asked for, never taken to pass.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/whole/support/case.h"

namespace {

/// A field of a head, and what else brings it into play.
struct Lack {
  std::string field, changes;
};

std::vector<Lack> lacks() {
  const std::string turning = "product.form = cylinder\nproduct.diameter = 600 mm\n";
  const std::string thin =
      "ink.black.viscosity = 10 mPa.s at 25 degC\nink.cyan.viscosity = 10 mPa.s at 25 degC\n";
  return {{"temperature_most", thin},
          {"tension_window", ""},
          {"throw_most", ""},
          {"drop_speed", ""},
          {"field_depth", turning},
          {"serviceable", "service.serviceable = must\n"},
          {"waveform", "service.waveform = must\n"},
          {"driver_sources", "service.driver_sources = must\n"}};
}

bool asks_for(const calc::Specification& spec, const std::string& field) {
  return std::any_of(spec.conditions.begin(), spec.conditions.end(), [&](const calc::Notice& n) {
    return n.code == "head_data_unknown" && n.field == field;
  });
}

}  // namespace

TEST_CASE("a figure of a head that a gate needs and the catalogue lacks is a condition") {
  for (const Lack& lack : lacks()) {
    CAPTURE(lack.field);
    const std::string key = "head.A." + lack.field;
    const auto whole_row = whole::case_of(lack.changes).specification;
    REQUIRE(whole_row.verdict != calc::Verdict::infeasible);
    CHECK_FALSE(asks_for(whole_row, key));
    const auto lacking = whole::case_of(lack.changes + "-" + key + "\n").specification;
    REQUIRE_FALSE(lacking.chosen.empty());
    REQUIRE(lacking.chosen.front().head == "A");
    CHECK(lacking.verdict == calc::Verdict::conditional);
    CHECK(asks_for(lacking, key));
  }
}
