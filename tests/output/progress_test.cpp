#include <doctest/doctest.h>

#include <string>

#include "output/batch_progress.h"
#include "output/batch_tally.h"
#include "tests/output/support/memory_os.h"

namespace {

using output::Outcome;
using output::Progress;

/// Standard error on a terminal, with a clock that stands until it is set.
class TerminalOs : public support::MemoryOs {
 public:
  unsigned width = 100;
  double seconds = 100;
  TerminalOs() { variables["TERM"] = "any"; }
  std::optional<unsigned> columns(output::Stream stream) override {
    if (stream == output::Stream::error && width != 0) return width;
    return std::nullopt;
  }
  double stopwatch() override { return seconds; }
};

std::string shown_after(TerminalOs& os) {
  Progress progress(os);
  progress.expect(50);
  os.seconds += 2;
  for (int i = 0; i < 10; ++i) progress.count(i < 3);
  progress.show();
  return os.standard_error;
}

TEST_CASE("progress says done, total, rate, time left and faults") {
  TerminalOs os;
  os.variables["NO_COLOR"] = "1";
  CHECK(shown_after(os) == "\r\x1B[K10 of 50 requests, 5 a second, 8 s left, 3 at fault");
}

TEST_CASE("faults are coloured unless NO_COLOR is set to something") {
  TerminalOs os;
  os.variables["NO_COLOR"] = "";
  CHECK(shown_after(os).find("\x1B[1;31m, 3 at fault\x1B[0m") != std::string::npos);
}

TEST_CASE("nothing is shown where a line cannot be written over") {
  TerminalOs dumb, elsewhere, unnamed;
  dumb.variables["TERM"] = "dumb";
  elsewhere.width = 0;
  unnamed.variables.clear();
  CHECK(shown_after(dumb).empty());
  CHECK(shown_after(elsewhere).empty());
  CHECK(shown_after(unnamed).empty());
}

TEST_CASE("a narrow terminal gets a line that fits") {
  TerminalOs os;
  os.width = 20;
  CHECK(shown_after(os) == "\r\x1B[K10 of 50 requests, ");
}

TEST_CASE("it is drawn at most ten times a second and cleared once") {
  TerminalOs os;
  Progress progress(os);
  progress.expect(9);
  progress.show();
  const std::string once = os.standard_error;
  progress.count(false);
  progress.show();
  CHECK(os.standard_error == once);
  os.seconds += 0.2;
  progress.show();
  CHECK(os.standard_error != once);
  os.standard_error.clear();
  progress.clear();
  progress.clear();
  CHECK(os.standard_error == "\r\x1B[K");
}

TEST_CASE("the time left is told in the units people use") {
  TerminalOs os;
  os.variables["NO_COLOR"] = "1";
  Progress progress(os);
  os.seconds += 1;
  progress.count(false);
  progress.expect(151);
  progress.show();
  CHECK(os.standard_error.find(", 2 min 30 s left") != std::string::npos);
  os.seconds += 0.2;
  progress.expect(100001);
  progress.show();
  CHECK(os.standard_error.find(" h ") != std::string::npos);
}

Outcome outcome(output::Status status, std::optional<calc::Verdict> verdict, const char* stem) {
  Outcome made;
  made.file = "in/q.ini";
  made.status = status;
  made.verdict = verdict;
  made.stem = stem;
  return made;
}

TEST_CASE("the closing table counts by answer and says where to look first") {
  using calc::Verdict, output::Status;
  output::Tally tally("out");
  tally.count(outcome(Status::issued, Verdict::feasible, "A_rA_2026-01-01"));
  tally.count(outcome(Status::unchanged, Verdict::feasible, "B_rA_2026-01-01"));
  tally.count(outcome(Status::issued, Verdict::infeasible, "C_rA_2026-01-01"));
  Outcome failed = outcome(Status::failed, std::nullopt, "");
  intake::Diagnostic finding;
  finding.file = "in/q.ini";
  finding.line = 3;
  finding.column = 7;
  finding.severity = intake::Severity::warning;
  finding.code = "W0001";
  failed.findings.push_back(finding);
  finding.severity = intake::Severity::error;
  finding.code = "E0107";
  finding.line = 4;
  failed.findings.push_back(finding);
  tally.count(failed);
  Outcome refused = outcome(Status::refused, Verdict::feasible, "D_rA_2026-01-01");
  tally.count(refused);
  CHECK(tally.total() == 5);
  CHECK(tally.table({}) ==
        "             requests  look first at\n"
        "failed              1  in/q.ini:4:7 E0107\n"
        "refused             1  in/q.ini\n"
        "infeasible          1  out/C_rA_2026-01-01.pdf\n"
        "feasible            2  out/A_rA_2026-01-01.pdf\n"
        "5 requests: 2 issued, 1 unchanged, 2 without a document\n");
}

}  // namespace
