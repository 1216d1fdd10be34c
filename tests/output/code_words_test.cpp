#include "output/code_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "output/field_names.h"

namespace {

using output::CodeWords;

std::string meaning(const std::vector<CodeWords>& all, const std::string& code) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const CodeWords& c) { return c.code == code; });
  return found == all.end() ? "" : found->meaning;
}

TEST_CASE("every code of every kind has words, plain ones") {
  const output::Templates templates;
  const std::vector<CodeWords> all = output::code_words(templates);
  std::set<std::string> kinds;
  for (const CodeWords& code : all) {
    CAPTURE(code.code);
    kinds.insert(std::string(code.kind));
    CHECK(code.meaning.size() >= 4);
    CHECK(code.meaning.find_first_of("<{}") == std::string::npos);
    CHECK(code.meaning != code.code);
  }
  CHECK(kinds == std::set<std::string>{"finding", "reason", "condition", "question", "check",
                                       "safety", "part"});
  CHECK(meaning(all, "W0503") == "Ink INK has no price. The running cost stands without it.");
  CHECK(meaning(all, "ozone").starts_with("Ozone. Arc lamps"));
  CHECK(meaning(all, "E0304") == "there is no catalogue for the request");
}

TEST_CASE("a field is meant by a part of its key or by a section's own name") {
  CHECK(output::means_field("ink.NAME.family", "family"));
  CHECK(output::means_field("ink.NAME.family", "ink.black.family"));
  CHECK(output::means_field("ink.NAME.family", "ink.black"));
  CHECK(output::means_field("head.NAME.mode.NAME.drops", "head.A.mode.grey.drops"));
  CHECK_FALSE(output::means_field("ink.NAME.family", "ink.black.fam"));
  CHECK_FALSE(output::means_field("colour.NAME.ink", "ink.black"));
  CHECK_FALSE(output::means_field("line.speed", "lin.speed"));
}

TEST_CASE("the nearest field to a misspelt name keeps the names of sections") {
  const std::vector<std::string_view> keys{"line.speed", "ink.NAME.family", "ink.NAME.price"};
  CHECK(output::nearest_field(keys, "lin.speed") == "line.speed");
  CHECK(output::nearest_field(keys, "ink.black.famly") == "ink.black.family");
  CHECK(output::nearest_field(keys, "famly") == "family");
  CHECK(output::nearest_field(keys, "nothing.like.it").empty());
}

}  // namespace
