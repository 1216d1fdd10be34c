#include "output/batch.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <chrono>
#include <stdexcept>
#include <thread>

#include "output/batch_pool.h"
#include "output/batch_walk.h"
#include "output/command.h"
#include "output/finding.h"
#include "output/report_text.h"
#include "tests/output/support/memory_os.h"

namespace {

using output::Exit;
using support::MemoryOs;

std::vector<std::string> paths(const output::Walk& walk) {
  std::vector<std::string> found;
  for (const output::Source& source : walk.sources) found.push_back(source.path);
  return found;
}

TEST_CASE("a folder is searched in order of path bytes, whatever the extension's case") {
  MemoryOs os;
  os.folders = {"in", "in/a", "in/.git"};
  for (const char* name : {"in/b.xml", "in/a/z.INI", "in/a-1.ini", "in/B.Xml", "in/note.txt",
                           "in/.hidden.xml", "in/.git/x.ini", "in/xml"}) {
    os.files[name] = "";
  }
  CHECK(paths(output::walk(os, {"in"}, "")) ==
        std::vector<std::string>{"in/B.Xml", "in/a-1.ini", "in/a/z.INI", "in/b.xml"});
}

TEST_CASE("the folder of issues is skipped, paths keep their order, none comes twice") {
  MemoryOs os;
  os.folders = {"in", "in/out"};
  for (const char* name : {"in/b.xml", "in/out/c.xml", "z.ini"}) os.files[name] = "";
  CHECK(paths(output::walk(os, {"z.ini", "in", "in/b.xml", "-"}, "in/out")) ==
        std::vector<std::string>{"z.ini", "in/b.xml", "-"});
}

TEST_CASE("a source is named from the folder that led to it, however that was written") {
  MemoryOs os;
  os.folders = {"in", "in/a", "/abs/in"};
  for (const char* name : {"in/b.xml", "in/a/c.ini", "/abs/in/d.ini"}) os.files[name] = "";
  const output::Walk walk = output::walk(os, {"in", "/abs/in", "-"}, "");
  std::vector<std::string> names;
  for (const output::Source& source : walk.sources) names.push_back(source.name);
  CHECK(names == std::vector<std::string>{"a/c.ini", "b.xml", "d.ini", "<stdin>"});
  CHECK(output::walk(os, {"in/a/c.ini"}, "").sources.front().name == "c.ini");
}

TEST_CASE("a missing path is a fault of its own") {
  MemoryOs os;
  os.files["a.ini"] = "";
  const output::Walk walk = output::walk(os, {"none", "a.ini"}, "");
  CHECK(paths(walk) == std::vector<std::string>{"a.ini"});
  REQUIRE(walk.faults.size() == 1);
  CHECK(walk.faults[0].exit == Exit::no_input);
  CHECK(walk.faults[0].finding.code == output::path_missing);
}

TEST_CASE("a folder that cannot be listed does not hide the others") {
  MemoryOs os;
  os.folders = {"in", "in/a"};
  os.files["in/b.ini"] = "";
  os.fail("list", 2, EACCES);
  const output::Walk walk = output::walk(os, {"in"}, "");
  CHECK(paths(walk) == std::vector<std::string>{"in/b.ini"});
  REQUIRE(walk.faults.size() == 1);
  CHECK(walk.faults[0].exit == Exit::io);
}

std::string catalogue_of(MemoryOs& os, const std::string& request,
                         std::optional<std::string> named = std::nullopt) {
  output::Catalogues catalogues(os, std::move(named));
  const auto found = catalogues.find(request);
  return found ? found->path : "";
}

TEST_CASE("the catalogue: named, beside, one folder up, environment") {
  MemoryOs os;
  CHECK(catalogue_of(os, "a/b/q.ini").empty());
  os.variables["SWATHSPEC_CATALOGUE"] = "far.xml";
  os.files["far.xml"] = "<catalogue/>";
  CHECK(catalogue_of(os, "a/b/q.ini") == "far.xml");
  os.files["catalogue.xml"] = "<catalogue/>";
  CHECK(catalogue_of(os, "a/b/q.ini") == "far.xml");
  CHECK(catalogue_of(os, "a/q.ini") == "catalogue.xml");
  CHECK(catalogue_of(os, "q.ini") == "catalogue.xml");
  CHECK(catalogue_of(os, "-") == "catalogue.xml");
  os.files["a/catalogue.xml"] = "<catalogue/>";
  CHECK(catalogue_of(os, "a/b/q.ini") == "a/catalogue.xml");
  os.files["a/b/catalogue.xml"] = "<catalogue/>";
  CHECK(catalogue_of(os, "a/b/q.ini") == "a/b/catalogue.xml");
  CHECK(catalogue_of(os, "a/b/q.ini", "far.xml") == "far.xml");
  os.files["../catalogue.xml"] = "<catalogue/>";
  os.files.erase("catalogue.xml");
  CHECK(catalogue_of(os, "q.ini") == "../catalogue.xml");
}

TEST_CASE("a catalogue is read once") {
  MemoryOs os;
  os.files["catalogue.xml"] = "<catalogue/>";
  output::Catalogues catalogues(os, std::nullopt);
  const auto first = catalogues.find("a.ini");
  CHECK(catalogues.find("b.ini") == first);
  CHECK(std::count(os.calls.begin(), os.calls.end(), "read catalogue.xml") == 1);
}

TEST_CASE("a named catalogue that is not there is an error of the call") {
  MemoryOs os;
  output::Catalogues catalogues(os, "none.xml");
  CHECK_THROWS_AS(catalogues.find("a.ini"), output::OsError);
}

TEST_CASE("a price list is laid over every catalogue and counts as part of it") {
  const std::string list = "part_number,unit_price,currency,price_date\n";
  MemoryOs os;
  os.files["catalogue.xml"] = "<catalogue><part name='F-1'/></catalogue>";
  os.files["p.csv"] = list + "F-1,88,EUR,2026-09-01\n";
  const auto plain = output::Catalogues(os).find("a.ini");
  const auto priced = output::Catalogues(os, std::nullopt, "p.csv").find("a.ini");
  CHECK_FALSE(plain->read.catalogue.parts.front().price.has_value());
  CHECK(priced->read.catalogue.parts.front().price->value.amount.major() == 88);
  CHECK(priced->read.catalogue.source_sha256 != plain->read.catalogue.source_sha256);
  os.files["p.csv"] = list + "F-1,88\n";
  const auto faulty = output::Catalogues(os, std::nullopt, "p.csv").find("a.ini");
  CHECK_FALSE(faulty->read.usable);
  CHECK(faulty->read.findings.back().file == "p.csv");
  CHECK_THROWS_AS(output::Catalogues(os, std::nullopt, "none.csv").find("a.ini"), output::OsError);
}

TEST_CASE("results come in order of submission, whoever is done first") {
  std::vector<int> results;
  output::OrderedPool<int> pool(4, 8, [&](int result) { results.push_back(result); });
  for (int i = 0; i < 50; ++i) {
    pool.submit([i] {
      std::this_thread::sleep_for(std::chrono::microseconds((50 - i) * 20));
      return i;
    });
  }
  pool.drain();
  REQUIRE(results.size() == 50);
  for (int i = 0; i < 50; ++i) CHECK(results[static_cast<std::size_t>(i)] == i);
}

TEST_CASE("no more results wait than the window holds") {
  std::atomic<int> started{0};
  int taken = 0, most = 0;
  output::OrderedPool<int> pool(2, 4, [&](int) { ++taken; });
  for (int i = 0; i < 40; ++i) {
    pool.submit([&started] { return ++started; });
    most = std::max(most, started.load() - taken);
  }
  pool.drain();
  CHECK(taken == 40);
  CHECK(most <= 4);
}

TEST_CASE("what a task throws comes out where its result is taken") {
  output::OrderedPool<int> pool(1, 2, [](int) {});
  pool.submit([]() -> int { throw std::runtime_error("inside"); });
  CHECK_THROWS_WITH(pool.drain(), "inside");
}

TEST_CASE("the worse exit status wins, interruption over all") {
  constexpr std::array<Exit, 7> ascending{Exit::success,       Exit::data, Exit::no_input,
                                          Exit::cannot_create, Exit::io,   Exit::software,
                                          Exit::interrupted};
  for (std::size_t a = 0; a < ascending.size(); ++a) {
    for (std::size_t b = 0; b < ascending.size(); ++b) {
      CHECK(worse(ascending[a], ascending[b]) == ascending[std::max(a, b)]);
    }
  }
}

TEST_CASE("what fails says how the program ends") {
  using output::exit_of, output::OsError;
  CHECK(exit_of(OsError("read", "x", ENOENT)) == Exit::no_input);
  CHECK(exit_of(OsError("read", "x", EACCES)) == Exit::io);
  CHECK(exit_of(OsError("create", "x", EACCES)) == Exit::cannot_create);
  CHECK(exit_of(OsError("make folder", "x", ENOTDIR)) == Exit::cannot_create);
  CHECK(exit_of(OsError("rename", "x", EISDIR)) == Exit::cannot_create);
  CHECK(exit_of(OsError("create", "x", ENOSPC)) == Exit::io);
  CHECK(exit_of(OsError("write", "x", EPIPE)) == Exit::io);
  CHECK(exit_of(OsError("flush", "x", EIO)) == Exit::io);
}

Exit run(MemoryOs& os, std::vector<std::string> arguments) {
  os.standard_output.clear();
  os.standard_error.clear();
  return output::run_program(os, std::move(arguments));
}

TEST_CASE("wrong usage ends with 64 before any work") {
  const std::vector<std::vector<std::string>> wrong{{},
                                                    {"bild"},
                                                    {"build"},
                                                    {"build", "a", "-j", "0"},
                                                    {"build", "a", "-j", "x"},
                                                    {"build", "a", "--date", "2026-02-30"},
                                                    {"build", "a", "--date", "25.11.2026"},
                                                    {"build", "a", "--diagnostics", "loud"},
                                                    {"build", "a", "--nothing"},
                                                    {"explain"},
                                                    {"explain", "a", "b"},
                                                    {"fields", "no.such.field"}};
  for (const auto& arguments : wrong) {
    CAPTURE(arguments.size());
    CAPTURE(arguments.empty() ? "" : arguments.back());
    MemoryOs os;
    CHECK(run(os, arguments) == Exit::usage);
    CHECK(os.standard_error.starts_with("swathspec: "));
    CHECK(os.standard_output.empty());
    CHECK(os.files.empty());
  }
}

TEST_CASE("a bad SOURCE_DATE_EPOCH ends with 64, an empty one is none") {
  MemoryOs os;
  os.variables["SOURCE_DATE_EPOCH"] = "yesterday";
  CHECK(run(os, {"build", "a"}) == Exit::usage);
  CHECK(os.standard_error.find("SOURCE_DATE_EPOCH: yesterday") != std::string::npos);
  os.variables["SOURCE_DATE_EPOCH"] = "";
  CHECK(run(os, {"build", "a"}) == Exit::no_input);
}

TEST_CASE("help and version go to standard output") {
  MemoryOs os;
  CHECK(run(os, {"--help"}) == Exit::success);
  for (const char* word : {"build", "check", "explain", "heads", "fields", "Exit status"}) {
    CAPTURE(word);
    CHECK(os.standard_output.find(word) != std::string::npos);
  }
  CHECK(run(os, {"build", "--help"}) == Exit::success);
  CHECK(os.standard_output.find("--force") != std::string::npos);
  CHECK(run(os, {"--version"}) == Exit::success);
  CHECK(os.standard_output.starts_with("swathspec "));
}

TEST_CASE("missing paths and folders without a request end with 66") {
  MemoryOs os;
  os.folders.insert("empty");
  CHECK(run(os, {"check", "empty"}) == Exit::no_input);
  CHECK(os.standard_error.find("E0302") != std::string::npos);
  CHECK(run(os, {"check", "none"}) == Exit::no_input);
  CHECK(os.standard_error.find("E0301") != std::string::npos);
  CHECK(os.standard_error.find("E0302") == std::string::npos);
  os.files["empty/catalogue.xml"] = "<catalogue date=\"2026-01-01\"/>";
  CHECK(run(os, {"check", "empty"}) == Exit::no_input);
  CHECK(run(os, {"build", "empty", "-o", "out"}) == Exit::no_input);
}

TEST_CASE("a request without a catalogue is told so, 66") {
  MemoryOs os;
  os.files["q.ini"] = "[request]\nid = Q-1\ntitle = Lids\n";
  CHECK(run(os, {"check", "q.ini"}) == Exit::no_input);
  CHECK(os.standard_error.find("E0304") != std::string::npos);
}

TEST_CASE("a reader that closes the pipe makes it 74, silently") {
  MemoryOs os;
  os.fail("print", 1, EPIPE);
  CHECK(run(os, {"fields"}) == Exit::io);
  CHECK(os.standard_error.empty());
  os.fail("print", 1, ENOSPC);
  CHECK(run(os, {"fields"}) == Exit::io);
  CHECK(os.standard_error.find("cannot print") != std::string::npos);
}

TEST_CASE("an interruption beats every other status") {
  MemoryOs os;
  os.interrupt = true;
  CHECK(run(os, {"check", "none"}) == Exit::interrupted);
}

TEST_CASE("every code of a finding is there once, in order") {
  std::string last;
  for (const intake::CodeInfo& code : output::finding_codes()) {
    CAPTURE(code.code);
    CHECK(std::string(code.code) > last);
    CHECK_FALSE(code.meaning.empty());
    last = code.code;
  }
  CHECK_THROWS_AS(output::calculation_warning("no such"), std::logic_error);
}

TEST_CASE("text for terminals cannot steer them") {
  CHECK(output::terminal_safe("a\x1B[31m\tb\x7F") == "a\\x1B[31m\\x09b\\x7F");
  CHECK(output::terminal_safe("\xC2\x9B"
                              "2J \xC3\x9F") == "\\x9B2J \xC3\x9F");
}

TEST_CASE("markup becomes plain text") {
  CHECK(output::without_markup("a <b>bold</b> &lt;x&gt; &amp; &#39;q&#x22; R&D") ==
        "a bold <x> & 'q\" R&D");
}

TEST_CASE("lines are wrapped at blanks") {
  CHECK(output::wrapped("one two three", 2, 9) == "  one two\n  three\n");
  CHECK(output::wrapped("abcdefgh a", 0, 5) == "abcde\nfgh a\n");
  CHECK(output::wrapped("x sum(a,b,c,d)", 2, 9) == "  x\n  sum(a,\n  b,c,d)\n");
  CHECK(output::wrapped("", 2) == "  \n");
}

TEST_CASE("columns align, numbers to the right, no blanks at the end") {
  CHECK(output::columns({{"head", "n", "x"}, {"a", "10", ""}, {"\xC3\x9F", "7", "y"}}, {1}) ==
        "head   n  x\na     10\n\xC3\x9F      7  y\n");
}

}  // namespace
