#include "calc/station_vapour.h"

#include <algorithm>

#include "calc/station_web.h"

namespace calc {
namespace {

bool said_yes(const Given<bool>& given) { return given && given->value; }

/// What the channels together have of one limit, by mole; nullopt where one is not known.
std::optional<double> together(const Vapour& vapour, std::optional<double> Blend::*limit) {
  std::vector<ExplosivePart> list;
  for (const ChannelVapour& c : vapour.channels) {
    if (!c.blend.molar_mass || !(c.blend.*limit)) return std::nullopt;
    list.push_back({c.flow / *c.blend.molar_mass / hertz(1), *(c.blend.*limit)});
  }
  return mixture_limit(list);
}

std::optional<VolumeFlow> volume_of(const Vapour& vapour) {
  VolumeFlow sum;
  for (const ChannelVapour& c : vapour.channels) {
    if (!c.blend.molar_mass) return std::nullopt;
    sum += vapour_volume(c.flow, *c.blend.molar_mass);
  }
  return sum;
}

void add_channels(const Job& job, const std::vector<ChannelLoad>& loads,
                  const std::vector<ChannelFlow>& flows, Vapour& vapour) {
  const double process = process_share(job, loads);
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const Channel& channel = job.channels[loads[i].channel];
    if (!gives_vapour(channel)) continue;
    ChannelVapour c{loads[i].channel, blend_of(job, channel), {}};
    const double share = channel.kind == ColourKind::process ? process : 1;
    const Density density = ink_density(job, channel);
    c.flow = loads[i].passing * share * density * c.blend.evaporates + flows[i].flush * density;
    vapour.total += c.flow;
    vapour.yearly_mean += flows[i].ink() * density * c.blend.evaporates + flows[i].flush * density;
    vapour.lel_estimated |= c.blend.lel_estimated;
    vapour.lel_hot |= c.blend.lel_hot;
    vapour.channels.push_back(std::move(c));
  }
  vapour.needed = !vapour.channels.empty() && vapour.total > MassFlow();
}

void add_air(const Job& job, Vapour& vapour) {
  const Ends captured = captured_share(job), mixing = ends_of(job.parameters, P::mixing);
  vapour.volume = volume_of(vapour);
  vapour.lel = together(vapour, &Blend::lel);
  vapour.limit = together(vapour, &Blend::limit);
  if (!vapour.volume) return;
  if (vapour.lel && captured.likely > 0) {
    vapour.explosion = explosion_air(*vapour.volume, *vapour.lel, vapour.explosive_share,
                                     hot_factor(vapour.exhaust, vapour.lel_hot));
    vapour.explosion_hot = at_temperature(*vapour.explosion, vapour.exhaust);
  }
  if (!vapour.limit) return;
  const auto health = [&](double share, double mixed) {
    return health_air(*vapour.volume * (1 - share), *vapour.limit, mixed);
  };
  vapour.health_least = health(captured.high, mixing.low);
  vapour.health = health(captured.likely, mixing.likely);
  vapour.health_most = health(captured.low, mixing.high);
}

}  // namespace

Ends ends_of(const Parameters& parameters, P id) {
  const double likely = parameters[id];
  const Parameter& row = parameter(id);
  return {std::min(likely, row.low), likely, std::max(likely, row.high)};
}

Ends captured_share(const Job& job) {
  if (!said_yes(job.request->line.enclosed)) return {};
  return ends_of(job.parameters, P::captured_share);
}

Vapour size_vapour(const Job& job, const std::vector<ChannelLoad>& loads,
                   const std::vector<ChannelFlow>& flows) {
  Vapour vapour;
  add_channels(job, loads, flows, vapour);
  if (!vapour.needed) return vapour;
  const Line& line = job.request->line;
  vapour.captured = vapour.total * captured_share(job).likely;
  vapour.room = vapour.total - vapour.captured;
  const P share = said_yes(line.vapour_monitored) ? P::lel_share_monitored : P::lel_share;
  vapour.explosive_share = job.parameters[share];
  vapour.exhaust = Temperature::celsius(job.parameters[P::vapour_exhaust_c]);
  add_air(job, vapour);
  return vapour;
}

}  // namespace calc
