/// The inputs a specification was made from, each with its origin.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// Given, derived and assumed values of the request, in that order.
std::vector<Input> request_inputs(const Job& job, const std::vector<Assumption>& assumptions);

/// Every catalogue value that appears in the specification: rows of the chosen arrangement, of the
/// alternatives, of their bills and of the stations at other speeds whole; of rejected heads the
/// fields behind their reasons. Each once, in the order of the catalogue. Their sorted
/// `row.field=value` lines make used_sha256.
std::vector<Input> catalogue_inputs(const Catalogue& catalogue, const Specification& spec);

/// Defaults that the sizing of a station used, beyond those of the job.
std::vector<Assumption> station_assumptions(const Job& job, const Catalogue& catalogue,
                                            const std::vector<Group>& groups,
                                            const Station& station);

/// Gives warnings without a place that of their field, or of the section it is missing from.
void place(const Request& request, std::vector<Notice>& warnings);

}  // namespace calc
