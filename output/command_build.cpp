#include <algorithm>
#include <thread>
#include <utility>

#include "output/batch.h"
#include "output/batch_pool.h"
#include "output/batch_printer.h"
#include "output/batch_recall.h"
#include "output/command.h"
#include "output/finding.h"
#include "output/overview.h"

namespace output {
namespace {

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
  Printer printer(os, options, std::nullopt);
  const Exit exit = for_each_job(
      os, paths, [&](SourceText text) { return maker.jobs(read_source(std::move(text))); },
      [&](const BatchJob& job, std::size_t) { printer.print(job.outcome); },
      [&](const Fault& fault) { printer.print_finding(fault.finding); });
  printer.finish();
  return worse(exit, printer.exit());
}

/// The log of a run in the folder of its issues.
std::string log_path(const Archive& archive) {
  return archive.path(archive.part() ? "run." + part_name(*archive.part()) + ".jsonl"
                                     : "run.jsonl");
}

/// A whole run closes with the lists over all issues; a part leaves them to `index`.
void finish(Os& os, Archive& archive, const Templates& templates, Printer& printer) {
  for (const std::string& stem : archive.finish()) {
    printer.print_finding(altered_issue(issue_doubtful, archive.path(stem + ".json")));
  }
  if (!archive.part()) write_overview(os, archive, templates);
  printer.finish();
  archive.save();
}

/// What the pool hands back.
struct Done {
  BatchJob job;
  Outcome outcome;
};

Exit issue_all(Os& os, const Options& options, const Walk& paths, Catalogues& catalogues,
               JobMaker& maker, Archive& archive) {
  const Templates templates;
  const Fonts fonts(read_cjk_face(os));
  const unsigned cores = core_count(options);
  os.limit_pools(cores);
  const Issuer issuer(os, archive, templates, fonts, options.force, cores);
  Recall recall(os, archive, catalogues, maker);
  Printer printer(os, options, log_path(archive));
  // Threads that wait for the disk share its flushes, so there are more of them than cores.
  OrderedPool<Done> pool(3 * cores, std::size_t{6} * cores, [&](const Done& done) {
    recall.note(done.job, done.outcome);
    printer.print(done.outcome);
  });
  std::size_t taken = 0;
  const auto take = [&](BatchJob job, std::size_t sources_left) {
    printer.expect(++taken + sources_left);
    if (job.outcome.status != Status::skipped) {
      Outcome outcome = job.outcome;
      return pool.put({std::move(job), std::move(outcome)});
    }
    pool.submit([&issuer, job = std::move(job)]() mutable {
      Outcome outcome = issuer.issue_one(job);
      return Done{std::move(job), std::move(outcome)};
    });
  };
  const Exit exit = for_each_job(
      os, paths, [&](SourceText text) { return recall.jobs(std::move(text)); }, take,
      [&](const Fault& fault) { printer.print_finding(fault.finding); });
  pool.drain();
  finish(os, archive, templates, printer);
  return worse(exit, printer.exit());
}

}  // namespace

Exit run_build(Os& os, const Options& options, const DatePolicy& dates) {
  const Walk paths = walk(os, options.paths, options.folder);
  Catalogues catalogues(os, options.catalogue);
  JobMaker maker(catalogues, dates, options.part);
  if (paths.sources.empty() || !can_read_catalogue(catalogues, options)) {
    return report_all(os, options, paths, maker);
  }
  try {
    Archive archive(os, options.folder, options.part);
    return issue_all(os, options, paths, catalogues, maker, archive);
  } catch (const ArchiveBusy& busy) {
    os.write_error(program_message(busy.what()));
    return Exit::cannot_create;
  }
}

}  // namespace output
