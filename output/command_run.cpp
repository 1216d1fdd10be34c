#include <cerrno>
#include <exception>
#include <utility>

#include "output/batch.h"
#include "output/command.h"

namespace output {
namespace {

/// A fault of the environment, which is as much a matter of usage as one of the command line.
ParsedOptions bad_epoch(const std::string& text) {
  return {
      std::nullopt, Exit::usage, "",
      program_message("SOURCE_DATE_EPOCH: " + text + " is no count of seconds since 1970-01-01")};
}

/// A file named beside the requests that is not there: without it nothing can be worked on.
std::optional<Fault> missing_file(Os& os, const Options& options) {
  const auto gone = [&](const std::optional<std::string>& path) {
    return path && !os.look(*path).has_value();
  };
  const auto fault = [](const std::string& path, const char* hint) {
    return Fault{file_finding(path_missing, path, "there is no such file", hint), Exit::no_input};
  };
  if (gone(options.catalogue)) {
    return fault(*options.catalogue,
                 "name a catalogue with -c, or leave -c out to have "
                 "catalogue.xml beside the request taken");
  }
  if (gone(options.prices)) {
    return fault(*options.prices,
                 "name a price list with --prices, or leave it out to have the "
                 "catalogue's prices stand");
  }
  return std::nullopt;
}

Exit run_command(Os& os, const Options& options) {
  DatePolicy dates{options.date, std::nullopt, date_of(os.now()).value_or("9999-12-31")};
  const std::string epoch = os.environment("SOURCE_DATE_EPOCH").value_or("");
  if (!epoch.empty()) {
    dates.epoch = date_of_epoch(epoch);
    if (!dates.epoch) {
      os.write_error(bad_epoch(epoch).error);
      return Exit::usage;
    }
  }
  if (const auto missing = missing_file(os, options)) {
    error_report(os, options)(*missing);
    return missing->exit;
  }
  switch (options.command) {
    case Command::build:
      return run_build(os, options, dates);
    case Command::check:
      return run_check(os, options, dates);
    case Command::explain:
      return run_explain(os, options, dates);
    case Command::heads:
      return run_heads(os, options);
    case Command::verify:
      return run_verify(os, options);
    case Command::index:
      return run_index(os, options);
    case Command::compare:
      return run_compare(os, options);
    case Command::fields:
      return run_fields(os, options);
  }
  return Exit::usage;
}

Exit run_guarded(Os& os, std::vector<std::string> arguments) {
  const ParsedOptions parsed = parse_options(std::move(arguments));
  if (parsed.options) return run_command(os, *parsed.options);
  os.write_output(parsed.output);
  os.write_error(parsed.error);
  return parsed.exit;
}

/// Tells of a fault where that is still possible: standard error itself may be what failed.
void tell(Os& os, const std::string& message) {
  try {
    os.write_error(program_message(message));
  } catch (const OsError&) {
    return;  // nobody is left to tell; the exit status says it
  }
}

}  // namespace

Exit run_program(Os& os, std::vector<std::string> arguments) {
  Exit exit = Exit::success;
  try {
    exit = run_guarded(os, std::move(arguments));
  } catch (const OsError& error) {
    if (error.code != EPIPE) tell(os, error.what());
    exit = exit_of(error);
  } catch (const std::exception& error) {
    tell(os, std::string("a fault of the program: ") + error.what());
    exit = Exit::software;
  }
  return os.interrupted() ? Exit::interrupted : exit;
}

Report error_report(Os& os, const Options& options) {
  return [&os, mode = options.diagnostics](const Fault& fault) {
    os.write_error(findings_text({fault.finding}, mode));
  };
}

namespace {

/// Which paths of the command line hold a request, or are spoken of already.
class Roots {
 public:
  explicit Roots(const Walk& walk)
      : walk_(walk), settled_(walk.roots.size()), catalogue_(walk.roots.size()) {}

  void take(const Source& source, const SourceJobs& made) {
    if (made.has_requests) settle(source.root);
    const bool named = source.path == walk_.roots[source.root];
    if (made.is_catalogue && named) catalogue_[source.root] = true;
  }
  void settle(std::size_t root) { settled_[root] = true; }

  /// The faults of those without a request that no fault was told of.
  std::vector<Fault> requestless_ones() {
    for (const Fault& fault : walk_.faults) settle_told(fault);
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < settled_.size(); ++i) {
      if (!settled_[i]) faults.push_back(requestless(walk_.roots[i], catalogue_[i]));
    }
    return faults;
  }

 private:
  /// Of a path named twice only the later.
  void settle_told(const Fault& fault) {
    for (std::size_t i = settled_.size(); i-- > 0;) {
      if (walk_.roots[i] != fault.finding.file || settled_[i]) continue;
      settle(i);
      if (fault.exit == Exit::success) return;
    }
  }

  const Walk& walk_;
  std::vector<bool> settled_, catalogue_;
};

}  // namespace

Exit for_each_job(Os& os, const Walk& walk, const MakeJobs& make, const TakeJob& take,
                  const Report& report) {
  Exit exit = Exit::success;
  const auto tell_fault = [&](const Fault& fault) {
    report(fault);
    exit = worse(exit, fault.exit);
  };
  for (const Fault& fault : walk.faults) tell_fault(fault);
  Roots roots(walk);
  std::size_t left = walk.sources.size();
  for (const Source& source : walk.sources) {
    if (os.interrupted()) return exit;
    --left;
    try {
      SourceJobs made = make(load_source(os, source));
      roots.take(source, made);
      for (BatchJob& job : made.jobs) take(std::move(job), left);
    } catch (const OsError& error) {
      if (error.path != source.path && error.path != "<stdin>") throw;
      roots.settle(source.root);
      tell_fault(unread(source, error));
    }
  }
  for (const Fault& fault : roots.requestless_ones()) tell_fault(fault);
  return exit;
}

}  // namespace output
