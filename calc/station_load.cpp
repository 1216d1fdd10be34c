#include "calc/station_load.h"

#include <algorithm>

#include "calc/compare.h"
#include "calc/laydown.h"
#include "calc/scan.h"
#include "calc/supply.h"

namespace calc {
namespace {

const Temperature light_vapour_below = Temperature::celsius(23);

bool scans(const std::vector<Group>& groups) {
  return std::any_of(groups.begin(), groups.end(),
                     [](const Group& g) { return g.scan.has_value(); });
}

double active_nozzles(const Job& job, const Group& group) {
  if (group.scan) {
    const Scan& scan = *group.scan;
    return printing_nozzles(scan.advance, group.resolution_along, scan.quality_passes) *
           static_cast<double>(group.film_heads);
  }
  return printed_width(job) * group.resolution_across * group.stack * group.film_heads;
}

VolumeFlow solid_flow(const Job& job, const Group& group, Length laydown) {
  if (group.scan) return printed_flow(group.scan->advance, group.scan->carriage_speed, laydown, 1);
  const Speed speed = job.speed ? job.speed->high : Speed();
  return printed_flow(printed_width(job), speed, laydown, 1);
}

const ChannelDots* dots_of(const Group& group, const std::string& channel) {
  for (const ChannelDots& dots : group.dots) {
    if (dots.channel == channel) return &dots;
  }
  return nullptr;
}

ChannelLoad load_of(const Job& job, const Group& group, std::size_t channel, AreaRates area) {
  const Channel& colour = job.channels[channel];
  const ChannelDots* dots = dots_of(group, colour.name);
  const Length laydown = metres(dots == nullptr ? 0 : dots->laydown);
  ChannelLoad load;
  load.channel = channel;
  load.heads = group.heads_total / std::max(1, group.positions);
  load.laydown = laydown;
  load.active_nozzles = active_nozzles(job, group);
  load.data = data_rate(load.active_nozzles, group.frequency_per_nozzle, group.bits);
  load.solid = solid_flow(job, group, laydown);
  load.peak = load.solid * colour.cover_peak.value;
  load.passing = area.highest * laydown * colour.cover_peak.value;
  load.printed = area.nominal * laydown * (colour.cover_mean.value * job.printed_share);
  return load;
}

}  // namespace

Length printed_width(const Job& job) {
  return job.width ? job.width->value + 2 * job.margin.value : Length();
}

bool wants_pretreatment(const Job& job, const Channel& channel) {
  if (channel.family == InkFamily::aqueous && job.absorbency == Absorbency::none) return true;
  const Given<SurfaceTension>& energy = job.request->substrate.surface_energy;
  if (!energy || channel.ink == nullptr || !channel.ink->surface_tension) return false;
  const SurfaceTension margin = millinewtons_per_metre(job.parameters[P::wetting_margin]);
  return !at_least(served_low(*energy), served_high(*channel.ink->surface_tension) + margin);
}

bool wants_vapour_exhaust(const Job& job, std::size_t channel) {
  const Channel& c = job.channels[channel];
  const bool light =
      c.ink != nullptr && c.ink->flash_point && c.ink->flash_point->low < light_vapour_below;
  return light || c.family == InkFamily::solvent || c.family == InkFamily::aqueous;
}

bool wants_vapour_exhaust(const Job& job, const Group& group) {
  for (std::size_t i = 0; i < job.channels.size(); ++i) {
    const std::string& name = job.channels[i].name;
    const bool here =
        std::find(group.channels.begin(), group.channels.end(), name) != group.channels.end();
    if (here && wants_vapour_exhaust(job, i)) return true;
  }
  return false;
}

AreaRates area_rates(const Job& job, const std::vector<Group>& groups) {
  return area_rates(job, scans(groups));
}

AreaRates area_rates(const Job& job, bool scanning) {
  if (scanning) {
    if (!job.throughput) return {};
    return {job.throughput->value, job.throughput->high};
  }
  if (!job.width || !job.speed) return {};
  return {job.width->value * job.speed->value, job.width->value * job.speed->high};
}

std::optional<Frequency> parts_rate(const Job& job) {
  if (job.parts_rate) return job.parts_rate;
  if (!job.speed || job.pitch.value <= Length()) return std::nullopt;
  return job.speed->value / job.pitch.value;
}

std::vector<ChannelLoad> channel_loads(const Job& job, const std::vector<Group>& groups) {
  std::vector<ChannelLoad> loads;
  loads.reserve(job.channels.size());
  const AreaRates area = area_rates(job, groups);
  for (std::size_t g = 0; g < groups.size(); ++g) {
    for (const std::string& name : groups[g].channels) {
      const auto found = std::find_if(job.channels.begin(), job.channels.end(),
                                      [&](const Channel& c) { return c.name == name; });
      if (found == job.channels.end()) continue;
      const auto index = static_cast<std::size_t>(found - job.channels.begin());
      loads.push_back(load_of(job, groups[g], index, area));
      loads.back().group = g;
    }
  }
  return loads;
}

ProcessFilm process_film(const Job& job, const std::vector<ChannelLoad>& loads) {
  Length solid;
  ProcessFilm film{0, 0, process_limit(job)};
  for (const ChannelLoad& load : loads) {
    if (job.channels[load.channel].kind != ColourKind::process) continue;
    solid = std::max(solid, load.laydown);
  }
  if (solid <= Length()) return film;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.kind != ColourKind::process) continue;
    const double peak = load.laydown / solid * channel.cover_peak.value;
    film.peak += peak;
    if (channel.cover_peak.origin.kind == OriginKind::given) film.given += peak;
  }
  return film;
}

double process_share(const Job& job, const std::vector<ChannelLoad>& loads) {
  const ProcessFilm film = process_film(job, loads);
  return film.peak <= film.limit ? 1 : film.limit / film.peak;
}

}  // namespace calc
