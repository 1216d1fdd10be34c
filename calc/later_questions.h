/// Questions that only the outcome raises, beyond those of the request and of the search.
#pragma once

#include <string>
#include <vector>

#include "calc/job.h"

namespace calc {

/// What was taken for the throw of heads that state their own nominal one; none where the request
/// states a throw, nothing is chosen or the default itself was taken.
std::optional<Assumption> throw_taken(const Job& job, const Catalogue& catalogue,
                                      const std::vector<Group>& groups);

/// What the safety notes call unknown, and the viscosity of inks where heads could be hotter than
/// it is known for. Needs chosen, inks, rejected and safety.
std::vector<Question> later_questions(const Job& job, const Catalogue& catalogue,
                                      const Specification& spec);

/// Raises the weight of the questions whose answer moves a sum of money, capital, running cost or
/// ownership, further than any other and by more than half of it over its range.
void rank_by_money(const std::vector<Uncertainty>& figures, const std::string& currency,
                   std::vector<Question>& questions);

}  // namespace calc
