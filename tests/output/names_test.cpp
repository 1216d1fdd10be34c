#include "output/names.h"

#include <doctest/doctest.h>

#include <array>
#include <string>
#include <utility>

#include "output/date.h"
#include "output/digest.h"

namespace {

using output::name_part;

TEST_CASE("sha256 of the standard's example messages") {
  // FIPS 180-4, example computations published by NIST.
  CHECK(output::sha256("abc") ==
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(output::sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("a name that needs no change stays as it is") {
  CHECK(name_part("Q-2026.117") == "Q-2026.117");
  CHECK(name_part("a") == "a");
}

TEST_CASE("a changed name carries the digest of the original") {
  // Both are fixed by the public interface; digests computed independently with sha256sum.
  CHECK(name_part("A/B") == "A-B~998d3ed8");
  CHECK(name_part("../../../../escape") == "escape~e7530905");
}

TEST_CASE("every other code point becomes one hyphen") {
  // printf 'Große 1' | sha256sum
  CHECK(name_part("Gro\xC3\x9F"
                  "e 1")
            .substr(0, 8) == "Gro-e-1~");
  CHECK(name_part("\xE7\x94\xB5\xE6\xB1\xA0"
                  "7")
            .substr(0, 2) == "7~");
  CHECK(name_part("a_b").starts_with("a-b~"));
}

TEST_CASE("names are cut to 60 and stay distinct") {
  const std::string long_a = std::string(60, 'x') + "a";
  const std::string long_b = std::string(60, 'x') + "b";
  CHECK(name_part(long_a).size() == 69);
  CHECK(name_part(long_a) != name_part(long_b));
  CHECK(name_part(std::string(60, 'x')) == std::string(60, 'x'));
}

TEST_CASE("a name of nothing but dots still is a name") {
  for (const char* text : {".", "..", "-", "///"}) {
    CAPTURE(text);
    CHECK(name_part(text).size() == 9);
    CHECK(name_part(text).front() == '~');
  }
}

TEST_CASE("device names of Windows are marked") {
  for (const char* text : {"CON", "con", "nul.txt", "COM1", "lpt9.a.b", "Aux"}) {
    CAPTURE(text);
    CHECK(name_part(text).starts_with(std::string(text) + "~"));
  }
  for (const char* text : {"COM0", "CONSOLE", "LPT", "COM10", "a.con"}) {
    CAPTURE(text);
    CHECK(name_part(text) == text);
  }
}

TEST_CASE("a stem joins identification, revision and date") {
  CHECK(output::stem_of("Q-1", "B", "2026-03-01") == "Q-1_rB_2026-03-01");
  CHECK(output::stem_of("Q-1", "", "2026-03-01") == "Q-1_rA_2026-03-01");
  CHECK(output::stem_of("A/B", "A", "2026-03-01") == "A-B~998d3ed8_rA_2026-03-01");
}

TEST_CASE("a stem comes apart again, anything else does not") {
  const auto parts = output::split_stem("Q-1_rB.2_2026-03-01");
  REQUIRE(parts.has_value());
  CHECK(parts->id == "Q-1");
  CHECK(parts->revision == "B.2");
  CHECK(parts->date == "2026-03-01");
  for (const char* name : {"overview", "Q-1_rB", "_2026-03-01", "Q-1_rB_2026-13-01", ""}) {
    CAPTURE(name);
    CHECK_FALSE(output::split_stem(name).has_value());
  }
}

TEST_CASE("revisions: the shorter first, then by bytes") {
  CHECK(output::revision_before("Z", "AA"));
  CHECK(output::revision_before("A", "B"));
  CHECK_FALSE(output::revision_before("B", "B"));
  CHECK_FALSE(output::revision_before("AA", "Z"));
}

TEST_CASE("the next revision comes after") {
  constexpr std::array<std::pair<const char*, const char*>, 12> cases{{{"", "B"},
                                                                       {"A", "B"},
                                                                       {"Z", "AA"},
                                                                       {"AZ", "BA"},
                                                                       {"9", "10"},
                                                                       {"1.9", "1.10"},
                                                                       {"A9", "A10"},
                                                                       {"z", "aa"},
                                                                       {"1Z", "1AA"},
                                                                       {"0", "1"},
                                                                       {"A.", "A.1"},
                                                                       {"ZZ", "AAA"}}};
  for (const auto& row : cases) {
    const std::string revision(row.first);  // doctest's lambda cannot capture a structured binding
    const std::string next(row.second);
    CAPTURE(revision);
    REQUIRE(output::next_revision(revision).has_value());
    CHECK(*output::next_revision(revision) == next);
    CHECK(output::revision_before(revision, *output::next_revision(revision)));
  }
  CHECK_FALSE(output::next_revision("ZZZZZZZZ").has_value());
}

TEST_CASE("dates that exist") {
  for (const char* date : {"2026-11-25", "2024-02-29", "2000-02-29", "0001-01-01", "9999-12-31"}) {
    CAPTURE(date);
    CHECK(output::is_date(date));
  }
  for (const char* date : {"2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-1-1",
                           "2026-11-31", "26-11-25", "2026/11/25", "0000-01-01", "2026-11-2x"}) {
    CAPTURE(date);
    CHECK_FALSE(output::is_date(date));
  }
}

TEST_CASE("seconds since 1970 become UTC days") {
  // date -u -d @N +%F
  CHECK(output::date_of(0) == "1970-01-01");
  CHECK(output::date_of(86399) == "1970-01-01");
  CHECK(output::date_of(951782400) == "2000-02-29");
  CHECK(output::date_of(1795564800) == "2026-11-25");
  CHECK(output::date_of(253402300799) == "9999-12-31");
  CHECK_FALSE(output::date_of(253402300800).has_value());
  CHECK_FALSE(output::date_of(-1).has_value());
}

TEST_CASE("a source date is decimal seconds and nothing else") {
  CHECK(output::date_of_epoch("951782400") == "2000-02-29");
  for (const char* text : {"", "-1", "12x", " 1", "1.5", "99999999999999999999", "2026-01-01"}) {
    CAPTURE(text);
    CHECK_FALSE(output::date_of_epoch(text).has_value());
  }
}

TEST_CASE("the date of issue: command line, environment, request, today") {
  output::DatePolicy policy{"2026-01-01", "2026-02-02", "2026-04-04"};
  CHECK(output::choose_date(policy, "2026-03-03").date == "2026-01-01");
  CHECK(output::choose_date(policy, std::nullopt).fixed);
  policy.option.reset();
  CHECK(output::choose_date(policy, "2026-03-03").date == "2026-02-02");
  CHECK_FALSE(output::choose_date(policy, std::nullopt).fixed);
  policy.epoch.reset();
  CHECK(output::choose_date(policy, "2026-03-03").date == "2026-03-03");
  CHECK(output::choose_date(policy, "2026-03-03").fixed);
  CHECK(output::choose_date(policy, std::nullopt).date == "2026-04-04");
  CHECK_FALSE(output::choose_date(policy, std::nullopt).fixed);
}

}  // namespace
