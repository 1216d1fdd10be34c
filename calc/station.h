/// What stands around the heads: electronics, supplies, cure or drying, consumables, money.
#pragma once

#include <memory>

#include "calc/job.h"

namespace calc {

/// Parts, consumption, stages and cost of a station with these groups. Groups must be complete
/// (heads_total, dots, frequencies). Missing prices leave lines "on request", never zero.
Station size_station(const Job& job, const Catalogue& catalogue, const std::vector<Group>& groups);

/// Capital, ownership and count of unpriced lines alone, for ranking; equal to the bill's own.
/// `days` is the longest lead time [d], 0 when unknown.
struct Quote {
  Money capital, ownership;
  int unpriced = 0;
  double lead_time_days = 0;
};
Quote quote(const Job& job, const Catalogue& catalogue, const std::vector<Group>& groups);

class PriceBook;

/// quote() for many arrangements of one job: prices, currencies and what fits which head are worked
/// out once. The job and the catalogue must outlive it.
class Pricer {
 public:
  Pricer(const Job& job, const Catalogue& catalogue);
  ~Pricer();
  Pricer(const Pricer&) = delete;
  Pricer& operator=(const Pricer&) = delete;
  Pricer(Pricer&&) = delete;
  Pricer& operator=(Pricer&&) = delete;
  Quote quote(const std::vector<Group>& groups) const;

 private:
  const Job* job_;
  std::unique_ptr<const PriceBook> book_;
};

}  // namespace calc
