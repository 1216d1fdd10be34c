// What an issue says of the one it replaces.
#include "output/changes.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "output/digest.h"
#include "output/issue.h"
#include "output/json.h"
#include "tests/whole/support/case.h"

namespace {

constexpr std::string_view later = "request.revision = B\n";

output::IssuedText issued(const whole::Case& made) {
  std::string json = output::figures_of(made.specification, made.request);
  std::string digest = output::sha256(json);
  return {std::move(json), std::move(digest)};
}

/// The changes of a request against the plain one, itself changed by `from`, "topic: name | before
/// | after".
std::vector<std::string> changes(const std::string& changed, const std::string& from = "") {
  const whole::Case first = whole::case_of(from);
  const whole::Case second = whole::case_of(std::string(later) + changed);
  const output::Matter matter =
      output::matter_of(second.specification, second.request, issued(first));
  REQUIRE(matter.replaced);
  const output::Context context(second.specification, second.request.request, whole::templates(),
                                matter);
  std::vector<std::string> lines;
  for (const auto& group :
       output::changes_since(context, matter.replaced->before, matter.replaced->now)) {
    for (const output::Change& change : group.changes) {
      std::string line = group.topic;
      lines.push_back(line.append(": ")
                          .append(change.name)
                          .append(" | ")
                          .append(change.before)
                          .append(" | ")
                          .append(change.after));
    }
  }
  return lines;
}

bool has(const std::vector<std::string>& lines, const std::string& line) {
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

}  // namespace

TEST_CASE("a reissue without another change has nothing to list") {
  CHECK(changes("") == std::vector<std::string>{});
}

TEST_CASE("a reissue lists what changed in request, answer and parts") {
  const auto lines =
      changes("line.speed = 45 m/min\n-line.hours_per_day\nhead.A.price = 2100 EUR\n");
  CHECK(has(lines, "requirement: line speed | 30\u00A0m/min | 45\u00A0m/min"));
  CHECK(has(lines, "requirement: hours a day | 16\u00A0h | "));
  const auto starts = [&](const std::string& text) {
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.starts_with(text); });
  };
  CHECK(starts("assumption: hours a day |  | 8"));
  CHECK(starts("answer: capital | "));
  CHECK(starts("answer: jetting frequency a nozzle, group "));
  CHECK(starts("part: "));
  CHECK(starts("basis: digest of the catalogue values used"));
}

TEST_CASE("a condition that came or went is listed in its words") {
  const auto lines = changes("-substrate.surface_energy\n");
  CHECK(std::any_of(lines.begin(), lines.end(), [](const std::string& line) {
    return line.starts_with("condition: ") && line.ends_with(" |  | stands");
  }));
}

TEST_CASE("a condition whose figure moved is listed once, with what it was and what it is") {
  const std::string from = "image.registration = 19 um\n";
  const auto lines = changes(from + "line.mount_tolerance = 4.9 um\n", from);
  std::vector<std::string> conditions;
  for (const std::string& line : lines) {
    const bool of_colours = line.find(" colours register within ") < line.find(" | ");
    if (of_colours && line.find("If it comes otherwise") == std::string::npos) {
      conditions.push_back(line);
    }
  }
  REQUIRE(conditions.size() == 1);
  CHECK(conditions.front().find("stands") == std::string::npos);
  const std::string figures = conditions.front().substr(conditions.front().find(" | "));
  CHECK(std::count(figures.begin(), figures.end(), '|') == 2);
  const std::string unit = "\u00A0\u00B5m";
  CHECK(figures.find(unit) != figures.rfind(unit));
}

TEST_CASE("the data file names the issues before it, oldest first, and the document lists them") {
  const whole::Case first = whole::case_of("");
  const whole::Case second = whole::case_of(later);
  const output::Environment environment{second.catalogue, whole::templates(), whole::fonts()};
  const output::Issued b =
      output::render(second.specification, second.request, environment, issued(first));
  const whole::Case third = whole::case_of("request.revision = C\n");
  const output::Matter matter = output::matter_of(
      third.specification, third.request, output::IssuedText{b.json, output::sha256(b.json)});
  REQUIRE(matter.revisions().size() == 2);
  CHECK(matter.revisions()[0].revision == "A");
  CHECK(matter.revisions()[0].sha256 == issued(first).sha256);
  CHECK(matter.revisions()[1].revision == "B");
  CHECK(matter.revisions()[1].sha256 == output::sha256(b.json));
  // An earlier issue does not make another specification of the same request.
  CHECK(output::read_issued(b.json)->content == output::content_of(second.specification));
}

TEST_CASE("what is no data file of ours is no earlier issue") {
  for (const char* text : {"", "{}", "[]", R"({"schema": "swathspec/2"})", R"({"schema": 1})",
                           R"({"schema": "swathspec/1", "request": 3})"}) {
    CAPTURE(text);
    CHECK_FALSE(output::read_record(text));
  }
}
