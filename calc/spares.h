/// Spares for the lead time.
#pragma once

#include "calc/quantity.h"

namespace calc {

inline constexpr double default_spares_confidence = 0.95;

/// Expected failures in a lead time [1]: installed lead x (running/8760 h) / life. life > 0.
double failures_in_lead_time(int installed, Time lead, Time running_per_year, Time life);

/// Chance [1] that a Poisson count of mean `mean` is at most k: exp(-m) sum m^i/i!. mean >= 0.
double poisson_at_most(int k, double mean);

/// Least s with P(count <= s) >= confidence [1], at least 1; plus one where a crash may kill a
/// head. 0 <= mean <= 700 (the sum's first term must not vanish), 0 < confidence < 1.
int spares(double mean, bool crash_spare, double confidence = default_spares_confidence);

}  // namespace calc
