#include "intake/suggest.h"

#include <doctest/doctest.h>

#include <array>
#include <string_view>

TEST_CASE("edit distance counts insertions, deletions, replacements and swaps") {
  // Damerau 1964: these four are one error each.
  CHECK(intake::edit_distance("width", "width") == 0);
  CHECK(intake::edit_distance("width", "wdth") == 1);
  CHECK(intake::edit_distance("width", "wiidth") == 1);
  CHECK(intake::edit_distance("width", "wodth") == 1);
  CHECK(intake::edit_distance("width", "widht") == 1);
  CHECK(intake::edit_distance("", "abc") == 3);
  // Levenshtein's textbook pair: two replacements and an insertion.
  CHECK(intake::edit_distance("kitten", "sitting") == 3);
}

TEST_CASE("only a near word is suggested") {
  const std::array<std::string_view, 3> words = {"width", "length", "levels"};
  CHECK(intake::nearest("widht", words) == "width");
  CHECK(intake::nearest("WIDTH", words) == "width");
  CHECK(intake::nearest("lenght", words) == "length");
  CHECK(intake::nearest("colour", words).empty());
  CHECK(intake::nearest("", words).empty());
  CHECK(intake::nearest(std::string(5000, 'w'), words).empty());
}
