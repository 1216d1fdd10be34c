/// What is wrong with the issues of a folder, as findings.
#pragma once

#include <string_view>
#include <vector>

#include "intake/diagnostic.h"
#include "output/archive.h"

namespace output {

/// One finding an issue that was altered, one a file that is gone: as errors (issue_altered) where
/// the folder is the matter, as warnings (issue_doubtful) beside the issue of others.
std::vector<intake::Diagnostic> archive_findings(const Archive& archive, const Doubtful& doubtful,
                                                 std::string_view code);

}  // namespace output
