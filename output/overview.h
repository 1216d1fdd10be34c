/// The pages over all issues of a folder: overview.html for people, overview.csv for programs.
#pragma once

#include "output/archive.h"
#include "output/templates.h"

namespace output {

/// Writes both pages from the archive's rows, unless they stand there already as they would be. A
/// function of the issues and the templates alone. Call after Archive::finish.
void write_overview(Os& os, Archive& archive, const Templates& templates);

}  // namespace output
