/// What a run says while it goes: lines, findings, progress, the log, the closing table.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "output/batch_outcome.h"
#include "output/batch_progress.h"
#include "output/batch_tally.h"
#include "output/options.h"
#include "output/os.h"

namespace output {

/// Takes outcomes in input order. A reader that closed standard output, or a log that cannot be
/// written, does not stop the issue of the documents; it shows in the exit status.
class Printer {
 public:
  /// `log` is the path of run.jsonl; throws OsError when it cannot be made.
  Printer(Os& os, const Options& options, const std::optional<std::string>& log);

  void expect(std::size_t total) { progress_.expect(total); }
  /// What is no outcome of a request.
  void print_finding(const intake::Diagnostic& finding);
  void print(const Outcome& outcome);
  /// The closing table, and the log in its place.
  void finish();
  Exit exit() const { return exit_; }

 private:
  void print_error(const std::string& text);
  void print_line(const Outcome& outcome);
  void log(const Outcome& outcome);
  /// Does it, and takes a failure as one of the run.
  template <class Call>
  bool tried(Call call);

  Os& os_;
  const Options& options_;
  Progress progress_;
  Tally tally_;
  std::unique_ptr<WholeFile> log_;  ///< null without one, and once it failed
  bool output_is_terminal_ = false, closed_ = false;
  Exit exit_ = Exit::success;
};

}  // namespace output
