#include "output/batch_outcome.h"

#include "output/json_words.h"
#include "output/report_text.h"

namespace output {

std::string_view status_word(Status status) {
  switch (status) {
    case Status::issued:
      return "issued";
    case Status::unchanged:
      return "unchanged";
    case Status::refused:
      return "refused";
    case Status::failed:
      return "failed";
    case Status::checked:
      return "checked";
    case Status::skipped:
      return "skipped";
  }
  return "failed";
}

std::string outcome_line(const Outcome& outcome) {
  std::string line(status_word(outcome.status));
  line.append(" ").append(outcome.verdict ? json_word(*outcome.verdict) : "-").append(" ");
  return line + (outcome.stem.empty() ? terminal_safe(outcome.file) : outcome.stem) + "\n";
}

}  // namespace output
