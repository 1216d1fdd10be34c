#include "output/batch_printer.h"

#include <cerrno>

#include "output/batch.h"
#include "output/json_lines.h"

namespace output {

Printer::Printer(Os& os, const Options& options, const std::optional<std::string>& log)
    : os_(os),
      options_(options),
      progress_(os),
      tally_(options.folder),
      log_(log ? std::make_unique<WholeFile>(os, *log) : nullptr),
      output_is_terminal_(os.columns(Stream::output).has_value()) {}

template <class Call>
bool Printer::tried(Call call) {
  try {
    call();
    return true;
  } catch (const OsError& error) {
    exit_ = worse(exit_, exit_of(error));
    if (error.code != EPIPE) print_error(program_message(error.what()));
    return false;
  }
}

void Printer::print_error(const std::string& text) {
  if (text.empty()) return;
  progress_.clear();
  os_.write_error(text);
}

void Printer::print_finding(const intake::Diagnostic& finding) {
  print_error(findings_text({finding}, options_.diagnostics));
}

void Printer::print(const Outcome& outcome) {
  if (outcome.status == Status::skipped) return;
  exit_ = worse(exit_, outcome.exit);
  tally_.count(outcome);
  progress_.count(outcome.exit != Exit::success);
  print_error(findings_text(outcome.findings, options_.diagnostics));
  print_line(outcome);
  log(outcome);
  progress_.show();
}

void Printer::print_line(const Outcome& outcome) {
  if (closed_) return;
  if (output_is_terminal_) progress_.clear();
  closed_ = !tried([&] {
    os_.write_output(options_.json ? outcome_json(outcome) + "\n" : outcome_line(outcome));
  });
}

void Printer::log(const Outcome& outcome) {
  if (log_ && !tried([&] { log_->add(log_json(outcome) + "\n"); })) log_.reset();
}

void Printer::finish() {
  progress_.clear();
  if (log_) tried([&] { log_->commit(); });
  log_.reset();
  const bool worth_it = tally_.total() > 1 && options_.diagnostics == DiagnosticsMode::human;
  if (worth_it) os_.write_error(tally_.table(terminal_style(os_)));
}

}  // namespace output
