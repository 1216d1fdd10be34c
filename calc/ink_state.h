/// The inks in the heads that jet them: temperature, viscosity, numbers of the jet, particles.
#pragma once

#include <string>
#include <vector>

#include "calc/job.h"
#include "calc/viscosity.h"

namespace calc {

/// What a head asks of viscosity, from its row of the catalogue.
ViscosityNeed viscosity_need(const Head& head);

/// The ink of every channel of the groups, in order. Numbers whose inputs are not known are absent;
/// a density not given is the assumed one and says so.
std::vector<InkInHead> inks_in_heads(const Job& job, const Catalogue& catalogue,
                                     const std::vector<Group>& groups);

/// What is to be warned of: few windows hold Z, drops too slow to leave, splash, an ink said not to
/// settle that does by its figures.
std::vector<Notice> ink_warnings(const Job& job, const std::vector<InkInHead>& inks);

/// Of the published windows so many must hold Z, else it is warned of. Common practice, no source.
inline constexpr int least_windows = 2;

/// Whether two inks agree in every figure, so that they can stand as one.
bool same_figures(const InkInHead& a, const InkInHead& b);

}  // namespace calc
