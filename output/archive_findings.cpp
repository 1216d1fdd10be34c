#include "output/archive_findings.h"

#include <algorithm>

#include "output/finding.h"

namespace output {
namespace {

bool is_extra(std::string_view name) {
  const auto of = issue_file_of(name);
  return of && std::find(extra_files.begin(), extra_files.end(), of->file) != extra_files.end();
}

}  // namespace

std::vector<intake::Diagnostic> archive_findings(const Archive& archive, const Doubtful& doubtful,
                                                 std::string_view code) {
  std::vector<intake::Diagnostic> findings;
  for (const std::string& stem : doubtful.altered) {
    findings.push_back(
        file_finding(code, archive.path(stem + ".json"),
                     "the files of this issue are not those its figures speak of; it is left out "
                     "of the overview and gets no new line in SHA256SUMS",
                     "swathspec verify names the file; put back the one that went out"));
  }
  for (const std::string& name : doubtful.changed) {
    findings.push_back(file_finding(
        code, archive.path(name),
        "this letter or summary is not the one that went out; its line in SHA256SUMS "
        "stays",
        "put back the one that went out, or take it away and issue the request again"));
  }
  for (const std::string& name : doubtful.lost) {
    if (is_extra(name)) {
      findings.push_back(file_finding(
          code, archive.path(name),
          "this letter or summary that went out is gone; its line in SHA256SUMS stays",
          "put back the one that went out, issue the request again with it, or take the line out "
          "of SHA256SUMS"));
      continue;
    }
    findings.push_back(file_finding(
        code, archive.path(name),
        "this issued file is gone; its issue is left out of the overview, its line in SHA256SUMS "
        "stays",
        "put back the file that went out, issue the request again under the same date, or take "
        "the line out of SHA256SUMS"));
  }
  return findings;
}

}  // namespace output
