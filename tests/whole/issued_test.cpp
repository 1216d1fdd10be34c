// What an issue says that the calculation alone does not: names of parts and files.
#include <doctest/doctest.h>

#include <algorithm>

#include "output/csv.h"
#include "tests/whole/support/case.h"

TEST_CASE("a spare says in the parts list that it is one") {
  const whole::Case made = whole::case_of("");
  REQUIRE(made.specification.station);
  const std::vector<calc::BomLine>& bom = made.specification.station->bom;
  const auto spare = std::find_if(
      bom.begin(), bom.end(), [](const calc::BomLine& line) { return line.code == "spare_head"; });
  REQUIRE(spare != bom.end());
  CHECK(spare->designation == "Spare: " + bom.front().designation);
  CHECK(output::write_bom_csv(made.specification).find(spare->designation) != std::string::npos);
  const whole::Case unnamed = whole::case_of("-head.A.designation");
  const auto& lines = unnamed.specification.station->bom;
  CHECK(std::any_of(lines.begin(), lines.end(), [](const calc::BomLine& line) {
    return line.designation == "Spare printhead";
  }));
}

TEST_CASE("the figures name the request's file as the walk does, else by its last part") {
  const whole::Case made = whole::case_of("");
  const auto files = [&](const std::string& source) {
    std::vector<std::string> names;
    const auto spec = output::specify(
        made.request, {made.catalogue, whole::templates(), whole::fonts(), source}, "2026-11-25");
    for (const calc::Input& input : spec.inputs) {
      const bool given = input.origin.kind == calc::OriginKind::given;
      if (given && !input.origin.file.empty()) names.push_back(input.origin.file);
    }
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
  };
  CHECK(files("a/q.ini") == std::vector<std::string>{"a/q.ini"});
  REQUIRE(files("").size() == 1);
  CHECK(files("").front().find('/') == std::string::npos);
}
