/// Stations made of one candidate per group: price, gates on the whole.
#include <algorithm>

#include "calc/compare.h"
#include "calc/placement.h"
#include "calc/selection_parts.h"
#include "calc/station_sizing.h"

namespace calc {
namespace {

RankOrder order_of(const Shape& s) {
  return {s.head, s.mode, s.scanning ? 1 : 0, s.interleave, s.stack, s.motion_axis.si(), s.tilt};
}

RankKey key_of(const Search& search, const std::vector<Arrangement>& parts, const Quote& quote) {
  RankKey key;
  double margin = parts.front().margin;
  for (const Arrangement& a : parts) {
    key.prefers +=
        unmet_prefers(search.job->request->service, search.catalogue->heads[a.shape.head]);
    key.open += a.open ? 1 : 0;
    key.joints += a.joints;
    key.heads += a.heads;
    margin = std::min(margin, a.margin);
    key.order.push_back(order_of(a.shape));
  }
  key.unpriced = quote.unpriced;
  key.price_class = price_class(quote.ownership);
  key.margin = rank_margin(margin);
  key.ownership = quote.ownership.minor;
  return key;
}

void heads_gate(const Limits& limits, const std::vector<Group>& groups,
                std::vector<Finding>& failures) {
  if (!limits.heads) return;
  int heads = 0;
  for (const Group& g : groups) heads += g.heads_total;
  if (heads <= limits.heads->value) return;
  failures.push_back({"heads",
                      "station",
                      static_cast<double>(heads),
                      static_cast<double>(limits.heads->value),
                      "",
                      false,
                      {},
                      {},
                      {}});
}

void budget_gate(const Job& job, const Quote& quote, std::vector<Finding>& failures,
                 std::vector<Finding>* conditions) {
  const Given<Price>& budget = job.request->limits.budget;
  if (!budget) return;
  const Price& limit = budget->value;
  if (limit.currency != job.currency) {
    if (conditions != nullptr) {
      conditions->push_back(unknown("currency_budget", "limits", {}, "budget"));
    }
    return;
  }
  const double capital = quote.capital.major();
  if (quote.capital > limit.amount) {
    failures.push_back(
        {"budget", {}, capital, limit.amount.major(), job.currency, false, {}, {}, {}});
  } else if (quote.unpriced > 0 && conditions != nullptr) {
    conditions->push_back({"unpriced_budget",
                           {},
                           static_cast<double>(quote.unpriced),
                           0,
                           "",
                           false,
                           "limits",
                           "budget",
                           &budget->origin});
  }
}

void lead_time_gate(const Job& job, const Quote& quote, std::vector<Finding>& failures,
                    std::vector<Finding>* conditions) {
  const Given<Time>& limit = job.request->limits.lead_time;
  if (!limit) return;
  constexpr double day = 86400;
  const double most = limit->value.si() / day;
  if (quote.lead_time_days <= 0) {
    if (conditions != nullptr) {
      conditions->push_back(unknown("lead_time_unknown", "limits", {}, "lead_time"));
    }
  } else if (!at_most(quote.lead_time_days, most)) {
    failures.push_back({"lead_time", {}, quote.lead_time_days, most, "d", false, {}, {}, {}});
  }
}

}  // namespace

namespace {

bool on_carriage(const std::vector<Group>& groups) {
  return !groups.empty() && groups.front().family == Family::scanning;
}

/// groups_of() into a list that was used before, whose store is used again.
void write_groups(const std::vector<const Candidate*>& parts,
                  const std::vector<Arrangement>& arrangements, std::vector<Group>& groups) {
  groups.resize(parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) groups[i] = parts[i]->group;
  if (parts.size() < 2 || !on_carriage(groups)) return;
  for (std::size_t i = 0; i < groups.size(); ++i) refresh(arrangements[i], groups[i]);
}

/// What the mass of the substrate would tell: whether it stays below its limit under lamps, and how
/// much heat a dryer takes, which without it is a lower bound.
void mass_conditions(const Job& job, std::vector<Finding>& conditions) {
  const Substrate& s = job.request->substrate;
  if (s.area_mass) return;
  const auto prints = [&job](InkFamily family) {
    return std::any_of(job.channels.begin(), job.channels.end(),
                       [family](const Channel& c) { return c.family == family; });
  };
  if (s.temperature_limit && prints(InkFamily::uv)) {
    conditions.push_back(unknown("web_heat_unknown", "substrate", {}, "area_mass"));
  }
  if (prints(InkFamily::aqueous)) {
    const bool bodies = job.radius || job.radius_across;
    conditions.push_back(
        unknown("dryer_heat_unknown", "substrate", bodies ? "bodies" : "", "area_mass"));
  }
}

/// Lamps and dryers that fit neither speed nor substrate.
void stage_gates(const Sized& size, std::vector<Finding>& failures) {
  const auto add = [&](std::string_view code, const std::optional<StageFailure>& f) {
    if (!f) return;
    failures.push_back({code, f->subject, f->value, f->limit, f->unit, f->at_least, {}, {}, {}});
  };
  add("cure", size.cure);
  add("drying", size.drying);
}

/// Feed and frequency of the carriage that all groups share.
void carriage_gate(const Search& s, const std::vector<Group>& groups,
                   std::vector<Finding>& failures, std::vector<Finding>* conditions) {
  if (!on_carriage(groups)) return;
  const Speed feed = groups.front().speed_limit;
  if (!at_least(feed, s.fastest)) {
    // No feed at all: no advance is whole rows of every group's lattice.
    const char* what = feed > Speed{} ? "throughput" : "advance";
    failures.push_back({"frequency", what, feed.si(), s.fastest.si(), "m/s", true, {}, {}, {}});
  }
  if (conditions == nullptr) return;
  const double high = s.job->parameters[P::high_use];
  double use = 0;
  for (const Group& g : groups) use = std::max(use, g.frequency_use);
  if (!at_most(use, high)) {
    conditions->push_back({"high_use", {}, use, high, "1", false, {}, {}, {}});
  }
}

}  // namespace

std::vector<Group> groups_of(const std::vector<const Candidate*>& parts,
                             const std::vector<Arrangement>& arrangements) {
  std::vector<Group> groups;
  write_groups(parts, arrangements, groups);
  return groups;
}

std::vector<Arrangement> Stations::arrangements(const std::vector<const Candidate*>& parts) const {
  std::vector<Arrangement> list;
  list.reserve(parts.size());
  for (const Candidate* part : parts) list.push_back(part->arrangement);
  if (list.size() > 1 && list.front().shape.scanning) ride_together(*search_, list, *advances_);
  return list;
}

/// One head more end to end, worked out once.
const Candidate* Stations::longer(std::size_t group, const Candidate& shorter) const {
  const Candidate*& known = longer_of_[{group, &shorter}];
  if (known != nullptr) return known;
  Shape shape = shorter.arrangement.shape;
  ++shape.carriage_heads;
  const GroupNeed* const need = &search_->groups[group];
  Findings unused;  // but for the number of heads, which the station gates, nothing is new
  Arrangement a = arrange(*search_, *need, *shorter.facts, shape, unused);
  a.jetting = shorter.arrangement.jetting;
  longer_.push_back({a, {}, {}, need, need, shorter.facts});
  known = &longer_.back();
  return known;
}

/// Heads are added one by one where the advance is least, for that one holds the others back.
std::vector<Arrangement> Stations::lengthen(std::vector<const Candidate*>& parts) const {
  for (;;) {
    std::vector<Arrangement> riders = arrangements(parts);
    const bool alone = parts.size() < 2 || !parts.front()->arrangement.shape.scanning;
    if (alone || at_least(riders.front().speed_limit, search_->fastest)) return riders;
    std::size_t least = 0;
    for (std::size_t i = 1; i < parts.size(); ++i) {
      if (parts[i]->arrangement.scan->advance < parts[least]->arrangement.scan->advance) least = i;
    }
    if (parts[least]->arrangement.shape.carriage_heads >= most_carriage_heads) return riders;
    parts[least] = longer(least, *parts[least]);
  }
}

Stations::Stations(const Search& search) : search_(&search), scratch_(std::make_unique<Sizing>()) {}
Stations::Stations(const Search& search, Advances& advances)
    : search_(&search), scratch_(std::make_unique<Sizing>()), advances_(&advances) {}
Stations::~Stations() = default;

Sized sized_of(const Job& job, const std::vector<Group>& groups, const Sizing& sizing) {
  Sized result;
  result.quote = {sizing.bill.priced, sizing.ownership, sizing.bill.unpriced,
                  sizing.bill.lead_days};
  result.footprint = station_footprint(job, groups, sizing);
  result.cure = sizing.curing.failure;
  if (!result.cure) result.cure = sizing.pinning.failure;
  result.drying = sizing.drying.failure;
  return result;
}

Sized Stations::sized(std::vector<Group>& groups) const {
  size_again(*search_->job, *search_->book, groups, *scratch_);
  stand_pinning(scratch_->pinning, groups);
  return sized_of(*search_->job, groups, *scratch_);
}

std::vector<Finding> Stations::gate(const std::vector<Group>& groups, const Sized& size,
                                    std::vector<Finding>* conditions) const {
  std::vector<Finding> failures;
  const Limits& limits = search_->job->request->limits;
  carriage_gate(*search_, groups, failures, conditions);
  placement_gate(*search_->job, groups, failures, conditions);
  heads_gate(limits, groups, failures);
  if (limits.space && !at_most(size.footprint, limits.space->value)) {
    failures.push_back(
        {"space", {}, in_mm(size.footprint), in_mm(limits.space->value), "mm", false, {}, {}, {}});
  }
  stage_gates(size, failures);
  if (conditions != nullptr) mass_conditions(*search_->job, *conditions);
  budget_gate(*search_->job, size.quote, failures, conditions);
  lead_time_gate(*search_->job, size.quote, failures, conditions);
  return failures;
}

/// Leaves the groups in `groups_`.
Option Stations::size_up(std::vector<const Candidate*> parts, Sized& size) const {
  const std::vector<Arrangement> arrangements = lengthen(parts);
  for (const Candidate* part : parts) write(*search_, *part);
  write_groups(parts, arrangements, groups_);
  size = sized(groups_);
  Option option;
  option.key = key_of(*search_, arrangements, size.quote);
  option.parts = std::move(parts);
  return option;
}

Option Stations::price(std::vector<const Candidate*> parts) const {
  Sized size;
  return size_up(std::move(parts), size);
}

Option Stations::make(std::vector<const Candidate*> parts) const {
  Sized size;
  Option option = size_up(std::move(parts), size);
  if (search_->reasons) gate_last(size, option);
  return option;
}

std::optional<Option> Stations::make_before(const RankKey* best, Parts parts) const {
  Sized size;
  Option option = size_up(std::move(parts), size);
  if (best != nullptr && !before(option.key, *best)) return std::nullopt;
  gate_last(size, option);
  return option;
}

/// Of the station sized last, whose groups do not have their flights yet.
void Stations::gate_last(const Sized& size, Option& option) const {
  for (std::size_t i = 0; i < groups_.size(); ++i) {
    const Candidate& part = *option.parts[i];
    fly(*search_, part);
    add_flight(*search_->job, search_->groups[i], part.arrangement, groups_[i]);
  }
  option.failures = gate(groups_, size, nullptr);
  option.gated = true;
}

bool Stations::passes(Option& option) const {
  if (!option.gated) {
    Sized size;
    size_up(option.parts, size);
    gate_last(size, option);
  }
  return option.failures.empty();
}

}  // namespace calc
