/// Requests that lead the trace where no sample goes.
#pragma once

#include <string>
#include <vector>

namespace whole {

/// What is changed of the plain case, a step it then takes, and what the step's formula says.
struct TracePath {
  std::string changes, step, told;
};

std::vector<TracePath> trace_paths();

}  // namespace whole
