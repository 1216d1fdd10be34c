/// Every code of a finding about files and issues is produced by the program itself.
#include "output/finding.h"

#include <doctest/doctest.h>

#include <cerrno>
#include <functional>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "output/command.h"
#include "tests/output/support/memory_os.h"
#include "tests/source.h"

namespace {

using output::Exit;

/// A system whose JSON files hold a fault of the program on demand.
class BrokenOs : public support::MemoryOs {
 public:
  bool broken = false;
  std::string read_file(const std::string& path) override {
    if (broken && path.ends_with(".json")) throw std::logic_error("broken invariant");
    return MemoryOs::read_file(path);
  }
};

std::string request(const std::string& title) {
  return "[request]\nid = Q-1\ntitle = " + title + "\ndate = 2026-01-02\n";
}

struct Scene {
  Exit exit;
  std::function<void(BrokenOs&)> set;  ///< changes a desk with one good request and its issue
  std::vector<std::string> command{};  ///< another one than the building of the request
};

const std::map<std::string, Scene>& scenes() {
  static const std::map<std::string, Scene> all{
      {"E0301", {Exit::no_input, [](BrokenOs& os) { os.files.erase("q.ini"); }}},
      {"E0302",
       {Exit::no_input, [](BrokenOs& os) { os.files["q.xml"] = os.files.at("catalogue.xml"); }}},
      {"E0303",
       {Exit::io,
        [](BrokenOs& os) {
          os.fail("read", 3, EACCES);  // SHA256SUMS and the work data are read first
        }}},
      {"E0304", {Exit::no_input, [](BrokenOs& os) { os.files.erase("catalogue.xml"); }}},
      {"E0305",
       {Exit::data,
        [](BrokenOs& os) { os.files["catalogue.xml"] = "<catalogue><x/></catalogue>"; }}},
      {"E0306",
       {Exit::data,
        [](BrokenOs& os) {
          const std::string one = "<request><id>Q-1</id><title>Lids</title></request>";
          os.files["q.ini"] = "<requests>" + one + one + "</requests>";
          os.files["q.xml"] = os.files.at("q.ini");
        }}},
      {"E0307", {Exit::cannot_create, [](BrokenOs& os) { os.files["q.ini"] = request("Trays"); }}},
      {"E0308",
       {Exit::io,
        [](BrokenOs& os) {
          os.files.erase("out/Q-1_rA_2026-01-02.json");
          os.fail("write", 1, ENOSPC);
        }}},
      {"E0309",
       {Exit::software,
        [](BrokenOs& os) {
          os.broken = true;
          os.files.erase("out/.swathspec/known.jsonl");
        }}},
      {"E0310",
       {Exit::data,
        [](BrokenOs& os) { os.files["out/Q-1_rA_2026-01-02.pdf"] += " "; },
        {"index", "out"}}},
      {"E0311",
       {Exit::data,
        [](BrokenOs& os) {
          os.folders.insert("own");
          os.files["own/style.ini"] = "[house]\nnonsense = 1\n";
        },
        {"build", "q.ini", "-o", "out", "--templates", "own"}}},
      {"W0305", {Exit::success, [](BrokenOs&) {}, {"build", "q.ini", "q.ini", "-o", "out"}}},
      {"W0306",
       {Exit::success,
        [](BrokenOs& os) {
          os.files.erase("out/Q-1_rA_2026-01-02.json");
          os.files["out/Q-1_rB_2026-02-01.json"] = "{}";
        }}},
      {"W0303",
       {Exit::success,
        [](BrokenOs& os) {
          os.files["out/Q-1_rA_2026-01-02.pdf"] += " ";
          os.files["q.ini"] = "[request]\nid = Q-2\ntitle = Lids\n";
        }}},
      {"W0301",
       {Exit::success,
        [](BrokenOs& os) {
          os.files.erase("out/Q-1_rA_2026-01-02.json");
          os.files["q.ini"] = request("Lids \xD8\xA7");
        }}},
      {"W0302",
       {Exit::success,
        [](BrokenOs& os) {
          os.files.erase("out/Q-1_rA_2026-01-02.json");
          os.files["q.ini"] = request("Lids\nlanguage = fr");
        }}},
      {"W0304", {Exit::success, [](BrokenOs& os) {
                   os.files["out/Q-1_rA_2026-01-02.json"] = "{}";
                   os.files["q.ini"] = request("Lids") + "revision = B\n";
                 }}}};
  return all;
}

Exit build(BrokenOs& os) {
  const std::string source = os.files.contains("q.xml") ? "q.xml" : "q.ini";
  return output::run_program(os, {"build", source, "-o", "out", "-j", "1"});
}

/// One good request, its catalogue and its issue.
void prepare(BrokenOs& os) {
  output::Os real;
  os.files["catalogue.xml"] = real.read_file(tests::source("sample_requests/catalogue.xml"));
  os.files["q.ini"] = request("Lids");
  REQUIRE(build(os) == Exit::success);
  os.standard_error.clear();
}

TEST_CASE("every code about files and issues is produced, with its exit status") {
  for (const intake::CodeInfo& info : output::finding_codes()) {
    const std::string code(info.code);
    if (!code.starts_with("E03") && !code.starts_with("W03")) continue;
    CAPTURE(code);
    const auto scene = scenes().find(code);
    REQUIRE(scene != scenes().end());
    BrokenOs os;
    prepare(os);
    scene->second.set(os);
    const std::vector<std::string>& command = scene->second.command;
    CHECK((command.empty() ? build(os) : output::run_program(os, command)) == scene->second.exit);
    CAPTURE(os.standard_error);
    CHECK(os.standard_error.find("[" + code + "]") != std::string::npos);
  }
}

}  // namespace
