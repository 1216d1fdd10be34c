/// Earlier issues of the same request, in the folder of issues or another.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "output/issue.h"
#include "output/os.h"

namespace output {

/// What stood in folders when a run began, so that its own issues never count as earlier ones.
class EarlierIssues {
 public:
  /// Reads the names in the folders, the first the one preferred. A folder that is not there holds
  /// none. May throw OsError.
  EarlierIssues(Os& os, const std::vector<std::string>& folders);

  /// The issue of this id under the next lower revision, of its latest date; nullopt when there is
  /// none. May throw OsError. Any number of threads at the same time.
  std::optional<IssuedText> before(std::string_view id, std::string_view revision) const;
  /// The stem in that folder which an issue of this id, revision and date would go back behind: of
  /// a higher revision, else of a later date, the highest of them; nullopt when there is none.
  std::optional<std::string> ahead(std::string_view folder, std::string_view id,
                                   std::string_view revision, std::string_view date) const;

 private:
  struct Place {
    std::string folder, name;
  };
  const Place* find(std::string_view id, std::string_view revision) const;

  Os& os_;
  std::vector<Place> places_;  ///< JSON files under names of ours
};

}  // namespace output
