/// The trace as the JSON records it, read back: what a reader of the file has to go by.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "calc/specification.h"

namespace whole {

struct RecordedInput {
  std::string symbol, unit, origin, ref;
  double value = 0;
};
struct RecordedStep {
  std::string id, kind, symbol, formula, unit, source, tag, validity;
  std::vector<RecordedInput> inputs;
  double value = 0;

  /// Values by symbol. Throws std::logic_error for a symbol that stands twice.
  std::map<std::string, double> values() const;
};

/// Every step of a specification's JSON. Throws where a key is missing or of another type.
std::vector<RecordedStep> recorded_trace(const calc::Specification& specification);

}  // namespace whole
