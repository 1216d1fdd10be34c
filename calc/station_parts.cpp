/// The parts that the catalogue lists by kind: which are needed, and how many.
#include <algorithm>
#include <iterator>

#include "calc/blend.h"
#include "calc/compare.h"
#include "calc/named.h"
#include "calc/station_sizing.h"

namespace calc {
namespace {

struct KindRow {
  PartKind kind;
  PartCode code;
  Per per;  ///< what its quantity follows where the row does not say
};

constexpr std::array<KindRow, 9> of_every_group{{
    {PartKind::cable, PartCode::cable, Per::head},
    {PartKind::mount, PartCode::mount, Per::head},
    {PartKind::degasser, PartCode::degasser, Per::supply},
    {PartKind::filter, PartCode::filter, Per::supply},
    {PartKind::flush, PartCode::flush, Per::channel},
    {PartKind::cap, PartCode::cap, Per::head},
    {PartKind::wipe, PartCode::wipe, Per::row},
    {PartKind::spittoon, PartCode::spittoon, Per::row},
    {PartKind::strike_sensor, PartCode::strike_sensor, Per::station},
}};
constexpr std::array<KindRow, 3> of_the_station{{
    {PartKind::controller, PartCode::controller, Per::station},
    {PartKind::commissioning, PartCode::commissioning, Per::station},
    {PartKind::training, PartCode::training, Per::station},
}};
constexpr KindRow heater{PartKind::heater, PartCode::heater, Per::channel};
constexpr KindRow chiller{PartKind::chiller, PartCode::chiller, Per::station};
constexpr KindRow pretreatment{PartKind::pretreatment, PartCode::pretreatment, Per::station};
constexpr KindRow exhaust{PartKind::exhaust, PartCode::exhaust, Per::station};
constexpr KindRow ventilation{PartKind::ventilation, PartCode::ventilation, Per::station};
constexpr KindRow encoder{PartKind::encoder, PartCode::encoder, Per::station};
constexpr KindRow product_sensor{PartKind::product_sensor, PartCode::product_sensor, Per::station};
constexpr KindRow alignment{PartKind::alignment, PartCode::alignment_gauge, Per::station};

constexpr TemperatureDifference heater_span = TemperatureDifference::from_si(5);

/// A group with what its parts are counted by.
struct GroupParts {
  const Group* group = nullptr;
  std::size_t head = 0;
  std::optional<InkFamily> family;
  int supplies = 0;
  int idle_inlets = 0;  ///< colour places of its heads without a channel, kept full of flush
};

int head_rows(const Group& group) {
  const int rows = group.positions * group.rows_staggered * group.film_heads;
  return group.scan ? rows : rows * group.interleave * group.stack;
}

double quantity(const GroupParts& g, Per per) {
  switch (per) {
    case Per::head:
      return g.group->heads_total;
    case Per::row:
      return head_rows(*g.group);
    case Per::channel:
      return static_cast<double>(g.group->channels.size());
    case Per::supply:
      return g.supplies;
    case Per::station:
      break;
  }
  return 1;
}

void add_kind(const PriceBook& book, const GroupParts& g, const KindRow& kind, Needs& needs) {
  const Priced<Part>* part = book.part(kind.kind, g.head, g.family);
  const Per per = part != nullptr && part->item->per ? part->item->per->value : kind.per;
  double count = quantity(g, per);
  if (kind.kind == PartKind::flush && per == Per::channel) count += g.idle_inlets;
  needs.add(kind.code, part == nullptr ? PricedRow() : part->row, count, per == Per::station);
}

int idle_inlets(const PriceBook& book, const Group& group) {
  const auto index = book.find_head(group.head);
  if (!index) return 0;
  const HeadMode* const mode = named(book.head(*index).item->modes, group.mode);
  if (mode == nullptr || !mode->colours) return 0;
  return std::max(0,
                  group.positions * mode->colours->value - static_cast<int>(group.channels.size()));
}

std::vector<GroupParts> group_parts(const Job& job, const PriceBook& book,
                                    const std::vector<Group>& groups, const Sizing& sizing) {
  std::vector<GroupParts> list;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    GroupParts g;
    g.group = &groups[i];
    g.head = book.find_head(groups[i].head).value_or(book.head_count());
    for (std::size_t k = 0; k < sizing.loads.size(); ++k) {
      if (sizing.loads[k].group != i) continue;
      g.supplies += sizing.supplies[k].count;
      if (!g.family) g.family = job.channels[sizing.loads[k].channel].family;
    }
    g.idle_inlets = idle_inlets(book, groups[i]);
    list.push_back(g);
  }
  return list;
}

/// Whether heads are flushed at all, so that flushing fluid evaporates.
bool flushes(const Job& job) {
  return job.parameters[P::purges_per_day] * job.parameters[P::flush_ml] > 0 &&
         job.hours_per_day.value * job.parameters[P::uptime] > Time();
}

bool wants_heater(const Job& job, const std::optional<Temperature>& jetting) {
  return jetting && *jetting > job.room.low;
}
bool wants_chiller(const Job& job, const std::optional<Temperature>& jetting) {
  return jetting && *jetting < job.room.high + heater_span;
}

void add_conditioning(const Job& job, const PriceBook& book, const GroupParts& g, Needs& needs) {
  const std::optional<Temperature>& jetting = g.group->jetting_temperature;
  if (wants_heater(job, jetting)) add_kind(book, g, heater, needs);
  if (wants_chiller(job, jetting)) add_kind(book, g, chiller, needs);
}

bool wants_pretreatment(const Job& job, const Group& group) {
  return std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& c) {
    const bool here =
        std::find(group.channels.begin(), group.channels.end(), c.name) != group.channels.end();
    return here && wants_pretreatment(job, c);
  });
}

bool wants_exhaust(const Job& job, const GroupParts& g, const Sizing& sizing) {
  const Lamp* lamp = sizing.curing.lamp == nullptr ? nullptr : sizing.curing.lamp->item;
  const bool arc = lamp != nullptr && lamp->mercury && lamp->mercury->value;
  return wants_vapour_exhaust(job, *g.group) || (g.family == InkFamily::uv && arc);
}

/// Fans by the air they move, one where the catalogue does not say how much.
void add_fans(const PriceBook& book, const GroupParts& g, const KindRow& kind, VolumeFlow air,
              Needs& needs) {
  const Priced<Part>* part = book.part(kind.kind, g.head, g.family);
  if (part == nullptr || !part->item->air_flow) {
    add_kind(book, g, kind, needs);
    return;
  }
  const double count = ceil_tolerant(air / part->item->air_flow->value);
  needs.add(kind.code, part->row, std::max(1.0, count), true);
}

void add_of_group(const Job& job, const PriceBook& book, const GroupParts& g, Sizing& sizing) {
  for (const KindRow& kind : of_every_group) add_kind(book, g, kind, sizing.needs);
  add_conditioning(job, book, g, sizing.needs);
  if (wants_pretreatment(job, *g.group)) add_kind(book, g, pretreatment, sizing.needs);
  if (wants_exhaust(job, g, sizing))
    add_fans(book, g, exhaust, station_exhaust(sizing), sizing.needs);
  // A gauge is bought where the catalogue has one; the hours of aligning stand on their own line.
  const bool gauge = book.part(PartKind::alignment, g.head, g.family) != nullptr;
  if (g.group->joints > 0 && gauge) add_kind(book, g, alignment, sizing.needs);
}

/// The first group that the catalogue has a part of the kind for, else the first of all.
const GroupParts& first_fitting(const PriceBook& book, const std::vector<GroupParts>& list,
                                PartKind kind) {
  for (const GroupParts& g : list) {
    if (book.part(kind, g.head, g.family) != nullptr) return g;
  }
  return list.front();
}

/// The share of one group in a kind of the whole station: its own part, or that of the first group
/// that has one.
void add_share(const PriceBook& book, const std::vector<GroupParts>& list, GroupParts g,
               const KindRow& kind, Needs& needs) {
  if (book.part(kind.kind, g.head, g.family) == nullptr) {
    const GroupParts& fitting = first_fitting(book, list, kind.kind);
    g.head = fitting.head;
    g.family = fitting.family;
  }
  add_kind(book, g, kind, needs);
}

/// A kind of the whole station, counted over the groups.
void add_for_all(const PriceBook& book, const std::vector<GroupParts>& list, const KindRow& kind,
                 Needs& needs) {
  for (const GroupParts& g : list) add_share(book, list, g, kind, needs);
}

/// Room air by what the fans move, else counted over the groups that give vapour.
void add_ventilation(const PriceBook& book, const std::vector<GroupParts>& list, Sizing& sizing) {
  std::vector<GroupParts> vapour;
  std::copy_if(list.begin(), list.end(), std::back_inserter(vapour),
               [&](const GroupParts& g) { return g.family == InkFamily::solvent; });
  const GroupParts& fitting = first_fitting(book, vapour.empty() ? list : vapour, ventilation.kind);
  const Priced<Part>* part = book.part(ventilation.kind, fitting.head, fitting.family);
  if (part != nullptr && part->item->air_flow) {
    add_fans(book, fitting, ventilation, sizing.vapour.health_most.value_or(VolumeFlow()),
             sizing.needs);
  } else {
    add_for_all(book, vapour.empty() ? list : vapour, ventilation, sizing.needs);
  }
}

/// Stations of all groups where a body turns: each turns it anew and times its own heads. Else 1.
int turning_stations(const std::vector<Group>& groups) {
  int stations = 0;
  for (const Group& g : groups) stations += g.round ? g.round->stations : 1;
  const bool turns =
      std::any_of(groups.begin(), groups.end(), [](const Group& g) { return g.round.has_value(); });
  return turns ? stations : 1;
}

/// Encoder or product sensor: one a station that turns the body.
void add_timing(const PriceBook& book, const std::vector<GroupParts>& list, const KindRow& kind,
                int stations, Needs& needs) {
  const GroupParts& g = first_fitting(book, list, kind.kind);
  const Priced<Part>* part = book.part(kind.kind, g.head, g.family);
  const bool otherwise = part != nullptr && part->item->per && part->item->per->value != kind.per;
  if (stations == 1 || otherwise) return add_for_all(book, list, kind, needs);
  needs.add(kind.code, part == nullptr ? PricedRow() : part->row, stations, true);
}

}  // namespace

VolumeFlow station_exhaust(const Sizing& sizing) {
  const VolumeFlow none;
  return sizing.drying.exhaust.value_or(none) + sizing.vapour.explosion_hot.value_or(none);
}

void add_parts(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
               Sizing& sizing) {
  const std::vector<GroupParts> list = group_parts(job, book, groups, sizing);
  for (const GroupParts& g : list) add_of_group(job, book, g, sizing);
  if (list.empty()) return;
  const int stations = turning_stations(groups);
  // A line that names its encoder has one.
  if (!job.request->line.encoder) add_timing(book, list, encoder, stations, sizing.needs);
  if (sizing.vapour.needed) {
    add_ventilation(book, list, sizing);
  }
  add_timing(book, list, product_sensor, stations, sizing.needs);
  for (const KindRow& kind : of_the_station) add_for_all(book, list, kind, sizing.needs);
}

std::vector<Need> parts_of_group(const Job& job, const PriceBook& book,
                                 const std::vector<Group>& groups, Sizing sizing,
                                 std::size_t group) {
  const std::vector<GroupParts> list = group_parts(job, book, groups, sizing);
  sizing.needs.clear();
  add_of_group(job, book, list.at(group), sizing);
  const auto share = [&](const KindRow& kind) {
    add_share(book, list, list.at(group), kind, sizing.needs);
  };
  share(encoder);
  share(product_sensor);
  for (const KindRow& kind : of_the_station) share(kind);
  return sizing.needs.list();
}

Per counted_by(const Part& part, PartCode code) {
  if (part.per) return part.per->value;
  const auto is = [code](const KindRow& row) { return row.code == code; };
  const auto* const found = std::find_if(of_every_group.begin(), of_every_group.end(), is);
  if (found != of_every_group.end()) return found->per;
  return code == heater.code ? heater.per : Per::station;
}

UnpricedParts unpriced_parts(const Job& job, const PriceBook& book, std::size_t head,
                             const std::vector<std::size_t>& channels,
                             const std::optional<Temperature>& jetting) {
  std::optional<InkFamily> family;
  bool treated = false, exhausted = false, flushed = false;
  for (const std::size_t channel : channels) {
    if (!family) family = job.channels[channel].family;
    treated = treated || wants_pretreatment(job, job.channels[channel]);
    exhausted = exhausted || wants_vapour_exhaust(job, channel);
    flushed = flushed || (flushes(job) && gives_vapour(job.channels[channel]));
  }
  const auto unpriced = [&](const KindRow& kind) {
    const Priced<Part>* part = book.part(kind.kind, head, family);
    return part == nullptr || !part->row.price;
  };
  UnpricedParts found;
  const auto count = [&](bool wanted, const KindRow& kind) {
    if (wanted && unpriced(kind)) ++found.own;
  };
  for (const KindRow& kind : of_every_group) count(true, kind);
  count(wants_heater(job, jetting), heater);
  count(wants_chiller(job, jetting), chiller);
  count(treated, pretreatment);
  count(exhausted, exhaust);
  unsigned bit = 1;
  const auto mark = [&](bool wanted, const KindRow& kind) {
    if (wanted && unpriced(kind)) found.shared |= bit;
    bit <<= 1U;
  };
  mark(!job.request->line.encoder, encoder);
  mark(true, product_sensor);
  mark(flushed, ventilation);
  for (const KindRow& kind : of_the_station) mark(true, kind);
  return found;
}

}  // namespace calc
