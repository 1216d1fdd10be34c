/// The distances along the motion that the budgets of placement count with, as steps.
#pragma once

#include <string>

#include "calc/budget.h"
#include "calc/trace_writer.h"

namespace calc {

/// From row to row of heads and from nozzle to nozzle at a joint, group by group, and over all rows
/// of the station. After the steps of the groups.
void trace_apart(TraceWriter& writer);

/// The distance "L" of a term: the step that has it, else a figure of the chosen arrangement.
StepInput apart_input(const TraceWriter& writer, const Budget& budget, const BudgetTerm& term);

/// The step ids of a group start with this ("g1"); "placement" for a budget of the whole station.
std::string budget_prefix(const Specification& spec, const Budget& budget);

}  // namespace calc
