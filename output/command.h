/// The commands. Each prints what it has to say and returns the exit status; what goes wrong with
/// the output streams themselves is thrown as OsError.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "output/batch.h"
#include "output/batch_walk.h"
#include "output/date.h"
#include "output/options.h"
#include "output/os.h"

namespace output {

/// The whole program: reads the command line, runs its command, reports what was thrown.
Exit run_program(Os& os, std::vector<std::string> arguments);

Exit run_build(Os& os, const Options& options, const DatePolicy& dates);
Exit run_check(Os& os, const Options& options, const DatePolicy& dates);
Exit run_explain(Os& os, const Options& options, const DatePolicy& dates);
Exit run_heads(Os& os, const Options& options);
Exit run_verify(Os& os, const Options& options);
Exit run_index(Os& os, const Options& options);
Exit run_compare(Os& os, const Options& options);
Exit run_fields(Os& os, const Options& options);

/// The face for Han and kana that is installed; empty where none is.
std::string read_cjk_face(Os& os);

/// Called by for_each_job: makes the jobs of a source, and takes each with the number of sources
/// still to come.
using MakeJobs = std::function<SourceJobs(SourceText)>;
using TakeJob = std::function<void(BatchJob, std::size_t sources_left)>;
using Report = std::function<void(const Fault&)>;

/// Hands every job of the paths to `take` in input order, and reports the faults of the paths
/// themselves; stops early when interrupted. Returns the status those faults ask for.
Exit for_each_job(Os& os, const Walk& walk, const MakeJobs& make, const TakeJob& take,
                  const Report& report);
/// Reports on standard error in the form asked for.
Report error_report(Os& os, const Options& options);

}  // namespace output
