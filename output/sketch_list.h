/// The drawings of the document, each to a stated scale unless it says that it is schematic.
#pragma once

#include <string>

#include "output/compose_context.h"

namespace output {

/// The station along the direction of travel, schematic: signal, rows of heads per group, stages.
/// At least one group is chosen.
std::string sketch_station(const Context& context);

/// Every head in plan with its nozzle field, sizes, direction of travel and colour order. At least
/// one place.
std::string sketch_plan(const Context& context);

/// Two neighbouring heads of a group with swath, pitch from head to head and overlap, or an empty
/// string when no group has neighbours.
std::string sketch_joint(const Context& context);

/// The dots of each differing channel on its lattice, at true relative size. At least one channel.
std::string sketch_dots(const Context& context);

/// Budgets of placement as bars against their limits. At least one budget.
std::string sketch_budgets(const Context& context);

/// Section along the motion through a head and the product, or empty where sizes are not known.
std::string sketch_section(const Context& context);

/// A section through the first station of each group whose heads stand round a body, or empty where
/// none do.
std::string sketch_round(const Context& context);

/// Heads, stages and room for service along the line, lengths to scale; empty for a carriage.
std::string sketch_line(const Context& context);

/// The pattern that is printed for acceptance, or empty where nothing is checked on one.
std::string sketch_pattern(const Context& context);

/// What the eye tells apart over distance with the request's point, or empty without a distance.
std::string plot_eye(const Context& context);

/// How fast the chosen heads and the alternatives may run over the resolution along the motion,
/// with what is asked; empty for a carriage or without a line speed.
std::string plot_speed(const Context& context);

/// Capital and cost of ownership of the best station over the line speed, or empty where fewer than
/// two speeds have one.
std::string plot_steps(const Context& context);

/// The parts of the cost of ownership, or empty where there are fewer than two.
std::string plot_costs(const Context& context);

}  // namespace output
