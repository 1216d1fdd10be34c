/// Whether the job can be done, and on what that rests.
#pragma once

#include <vector>

#include "calc/job.h"
#include "calc/selection.h"

namespace calc {

/// A verdict with every condition: those printed of the chosen arrangement, and each assumption
/// or uncertain input that alone, moved over its range, makes it fail a gate (`assumption_edge`,
/// its field named) or brings a condition that the arrangement does not have as it stands
/// (`assumption_condition`; that one's code, field and arguments are among its own as condition,
/// condition_field, condition_NAME).
struct Decision {
  Verdict verdict = Verdict::incomplete;
  std::vector<Notice> conditions;
  std::vector<Uncertainty> uncertainty;  ///< of every headline figure of what is chosen
};

/// incomplete: something is missing without which nothing can be answered. infeasible: nothing
/// passed. conditional: there is a condition. Else feasible. `selection` is the job's own;
/// `of_station` are assumptions of the chosen station beyond those of job and selection.
Decision decide(const Job& job, const Catalogue& catalogue, const Selection& selection,
                const std::vector<Assumption>& of_station = {});

}  // namespace calc
