/// The rows of the printed trace: steps that say the same stand together.
#pragma once

#include <string>
#include <vector>

#include "calc/specification.h"

namespace output {

/// A step, and the ids of those that agree with it in all but the id.
struct TraceRow {
  const calc::Step* step = nullptr;
  std::vector<std::string> others;
};

/// The steps in their order, each at the first that agrees with it. Two agree when kind, symbol,
/// formula, inputs, value, unit, source, validity and assumptions are equal; an input that is an
/// earlier step equals one that agrees with that step. The trace must outlive the rows.
std::vector<TraceRow> trace_rows(const std::vector<calc::Step>& trace);

/// The one part by which each of the others differs from the first ("g1.a.data", "g1.b.data": "b"),
/// the same part in all; empty when there is none such.
std::vector<std::string> differing_parts(const std::string& first,
                                         const std::vector<std::string>& others);

}  // namespace output
