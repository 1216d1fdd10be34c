#include "output/archive.h"

#include <doctest/doctest.h>

#include <cerrno>
#include <string>

#include "output/archive_sums.h"
#include "output/digest.h"
#include "tests/output/support/memory_os.h"

namespace {

using output::Archive;
using output::Issued;
using output::OsError;
using support::MemoryOs;

calc::Specification specification(const std::string& title, const std::string& date) {
  calc::Specification made;
  made.id = "Q-1";
  made.revision = "A";
  made.date = date;
  made.title = title;
  return made;
}

/// An issue whose content differs by its title.
Issued issued(const std::string& title, const std::string& date = "2026-01-02") {
  Issued made;
  made.stem = "Q-1_rA_" + date;
  made.pdf = "pdf of " + title;
  made.bom_csv = "csv of " + title;
  output::JsonFacts facts;
  facts.pdf = output::FileDigest{made.stem + ".pdf", output::sha256(made.pdf)};
  facts.bom_csv = output::FileDigest{made.stem + ".bom.csv", output::sha256(made.bom_csv)};
  made.json = output::write_json(specification(title, date), facts);
  made.facts = output::issued_json(specification(title, date), facts);
  return made;
}

output::Digest content(const std::string& title) {
  return output::read_issued(output::write_json(specification(title, "2030-12-31"), {}))->content;
}

Archive::Found found(Archive& archive, const std::string& stem, const std::string& title) {
  return archive.find(stem, [&] { return content(title); });
}

const std::string stem = "Q-1_rA_2026-01-02";

void check_sums_are_true(const MemoryOs& os) {
  const auto file = os.files.find("out/SHA256SUMS");
  if (file == os.files.end()) return;
  for (const auto& entry : output::read_sums(file->second)) {
    const std::string name = entry.first;  // doctest's lambda cannot capture a structured binding
    const std::string digest = output::hex(entry.second);
    CAPTURE(name);
    REQUIRE(os.files.contains("out/" + name));
    CHECK(output::sha256(os.files.at("out/" + name)) == digest);
  }
}

TEST_CASE("an issue is three files and three sorted lines") {
  MemoryOs os;
  Archive archive(os, "out");
  archive.store(issued("one"));
  archive.finish();
  CHECK(os.files.at("out/" + stem + ".pdf") == "pdf of one");
  CHECK(os.files.at("out/" + stem + ".bom.csv") == "csv of one");
  const auto sums = output::read_sums(os.files.at("out/SHA256SUMS"));
  CHECK(sums.size() == 3);
  std::string lines;
  for (const auto& [name, digest] : sums) lines += output::sum_line(name, digest);
  CHECK(os.files.at("out/SHA256SUMS") == lines);
  check_sums_are_true(os);
}

TEST_CASE("the JSON is renamed into place last") {
  MemoryOs os;
  Archive archive(os, "out");
  os.calls.clear();
  archive.store(issued("one"));
  std::vector<std::string> renames;
  for (const std::string& call : os.calls) {
    if (call.starts_with("rename ")) renames.push_back(call);
  }
  REQUIRE(renames.size() == 3);
  CHECK(renames.back() == "rename out/" + stem + ".json");
}

TEST_CASE("the same specification is found again, on another day too, another one is not") {
  MemoryOs os;
  Archive(os, "out").store(issued("one"));
  Archive archive(os, "out");
  CHECK(found(archive, stem, "one") == Archive::Found::same);
  CHECK(found(archive, stem, "two") == Archive::Found::other);
  CHECK(found(archive, "Q-1_rA_2026-01-03", "one") == Archive::Found::nothing);
  CHECK(archive.latest_date("Q-1", "A") == "2026-01-02");
  CHECK_FALSE(archive.latest_date("Q-1", "B").has_value());
  CHECK_FALSE(archive.latest_date("Q", "A").has_value());
}

TEST_CASE("the latest of several dates counts") {
  MemoryOs os;
  Archive archive(os, "out");
  archive.store(issued("one", "2026-01-02"));
  archive.store(issued("two", "2026-03-04"));
  archive.store(issued("three", "2026-02-03"));
  CHECK(archive.latest_date("Q-1", "A") == "2026-03-04");
}

TEST_CASE("a file that was altered makes the issue another one") {
  MemoryOs os;
  Archive(os, "out").store(issued("one"));
  os.files["out/" + stem + ".pdf"] += " ";
  Archive archive(os, "out");
  CHECK(found(archive, stem, "one") == Archive::Found::other);
}

TEST_CASE("a file that is missing makes the stem free") {
  for (const char* extension : {".pdf", ".bom.csv", ".json"}) {
    CAPTURE(extension);
    MemoryOs os;
    Archive(os, "out").store(issued("one"));
    os.files.erase("out/" + stem + extension);
    Archive archive(os, "out");
    CHECK(found(archive, stem, "one") == Archive::Found::nothing);
  }
}

TEST_CASE("JSON that is none of ours under the stem is never taken for the same") {
  for (const char* text :
       {"", "{", "[]", R"({"verdict":1})", R"({"verdict":"feasible"})", "\xFF"}) {
    CAPTURE(text);
    MemoryOs os;
    Archive(os, "out").store(issued("one"));
    os.files["out/" + stem + ".json"] = text;
    Archive archive(os, "out");
    CHECK(found(archive, stem, "one") == Archive::Found::other);
  }
}

TEST_CASE("the next free revision comes after every issued one of the same id") {
  MemoryOs os;
  os.files["out/Q-1_rC_2026-01-01.json"] = "{}";
  os.files["out/Q-1_rAA_2025-01-01.json"] = "{}";
  os.files["out/Q-10_rZZ_2026-01-01.json"] = "{}";
  os.files["out/Q-1_rZZ.json"] = "{}";
  Archive archive(os, "out");
  CHECK(archive.free_revision("Q-1", "A") == "AB");
  CHECK(archive.free_revision("Q-2", "A") == "B");
  CHECK(archive.free_revision("Q-2", "") == "B");
}

TEST_CASE("an issue noted with a digest of another kind is read anew") {
  MemoryOs os;
  {
    Archive archive(os, "out");
    archive.store(issued("one"));
    archive.finish();
    archive.save();
  }
  std::string& known = os.files.at("out/.swathspec/known.jsonl");
  const std::size_t at = known.find("content_cbor");
  REQUIRE(at != std::string::npos);
  known.replace(at, 12, "content");
  Archive archive(os, "out");
  CHECK(found(archive, stem, "one") == Archive::Found::same);
}

TEST_CASE("superseding keeps the old three under the digest of their JSON") {
  MemoryOs os;
  Archive archive(os, "out");
  const Issued old = issued("one");
  archive.store(old);
  archive.finish();
  archive.supersede(stem);
  archive.store(issued("two"));
  archive.finish();
  const std::string kept = "out/superseded/" + stem + "." + output::sha256(old.json).substr(0, 8);
  CHECK(os.files.at(kept + ".pdf") == old.pdf);
  CHECK(os.files.at(kept + ".bom.csv") == old.bom_csv);
  CHECK(os.files.at(kept + ".json") == old.json);
  CHECK(os.files.at("out/" + stem + ".pdf") == "pdf of two");
  check_sums_are_true(os);
}

TEST_CASE("whole files that no run listed are listed, foreign ones are not") {
  MemoryOs os;
  Archive(os, "out").store(issued("one"));  // no finish: as if killed
  os.files["out/notes.json"] = "{}";
  os.files["out/half_rA_2026-01-01.json"] = "{}";
  Archive archive(os, "out");
  archive.finish();
  CHECK(output::read_sums(os.files.at("out/SHA256SUMS")).size() == 3);
  check_sums_are_true(os);
}

TEST_CASE("lines of files that are gone stay and are told of, broken lines go") {
  MemoryOs os;
  Archive(os, "out").store(issued("one"));
  os.files["out/SHA256SUMS"] = std::string(64, 'a') + "  gone_rA_2026-01-01.pdf\nnonsense\n";
  Archive archive(os, "out");
  CHECK(archive.finish().lost == std::vector<std::string>{"gone_rA_2026-01-01.pdf"});
  CHECK(output::read_sums(os.files.at("out/SHA256SUMS")).size() == 4);
  os.files["out/gone_rA_2026-01-01.pdf"] = "back";
  CHECK(Archive(os, "out").finish().lost.empty());
}

TEST_CASE("an unchanged archive is not written to") {
  MemoryOs os;
  {
    Archive archive(os, "out");
    archive.store(issued("one"));
    archive.finish();
  }
  os.calls.clear();
  Archive archive(os, "out");
  CHECK(found(archive, stem, "one") == Archive::Found::same);
  archive.finish();
  for (const std::string& call : os.calls) CHECK_FALSE(call.starts_with("create"));
}

TEST_CASE("temporary files of a killed run are taken away") {
  MemoryOs os;
  os.files["out/.x_rA_2026-01-01.pdf.part"] = "half";
  os.files["out/.hidden"] = "kept";
  os.folders.insert("out");
  const Archive archive(os, "out");
  CHECK_FALSE(os.files.contains("out/.x_rA_2026-01-01.pdf.part"));
  CHECK(os.files.contains("out/.hidden"));
}

TEST_CASE("two runs do not issue into one folder at the same time") {
  MemoryOs os;
  os.locked_by_another = true;
  CHECK_THROWS_AS(Archive(os, "out"), output::ArchiveBusy);
}

/// One run: issues `title` under the stem, superseding what was there.
void reissue(MemoryOs& os, const std::string& title) {
  Archive archive(os, "out");
  if (found(archive, stem, title) == Archive::Found::other) archive.supersede(stem);
  archive.store(issued(title));
  archive.finish();
}

/// Whether the archive holds the issue whole somewhere: under the stem or superseded.
bool holds(const MemoryOs& os, const Issued& issue) {
  const std::string kept = "out/superseded/" + stem + "." + output::sha256(issue.json).substr(0, 8);
  const auto whole = [&](const std::string& base) {
    const auto is = [&](const char* extension, const std::string& bytes) {
      const auto file = os.files.find(base + extension);
      return file != os.files.end() && file->second == bytes;
    };
    return is(".pdf", issue.pdf) && is(".bom.csv", issue.bom_csv) && is(".json", issue.json);
  };
  return whole("out/" + stem) || whole(kept);
}

TEST_CASE("a run ended at any call loses nothing, lists nothing wrong, and the next one mends it") {
  MemoryOs counted;
  reissue(counted, "one");
  const int first = counted.call_count();
  reissue(counted, "two");
  const int all = counted.call_count();
  REQUIRE(all > first + 20);
  for (int call = 1; call <= all - first; ++call) {
    CAPTURE(call);
    MemoryOs os;
    reissue(os, "one");
    os.end_at(first + call);
    CHECK_THROWS_AS(reissue(os, "two"), OsError);
    check_sums_are_true(os);
    CHECK(holds(os, issued("one")));
    MemoryOs next;
    next.files = os.files;
    next.folders = os.folders;
    reissue(next, "two");
    check_sums_are_true(next);
    CHECK(holds(next, issued("one")));
    CHECK(holds(next, issued("two")));
    CHECK(output::read_sums(next.files.at("out/SHA256SUMS")).size() == 3);
  }
}

TEST_CASE("a fault of one step is reported and leaves no temporary") {
  for (const char* operation : {"create", "write", "flush", "rename"}) {
    for (int nth = 1; nth <= 3; ++nth) {
      CAPTURE(operation);
      CAPTURE(nth);
      MemoryOs os;
      Archive archive(os, "out");
      os.fail(operation, nth, ENOSPC);
      CHECK_THROWS_AS(archive.store(issued("one")), OsError);
      for (const auto& [name, bytes] : os.files) {
        CHECK_FALSE(output::is_temporary(output::name_of(name)));
      }
      CHECK(found(archive, stem, "one") == Archive::Found::nothing);
    }
  }
}

}  // namespace
