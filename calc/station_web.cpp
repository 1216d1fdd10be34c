#include "calc/station_web.h"

#include <algorithm>

#include "calc/cure.h"

namespace calc {

std::optional<WebHeat> web_heat(const Job& job) {
  const Substrate& s = job.request->substrate;
  if (!s.area_mass) return std::nullopt;
  const SpecificHeat heat = s.heat_capacity
                                ? s.heat_capacity->low
                                : SpecificHeat::from_si(job.parameters[P::web_heat_capacity] * 1e3);
  return WebHeat{s.area_mass->low, heat};
}

Length web_width(const Job& job) {
  const Length image = job.width ? job.width->value : Length();
  const Given<Length>& product = job.request->product.width;
  return product ? std::max(image, product->value) : image;
}

Density ink_density(const Job& job, const Channel& channel) {
  const bool stated = channel.ink != nullptr && channel.ink->density;
  return stated ? channel.ink->density->value : Density::from_si(job.parameters[P::ink_density]);
}

Dose cure_reaction(const Job& job, const std::vector<ChannelLoad>& loads) {
  const double process = process_share(job, loads);
  const auto per_mass = SpecificEnergy::from_si(job.parameters[P::cure_heat] * 1e3);
  Dose sum;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = job.channels[load.channel];
    if (channel.family != InkFamily::uv) continue;
    const double share = channel.kind == ColourKind::process ? process : 1;
    const Length film = load.laydown * channel.cover_peak.value * share;
    sum += reaction_heat(area_mass(film, ink_density(job, channel)), per_mass);
  }
  return sum;
}

TemperatureDifference lamp_rise(const Job& job, const WebHeat& web, Dose dose, bool arc,
                                Dose reaction) {
  const double all = arc ? job.parameters[P::arc_radiation] : 1;
  return web_rise(all * dose, job.parameters[P::light_absorbed], reaction, web.mass, web.heat);
}

}  // namespace calc
