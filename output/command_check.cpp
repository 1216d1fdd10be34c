#include <utility>

#include "output/batch.h"
#include "output/command.h"
#include "output/issue.h"
#include "output/json_lines.h"

namespace output {
namespace {

struct Counts {
  int requests = 0, faulty = 0, errors = 0, warnings = 0;

  void add(const Outcome& outcome) {
    ++requests;
    faulty += outcome.status == Status::failed ? 1 : 0;
    for (const intake::Diagnostic& finding : outcome.findings) {
      ++(finding.severity == intake::Severity::error ? errors : warnings);
    }
  }
};

std::string counted(int count, const std::string& thing) {
  return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string summary(const Counts& counts) {
  return counted(counts.requests, "request") + ": " +
         std::to_string(counts.requests - counts.faulty) + " good, " +
         std::to_string(counts.faulty) + " at fault; " + counted(counts.errors, "error") + ", " +
         counted(counts.warnings, "warning") + "\n";
}

/// The verdict that an issue of a good request would have, and what it would warn of.
void judge(BatchJob& job, const Templates& templates, const Fonts& fonts) {
  const Environment environment{job.catalogue->read.catalogue, templates, fonts, job.source->name};
  const calc::Specification specification = specify(job.request(), environment, job.date.date);
  job.outcome.verdict = specification.verdict;
  for (intake::Diagnostic& finding : findings_of(specification, job.request(), environment)) {
    job.outcome.findings.push_back(std::move(finding));
  }
}

}  // namespace

Exit run_check(Os& os, const Options& options, const DatePolicy& dates) {
  const Templates templates;
  const Fonts fonts(read_cjk_face(os));
  Catalogues catalogues(os, options.catalogue, options.prices);
  JobMaker maker(catalogues, dates);
  Counts counts;
  Exit exit = Exit::success;
  const auto take = [&](BatchJob job, std::size_t) {
    Outcome& outcome = job.outcome;
    if (outcome.status != Status::failed) {
      judge(job, templates, fonts);
      outcome.status = Status::checked;
    }
    job.show_lines(outcome.findings);
    counts.add(outcome);
    exit = worse(exit, outcome.exit);
    os.write_error(findings_text(outcome.findings, options.diagnostics));
    os.write_output(options.json ? outcome_json(outcome) + "\n" : outcome_line(outcome));
  };
  const auto make = [&](SourceText text) { return maker.jobs(read_source(std::move(text))); };
  const Exit reading =
      for_each_job(os, walk(os, options.paths, ""), make, take, error_report(os, options));
  if (!options.json) os.write_output(summary(counts));
  return worse(exit, reading);
}

}  // namespace output
