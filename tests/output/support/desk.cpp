#include "tests/output/support/desk.h"

#include <doctest/doctest.h>

#include "output/archive_sums.h"
#include "output/json.h"
#include "output/names.h"
#include "tests/source.h"

namespace support {

Desk::Desk() {
  output::Os real;
  static const std::string catalogue =
      real.read_file(tests::source("sample_requests/catalogue.xml"));
  files["catalogue.xml"] = catalogue;
  files["/proc/self/exe"] = "program";
  folders.insert("in");
}

void Desk::request(const std::string& file, const std::string& id, const std::string& more) {
  files["in/" + file] = "[request]\nid = " + id + "\ntitle = Lids\n" + more;
}

output::Exit Desk::run(std::vector<std::string> arguments) {
  standard_output.clear();
  standard_error.clear();
  return output::run_program(*this, std::move(arguments));
}

output::Exit Desk::build(const std::vector<std::string>& more) {
  std::vector<std::string> arguments{"build", "in", "-o", "out", "-j", "1", "--date", date};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return run(arguments);
}

std::map<std::string, std::string> Desk::issued() const {
  std::map<std::string, std::string> found;
  for (const auto& [name, bytes] : files) {
    const bool is_log = name.starts_with("out/run.");
    if (name.starts_with("out/") && !name.starts_with("out/.") && !is_log) found[name] = bytes;
  }
  return found;
}

void check_archive(const MemoryOs& os, bool all_listed) {
  const auto sums_file = os.files.find("out/SHA256SUMS");
  const output::Sums sums =
      sums_file == os.files.end() ? output::Sums() : output::read_sums(sums_file->second);
  for (const auto& line : sums) {
    const std::string name = line.first;
    CAPTURE(name);
    REQUIRE(os.files.contains("out/" + name));
    CHECK(output::digest_of(os.files.at("out/" + name)) == line.second);
  }
  for (const auto& file : os.files) {
    const std::string name = file.first;
    const bool is_issue = output::folder_of(name) == "out" && name.ends_with(".json");
    if (!is_issue) continue;
    CAPTURE(name);
    const auto issued = output::issued_files(file.second);
    REQUIRE(issued.has_value());
    for (const output::FileDigest& said : {issued->pdf, issued->bom_csv}) {
      REQUIRE(os.files.contains("out/" + said.name));
      CHECK(output::sha256(os.files.at("out/" + said.name)) == said.sha256);
      if (all_listed) CHECK(sums.contains(said.name));
    }
    if (all_listed) CHECK(sums.contains(name.substr(4)));
  }
}

}  // namespace support
