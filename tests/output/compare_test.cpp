#include "output/compare.h"

#include <doctest/doctest.h>

#include <functional>
#include <string>

#include "output/json.h"
#include "tests/output/support/hand_made.h"

namespace {

output::Comparison compared(const std::function<void(calc::Specification&)>& change) {
  const calc::Specification before = hand_made::feasible().spec;
  calc::Specification after = before;
  change(after);
  const auto result = output::compare_issues(output::write_json(before, {}),
                                             output::write_json(after, {"9", "ff", {}, {}}));
  REQUIRE(result.comparison.has_value());
  return *result.comparison;
}

/// The one change of a name, "before -> after".
std::string change(const output::Comparison& comparison, const std::string& area,
                   const std::string& name) {
  for (const output::Change& one : comparison.changes) {
    if (one.area == area && one.name == name) return one.before + " -> " + one.after;
  }
  return "none";
}

TEST_CASE("issues that differ in day, version and places are the same specification") {
  const auto same = compared([](calc::Specification& made) {
    made.date = "2030-01-01";
    for (calc::Input& input : made.inputs) input.origin.line += 7;
  });
  CHECK(same.changes.empty());
  CHECK(same.after.date == "2030-01-01");
  CHECK(output::comparison_json(same).starts_with("{\"same\":true"));
  CHECK(output::comparison_text(same).ends_with("the same specification\n"));
}

TEST_CASE("each area says what changed in it") {
  const auto all = compared([](calc::Specification& made) {
    made.title = "Other";
    made.verdict = calc::Verdict::incomplete;
    made.inputs.front().value = 77;
    made.inputs.front().text.clear();
    made.chosen.front().head = "H-9";
    made.station->bom.front().quantity += 1;
    made.station->bom.pop_back();
    made.station->cost.capital.minor += 100;
    made.questions.clear();
  });
  const calc::Specification before = hand_made::feasible().spec;
  CHECK(change(all, "request", "title") == before.title + " -> Other");
  CHECK(change(all, "request", "verdict").ends_with(" -> incomplete"));
  CHECK(change(all, "inputs", before.inputs.front().key).find("77") != std::string::npos);
  CHECK(change(all, "choice", before.chosen.front().name + ".head") ==
        before.chosen.front().head + " -> H-9");
  CHECK(change(all, "cost", "capital") != "none");
  CHECK(change(all, "other", "questions").ends_with(" -> 0 entries"));
  int gone = 0;
  for (const output::Change& one : all.changes) {
    gone += one.area == "parts" && one.after == "-" ? 1 : 0;
  }
  CHECK(gone == 1);
}

TEST_CASE("what is no issue is said to be none") {
  const std::string good = output::write_json(hand_made::feasible().spec, {});
  for (const char* bad : {"", "{", "[]", "{}", "{\"request\":{}}"}) {
    CAPTURE(bad);
    CHECK_FALSE(output::compare_issues(bad, good).comparison.has_value());
    CHECK_FALSE(output::compare_issues(bad, good).second_at_fault);
    CHECK_FALSE(output::compare_issues(good, bad).comparison.has_value());
    CHECK(output::compare_issues(good, bad).second_at_fault);
  }
}

}  // namespace
