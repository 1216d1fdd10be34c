/// What the steps share that go through a working of the station chosen once more.
#pragma once

#include <string>
#include <vector>

#include "calc/figure_steps.h"
#include "calc/trace_writer.h"

namespace calc {

/// Ids of the steps written so far. Precondition: something is chosen. The writer must outlive it.
FigureSteps steps_of(const TraceWriter& writer);
/// A step of another station or value, from the inputs put in place of what the step `of` rests on.
void again(TraceWriter& writer, const std::string& id, const std::string& of,
           std::vector<StepInput> inputs, double value, const std::string& unit,
           const Basis& basis);
/// The id, or where there is a step of that id the first free of ID.2, ID.3 ...
std::string numbered(const TraceWriter& writer, const std::string& id);

}  // namespace calc
