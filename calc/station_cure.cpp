#include "calc/station_cure.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "calc/compare.h"
#include "calc/present_value.h"
#include "calc/running.h"

namespace calc {
namespace {

constexpr double most_rows = 100;  // beyond it a lamp is no answer
constexpr int carriage_sides = 2;  // a lamp on either side cures both stroke directions

struct LampFit {
  int rows = 0, lamps = 0;
  int lit = 0;  ///< at a time: of a carriage's, those behind the heads in the stroke
};

/// What a stage asks of its lamps.
struct LampDemand {
  Dose dose;
  std::optional<Irradiance> least;
  int sets = 1;           ///< places along the line, each with all its rows
  bool dimmable = false;  ///< no arc lamps
  Dose reaction;          ///< heat the ink itself gives off
};

/// Where lamps are looked for.
struct LampSearch {
  const Job& job;
  const PriceBook& book;
  std::optional<std::size_t> head;  ///< of the first group, for which an exhaust would be chosen
  bool exhausted = false;           ///< an ink asks for exhaust anyway
  const Scan* scan = nullptr;
  int passes() const { return scan == nullptr ? 1 : scan->passes; }
};

LampSearch search_of(const Job& job, const PriceBook& book, const std::vector<Group>& groups) {
  std::optional<std::size_t> head;
  if (!groups.empty()) head = book.find_head(groups.front().head).value_or(book.head_count());
  const bool exhausted = std::any_of(groups.begin(), groups.end(),
                                     [&](const Group& g) { return wants_vapour_exhaust(job, g); });
  return {job, book, head, exhausted, fastest_scan(groups)};
}

bool usable(const Lamp& lamp) {
  return lamp.irradiance && lamp.window_along && lamp.window_across &&
         lamp.irradiance->value > Irradiance() && lamp.window_along->value > Length() &&
         lamp.window_across->value > Length();
}

bool is_arc(const Lamp& lamp) { return lamp.mercury && lamp.mercury->value; }

/// Lamps lit side by side of a carriage for a dose: as many as light the last ink of a point for
/// all the strokes that the dose takes. None where a lamp is too weak to be an answer.
std::optional<LampFit> fit_carriage(const LampSearch& s, const LampWindow& window, Dose dose) {
  const double one = dose / row_dose(window, s.scan->carriage_speed);
  const double strokes = std::max(1.0, ceil_tolerant(one));
  const double lit = carriage_lit(window.across, s.scan->advance, s.passes(), strokes);
  if (!(lit <= most_rows)) return std::nullopt;
  const int count = static_cast<int>(lit);
  return LampFit{count, carriage_sides * count, count};
}

/// Rows and lamps for a dose; none where a lamp is too weak to be an answer.
std::optional<LampFit> fit_lamp(const LampSearch& s, const Lamp& lamp, const LampDemand& demand) {
  const LampWindow window = window_of(s.job, lamp);
  if (s.scan != nullptr) return fit_carriage(s, window, demand.dose);
  const Speed speed = s.job.speed ? s.job.speed->high : Speed();
  if (demand.dose > row_dose(window, speed) * most_rows) return std::nullopt;
  const int rows = demand.sets * lamp_rows(demand.dose, window, speed);
  const int lamps = lamp_count(rows, printed_width(s.job), window.across);
  return LampFit{rows, lamps, lamps};
}

/// Hottest web: new lamps at the least speed, on what pinning has warmed before.
std::optional<Temperature> web_under(const LampSearch& s, const Lamp& lamp, const LampFit& fit,
                                     const LampDemand& demand, TemperatureDifference before) {
  const std::optional<WebHeat> web = web_heat(s.job);
  if (!web) return std::nullopt;
  // Lamps lit together on a carriage stand side by side: a stroke brings the light of one.
  const int rows = s.scan == nullptr ? fit.rows : 1;
  const Dose dose = rows * heating_dose(s.job, lamp, s.scan);
  const Dose reaction = demand.reaction / (s.scan == nullptr ? 1 : prints_over_point(*s.scan));
  return served_high(s.job.room) + before + lamp_rise(s.job, *web, dose, is_arc(lamp), reaction);
}

/// The way a lamp that is strong enough does not fit: too dim for the ink, or too hot.
std::optional<StageFailure> lamp_failure(const LampSearch& s, const Lamp& lamp,
                                         const LampDemand& demand,
                                         const std::optional<Temperature>& web) {
  const Irradiance aged = lamp.irradiance->value * s.job.parameters[P::lamp_ageing];
  if (demand.least && !at_least(aged, *demand.least)) {
    return StageFailure{"irradiance", aged.si() * 1e-4, demand.least->si() * 1e-4, "W/cm2", true};
  }
  const Given<Temperature>& most = s.job.request->substrate.temperature_limit;
  if (!web || !most || at_most(web->si(), most->low.si())) return std::nullopt;
  return StageFailure{"web", web->in_celsius(), most->low.in_celsius(), "degC", false};
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
void add_exhaust(const LampSearch& s, LampCost& cost) {
  if (s.exhausted || !s.head) return;
  const Priced<Part>* fan = s.book.part(PartKind::exhaust, *s.head, InkFamily::uv);
  if (fan == nullptr || !fan->row.price) ++cost.unpriced;
  if (fan != nullptr && fan->row.price) cost.sum = cost.sum + *fan->row.price;
}

LampCost lamp_cost(const LampSearch& s, const Priced<Lamp>& lamp, const LampFit& fit) {
  const Job& job = s.job;
  LampCost cost;
  const std::optional<Money> price = times(lamp.row.price, fit.lamps);
  if (price) cost.sum = *price;
  if (!price) ++cost.unpriced;
  const Given<Power>& power = lamp.item->electrical;
  if (!power) ++cost.unpriced;
  if (power && job.years > 0) {
    const double kwh = fit.lit * power->value.si() / 1e3 * (running_time(job).si() / 3600);
    cost.sum = ownership(cost.sum, to_money(kwh * job.energy.value), job.discount.value, job.years);
  }
  if (lamp.item->mercury && lamp.item->mercury->value) add_exhaust(s, cost);
  return cost;
}

/// A lamp too weak even in the most rows: what these give against what is asked.
StageFailure too_weak(const LampSearch& s, const Lamp& lamp, const LampDemand& demand) {
  const LampWindow window = window_of(s.job, lamp);
  double rows = most_rows;
  Speed speed = s.job.speed ? s.job.speed->high : Speed();
  if (s.scan != nullptr) {
    rows = carriage_strokes(window.across, s.scan->advance, s.passes(), static_cast<int>(rows));
    speed = s.scan->carriage_speed;
  }
  const Dose most = rows * row_dose(window, speed);
  return {"dose", most.si() / 10, demand.dose.si() / 10, "mJ/cm2", true};
}

/// Takes the lamp as the stage's if it fits and costs less than the one before.
void try_lamp(const LampSearch& s, const Priced<Lamp>& lamp, const LampDemand& demand,
              TemperatureDifference before, LampCost& best, Curing& curing) {
  const std::optional<LampFit> fit = fit_lamp(s, *lamp.item, demand);
  const auto web =
      fit ? web_under(s, *lamp.item, *fit, demand, before) : std::optional<Temperature>();
  const std::optional<StageFailure> failure =
      fit ? lamp_failure(s, *lamp.item, demand, web) : too_weak(s, *lamp.item, demand);
  if (failure) {
    if (!curing.failure) curing.failure = failure;
    return;
  }
  const LampCost cost = lamp_cost(s, lamp, *fit);
  if (curing.lamp != nullptr && !(cost < best)) return;
  best = cost;
  curing.lamp = &lamp;
  curing.rows = fit->rows;
  curing.lamps = fit->lamps;
  curing.lit = fit->lit;
  curing.web = web;
}

void choose_lamp(const LampSearch& s, const LampDemand& demand, TemperatureDifference before,
                 Curing& curing) {
  LampCost best;
  for (const Priced<Lamp>& lamp : s.book.lamps()) {
    if (!usable(*lamp.item) || (demand.dimmable && is_arc(*lamp.item))) continue;
    try_lamp(s, lamp, demand, before, best, curing);
  }
  if (curing.lamp != nullptr) curing.failure.reset();
}

/// What the lamps chosen give, on a line or on a carriage.
void add_doses(const Job& job, const Scan* scan, Curing& curing) {
  const LampWindow window = window_of(job, *curing.lamp->item);
  if (scan == nullptr) {
    curing.given = curing.rows * row_dose(window, job.speed->high);
    return;
  }
  curing.stroke = row_dose(window, scan->carriage_speed);
  curing.strokes = carriage_strokes(window.across, scan->advance, scan->passes, curing.lit);
  curing.given = curing.strokes * *curing.stroke;
  curing.after = (curing.strokes - 1) * scan->stroke_time;
  curing.feed = curing.lit * window.across;
}

/// The greatest of one figure over the UV inks in use; none where no ink states it.
template <class T>
std::optional<T> largest(const Job& job, const std::vector<ChannelLoad>& loads,
                         Given<T> Ink::*member) {
  std::optional<T> most;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.family != InkFamily::uv || channel.ink == nullptr) continue;
    const Given<T>& given = channel.ink->*member;
    if (given && (!most || *most < served_high(*given))) most = served_high(*given);
  }
  return most;
}

bool prints_uv(const Job& job, const std::vector<ChannelLoad>& loads) {
  return std::any_of(loads.begin(), loads.end(), [&](const ChannelLoad& load) {
    return job.channels[load.channel].family == InkFamily::uv;
  });
}

/// Places of pinning along the line by group: behind every colour position of those that ask for it
/// but the last of the station, which goes to the final cure. At least one.
std::vector<int> pinning_places(const Job& job, const std::vector<Group>& groups,
                                const std::vector<ChannelLoad>& loads) {
  std::vector<int> places(groups.size(), 0);
  bool last = false;
  int sum = 0;
  for (std::size_t g = 0; g < groups.size(); ++g) {
    last = std::any_of(loads.begin(), loads.end(), [&](const ChannelLoad& load) {
      const Ink* ink = job.channels[load.channel].ink;
      return load.group == g && ink != nullptr && ink->pinning_dose;
    });
    if (last) places[g] = groups[g].positions;
    sum += places[g];
  }
  if (last && sum > 1) --places.back();
  return places;
}

/// What follows from the lamps chosen.
void add_lamps(const LampSearch& s, int sets, Curing& curing) {
  const Lamp& lamp = *curing.lamp->item;
  add_doses(s.job, s.scan, curing);
  if (curing.given) *curing.given = *curing.given / sets;
  curing.optical = curing.lit * optical_power(window_of(s.job, lamp));
  if (lamp.electrical) {
    curing.electrical = lamp.electrical->value * curing.lamps;
    curing.drawn = lamp.electrical->value * curing.lit;
    // Arc lamps radiate more than the ultraviolet stated: all but that is counted as heat.
    const Power heat = lamp_heat(*curing.drawn, curing.optical);
    curing.heat = std::max(heat, Power());
  }
  // On a carriage the lamps travel: they take no length of the line.
  if (s.scan == nullptr) curing.along = lamp_depth(lamp) * curing.rows;
}

bool sizable(const Job& job, const Scan* scan) {
  const bool moves = scan != nullptr || (job.speed && job.speed->high > Speed());
  return moves && printed_width(job) > Length();
}

/// Pinning in those places along the line, and its lamps; none on a carriage.
Curing pinning_of(const LampSearch& s, const std::vector<ChannelLoad>& loads,
                  std::vector<int> places) {
  Curing pinning;
  pinning.dose = largest(s.job, loads, &Ink::pinning_dose);
  pinning.needed = pinning.dose.has_value();
  if (!pinning.needed || !sizable(s.job, s.scan)) return pinning;
  LampDemand demand;
  demand.dose = *pinning.dose;
  demand.sets = std::max(1, std::accumulate(places.begin(), places.end(), 0));
  demand.dimmable = true;
  pinning.sets = demand.sets;
  pinning.places = std::move(places);
  // Dimmed with the line, they give the dose asked for and no more: too little to fail by heat.
  choose_lamp(s, demand, {}, pinning);
  pinning.web.reset();
  if (pinning.lamp != nullptr) add_lamps(s, demand.sets, pinning);
  return pinning;
}

/// The final cure behind that pinning, and its lamps.
Curing curing_of(const LampSearch& s, const std::vector<ChannelLoad>& loads,
                 const Curing& pinning) {
  Curing curing;
  curing.needed = prints_uv(s.job, loads);
  curing.dose = largest(s.job, loads, &Ink::cure_dose);
  curing.least = largest(s.job, loads, &Ink::cure_irradiance);
  if (!curing.dose || !sizable(s.job, s.scan)) return curing;
  LampDemand demand;
  demand.dose = *curing.dose;
  demand.least = curing.least;
  demand.reaction = cure_reaction(s.job, loads);
  TemperatureDifference before;
  const std::optional<WebHeat> web = web_heat(s.job);
  if (web && pinning.dose) {
    before = lamp_rise(s.job, *web, *pinning.dose * pinning.sets, false, Dose());
  }
  choose_lamp(s, demand, before, curing);
  if (curing.lamp != nullptr) add_lamps(s, demand.sets, curing);
  return curing;
}

/// Depth on a carriage of the lamp of a stage, one side.
Length rider_depth(const PriceBook& book, const Curing& stage) {
  if (!stage.needed) return {};
  if (stage.lamp != nullptr) return lamp_depth(*stage.lamp->item);
  Length deepest;
  for (const Priced<Lamp>& lamp : book.lamps()) {
    deepest = std::max(deepest, lamp_depth(*lamp.item));
  }
  return deepest;
}

}  // namespace

void stand_pinning(const Curing& pinning, std::vector<Group>& groups) {
  for (std::size_t g = 0; g < groups.size(); ++g) {
    groups[g].pinned_places = g < pinning.places.size() ? pinning.places[g] : 0;
    groups[g].pinned_each = pinning.along / pinning.sets;
  }
}

Length carriage_lamps(const Job& job, const PriceBook& book, const CarriageInks& inks,
                      const Scan& scan) {
  const LampSearch s{job, book, inks.head, inks.exhausted, &scan};
  const Curing pinning = pinning_of(s, inks.loads, {});
  const Curing curing = curing_of(s, inks.loads, pinning);
  return carriage_sides * (rider_depth(book, pinning) + rider_depth(book, curing));
}

Curing size_pinning(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                    const std::vector<ChannelLoad>& loads) {
  const LampSearch s = search_of(job, book, groups);
  return pinning_of(s, loads,
                    s.scan == nullptr ? pinning_places(job, groups, loads) : std::vector<int>());
}

Curing size_curing(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   const std::vector<ChannelLoad>& loads, const Curing& pinning) {
  return curing_of(search_of(job, book, groups), loads, pinning);
}

Money least_of_lamps(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads,
                     bool scanning) {
  LampSearch s{job, book, {}, true, nullptr};  // an exhaust is a line of its own
  LampDemand demand;
  const std::optional<Dose> dose = largest(job, loads, &Ink::cure_dose);
  if (!dose || !sizable(job, nullptr)) return {};
  demand.dose = *dose;
  demand.least = largest(job, loads, &Ink::cure_irradiance);
  std::optional<Money> least;
  for (const Priced<Lamp>& lamp : book.lamps()) {
    if (!usable(*lamp.item) || lamp_failure(s, *lamp.item, demand, {})) continue;
    const auto fit = scanning ? LampFit{1, carriage_sides, 1} : fit_lamp(s, *lamp.item, demand);
    if (!fit) continue;
    const Money sum = lamp_cost(s, lamp, *fit).sum;
    least = least ? std::min(*least, sum) : sum;
  }
  return least.value_or(Money());
}

}  // namespace calc
