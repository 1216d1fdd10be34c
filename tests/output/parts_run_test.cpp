/// Parts of one inbox, and what unites them.
#include <doctest/doctest.h>

#include <string>

#include "tests/output/support/desk.h"

namespace {

using output::Exit;
using support::Desk;

void requests(Desk& desk) {
  for (int i = 0; i < 9; ++i) {
    desk.request("q" + std::to_string(i) + ".ini", "Q-" + std::to_string(i));
  }
}

TEST_CASE("parts and their index make what one run makes") {
  Desk whole, parts;
  requests(whole);
  requests(parts);
  REQUIRE(whole.build() == Exit::success);
  std::size_t lines = 0;
  for (const char* part : {"1/3", "2/3", "3/3"}) {
    CHECK(parts.build({"--part", part}) == Exit::success);
    for (const char c : parts.standard_output) lines += c == '\n' ? 1 : 0;
    CHECK_FALSE(parts.files.contains("out/SHA256SUMS"));
    CHECK_FALSE(parts.files.contains("out/overview.html"));
  }
  CHECK(lines == 9);
  CHECK(parts.files.contains("out/run.2-of-3.jsonl"));
  CHECK(parts.run({"index", "out"}) == Exit::success);
  CHECK(parts.standard_output == "9 issues listed in out/overview.html\n");
  CHECK(parts.issued() == whole.issued());
  parts.calls.clear();
  CHECK(parts.build({"--part", "2/3"}) == Exit::success);
  CHECK(parts.standard_output.find("issued") == std::string::npos);
  CHECK(parts.issued() == whole.issued());
}

TEST_CASE("a part that supersedes takes only its own line out of the sums") {
  Desk desk;
  requests(desk);
  REQUIRE(desk.build() == Exit::success);
  desk.request("q3.ini", "Q-3", "notes = other\n");
  int forced = 0;
  for (const char* part : {"1/2", "2/2"}) {
    CHECK(desk.build({"--force", "--part", part}) == Exit::success);
    forced += desk.standard_output.find("issued incomplete Q-3") != std::string::npos ? 1 : 0;
    support::check_archive(desk, false);
  }
  CHECK(forced == 1);
  CHECK(desk.files.at("out/SHA256SUMS").find("Q-3_r") == std::string::npos);
  CHECK(desk.files.at("out/SHA256SUMS").find("Q-4_r") != std::string::npos);
  CHECK(desk.run({"index", "out"}) == Exit::success);
  support::check_archive(desk, true);
}

TEST_CASE("a part takes away only temporaries of its own") {
  Desk desk;
  requests(desk);
  const bool first = output::is_in({1, 2}, "Q-1");
  desk.folders.insert("out");
  desk.files["out/.Q-1_rA_2026-01-02.pdf.part"] = "half";
  CHECK(desk.build({"--part", first ? "2/2" : "1/2"}) == Exit::success);
  CHECK(desk.files.contains("out/.Q-1_rA_2026-01-02.pdf.part"));
  CHECK(desk.build({"--part", first ? "1/2" : "2/2"}) == Exit::success);
  CHECK_FALSE(desk.files.contains("out/.Q-1_rA_2026-01-02.pdf.part"));
}

TEST_CASE("faults are told by one part alone, and a folder of other parts' requests is no fault") {
  Desk desk;
  desk.request("a.ini", "A");
  desk.files["in/b.ini"] = "[request]\ntitle = no id\n";
  int bad = 0, issued = 0;
  for (const char* part : {"1/4", "2/4", "3/4", "4/4"}) {
    const Exit exit = desk.build({"--part", part});
    bad += exit == Exit::data ? 1 : 0;
    CHECK((exit == Exit::data || exit == Exit::success));
    issued += desk.standard_output.find("issued") != std::string::npos ? 1 : 0;
  }
  CHECK(bad == 1);
  CHECK(issued == 1);
}

}  // namespace
