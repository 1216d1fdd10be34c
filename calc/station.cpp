#include "calc/station.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "calc/cost.h"
#include "calc/drive.h"
#include "calc/station_sizing.h"
#include "calc/station_speed.h"
#include "calc/station_stages.h"

namespace calc {
namespace {

void add_consumption(const Job& job, const Sizing& sizing, Station& station) {
  const auto parts = parts_rate(job);
  for (std::size_t i = 0; i < sizing.loads.size(); ++i) {
    station.data_rate_bit_per_s += sizing.loads[i].data.si();
    station.consumption.push_back(consumption(job, sizing.loads[i], sizing.flows[i], parts));
  }
}

std::optional<LeadTime> longest(const std::vector<BomLine>& lines) {
  std::optional<LeadTime> result;
  int unknown = 0;
  for (const BomLine& line : lines) {
    if (!line.lead_time_days && line.unit == "pc") ++unknown;
    if (!line.lead_time_days || (result && result->days >= *line.lead_time_days)) continue;
    result = LeadTime{*line.lead_time_days, line.part_number, 0};
  }
  if (result) result->lead_time_unknown = unknown;
  return result;
}

std::string called(const BomLine& line) {
  if (!line.designation.empty()) return line.designation;
  return line.part_number.empty() ? line.code : line.part_number;
}

std::vector<std::string> unpriced_items(const std::vector<BomLine>& lines) {
  std::vector<std::string> list;
  for (const BomLine& line : lines) {
    if (line.extended_price) continue;
    std::string name = called(line);
    if (std::find(list.begin(), list.end(), name) == list.end()) list.push_back(std::move(name));
  }
  return list;
}

/// Fans of exhaust and fresh air, as far as the catalogue has them.
std::vector<Fans> fans_of(const Catalogue& catalogue, const Sizing& sizing) {
  std::vector<Fans> list;
  for (const Need& need : sizing.needs.list()) {
    if (need.code != PartCode::exhaust && need.code != PartCode::ventilation) continue;
    for (const Part& part : catalogue.parts) {
      if (&part != need.item.row) continue;
      const int units = static_cast<int>(need.quantity);
      list.push_back(
          {need.code == PartCode::exhaust ? "exhaust" : "ventilation", part.name, units, {}});
      if (part.air_flow) list.back().m3_per_h = units * part.air_flow->value.si() * 3600;
    }
  }
  return list;
}

void warn_of_rows(const Job& job, const Sizing& sizing, Station& station) {
  std::set<const Row*> seen;
  for (const Need& need : sizing.needs.list()) {
    const Row* row = need.item.row;
    if (row != nullptr && seen.insert(row).second) price_warnings(job, *row, station.warnings);
  }
}

void warn_of_inks(const Job& job, const Sizing& sizing, Station& station) {
  std::set<std::string> seen;
  for (const ChannelLoad& load : sizing.loads) {
    const Channel& channel = job.channels[load.channel];
    const Ink* ink = channel.ink;
    if (ink != nullptr && price_in(ink->price, job.currency)) continue;
    const std::string name = ink == nullptr ? channel.name : ink->name;
    if (!seen.insert(name).second) continue;
    const std::string field = ink == nullptr ? "colour." + name + ".ink" : "ink." + name + ".price";
    Notice notice{"ink_unpriced", {{"ink", name, ""}}, field, {}};
    if (ink != nullptr && ink->price) notice.where.push_back(ink->price->origin);
    station.warnings.push_back(std::move(notice));
  }
}

/// The inks that do not state a dose, else the doses no lamp gives.
Notice dose_unsized(const Job& job, const Sizing& sizing, const Curing& curing, const char* code,
                    const std::string& key, Given<Dose> Ink::*dose) {
  Notice notice{code, {}, "ink.NAME." + key, {}};
  const bool stated = curing.dose.has_value();
  std::set<const Ink*> seen;
  for (const ChannelLoad& load : sizing.loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.family != InkFamily::uv || channel.ink == nullptr) continue;
    const Ink& ink = *channel.ink;
    if ((ink.*dose).has_value() != stated || !seen.insert(&ink).second) continue;
    if (notice.where.empty()) notice.field = "ink." + ink.name + "." + key;
    notice.where.push_back(stated ? (ink.*dose)->origin : ink.where);
  }
  return notice;
}

void warn_of_stages(const Job& job, const Sizing& sizing, Station& station) {
  if (sizing.curing.needed && sizing.curing.lamp == nullptr) {
    station.warnings.push_back(
        dose_unsized(job, sizing, sizing.curing, "cure_unsized", "cure_dose", &Ink::cure_dose));
  }
  if (sizing.pinning.needed && sizing.pinning.lamp == nullptr) {
    station.warnings.push_back(dose_unsized(job, sizing, sizing.pinning, "pinning_unsized",
                                            "pinning_dose", &Ink::pinning_dose));
  }
  std::set<const Lamp*> seen;
  for (const Curing* lamps : {&sizing.pinning, &sizing.curing}) {
    if (lamps->lamp == nullptr || lamps->electrical) continue;
    const Lamp* lamp = lamps->lamp->item;
    if (!seen.insert(lamp).second) continue;
    const std::string row = "lamp." + lamp->name;
    station.warnings.push_back(
        {"power_unknown", {{"row", row, ""}}, row + ".electrical", {lamp->where}});
  }
}

/// Supplies of heads that circulate ink, counted without what their pump moves.
void warn_of_pumps(const Sizing& sizing, Station& station) {
  constexpr double ml_per_min = 6e7;
  std::map<const Supply*, VolumeFlow> most;  // of one channel
  for (std::size_t i = 0; i < sizing.supplies.size(); ++i) {
    const auto* const priced = sizing.supplies[i].supply;
    if (priced == nullptr || priced->item->pump) continue;
    VolumeFlow& flow = most[priced->item];
    flow = std::max(flow, station.feeds[i].recirculation);
  }
  for (const ChannelSupply& choice : sizing.supplies) {  // in the order of the channels
    const Supply* const supply = choice.supply == nullptr ? nullptr : choice.supply->item;
    const VolumeFlow flow = std::exchange(most[supply], VolumeFlow());
    if (flow <= VolumeFlow()) continue;
    const std::string row = "supply." + supply->name;
    station.warnings.push_back({"pump_unknown",
                                {{"row", row, ""}, {"flow", flow.si() * ml_per_min, "mL/min"}},
                                row + ".pump",
                                {supply->where}});
  }
}

/// Ink that settles in a supply of which no stirrer is known, or in one that its head does not
/// name.
void warn_of_settling(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                      const Sizing& sizing, Station& station) {
  std::set<std::pair<const Ink*, const Supply*>> seen;
  for (std::size_t i = 0; i < sizing.loads.size(); ++i) {
    const ChannelLoad& load = sizing.loads[i];
    if (sizing.supplies[i].supply == nullptr || !must_be_stirred(job, load)) continue;
    const Supply& supply = *sizing.supplies[i].supply->item;
    const Ink* const ink = job.channels[load.channel].ink;
    const auto index = book.find_head(groups[load.group].head);
    const Head* const head = index ? book.head(*index).item : nullptr;
    const auto is_named = [&](const Priced<Supply>& s) {
      return head != nullptr && head->supply && s.item->name == head->supply->value &&
             takes(*s.item, job.channels[load.channel]);
    };
    const auto& all = book.supplies();
    const auto named = std::find_if(all.begin(), all.end(), is_named);
    const bool other = named != all.end() && named->item != &supply;
    if ((stirs(supply) && !other) || !seen.insert({ink, &supply}).second) continue;
    const std::string row = "supply." + supply.name;
    Notice notice{"supply_unstirred",
                  {{"ink", ink->name, ""}, {"row", row, ""}},
                  row + ".stirs",
                  {supply.where}};
    if (stirs(supply)) {
      notice.code = "supply_not_named";
      notice.args.push_back({"head", head->name, ""});
      notice.args.push_back({"named", head->supply->value, ""});
      notice.where = {head->supply->origin};
      notice.field = "head." + head->name + ".supply";
    }
    station.warnings.push_back(std::move(notice));
  }
}

void add_spares(const PriceBook& book, const Sizing& sizing, Station& station) {
  for (const SpareHeads& spare : sizing.spares) {
    const Head& head = *book.head(spare.head).item;
    const std::string part = head.part_number ? head.part_number->value : head.name;
    station.spares.push_back({part, spare.mean, spare.quantity});
    if (head.lead_time) continue;
    const std::string row = "head." + head.name;
    station.warnings.push_back(
        {"spares_without_lead_time", {{"row", row, ""}}, row + ".lead_time", {head.where}});
  }
}

/// Which supply feeds which channel.
std::vector<Fed> fed_channels(const Sizing& sizing) {
  std::vector<Fed> fed;
  for (std::size_t i = 0; i < sizing.loads.size(); ++i) {
    const auto* const supply = sizing.supplies[i].supply;
    fed.push_back({sizing.loads[i].channel, supply == nullptr ? nullptr : supply->row.row});
  }
  return fed;
}

}  // namespace

Station size_station(const Job& job, const Catalogue& catalogue, const std::vector<Group>& groups) {
  const PriceBook book(catalogue, job.currency);
  const Sizing sizing = size(job, book, groups);
  Station station;
  station.boards = sizing.boards;
  describe_drive(job, book, groups, sizing, station);
  add_consumption(job, sizing, station);
  station.stages = stages_of(job, sizing);
  add_speed_limits(job, groups, sizing, station);
  station.fans = fans_of(catalogue, sizing);
  for (const Stage& stage : station.stages) {
    const std::optional<double>& power = stage.running_kw ? stage.running_kw : stage.electrical_kw;
    if (power) station.heat_kw = station.heat_kw.value_or(0) + *power;
  }
  station.bom = bom_lines(job, groups, sizing.needs.list(), fed_channels(sizing));
  station.bom_total = sizing.bill.priced;
  station.bom_unpriced = sizing.bill.unpriced;
  station.unpriced_items = unpriced_items(station.bom);
  station.heads_unpriced = sizing.running.heads_unpriced;
  station.currency = job.currency;
  station.lead_time = longest(station.bom);
  station.cost = cost(job, groups, sizing);
  station.footprint = station_footprint(job, groups, sizing);
  station.service_access = millimetres(job.parameters[P::service_access_mm]);
  warn_of_rows(job, sizing, station);
  warn_of_inks(job, sizing, station);
  warn_of_stages(job, sizing, station);
  warn_of_pumps(sizing, station);
  warn_of_settling(job, book, groups, sizing, station);
  add_spares(book, sizing, station);
  return station;
}

Pricer::Pricer(const Job& job, const Catalogue& catalogue)
    : job_(&job), book_(std::make_unique<const PriceBook>(catalogue, job.currency)) {}
Pricer::~Pricer() = default;

Quote Pricer::quote(const std::vector<Group>& groups) const {
  const Sizing sizing = size(*job_, *book_, groups);
  return {sizing.bill.priced, sizing.ownership, sizing.bill.unpriced, sizing.bill.lead_days};
}

Quote quote(const Job& job, const Catalogue& catalogue, const std::vector<Group>& groups) {
  return Pricer(job, catalogue).quote(groups);
}

}  // namespace calc
