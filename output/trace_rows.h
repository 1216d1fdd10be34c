/// The rows of the printed trace: steps that say the same stand together.
#pragma once

#include <string>
#include <vector>

#include "calc/specification.h"

namespace output {

/// A step, and those that agree with it.
struct TraceRow {
  const calc::Step* step = nullptr;
  std::vector<const calc::Step*> others;
};

/// The steps in their order, each at the first that agrees with it. Two agree when kind, symbol,
/// formula, inputs, value, unit, source, validity and assumptions are equal. An input that is an
/// earlier step equals one that agrees with that step; a key of the request equals another when
/// each names its own step's channel ("colour.cyan.cover_mean" in "station.cyan.printed"). The
/// trace must outlive the rows.
std::vector<TraceRow> trace_rows(const std::vector<calc::Step>& trace);

/// The one part by which each of the others differs from the first ("g1.a.data", "g1.b.data": "b"),
/// the same part in all; empty when there is none such.
std::vector<std::string> differing_parts(const std::string& first,
                                         const std::vector<const calc::Step*>& others);

}  // namespace output
