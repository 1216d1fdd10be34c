#include <utility>

#include "output/batch.h"
#include "output/command.h"
#include "output/report_explain.h"

namespace output {
namespace {

/// The calculation of one good request, on standard output.
void explain_one(Os& os, const Options& options, const BatchJob& job, const Templates& templates,
                 const Fonts& fonts) {
  const Environment environment{job.catalogue->read.catalogue, templates, fonts, job.source->name};
  const calc::Specification specification = specify(job.request(), environment, job.date.date);
  intake::Diagnostics findings = warnings_of(specification, job.request(), templates);
  job.show_lines(findings);
  os.write_error(findings_text(findings, options.diagnostics));
  os.write_output(options.json ? figures_of(specification, job.request())
                               : explanation(specification, job.request().request, templates));
}

}  // namespace

Exit run_explain(Os& os, const Options& options, const DatePolicy& dates) {
  const Templates templates;
  const Fonts fonts;
  Catalogues catalogues(os, options.catalogue, options.prices);
  JobMaker maker(catalogues, dates);
  Exit exit = Exit::success;
  const auto take = [&](BatchJob job, std::size_t) {
    job.show_lines(job.outcome.findings);
    os.write_error(findings_text(job.outcome.findings, options.diagnostics));
    exit = worse(exit, job.outcome.exit);
    if (job.outcome.status != Status::failed) explain_one(os, options, job, templates, fonts);
  };
  const auto make = [&](SourceText text) { return maker.jobs(read_source(std::move(text))); };
  const Exit reading =
      for_each_job(os, walk(os, options.paths, ""), make, take, error_report(os, options));
  return worse(exit, reading);
}

}  // namespace output
