/// What differs between an issue and the one before it, in the words of the document.
#pragma once

#include <string>
#include <vector>

#include "output/compose_context.h"
#include "output/issue_record.h"

namespace output {

/// One difference, all as markup; an empty side says that it was not there.
struct Change {
  std::string name, before, after;
};

struct ChangeGroup {
  std::string topic;  ///< requirement, assumption, answer, condition, part, basis
  std::vector<Change> changes;
};

/// Every difference that the document shows, by topic; only topics with one.
std::vector<ChangeGroup> changes_since(const Context& context, const IssueRecord& before,
                                       const IssueRecord& now);

}  // namespace output
