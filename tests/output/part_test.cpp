#include "output/part.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

namespace {

TEST_CASE("a part is written K/N") {
  const auto part = output::part_from("3/8");
  REQUIRE(part.has_value());
  CHECK(part->number == 3);
  CHECK(part->count == 8);
  CHECK(output::part_name(*part) == "3-of-8");
  for (const char* text : {"", "1", "/", "0/4", "5/4", "1/0", "1/10000", "1/-2", "+1/2", "1/2/3",
                           "a/b", " 1/2", "1/2 "}) {
    CAPTURE(text);
    CHECK_FALSE(output::part_from(text).has_value());
  }
}

TEST_CASE("every id has one part, and names that agree on any file system have the same") {
  for (const unsigned count : {1U, 2U, 3U, 7U, 100U}) {
    std::array<int, 100> sizes{};
    for (int i = 0; i < 500; ++i) {
      const std::string id = "Q-" + std::to_string(i);
      int found = 0;
      for (unsigned number = 1; number <= count; ++number) {
        if (!output::is_in({number, count}, id)) continue;
        ++found;
        ++sizes.at(number - 1);
        CHECK(output::is_in({number, count}, "q-" + std::to_string(i)));
      }
      CHECK(found == 1);
    }
    // 500 ids over at most 7 parts: none is far from its share (common sense, no source).
    for (unsigned number = 0; number < count && count <= 7; ++number) {
      CHECK(sizes.at(number) > 500 / static_cast<int>(count) / 2);
    }
  }
}

// [L] hashlib: int(sha256(b"a-b~998d3ed8").hexdigest(), 16) % 5 + 1, the same of b"q-1", b"".
TEST_CASE("the part is the SHA-256 of the sanitised id modulo the count") {
  CHECK(output::is_in({1, 5}, "A/B"));
  CHECK(output::is_in({3, 5}, "Q-1"));
  CHECK(output::is_name_in({5, 5}, ""));
}

}  // namespace
