/// What changed from one issue to another.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace output {

struct Change {
  std::string area;  ///< request, inputs, choice, parts, cost, other
  std::string name;
  std::string before, after;            ///< for people, "-" for what is not there
  std::string before_json, after_json;  ///< the same as JSON
};

struct IssueName {
  std::string id, revision, date;
};

/// Empty `changes`: the same specification, whatever its date and where its inputs stood.
struct Comparison {
  IssueName before, after;
  std::vector<Change> changes;
};

/// nullopt when one of the texts is no JSON of ours, and which.
struct Compared {
  std::optional<Comparison> comparison;
  bool second_at_fault = false;
};
Compared compare_issues(std::string_view before, std::string_view after);

/// For people: a table, or one line that says there is no difference.
std::string comparison_text(const Comparison& comparison);
/// {same,old{id,revision,date},new{...},changes[]{area,name,old,new}} on one line.
std::string comparison_json(const Comparison& comparison);

}  // namespace output
