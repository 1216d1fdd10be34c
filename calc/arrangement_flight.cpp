/// How the drops of an arrangement fly: smallest and largest level in use over the throws.
#include <algorithm>
#include <cmath>

#include "calc/flight_inputs.h"

namespace calc {
namespace {

constexpr Length measured_at = micrometres(1000);  // SpeedPoint::one_mm

/// Speed of a level's drop where the catalogue measures it; none where it does not say.
std::optional<Speed> stated_speed(const Head& head, const HeadMode& mode, std::size_t level) {
  if (mode.drop_speed) return mode.drop_speed->value.at(level);
  if (head.drop_speed) return head.drop_speed->value;
  return std::nullopt;
}

Density density_of(const Search& s, const GroupNeed& need) {
  for (const InkNeed& ink : need.inks) {
    const Ink* given = ink.channel->ink;
    if (given != nullptr && given->density) return given->density->value;
  }
  return Density::from_si(s.job->parameters[P::ink_density]);
}

LevelFlight fly_level(const FlightInputs& in, const StatedDrop& stated, const DropFlight& gaps) {
  LevelFlight flight;
  flight.drop = stated.drop;
  flight.diameter = drop_diameter(flight.drop);
  flight.law = flight_law(flight.diameter, in.density, in.air);
  flight.start = in.at_nozzle ? stated.speed : speed_before(flight.law, stated.speed, measured_at);
  const Departure departure(flight.law, flight.start);
  flight.stop = departure.stop();
  flight.least = departure.land(std::max(gaps.throw_least, Length{}));
  flight.nominal = departure.land(gaps.throw_nominal);
  flight.most = departure.land(gaps.throw_most);
  return flight;
}

/// Time by which a drop that starts slower or flies farther is late; of one that never arrives, the
/// whole time of the flight, which no budget forgives.
Time delay(const Departure& departure, Length way, Time on_time) {
  const std::optional<Landing> late = departure.land(way);
  return late ? late->time - on_time : on_time;
}

void fill_delays(const FlightInputs& in, DropFlight& flight) {
  const LevelFlight& small = flight.levels.front();
  const LevelFlight& large = flight.levels.at(flight.levels_used - 1);
  const Length way = flight.budget_throw;
  // Without sagitta the nominal throw is the budget's: that landing is known.
  const bool known = way == flight.throw_nominal;
  const std::optional<Landing> first = known ? small.nominal : land(small.law, small.start, way);
  const std::optional<Landing> last = known ? large.nominal : land(large.law, large.start, way);
  if (!first || !last) return;
  const Departure as_stated(small.law, small.start);
  const Departure slower(small.law, small.start * (1 - in.spread));
  flight.gap_delay = delay(as_stated, way + in.flutter, first->time);
  if (in.uneven > Length{}) {
    flight.thickness_delay = delay(as_stated, way + in.uneven, first->time);
  }
  flight.speed_delay = delay(slower, way, first->time);
  flight.level_delay = seconds(std::abs(first->time.si() - last->time.si()));
  if (in.sideways) {
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

std::optional<FlightInputs> flight_inputs(const Search& search, const GroupNeed& need,
                                          const Arrangement& a) {
  const Head& head = search.catalogue->heads[a.shape.head];
  const HeadMode& mode = head.modes[a.shape.mode];
  FlightInputs in;
  in.levels_used = a.level > 0 ? 2 : 1;
  for (std::size_t i = 0; i < in.levels_used; ++i) {
    const std::size_t of = i == 0 ? 0 : a.level;
    const std::optional<Speed> stated = stated_speed(head, mode, of);
    if (!stated) return std::nullopt;
    in.levels.at(i) = {mode.drops->value[of], *stated};
  }
  in.gap = throw_of(*search.job, head);
  if (head.straightness) in.straightness = head.straightness->high;
  if (head.speed_spread) in.speed_spread = head.speed_spread->high;
  in.spread = in.speed_spread.value_or(search.job->parameters[P::speed_spread]);
  in.flutter = served_high(search.job->throw_variation);
  in.uneven = search.job->thickness_variation;
  const Given<JetDirection>& jetting = search.job->request->line.jetting;
  in.sideways = jetting && jetting->value == JetDirection::sideways;
  in.at_nozzle = head.drop_speed_at && head.drop_speed_at->value == SpeedPoint::nozzle;
  in.air = air_at(search.job->room.value);
  in.density = density_of(search, need);
  return in;
}

DropFlight fly(const FlightInputs& in) {
  DropFlight flight;
  fill_gaps(in.gap, flight);
  flight.straightness = in.straightness;
  flight.speed_spread = in.speed_spread;
  flight.levels_used = in.levels_used;
  for (std::size_t i = 0; i < in.levels_used; ++i) {
    flight.levels.at(i) = fly_level(in, in.levels.at(i), flight);
  }
  fill_delays(in, flight);
  return flight;
}

std::size_t Flights::Hash::operator()(const FlightInputs& in) const {
  const std::hash<double> hash;
  std::size_t all = 0;
  for (const double value : {in.gap.nominal.si(), in.gap.least.si(), in.gap.most.si(),
                             in.levels[0].drop.si(), in.levels[0].speed.si(), in.density.si()}) {
    all = all * 31 + hash(value);
  }
  return all;
}

const DropFlight& Flights::of(const FlightInputs& inputs) {
  const auto known = known_.find(inputs);
  return known != known_.end() ? known->second : known_.emplace(inputs, fly(inputs)).first->second;
}

const DropFlight* flight_of(const Search& search, const GroupNeed& need, const Arrangement& a) {
  const std::optional<FlightInputs> inputs = flight_inputs(search, need, a);
  return inputs ? &search.flights->of(*inputs) : nullptr;
}

}  // namespace calc
