/// The trace: the chosen arrangement replayed through the same pure functions, step by step.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// Every step that leads to the figures of the specification, in the order of the calculation.
/// Values come from the functions the search called, so they equal the specification's bit for bit.
/// Without a chosen arrangement only the steps of the requirement.
std::vector<Step> trace(const Job& job, const Catalogue& catalogue, const Specification& spec);

/// Last part of the ids of the light at a distance beyond the first: "stray_1000mm".
std::string stray_name(double metres);

/// Id of the step that has a budget: "g1.joint.motion", "placement.colour.nozzle".
std::string budget_step(const Specification& spec, const Budget& budget);

}  // namespace calc
