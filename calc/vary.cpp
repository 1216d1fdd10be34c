#include "calc/vary.h"

#include <cmath>

#include "calc/compare.h"

namespace calc {
namespace {

template <class Round>
double rounded(double value, int digits, Round round) {
  const int exponent = static_cast<int>(std::floor(std::log10(value))) - digits + 1;
  const double step = std::pow(10.0, std::abs(exponent));
  return exponent < 0 ? round(value * step) / step : round(value / step) * step;
}

}  // namespace

Vary::Vary(const Job& job, const Catalogue& catalogue)
    : job_(&job), catalogue_(&catalogue), moved_(*job.request), chooser_(catalogue, job.currency) {}

const Job& Vary::at(const Movable& what, double factor) {
  if (last_) move(*last_, 1, *job_->request, moved_);
  last_ = what;
  move(what, factor, *job_->request, moved_);
  resolved_ = resolve(moved_, *catalogue_, job_->date, job_->parameters);
  return resolved_;
}

std::vector<HeadsOf> in_short(const std::vector<Group>& groups) {
  std::vector<HeadsOf> list;
  list.reserve(groups.size());
  for (const Group& g : groups) {
    list.push_back({g.name, g.head, g.mode, g.family, g.heads_total});
  }
  return list;
}

double rounded_down(double value, int digits) { return rounded(value, digits, floor_tolerant); }
double rounded_up(double value, int digits) { return rounded(value, digits, ceil_tolerant); }

}  // namespace calc
