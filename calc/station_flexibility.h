/// What else the chosen station could do, and what it costs to keep it going.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// One entry a group, computed from the arrangement and the rows of the catalogue.
std::vector<Flexibility> flexibility(const Job& job, const Catalogue& catalogue,
                                     const std::vector<Group>& groups);

/// Whether only one maker of the catalogue offers what the line has: of heads and boards.
bool has_single_source(const Catalogue& catalogue, const BomLine& line);

/// Share of the priced capital [1] in parts that only one maker of the catalogue offers: heads
/// whose body and swath no other maker's row has, and boards, of which a head names one. None
/// without a priced line.
std::optional<double> single_source_share(const Catalogue& catalogue, const Station& station);

/// Part numbers of such heads and boards that have no price, each once, in the order of the bill.
std::vector<std::string> single_source_unpriced(const Catalogue& catalogue, const Station& station);

}  // namespace calc
