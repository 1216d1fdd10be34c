#include <algorithm>
#include <cerrno>
#include <thread>
#include <utility>

#include "output/batch.h"
#include "output/batch_pool.h"
#include "output/command.h"
#include "output/json_lines.h"

namespace output {
namespace {

/// Prints outcomes in input order. A reader that closed standard output does not stop the issue of
/// the documents; it shows in the exit status.
class Printer {
 public:
  Printer(Os& os, const Options& options) : os_(os), options_(options) {}

  void print(const Outcome& outcome) {
    if (outcome.status == Status::skipped) return;
    exit_ = worse(exit_, outcome.exit);
    if (!outcome.findings.empty()) {
      os_.write_error(findings_text(outcome.findings, options_.diagnostics));
    }
    if (closed_) return;
    try {
      os_.write_output(options_.json ? outcome_json(outcome) + "\n" : outcome_line(outcome));
    } catch (const OsError& error) {
      closed_ = true;
      exit_ = worse(exit_, Exit::io);
      if (error.code != EPIPE) os_.write_error(program_message(error.what()));
    }
  }
  Exit exit() const { return exit_; }

 private:
  Os& os_;
  const Options& options_;
  bool closed_ = false;
  Exit exit_ = Exit::success;
};

unsigned core_count(const Options& options) {
  constexpr unsigned most = 256;
  if (options.jobs != 0) return options.jobs;
  return std::clamp(std::thread::hardware_concurrency(), 1U, most);
}

/// Whether the catalogue that is to serve every request can be read: without it nothing is issued.
bool can_read_catalogue(Catalogues& catalogues, const Options& options) {
  if (!options.catalogue) return true;
  try {
    return catalogues.find("-") != nullptr;
  } catch (const OsError&) {
    return false;  // each request says so
  }
}

/// Every request with what is wrong; nothing is written.
Exit report_all(Os& os, const Options& options, const Walk& paths, JobMaker& maker) {
  Printer printer(os, options);
  const Exit exit = for_each_job(os, options, paths, maker,
                                 [&](const BatchJob& job) { printer.print(job.outcome); });
  return worse(exit, printer.exit());
}

Exit issue_all(Os& os, const Options& options, const Walk& paths, JobMaker& maker,
               Archive& archive) {
  const Templates templates;
  const Fonts fonts(read_cjk_face(os));
  const unsigned cores = core_count(options);
  const Issuer issuer(os, archive, templates, fonts, options.force, cores);
  Printer printer(os, options);
  // Threads that wait for the disk share its flushes, so there are more of them than cores.
  OrderedPool<Outcome> pool(3 * cores, std::size_t{6} * cores,
                            [&](const Outcome& outcome) { printer.print(outcome); });
  const Exit exit = for_each_job(os, options, paths, maker, [&](BatchJob job) {
    pool.submit([&issuer, job = std::move(job)] { return issuer.issue_one(job); });
  });
  pool.drain();
  archive.finish();
  return worse(exit, printer.exit());
}

}  // namespace

Exit run_build(Os& os, const Options& options, const DatePolicy& dates) {
  const Walk paths = walk(os, options.paths, options.folder);
  Catalogues catalogues(os, options.catalogue);
  JobMaker maker(catalogues, dates);
  if (paths.sources.empty() || !can_read_catalogue(catalogues, options)) {
    return report_all(os, options, paths, maker);
  }
  try {
    Archive archive(os, options.folder);
    return issue_all(os, options, paths, maker, archive);
  } catch (const ArchiveBusy& busy) {
    os.write_error(program_message(busy.what()));
    return Exit::cannot_create;
  }
}

}  // namespace output
