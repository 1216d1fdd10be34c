#include <doctest/doctest.h>

#include <cerrno>
#include <string>

#include "output/archive_sums.h"
#include "output/json.h"
#include "tests/output/support/desk.h"

namespace {

using output::Exit;
using support::Desk;

const std::string stem = "out/A_rA_2026-01-02";

void issue(Desk& desk) {
  desk.request("a.ini", "A");
  desk.request("b.ini", "B");
  REQUIRE(desk.build() == Exit::success);
}

std::string verified(Desk& desk, Exit expected) {
  CHECK(desk.run({"verify", "out"}) == expected);
  return desk.standard_output;
}

TEST_CASE("an archive that nobody touched is as it went out") {
  Desk desk;
  issue(desk);
  const auto before = desk.files;
  CHECK(verified(desk, Exit::success) == "6 files as they went out\n");
  CHECK(desk.files == before);
}

TEST_CASE("each file that was altered, is missing or not listed is named") {
  for (const char* ending : {".pdf", ".bom.csv", ".json"}) {
    const std::string name = "A_rA_2026-01-02" + std::string(ending);
    CAPTURE(name);
    Desk altered, missing, unlisted;
    for (Desk* desk : {&altered, &missing, &unlisted}) issue(*desk);
    altered.files["out/" + name] += " ";
    CHECK(verified(altered, Exit::different) ==
          "altered " + name + "\n1 of 6 files not as they went out\n");
    missing.files.erase("out/" + name);
    CHECK(verified(missing, Exit::different) ==
          "missing " + name + "\n1 of 6 files not as they went out\n");
    std::string lines;
    for (const auto& [listed, digest] : output::read_sums(unlisted.files.at("out/SHA256SUMS"))) {
      if (listed != name) lines += output::sum_line(listed, digest);
    }
    unlisted.files["out/SHA256SUMS"] = lines;
    CHECK(verified(unlisted, Exit::different) ==
          "unlisted " + name + "\n1 of 6 files not as they went out\n");
  }
}

TEST_CASE("a line changed with its file does not hide the change") {
  Desk desk;
  issue(desk);
  std::string& pdf = desk.files[stem + ".pdf"];
  const std::string before = output::sha256(pdf);
  pdf += " ";
  std::string& sums = desk.files["out/SHA256SUMS"];
  sums.replace(sums.find(before), before.size(), output::sha256(pdf));
  CHECK(verified(desk, Exit::different) ==
        "altered A_rA_2026-01-02.pdf\n1 of 6 files not as they went out\n");
}

TEST_CASE("verify tells programs one object a difference") {
  Desk desk;
  issue(desk);
  desk.files.erase(stem + ".pdf");
  CHECK(desk.run({"verify", "out", "--json"}) == Exit::different);
  CHECK(desk.standard_output == "{\"file\":\"A_rA_2026-01-02.pdf\",\"state\":\"missing\"}\n");
}

TEST_CASE("a folder without issues is not found, one that cannot be read is an error") {
  Desk desk;
  CHECK(desk.run({"verify", "none"}) == Exit::no_input);
  CHECK(desk.run({"index", "none"}) == Exit::no_input);
  CHECK(desk.run({"verify", "in"}) == Exit::no_input);
  issue(desk);
  desk.fail("read", 2, EIO);
  CHECK(desk.run({"verify", "out"}) == Exit::io);
}

TEST_CASE("index makes the lists anew from the issues alone") {
  Desk desk;
  issue(desk);
  const auto before = desk.issued();
  for (const char* name :
       {"out/SHA256SUMS", "out/overview.html", "out/overview.csv", "out/.swathspec/known.jsonl"}) {
    desk.files.erase(name);
  }
  CHECK(desk.run({"index", "out", "--json"}) == Exit::success);
  CHECK(desk.standard_output == "{\"issues\":2,\"altered\":0,\"missing\":0}\n");
  CHECK(desk.issued() == before);
}

TEST_CASE("index does not bless what was altered") {
  for (const char* ending : {".pdf", ".json"}) {
    CAPTURE(ending);
    Desk desk;
    issue(desk);
    const std::string sums = desk.files.at("out/SHA256SUMS");
    desk.files[stem + ending] += " ";
    CHECK(desk.run({"index", "out"}) == Exit::data);
    CHECK(desk.standard_error.find(stem + ".json:1:1: error[E0310]") != std::string::npos);
    CHECK(desk.files.at("out/SHA256SUMS") == sums);
    CHECK(desk.files.at("out/overview.csv").find("A_rA") == std::string::npos);
    CHECK(desk.files.at("out/overview.csv").find("B_rA") != std::string::npos);
    CHECK(verified(desk, Exit::different).starts_with("altered A_rA_2026-01-02"));
  }
}

TEST_CASE("neither index nor another issue forgets a file that is gone") {
  for (const char* ending : {".pdf", ".bom.csv", ".json"}) {
    CAPTURE(ending);
    Desk desk;
    issue(desk);
    const std::string sums = desk.files.at("out/SHA256SUMS");
    desk.files.erase(stem + ending);
    CHECK(desk.run({"index", "out"}) == Exit::data);
    CHECK(desk.standard_error.find(stem + ending + ":1:1: error[E0310]") != std::string::npos);
    CHECK(desk.files.at("out/SHA256SUMS") == sums);
    desk.files.erase("in/a.ini");
    CHECK(desk.build() == Exit::success);
    CHECK(desk.standard_error.find(stem + ending + ":1:1: warning[W0303]") != std::string::npos);
    CHECK(desk.files.at("out/SHA256SUMS") == sums);
    CHECK(verified(desk, Exit::different).starts_with("missing A_rA_2026-01-02"));
  }
}

TEST_CASE("the work data do not make an altered issue good") {
  Desk desk;
  issue(desk);
  desk.files[stem + ".pdf"] += " ";
  desk.files.erase("in/a.ini");
  CHECK(desk.build() == Exit::success);
  CHECK(desk.standard_error.find("warning[W0303]") != std::string::npos);
  CHECK(desk.files.at("out/overview.csv").find("A_rA") == std::string::npos);
}

TEST_CASE("only the files of a JSON are read of it") {
  const auto files = output::issued_files(
      R"({"trace":[{"files":{"pdf":1}}],"files":{"pdf":{"name":"a","sha256":"b"},)"
      R"("bom_csv":{"name":"c","sha256":"d"}},"verdict":"x"})");
  REQUIRE(files.has_value());
  CHECK(files->pdf.name == "a");
  CHECK(files->bom_csv.sha256 == "d");
  for (const char* text : {"", "[]", "{}", R"({"files":1})", R"({"files":{"pdf":{}}})"}) {
    CHECK_FALSE(output::issued_files(text).has_value());
  }
}

}  // namespace
