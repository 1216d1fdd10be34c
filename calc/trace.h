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

/// Id of the step that has an edge: "edge.line.speed.up", "edge.line.speed.up.recommended". Of the
/// second kind only where another station is recommended there.
std::string edge_step(const Edge& edge);

/// Id of the step that has the value of a reason against a head, "left_out.H-1.frequency"; another
/// of the same code goes on with ".2" ... None where the catalogue or the request states it.
std::string left_out_step(const std::string& head, const Reason& reason);

}  // namespace calc
