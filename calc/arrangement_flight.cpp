/// How the drops of an arrangement fly: smallest and largest level in use over the throws.
#include <algorithm>
#include <cmath>

#include "calc/arrangement.h"
#include "calc/throw.h"

namespace calc {
namespace {

constexpr Length measured_at = micrometres(1000);  // SpeedPoint::one_mm

/// Speed of a level's drop where the catalogue measures it; none where it does not say.
std::optional<Speed> stated_speed(const ModeFacts& f, std::size_t level) {
  if (f.mode->drop_speed) return f.mode->drop_speed->value.at(level);
  if (f.head->drop_speed) return f.head->drop_speed->value;
  return std::nullopt;
}

Density density_of(const Search& s, const GroupNeed& need) {
  for (const InkNeed& ink : need.inks) {
    const Ink* given = ink.channel->ink;
    if (given != nullptr && given->density) return given->density->value;
  }
  return Density::from_si(s.job->parameters[P::ink_density]);
}

LevelFlight fly(const ModeFacts& f, std::size_t level, Speed stated, Density density,
                const Air& air, const DropFlight& gaps) {
  LevelFlight flight;
  flight.drop = f.mode->drops->value[level];
  flight.diameter = drop_diameter(flight.drop);
  flight.law = flight_law(flight.diameter, density, air);
  const bool at_nozzle =
      f.head->drop_speed_at && f.head->drop_speed_at->value == SpeedPoint::nozzle;
  flight.start = at_nozzle ? stated : speed_before(flight.law, stated, measured_at);
  flight.stop = stopping_distance(flight.law, flight.start);
  flight.least = land(flight.law, flight.start, std::max(gaps.throw_least, Length{}));
  flight.nominal = land(flight.law, flight.start, gaps.throw_nominal);
  flight.most = land(flight.law, flight.start, gaps.throw_most);
  return flight;
}

/// Time by which a drop that starts slower or flies farther is late; of one that never arrives, the
/// whole time of the flight, which no budget forgives.
Time delay(const LevelFlight& of, Speed start, Length way, Time on_time) {
  const std::optional<Landing> late = land(of.law, start, way);
  return late ? late->time - on_time : on_time;
}

void fill_delays(const Search& s, DropFlight& flight) {
  const LevelFlight& small = flight.levels.front();
  const LevelFlight& large = flight.levels.at(flight.levels_used - 1);
  const Length way = flight.budget_throw;
  const std::optional<Landing> first = land(small.law, small.start, way);
  const std::optional<Landing> last = land(large.law, large.start, way);
  if (!first || !last) return;
  const double spread = flight.speed_spread.value_or(s.job->parameters[P::speed_spread]);
  const Length flutter = served_high(s.job->throw_variation);
  flight.gap_delay = delay(small, small.start, way + flutter, first->time);
  flight.speed_delay = delay(small, small.start * (1 - spread), way, first->time);
  flight.level_delay = seconds(std::abs(first->time.si() - last->time.si()));
  const Given<JetDirection>& jetting = s.job->request->line.jetting;
  if (jetting && jetting->value == JetDirection::sideways) {
    flight.sag_spread = metres(std::abs(sag(first->time).si() - sag(last->time).si()));
  }
}

void fill_gaps(const Throw& gap, DropFlight& flight) {
  flight.throw_least = gap.least;
  flight.throw_nominal = gap.nominal + gap.along + gap.across;
  flight.throw_most = gap.most;
  flight.budget_throw = gap.greatest_nominal;
  flight.sagitta_along = gap.along;
  flight.sagitta_across = gap.across;
  flight.slope = gap.slope.value_or(0);
}

}  // namespace

std::optional<DropFlight> flight_of(const Search& search, const GroupNeed& need,
                                    const ModeFacts& facts, std::size_t level) {
  DropFlight flight;
  fill_gaps(throw_of(*search.job, *facts.head), flight);
  if (facts.head->straightness) flight.straightness = facts.head->straightness->high;
  if (facts.head->speed_spread) flight.speed_spread = facts.head->speed_spread->high;
  flight.levels_used = level > 0 ? 2 : 1;
  const Air air = air_at(search.job->room.value);
  const Density density = density_of(search, need);
  for (std::size_t i = 0; i < flight.levels_used; ++i) {
    const std::size_t of = i == 0 ? 0 : level;
    const std::optional<Speed> stated = stated_speed(facts, of);
    if (!stated) return std::nullopt;
    flight.levels.at(i) = fly(facts, of, *stated, density, air, flight);
  }
  fill_delays(search, flight);
  return flight;
}

}  // namespace calc
