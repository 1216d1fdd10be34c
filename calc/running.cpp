#include "calc/running.h"

#include <algorithm>
#include <cmath>

#include "calc/consumption.h"
#include "calc/spares.h"

namespace calc {
namespace {

constexpr double mean_of_exact_count = 700;  // above it the Poisson sum loses its first term
constexpr double normal_95 = 1.6448536269514722;
constexpr double ml = 1e6, litre = 1e3;
constexpr Time hour = seconds(3600);

/// A body may strike the heads, and so may the edge of a board; a web has no edge to lift.
bool may_strike(const Job& job) {
  const Product& product = job.request->product;
  const bool body = product.form && product.form->value == Form::cylinder;
  const bool uneven = product.thickness_variation && product.thickness_variation->high > Length();
  return body || (product.thickness && uneven);
}

int spares_for(const Job& job, double mean) {
  const bool crash = may_strike(job);
  if (mean <= mean_of_exact_count) {
    return spares(mean, crash, job.parameters[P::spare_confidence]);
  }
  return static_cast<int>(std::ceil(mean + normal_95 * std::sqrt(mean))) + (crash ? 1 : 0);
}

double mean_cover(const Job& job, const Group& group) {
  double most = 0;
  for (const Channel& channel : job.channels) {
    const bool here = std::find(group.channels.begin(), group.channels.end(), channel.name) !=
                      group.channels.end();
    if (here) most = std::max(most, channel.cover_mean.value);
  }
  return most;
}

double replacements(const Job& job, const Group& group, const Head* head) {
  return replacements_per_year(group.heads_total, running_time(job),
                               life_of_heads(job, group, head));
}

const Head* head_of(const PriceBook& book, const Group& group) {
  const auto index = book.find_head(group.head);
  return index ? book.head(*index).item : nullptr;
}

void add_heads(const Job& job, const PriceBook& book, const Group& group, RunningCost& cost) {
  const auto index = book.find_head(group.head);
  const double yearly = replacements(job, group, head_of(book, group));
  cost.labour = cost.labour + to_money(yearly * job.parameters[P::alignment_h] * job.labour.value);
  if (!index || !book.head(*index).row.price) {
    cost.heads_unpriced = true;
    return;
  }
  cost.heads = cost.heads + to_money(yearly * book.head(*index).row.price->major());
}

void add_ink(const Job& job, const RunningInputs& in, RunningCost& cost) {
  for (std::size_t i = 0; i < in.loads.size(); ++i) {
    const Ink* ink = job.channels[in.loads[i].channel].ink;
    const auto price = ink == nullptr ? std::nullopt : price_in(ink->price, job.currency);
    if (!price) cost.ink_unpriced = true;
    if (!price) continue;
    const Volume yearly = in.flows[i].ink() * running_time(job);
    cost.ink = cost.ink + to_money(yearly.si() * litre * price->major());
  }
}

void add_energy(const Job& job, const RunningInputs& in, RunningCost& cost) {
  Power power = in.drying.electrical_mean;
  for (const Curing* lamps : {&in.pinning, &in.curing}) {
    if (lamps->drawn) power += *lamps->drawn;
    cost.power_unknown |= lamps->needed && !lamps->electrical;
  }
  const double kwh = power.si() / 1e3 * (running_time(job) / hour);
  cost.energy = to_money(kwh * job.energy.value);
}

/// Flushing fluid of the catalogue by what is used of it; one that states its life wears instead.
void add_flush(const Job& job, const PriceBook& book, const RunningInputs& in, RunningCost& cost) {
  const double bottle = job.parameters[P::flush_bottle_l];
  for (std::size_t i = 0; i < in.loads.size(); ++i) {
    const auto head = book.find_head(in.groups[in.loads[i].group].head);
    const Priced<Part>* fluid = book.part(PartKind::flush, head.value_or(book.head_count()),
                                          job.channels[in.loads[i].channel].family);
    if (fluid != nullptr && fluid->row.life) continue;
    if (fluid == nullptr || !fluid->row.price) {
      cost.flush_unpriced = true;
      continue;
    }
    const double litres = (in.flows[i].flush * running_time(job)).si() * litre;
    cost.cleaning = cost.cleaning + to_money(litres / bottle * fluid->row.price->major());
  }
}

/// Filters, wipes, caps and whatever else the catalogue gives a life.
void add_wear(const Job& job, const std::vector<Need>& needs, RunningCost& cost) {
  for (const Need& need : needs) {
    if (!need.item.price || !need.item.life || *need.item.life <= Time()) continue;
    const double yearly = need.quantity * (running_time(job) / *need.item.life);
    cost.cleaning = cost.cleaning + to_money(yearly * need.item.price->major());
  }
}

}  // namespace

Time running_time(const Job& job) {
  return running_time(job.hours_per_day.value, job.days_per_year.value, job.parameters[P::uptime]);
}

ChannelFlow channel_flow(const Job& job, const ChannelLoad& load, const Head* head) {
  const bool stated = head != nullptr && head->purge;
  const Volume purge =
      stated ? head->purge->value : Volume::from_si(job.parameters[P::purge_ml] / ml);
  const Time running_day = job.hours_per_day.value * job.parameters[P::uptime];
  ChannelFlow flow;
  flow.printed = load.printed;
  flow.purged = load.printed * job.parameters[P::purge_share];
  if (running_day <= Time()) return flow;
  const double purges = load.heads * job.parameters[P::purges_per_day];
  flow.purged = std::max(flow.purged, purges * purge / running_day);
  flow.flush = purges * Volume::from_si(job.parameters[P::flush_ml] / ml) / running_day;
  return flow;
}

Consumption consumption(const Job& job, const ChannelLoad& load, const ChannelFlow& flow,
                        std::optional<Frequency> parts) {
  Consumption use;
  use.channel = job.channels[load.channel].name;
  use.printed_ml_per_hour = (flow.printed * hour).si() * ml;
  use.waste_ml_per_hour = (flow.waste() * hour).si() * ml;
  use.flush_ml_per_hour = (flow.flush * hour).si() * ml;
  use.ml_per_hour = (flow.total() * hour).si() * ml;
  use.l_per_year = (flow.total() * running_time(job)).si() * litre;
  use.l_per_month = use.l_per_year / 12;
  if (parts && *parts > Frequency()) use.ml_per_thousand = (flow.total() / *parts).si() * ml * 1000;
  return use;
}

Time life_of_heads(const Job& job, const Group& group, const Head* head) {
  const Time assumed = job.parameters[P::head_life_h] * hour;
  if (head == nullptr) return assumed;
  std::optional<Time> hours;
  std::optional<double> drops;
  if (head->life) hours = head->life->value;
  const double cover = mean_cover(job, group);
  const bool counts = head->life_drops && cover > 0 && group.frequency_per_nozzle > Frequency();
  if (counts) drops = head->life_drops->value;
  return head_life(hours, drops, group.frequency_per_nozzle, cover).value_or(assumed);
}

std::vector<SpareHeads> spare_heads(const Job& job, const PriceBook& book,
                                    const std::vector<Group>& groups) {
  std::vector<SpareHeads> list;
  for (const Group& group : groups) {
    const auto index = book.find_head(group.head);
    if (!index) continue;
    const Head& head = *book.head(*index).item;
    auto found = std::find_if(list.begin(), list.end(),
                              [&](const SpareHeads& s) { return s.head == *index; });
    if (found == list.end()) found = list.insert(list.end(), {*index, 0, 0});
    if (!head.lead_time) continue;
    found->mean += failures_in_lead_time(group.heads_total, head.lead_time->value,
                                         running_time(job), life_of_heads(job, group, &head));
  }
  for (SpareHeads& spare : list) spare.quantity = spares_for(job, spare.mean);
  return list;
}

RunningCost running_cost(const Job& job, const PriceBook& book, const RunningInputs& in) {
  RunningCost cost;
  add_ink(job, in, cost);
  for (const Group& group : in.groups) add_heads(job, book, group, cost);
  add_energy(job, in, cost);
  add_flush(job, book, in, cost);
  add_wear(job, in.needs, cost);
  return cost;
}

}  // namespace calc
