#include "calc/spares.h"

#include <cmath>

#include "calc/consumption.h"

namespace calc {

double failures_in_lead_time(int installed, Time lead, Time running_per_year, Time life) {
  return installed * (lead / life) * (running_per_year / calendar_year);
}

double poisson_at_most(int k, double mean) {
  double term = std::exp(-mean);
  double sum = term;
  for (int i = 1; i <= k; ++i) {
    term *= mean / i;
    sum += term;
  }
  return sum;
}

int spares(double mean, bool crash_spare, double confidence) {
  double term = std::exp(-mean);
  double sum = term;
  int count = 0;
  // Past twenty standard deviations the sum is 1 to the last bit; rounding must not loop on.
  const double most = mean + 20 * std::sqrt(mean) + 20;
  while (sum < confidence && count < most) {
    ++count;
    term *= mean / count;
    sum += term;
  }
  return (count > 1 ? count : 1) + (crash_spare ? 1 : 0);
}

}  // namespace calc
