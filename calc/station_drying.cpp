/// Drying of aqueous inks: water, heat, air, dryers.
#include <algorithm>

#include "calc/compare.h"
#include "calc/present_value.h"
#include "calc/running.h"
#include "calc/station_cure.h"

namespace calc {
namespace {

std::optional<Money> times(const std::optional<Money>& price, int count) {
  if (!price) return std::nullopt;
  return *price * count;
}

double water_share(const Job& job, const Channel& channel) {
  const bool stated = channel.ink != nullptr && channel.ink->water_share;
  return stated ? channel.ink->water_share->value : job.parameters[P::water_share];
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
    drying.wet +=
        evaporated_water(load.passing * share, ink_density(job, channel), water, evaporated(job));
    drying.water_mean +=
        evaporated_water(load.printed, ink_density(job, channel), water, evaporated(job));
  }
  drying.water = drying.wet * job.printed_share;
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
  const Length needed = dryer_length(drying.wet, job.width->value, rate_of(job, &dryer));
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

/// Temperature of the air in the dryer, which a sensitive substrate caps.
Temperature dryer_air(const Job& job) {
  const Temperature usual = Temperature::celsius(job.parameters[P::dryer_air_c]);
  const Given<Temperature>& limit = job.request->substrate.temperature_limit;
  return limit ? std::min(usual, limit->low) : usual;
}

/// Heat [W] for water and web: from the room to the air leaving.
Power heat_for(const Job& job, const Drying& drying, MassFlow water, Speed speed) {
  const Power evaporation =
      evaporation_power(water, evaporation_energy(job.room.value, drying.air));
  const std::optional<WebHeat> web = web_heat(job);
  if (!web || !job.speed) return evaporation;
  return evaporation +
         web_power(web_width(job), speed, web->mass, web->heat, drying.air - job.room.value);
}

/// Humidity of the room's air [kg/kg] at its warmest, as it enters.
std::optional<double> room_humidity(const Job& job) {
  const Given<double>& given = job.request->line.air_humidity;
  const double share = given ? given->high : job.parameters[P::room_humidity];
  const std::optional<Pressure> saturated = saturation_pressure(served_high(job.room));
  if (!saturated) return std::nullopt;
  return humidity_ratio(share * *saturated);
}

/// What keeps air from carrying the water off.
std::optional<StageFailure> air_failure(const Job& job, const Drying& drying) {
  const double leaving = drying.humidity_out;
  const double dew = drying.dew_point ? drying.dew_point->in_celsius() : 0;
  if (drying.humidity_in && !(*drying.humidity_in < leaving)) {
    return StageFailure{"room_air", *drying.humidity_in, leaving, "kg/kg", false};
  }
  if (drying.dew_point && !(drying.air > *drying.dew_point)) {
    return StageFailure{"dew_point", drying.air.in_celsius(), dew, "degC", true};
  }
  if (!(drying.air > served_high(job.room))) {
    return StageFailure{"air", drying.air.in_celsius(), served_high(job.room).in_celsius(), "degC",
                        true};
  }
  return std::nullopt;
}

void add_air(const Job& job, Drying& drying) {
  drying.humidity_in = room_humidity(job);
  drying.humidity_out = job.parameters[P::exhaust_humidity];
  drying.dew_point = dew_point(drying.humidity_out);
  drying.dew_point_most =
      dew_point(std::max(drying.humidity_out, parameter(P::exhaust_humidity).high));
  drying.failure = air_failure(job, drying);
  if (drying.failure || !drying.humidity_in) return;
  drying.dry_air = exhaust_air(drying.water, drying.humidity_out - *drying.humidity_in);
  drying.exhaust = humid_air_flow(drying.dry_air, drying.humidity_out, drying.air);
}

/// Water and heat, all that dryers are chosen and run by; false where nothing is to be sized.
bool add_heat(const Job& job, const std::vector<ChannelLoad>& loads, Drying& drying) {
  add_water(job, loads, drying);
  if (!drying.needed || !job.width || job.width->value <= Length()) return false;
  const double efficiency = job.parameters[P::dryer_efficiency];
  drying.air = dryer_air(job);
  const Speed high = job.speed ? job.speed->high : Speed();
  const Speed nominal = job.speed ? job.speed->value : Speed();
  drying.at_least = !web_heat(job);
  drying.heat = heat_for(job, drying, drying.water, high);
  drying.electrical = dryer_power(drying.heat, efficiency);
  drying.electrical_mean =
      dryer_power(heat_for(job, drying, drying.water_mean, nominal), efficiency);
  return true;
}

}  // namespace

Drying size_drying(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads) {
  Drying drying;
  if (!add_heat(job, loads, drying)) return drying;
  add_air(job, drying);
  choose_dryer(job, book, drying);
  const Dryer* dryer = drying.dryer == nullptr ? nullptr : drying.dryer->item;
  drying.length = dryer_length(drying.wet, job.width->value, rate_of(job, dryer));
  drying.along = installed_length(job, drying);
  return drying;
}

Money cost_of_dryers(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads) {
  Drying drying;
  if (!add_heat(job, loads, drying)) return {};
  choose_dryer(job, book, drying);
  const auto price =
      drying.dryer == nullptr ? std::nullopt : times(drying.dryer->row.price, drying.units);
  const double kwh = drying.electrical_mean.si() / 1e3 * (running_time(job).si() / 3600);
  return ownership(price.value_or(Money()), to_money(kwh * job.energy.value), job.discount.value,
                   job.years);
}

}  // namespace calc
