/// What the document shows beside the specification: the request's own text, earlier issues.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "output/issue_record.h"

namespace output {

/// The issue that this one replaces, and this one in the same form.
struct Replaced {
  IssueRecord before, now;
  EarlierIssue issue;  ///< the one before, with the digest of its JSON
};

struct Matter {
  std::string source;   ///< the request's own text; empty: the document has no record of it
  int source_line = 1;  ///< of its file, at which that text begins
  std::string source_sha256;
  std::optional<Replaced> replaced;

  /// Issues before this one, oldest first.
  std::vector<EarlierIssue> revisions() const {
    if (!replaced) return {};
    std::vector<EarlierIssue> all = replaced->before.revisions;
    all.push_back(replaced->issue);
    return all;
  }
};

}  // namespace output
