/// The trace: the chosen arrangement replayed through the same pure functions, step by step.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// Every step that leads to the figures of the specification, in the order of the calculation.
/// Values come from the functions the search called, so they equal the specification's bit for bit.
/// Without a chosen arrangement only the steps of the requirement.
std::vector<Step> trace(const Job& job, const Catalogue& catalogue, const Specification& spec);

}  // namespace calc
