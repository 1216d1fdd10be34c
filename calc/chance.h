/// What the questions of a request that nothing meets could change about that.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// Puts those questions first whose answer alone, at an end of the range of what is taken
/// meanwhile, lets some arrangement pass (`lets_pass`); the others stay in their order. Only for a
/// job that is complete and that nothing passes.
void rank_by_chance(const Job& job, const Catalogue& catalogue, std::vector<Question>& questions);

}  // namespace calc
