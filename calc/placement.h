/// Where the dots of a station land: the budgets of errors of place and their gate.
#pragma once

#include <vector>

#include "calc/gates.h"

namespace calc {

/// How an assumed tolerance is taken: as is likely, or at the kind end of its range. A value moved
/// off its default is exact, and what the request or the catalogue gives is never touched.
/// `kind_but_throw`: at the kind end, with a throw that is not set anew for every product.
enum class Assumed { likely, kind, kind_but_throw };

inline constexpr double steel_expansion = 11.5e-6;  ///< of the frame [1/K]

/// How far two lines that should meet at a joint may lie apart [m]: half a pitch > 0, and no more
/// than eyes see of a step at the viewing distance where that is given.
Length joint_limit(const Job& job, Length pitch);

/// How far colours may lie apart [m]: as asked, else the least pitch of a group, by its coarser
/// axis. groups not empty.
Length registration_limit(const Job& job, const std::vector<Group>& groups);

/// The budgets of a station's groups, motion axis before nozzle axis, group by group:
/// dot - dots of one head against the lattice, limit half a pitch;
/// joint - heads that print one colour, limit half a pitch, and 10 arc seconds at the viewing
/// distance where that is given;
/// colour - the rows of first and last colour, limit the registration asked for or one pitch;
/// image - against the product, only where image.placement asks for it.
/// None for groups whose drops have no speed or stop short. Conventions: method of GUM; errors that
/// all dots of a budget share (one gap, one weave) are left out of it.
std::vector<Budget> placement_budgets(const Job& job, const std::vector<Group>& groups,
                                      Assumed assumed);

/// Gates dot, joint and colour: fails `placement` where a budget fails even at the kind end of
/// every assumption, one finding for both axes, and asks for proof (condition `placement`, one for
/// each budget and axis) where only the likely values fail or the image's own budget does. Asks for
/// a throw that is set to every product (condition `throw_anew`) where a budget of a carriage holds
/// only so. Fails `throw` where a drop stops short of the surface.
void placement_gate(const Job& job, const std::vector<Group>& groups,
                    std::vector<Finding>& failures, std::vector<Finding>* conditions);

}  // namespace calc
