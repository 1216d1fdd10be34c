#include "output/archive_shelf.h"

#include "output/names.h"

namespace output {

std::optional<IssueFileName> issue_file_of(std::string_view name) {
  for (const IssueFile file : issue_files) {
    const std::string_view ending = issue_endings.at(file);
    if (!name.ends_with(ending)) continue;
    const std::string_view stem = name.substr(0, name.size() - ending.size());
    if (split_stem(stem)) return IssueFileName{stem, file};
  }
  return std::nullopt;
}

std::string issue_file_name(std::string_view stem, IssueFile file) {
  return std::string(stem).append(issue_endings.at(file));
}

}  // namespace output
