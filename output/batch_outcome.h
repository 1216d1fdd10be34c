/// What became of one request.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "calc/specification.h"
#include "intake/diagnostic.h"
#include "output/exit_status.h"

namespace output {

/// `skipped`: the run was interrupted before its turn.
enum class Status { issued, unchanged, refused, failed, checked, skipped };

struct Outcome {
  std::string file;
  int index = 1;  ///< of the request in its file, from 1
  std::string id, revision, date;
  Status status = Status::skipped;
  std::optional<calc::Verdict> verdict;
  std::string stem;  ///< empty as long as there is no id
  intake::Diagnostics findings;
  std::string catalogue, catalogue_sha256;  ///< the file calculated with; empty without one
  double seconds = 0;                       ///< its making took
  Exit exit = Exit::success;
  std::string frames{};  ///< of what was issued, where they are asked for
};

std::string_view status_word(Status status);

/// `status verdict stem`, "-" for a verdict there is not, the file's name for a stem there is not.
std::string outcome_line(const Outcome& outcome);

}  // namespace output
