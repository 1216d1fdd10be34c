/// The first level: what nothing has touched is not read again, and the work data never change
/// what a run puts out.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/output/support/desk.h"

namespace {

using output::Exit;
using support::Desk;

const std::string known = "out/.swathspec/known.jsonl";
const std::string stem = "out/A_rA_2026-01-02";

/// A desk with one request issued; its calls forgotten.
void issue(Desk& desk) {
  desk.request("a.ini", "A");
  REQUIRE(desk.build() == Exit::success);
  desk.calls.clear();
}

bool read(const Desk& desk, const std::string& path) {
  return std::count(desk.calls.begin(), desk.calls.end(), "read " + path) != 0;
}

/// What the run of a copy without work data says and leaves must be the same.
void check_like_without_help(Desk& desk) {
  Desk plain;
  plain.files = desk.files;
  plain.folders = desk.folders;
  plain.date = desk.date;
  plain.files.erase(known);
  CHECK(plain.build() == desk.build());
  CHECK(plain.standard_output == desk.standard_output);
  CHECK(plain.standard_error == desk.standard_error);
  CHECK(plain.issued() == desk.issued());
}

TEST_CASE("an untouched request is neither compared nor written, its issue not even read") {
  Desk desk;
  issue(desk);
  CHECK(desk.build() == Exit::success);
  CHECK(desk.standard_output == "unchanged incomplete A_rA_2026-01-02\n");
  for (const char* ending : {".json", ".pdf", ".bom.csv"}) CHECK_FALSE(read(desk, stem + ending));
}

TEST_CASE("without work data the issue is read and compared") {
  Desk desk;
  issue(desk);
  desk.files.erase(known);
  CHECK(desk.build() == Exit::success);
  CHECK(desk.standard_output == "unchanged incomplete A_rA_2026-01-02\n");
  CHECK(read(desk, stem + ".json"));
}

TEST_CASE("stamps as late as the work data are not trusted") {
  Desk desk;
  issue(desk);
  desk.noted_late = true;
  CHECK(desk.build() == Exit::success);
  CHECK(read(desk, stem + ".pdf"));
  CHECK(read(desk, "out/overview.html"));
  for (const std::string& call : desk.calls) CHECK_FALSE(call.starts_with("create out/.overview"));
}

TEST_CASE("whatever was touched is seen, with work data as without") {
  struct Scene {
    const char* name = "";
    void (*touch)(Desk&) = nullptr;
    const char* says = "";
  };
  const std::vector<Scene> scenes{
      {"nothing", [](Desk&) {}, "unchanged"},
      {"a remark", [](Desk& d) { d.files["in/a.ini"] += "; seen\n"; }, "unchanged"},
      {"the title", [](Desk& d) { d.files["in/a.ini"] += "notes = x\n"; }, "refused"},
      {"the pdf", [](Desk& d) { d.files[stem + ".pdf"] += " "; }, "refused"},
      {"the parts list", [](Desk& d) { d.files[stem + ".bom.csv"] += " "; }, "refused"},
      {"the figures", [](Desk& d) { d.files[stem + ".json"] += " \n"; }, "unchanged"},
      {"a lost file", [](Desk& d) { d.files.erase(stem + ".pdf"); }, "issued"},
      {"the program", [](Desk& d) { d.files["/proc/self/exe"] += "2"; }, "unchanged"},
      {"the day", [](Desk& d) { d.date = "2026-01-03"; }, "issued"},
      {"the catalogue's remark", [](Desk& d) { d.files["catalogue.xml"] += "<!-- x -->\n"; },
       "unchanged"},
      {"damaged work data",
       [](Desk& d) { d.files[known] = "{\"issue\":1}\n[]\n{" + d.files[known]; }, "unchanged"},
      {"another request of that name",
       [](Desk& d) { d.files["in/a0.ini"] = "[request]\nid = a\ntitle = Cups\n"; }, "failed"},
  };
  for (const Scene& scene : scenes) {
    const std::string name = scene.name;
    CAPTURE(name);
    Desk desk;
    issue(desk);
    scene.touch(desk);
    check_like_without_help(desk);
    CHECK(desk.standard_output.find(scene.says) != std::string::npos);
  }
}

TEST_CASE("findings of reading are told again of a request that is not read") {
  Desk desk;
  desk.request("a.ini", "A");
  desk.files["in/b.xml"] =
      "<requests><request><id>B1</id><title>Lids</title></request>"
      "<request><id>B2</id><title>Lids</title><date>2026-01-05</date></request></requests>";
  CHECK(desk.build() == Exit::success);
  check_like_without_help(desk);
}

TEST_CASE("an unchanged request without a day keeps the day of its issue") {
  Desk desk;
  desk.request("a.ini", "A");
  REQUIRE(desk.run({"build", "in", "-o", "out", "-j", "1"}) == Exit::success);
  CHECK(desk.standard_output == "issued incomplete A_rA_2026-11-25\n");
  desk.clock += 86400;
  desk.calls.clear();
  REQUIRE(desk.run({"build", "in", "-o", "out", "-j", "1"}) == Exit::success);
  CHECK(desk.standard_output == "unchanged incomplete A_rA_2026-11-25\n");
  CHECK_FALSE(read(desk, "out/A_rA_2026-11-25.json"));
}

TEST_CASE("the pages over all issues are not made anew when nothing changed") {
  Desk desk;
  issue(desk);
  CHECK(desk.build() == Exit::success);
  for (const std::string& call : desk.calls) CHECK(call.find("overview") == std::string::npos);
  desk.files["out/overview.html"] += "x";
  CHECK(desk.build() == Exit::success);
  CHECK(desk.files.at("out/overview.html").back() == '\n');
}

}  // namespace
