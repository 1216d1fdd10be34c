/// One line of the overview: an issued specification at a glance.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace output {

struct OpenQuestion {
  std::string code, field;
};

/// Money in major units; what is not known or does not apply is absent.
struct OverviewRow {
  std::string stem;
  std::string id, revision, date, title, customer, verdict;
  std::vector<std::string> heads;  ///< each once, in order of the groups
  std::optional<int> heads_total;
  std::optional<double> capital, ownership;
  std::string currency;
  std::optional<int> unpriced;
  std::optional<double> lead_time_days;
  std::vector<OpenQuestion> questions;
};

/// A question of one kind, asked of one field or of several.
struct QuestionKind {
  std::string code;
  std::vector<std::string> fields;
};

/// Each kind once, in the order first asked, as the document counts them.
std::vector<QuestionKind> kinds_of(const std::vector<OpenQuestion>& questions);

/// The row of a text that json_overview made, its stem left out. Throws std::exception for any
/// other text.
OverviewRow overview_row(std::string_view text);

}  // namespace output
