#include "calc/station_cure.h"

#include <algorithm>

#include "calc/compare.h"
#include "calc/drying.h"
#include "calc/present_value.h"
#include "calc/running.h"

namespace calc {
namespace {

constexpr double shape_not_stated = 0.5;  // triangular, the safe side
constexpr double most_rows = 100;         // beyond it a lamp is no answer
constexpr int carriage_sides = 2;         // a lamp on either side cures both stroke directions

struct LampFit {
  int rows = 0, lamps = 0;
};

bool usable(const Lamp& lamp) {
  return lamp.irradiance && lamp.window_along && lamp.window_across &&
         lamp.irradiance->value > Irradiance() && lamp.window_along->value > Length() &&
         lamp.window_across->value > Length();
}

/// Rows and lamps for a dose; none where a lamp is too weak to be an answer.
std::optional<LampFit> fit_lamp(const Job& job, const Lamp& lamp, const Scan* scan, Dose dose) {
  const LampWindow window = window_of(job, lamp);
  const Dose one = scan != nullptr ? carriage_dose(window, scan->carriage_speed, scan->advance, 1)
                                   : row_dose(window, job.speed->high);
  if (dose > one * most_rows) return std::nullopt;
  if (scan != nullptr) {
    // Lamps lit must also reach over the advance, or strips would stay uncured.
    const double reach = std::max(dose / one, scan->advance / window.across);
    const int lit = std::max(1, static_cast<int>(ceil_tolerant(reach)));
    return LampFit{lit, carriage_sides * lit};
  }
  const int rows = lamp_rows(dose, window, job.speed->high);
  return LampFit{rows, lamp_count(rows, printed_width(job), window.across)};
}

std::optional<Money> times(const std::optional<Money>& price, int count) {
  if (!price) return std::nullopt;
  return *price * count;
}

/// Cost of a choice of lamps over the years: lines without a figure first, then the sum.
struct LampCost {
  int unpriced = 0;
  Money sum;
  bool operator<(const LampCost& other) const {
    return unpriced != other.unpriced ? unpriced < other.unpriced : sum < other.sum;
  }
};

/// The exhaust an arc lamp asks for, where no ink asks for it already.
void add_exhaust(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                 LampCost& cost) {
  const bool there = std::any_of(groups.begin(), groups.end(),
                                 [&](const Group& g) { return wants_vapour_exhaust(job, g); });
  if (there || groups.empty()) return;
  const std::size_t head = book.find_head(groups.front().head).value_or(book.head_count());
  const Priced<Part>* fan = book.part(PartKind::exhaust, head, InkFamily::uv);
  if (fan == nullptr || !fan->row.price) ++cost.unpriced;
  if (fan != nullptr && fan->row.price) cost.sum = cost.sum + *fan->row.price;
}

LampCost lamp_cost(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   const Priced<Lamp>& lamp, int lamps) {
  LampCost cost;
  const std::optional<Money> price = times(lamp.row.price, lamps);
  if (price) cost.sum = *price;
  if (!price) ++cost.unpriced;
  const Given<Power>& power = lamp.item->electrical;
  if (!power) ++cost.unpriced;
  if (power && job.years > 0) {
    const double kwh = lamps * power->value.si() / 1e3 * (running_time(job).si() / 3600);
    cost.sum = ownership(cost.sum, to_money(kwh * job.energy.value), job.discount.value, job.years);
  }
  if (lamp.item->mercury && lamp.item->mercury->value) add_exhaust(job, book, groups, cost);
  return cost;
}

void choose_lamp(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                 const Scan* scan, Curing& curing) {
  LampCost best;
  for (const Priced<Lamp>& lamp : book.lamps()) {
    if (!usable(*lamp.item)) continue;
    const std::optional<LampFit> fit = fit_lamp(job, *lamp.item, scan, *curing.dose);
    if (!fit) continue;
    const LampCost cost = lamp_cost(job, book, groups, lamp, fit->lamps);
    if (curing.lamp != nullptr && !(cost < best)) continue;
    best = cost;
    curing.lamp = &lamp;
    curing.rows = fit->rows;
    curing.lamps = fit->lamps;
  }
}

double water_share(const Job& job, const Channel& channel) {
  const bool stated = channel.ink != nullptr && channel.ink->water_share;
  return stated ? channel.ink->water_share->value : job.parameters[P::water_share];
}

Density density(const Job& job, const Channel& channel) {
  const bool stated = channel.ink != nullptr && channel.ink->density;
  return stated ? channel.ink->density->value : Density::from_si(job.parameters[P::ink_density]);
}

double evaporated(const Job& job) {
  return job
      .parameters[job.absorbency == Absorbency::high ? P::evaporated_high : P::evaporated_none_low];
}

void add_water(const Job& job, const std::vector<ChannelLoad>& loads, Drying& drying) {
  const double process = process_share(job, loads);
  for (const ChannelLoad& load : loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.family != InkFamily::aqueous) continue;
    drying.needed = true;
    const double share = channel.kind == ColourKind::process ? process : 1;
    const double water = water_share(job, channel);
    drying.water +=
        evaporated_water(load.passing * share, density(job, channel), water, evaporated(job));
    drying.water_mean +=
        evaporated_water(load.printed, density(job, channel), water, evaporated(job));
  }
}

/// Heat per water [J/kg]: from the room to the air leaving, which a sensitive substrate caps.
SpecificEnergy heat_per_water(const Job& job) {
  Temperature exhaust = Temperature::celsius(80);
  const Given<Temperature>& limit = job.request->substrate.temperature_limit;
  if (limit) exhaust = std::min(exhaust, limit->value);
  return evaporation_energy(job.room.value, exhaust);
}

MassFlux rate_of(const Job& job, const Dryer* dryer) {
  if (dryer != nullptr && dryer->drying_rate) return dryer->drying_rate->value;
  return MassFlux::from_si(job.parameters[P::drying_rate] / 3600);
}

int whole_up(double x) { return std::max(1, static_cast<int>(ceil_tolerant(x))); }

int dryers_abreast(const Job& job, const Dryer& dryer) {
  return dryer.width ? whole_up(printed_width(job) / dryer.width->value) : 1;
}

int dryer_units(const Job& job, const Drying& drying, const Dryer& dryer) {
  const Length needed = dryer_length(drying.water, job.width->value, rate_of(job, &dryer));
  int units = whole_up(needed / dryer.length->value);
  units *= dryers_abreast(job, dryer);
  if (dryer.electrical && dryer.electrical->value > Power()) {
    units = std::max(units, whole_up(drying.electrical / dryer.electrical->value));
  }
  return units;
}

void choose_dryer(const Job& job, const PriceBook& book, Drying& drying) {
  std::optional<Money> best;
  for (const Priced<Dryer>& dryer : book.dryers()) {
    if (!dryer.item->length || dryer.item->length->value <= Length()) continue;
    const int units = dryer_units(job, drying, *dryer.item);
    const std::optional<Money> sum = times(dryer.row.price, units);
    if (drying.dryer != nullptr && !cheaper(sum, best)) continue;
    best = sum;
    drying.dryer = &dryer;
    drying.units = units;
  }
}

/// Length [m] the units take along the line, those side by side counted once.
Length installed_length(const Job& job, const Drying& drying) {
  if (drying.dryer == nullptr) return drying.length;
  const Dryer& dryer = *drying.dryer->item;
  const int in_line = whole_up(static_cast<double>(drying.units) / dryers_abreast(job, dryer));
  return std::max(drying.length, in_line * dryer.length->value);
}

/// What the lamps chosen give, on a line or on a carriage.
void add_doses(const Job& job, const Scan* scan, Curing& curing) {
  const LampWindow window = window_of(job, *curing.lamp->item);
  if (scan == nullptr) {
    curing.given = curing.rows * row_dose(window, job.speed->high);
    return;
  }
  curing.given = carriage_dose(window, scan->carriage_speed, scan->advance, curing.rows);
  curing.stroke = row_dose(window, scan->carriage_speed);
  curing.strokes = window.across / scan->advance;
}

std::optional<Dose> largest_dose(const Job& job, const std::vector<ChannelLoad>& loads) {
  std::optional<Dose> largest;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.family != InkFamily::uv || channel.ink == nullptr) continue;
    const Given<Dose>& dose = channel.ink->cure_dose;
    if (dose && (!largest || *largest < dose->high)) largest = dose->high;
  }
  return largest;
}

}  // namespace

const Scan* fastest_scan(const std::vector<Group>& groups) {
  const Scan* fastest = nullptr;
  for (const Group& group : groups) {
    if (!group.scan) continue;
    const bool more = fastest == nullptr || fastest->advance * fastest->carriage_speed <
                                                group.scan->advance * group.scan->carriage_speed;
    if (more) fastest = &*group.scan;
  }
  return fastest;
}

LampWindow window_of(const Job& job, const Lamp& lamp) {
  return {lamp.irradiance->value, lamp.shape ? lamp.shape->value : shape_not_stated,
          lamp.window_along->value, lamp.window_across->value, job.parameters[P::lamp_ageing]};
}

Curing size_curing(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   const std::vector<ChannelLoad>& loads) {
  Curing curing;
  curing.needed = std::any_of(loads.begin(), loads.end(), [&](const ChannelLoad& load) {
    return job.channels[load.channel].family == InkFamily::uv;
  });
  curing.dose = largest_dose(job, loads);
  const Scan* scan = fastest_scan(groups);
  const bool moves = scan != nullptr || (job.speed && job.speed->high > Speed());
  if (!curing.dose || !moves || printed_width(job) <= Length()) return curing;
  choose_lamp(job, book, groups, scan, curing);
  if (curing.lamp == nullptr) return curing;
  add_doses(job, scan, curing);
  const Lamp& lamp = *curing.lamp->item;
  if (lamp.electrical) curing.electrical = lamp.electrical->value * curing.lamps;
  // On a carriage the lamps travel: they take no length of the line.
  const Length depth = lamp.depth ? lamp.depth->value : lamp.window_along->value;
  if (scan == nullptr) curing.along = depth * curing.rows;
  return curing;
}

Drying size_drying(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads) {
  Drying drying;
  add_water(job, loads, drying);
  if (!drying.needed || !job.width || job.width->value <= Length()) return drying;
  const double efficiency = job.parameters[P::dryer_efficiency];
  drying.heat = evaporation_power(drying.water, heat_per_water(job));
  drying.electrical = dryer_power(drying.heat, efficiency);
  drying.electrical_mean =
      dryer_power(evaporation_power(drying.water_mean, heat_per_water(job)), efficiency);
  choose_dryer(job, book, drying);
  const Dryer* dryer = drying.dryer == nullptr ? nullptr : drying.dryer->item;
  drying.length = dryer_length(drying.water, job.width->value, rate_of(job, dryer));
  drying.along = installed_length(job, drying);
  return drying;
}

}  // namespace calc
