#include "output/earlier.h"

#include <doctest/doctest.h>

#include "output/digest.h"
#include "tests/output/support/memory_os.h"

namespace {

using output::EarlierIssues;
using support::MemoryOs;

/// Folders with files whose content is their own name.
void fill(MemoryOs& os, const std::vector<std::string>& names) {
  os.folders = {"out", "old"};
  for (const std::string& name : names) os.files[name] = name;
}

std::string before(const std::vector<std::string>& names, std::string_view revision) {
  MemoryOs os;
  fill(os, names);
  const auto found = EarlierIssues(os, {"old", "out", "gone"}).before("X", revision);
  if (found) CHECK(found->sha256 == output::sha256(found->json));
  return found ? found->json : "";
}

}  // namespace

TEST_CASE("the issue replaced is that of the next lower revision, of its latest date") {
  const std::vector<std::string> names{"out/X_rA_2026-01-01.json", "out/X_rB_2026-02-01.json",
                                       "out/X_rB_2026-03-01.json", "out/X_rC_2026-04-01.json",
                                       "out/X_rAA_2026-05-01.json"};
  CHECK(before(names, "A").empty());
  CHECK(before(names, "").empty());
  CHECK(before(names, "B") == "out/X_rA_2026-01-01.json");
  CHECK(before(names, "C") == "out/X_rB_2026-03-01.json");
  CHECK(before(names, "Z") == "out/X_rC_2026-04-01.json");
  CHECK(before(names, "AB") == "out/X_rAA_2026-05-01.json");
}

TEST_CASE("only data files of the same request count as earlier issues") {
  const std::vector<std::string> names{"out/X-1_rA_2026-01-01.json", "out/X_rA_2026-01-01.pdf",
                                       "out/Y_rA_2026-01-01.json", "out/notes.json",
                                       "out/x_rA_2026-01-01.json"};
  CHECK(before(names, "B").empty());
}

TEST_CASE("both folders are looked through, the first preferred where both have the issue") {
  CHECK(before({"out/X_rA_2026-01-01.json", "old/X_rA_2026-01-01.json"}, "C") ==
        "old/X_rA_2026-01-01.json");
  CHECK(before({"out/X_rB_2026-01-01.json", "old/X_rA_2026-01-01.json"}, "C") ==
        "out/X_rB_2026-01-01.json");
}

TEST_CASE("an issue of a lower revision or an earlier date goes back behind the highest there") {
  MemoryOs os;
  fill(os, {"out/X_rA_2026-01-01.json", "out/X_rB_2026-03-01.json", "out/X_rB_2026-02-01.json",
            "out/Y_rZ_2027-01-01.json", "old/X_rC_2026-04-01.json"});
  const EarlierIssues issues(os, {"old", "out"});
  const auto ahead = [&](const char* revision, const char* date) {
    return issues.ahead("out", "X", revision, date).value_or("");
  };
  CHECK(ahead("A", "2026-05-01") == "X_rB_2026-03-01");  // a lower revision
  CHECK(ahead("", "2026-05-01") == "X_rB_2026-03-01");
  CHECK(ahead("B", "2026-02-15") == "X_rB_2026-03-01");  // an earlier date
  CHECK(ahead("C", "2026-02-15") == "X_rB_2026-03-01");
  CHECK(ahead("B", "2026-03-01").empty());  // the same once more
  CHECK(ahead("C", "2026-03-01").empty());
  CHECK(issues.ahead("out", "Q", "A", "2020-01-01") == std::nullopt);
}
