#include <doctest/doctest.h>

#include <array>
#include <set>
#include <string>

#include "files.h"
#include "intake/field.h"
#include "intake/price_list.h"
#include "intake/read.h"

namespace {

enum class Kind { requests, catalogue, prices };

/// A catalogue whose parts have the numbers that the price lists name.
calc::Catalogue priced_parts() {
  std::string text = "<catalogue>";
  for (const char* number : {"P-1", "P-2", "P,3", "P-4", "P-5", "P-6", "P-7"}) {
    text += std::string("<part name='") + number[2] + "'><part_number>" + number +
            "</part_number></part>";
  }
  return intake::read_catalogue("parts.xml", text + "</catalogue>").catalogue;
}

/// Every finding of a file of requests, of a catalogue or of a price list.
intake::Diagnostics findings_of(const std::filesystem::path& path, Kind kind) {
  const std::string name = path.filename().string();
  const std::string text = tests::read_file(path);
  if (kind == Kind::catalogue) return intake::read_catalogue(name, text).findings;
  if (kind == Kind::prices) {
    calc::Catalogue catalogue = priced_parts();
    return intake::apply_prices(name, text, catalogue);
  }
  intake::Diagnostics all;
  for (const intake::ReadRequest& read : intake::read_requests(name, text).requests) {
    all.insert(all.end(), read.findings.begin(), read.findings.end());
  }
  return all;
}

std::string human(const intake::Diagnostics& findings) {
  std::string out;
  for (const intake::Diagnostic& d : findings) out += to_human(d);
  return out;
}

struct Folder {
  const char* path;
  Kind kind;
};
constexpr std::array folders{Folder{"faults", Kind::requests},
                             Folder{"faults/catalogues", Kind::catalogue},
                             Folder{"faults/prices", Kind::prices}};

}  // namespace

TEST_CASE("every faulty file gives exactly the expected text") {
  int compared = 0;
  for (const Folder& folder : folders) {
    for (const auto& path : tests::files_in(folder.path)) {
      if (path.extension() == ".expected") continue;
      CAPTURE(path.filename().string());
      const std::string expected = tests::read_file(path.string() + ".expected");
      CHECK(!expected.empty());
      CHECK(human(findings_of(path, folder.kind)) == expected);
      ++compared;
    }
  }
  CHECK(compared >= 40);
}

TEST_CASE("every code of the list is produced by a faulty file, and no other") {
  std::set<std::string> seen;
  for (const Folder& folder : folders) {
    for (const auto& path : tests::files_in(folder.path)) {
      if (path.extension() == ".expected") continue;
      for (const auto& d : findings_of(path, folder.kind)) seen.insert(d.code);
    }
  }
  std::set<std::string> listed;
  for (const intake::CodeInfo& info : intake::diagnostic_codes()) {
    CAPTURE(info.code);
    CHECK(listed.insert(std::string(info.code)).second);
    CHECK(!info.meaning.empty());
    CHECK(seen.count(std::string(info.code)) == 1);
  }
  for (const std::string& code : seen) {
    CAPTURE(code);
    CHECK(listed.count(code) == 1);
  }
}

TEST_CASE("every finding has a place in its file, a fix and one line of message") {
  for (const Folder& folder : folders) {
    for (const auto& path : tests::files_in(folder.path)) {
      if (path.extension() == ".expected") continue;
      const auto findings = findings_of(path, folder.kind);
      for (const auto& d : findings) {
        CAPTURE(to_human(d));
        CHECK(d.line >= 1);
        CHECK(d.column >= 1);
        CHECK(!d.hint.empty());
        CHECK(d.message.find('\n') == std::string::npos);
        CHECK((d.code.front() == 'W') == (d.severity == intake::Severity::warning));
      }
    }
  }
}

TEST_CASE("a faulty request among good ones spoils only itself") {
  const std::string path = tests::source("tests/faults/many.xml");
  const auto file = intake::read_requests("many.xml", tests::read_file(path));
  std::string usable;
  for (const auto& read : file.requests) {
    usable += read.request.request.id ? read.request.request.id->value : "-";
    usable += read.usable ? "+ " : "! ";
  }
  CHECK(usable == "-! M-1+ M-2! -! M-3+ ");
}
