#include "output/archive_findings.h"

#include "output/finding.h"

namespace output {

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
  for (const std::string& name : doubtful.lost) {
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
