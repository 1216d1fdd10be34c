/// Safety notes chosen by what the request and the arrangement contain. Each is a code with the
/// values it depends on; its words defer to local codes and licensed practice.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// The notes, in the order of safety_codes(). Without groups and station (an infeasible or
/// incomplete request) those that the request alone gives. What is not known is said as a note of
/// its own, never passed over.
std::vector<Notice> safety_notes(const Job& job, const Catalogue& catalogue,
                                 const std::vector<Group>& groups, const Station* station);

}  // namespace calc
