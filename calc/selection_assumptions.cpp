/// Which defaults stand behind a station's figures, beyond those the job itself took.
#include <algorithm>

#include "calc/blend.h"
#include "calc/drive.h"
#include "calc/named.h"
#include "calc/selection_parts.h"
#include "calc/settling.h"

namespace calc {
namespace {

class Defaults {
 public:
  explicit Defaults(const Job& job) : job_(job) {}
  void use(P id) {
    if (std::find(used_.begin(), used_.end(), id) == used_.end()) used_.push_back(id);
  }
  void use_if(bool condition, P id) {
    if (condition) use(id);
  }
  const Job& job() const { return job_; }
  std::vector<P> take() { return std::move(used_); }

 private:
  const Job& job_;
  std::vector<P> used_;
};

void dot_defaults(Defaults& d, const Group& group) {
  const bool guess = std::any_of(group.dots.begin(), group.dots.end(),
                                 [](const ChannelDots& c) { return c.spread_from == "class"; });
  if (!guess) return;
  const Absorbency a = d.job().absorbency;
  d.use(a == Absorbency::none  ? P::spread_none
        : a == Absorbency::low ? P::spread_low
                               : P::spread_high);
}

/// Tolerances the budgets of placement take where nothing says them.
void placement_defaults(Defaults& d, const std::vector<Group>& groups) {
  const bool flown = std::all_of(groups.begin(), groups.end(),
                                 [](const Group& g) { return g.flight.has_value(); });
  if (!flown) return;
  int heads = 0;
  for (const Group& g : groups) {
    d.use_if(!g.flight->straightness, P::straightness_mrad);
    d.use_if(!g.flight->speed_spread, P::speed_spread);
    heads += g.heads_total;
  }
  const Request& r = *d.job().request;
  const bool image = r.image.placement.has_value();
  d.use_if(groups.front().scan || !encoder_step(d.job()), P::encoder_count_um);
  for (const P id : {P::sensor_repeat_um, P::sensor_distance_mm}) d.use_if(image, id);
  if (heads < 2 && !image) return;
  d.use_if(!r.line.mount_tolerance, P::mount_um);
  d.use_if(!r.line.wheel_error, P::wheel_error);
  d.use(P::thermal_drift_k);
  if (d.job().radius) return;
  // The product of a carriage stands still but for its place, off which it may have wandered.
  d.use_if(!r.line.weave && (image || !groups.front().scan), P::weave_mm);
  if (groups.front().scan) return;
  d.use_if(!r.line.weave_wavelength, P::weave_wavelength_m);
}

/// The flight needs the weight of a drop whatever the ink.
void flight_defaults(Defaults& d) {
  for (const Channel& channel : d.job().channels) {
    d.use_if(channel.ink == nullptr || !channel.ink->density, P::ink_density);
  }
}

void scan_defaults(Defaults& d) {
  for (const P id : {P::quality_passes, P::carriage_speed, P::carriage_acceleration,
                     P::stroke_dwell_s, P::park_mm}) {
    d.use(id);
  }
}

void head_defaults(Defaults& d, const Group& group, const Head& head) {
  const bool is_tilted = group.family == Family::tilted;
  const bool joins = head.joins && head.joins->value && !is_tilted;
  d.use_if(!head.overlap && !joins && group.heads_across > 1, P::overlap_nozzles);
  d.use_if(group.rows_staggered > 1 || group.round || (is_tilted && group.heads_across > 1),
           P::body_gap_mm);
  d.use_if(group.round.has_value(), P::round_share);
  d.use(P::row_gap_mm);
  for (const P id : {P::reserve, P::high_use}) d.use(id);
  d.use_if(!d.job().throw_distance && !head.throw_nominal, P::throw_mm);
  d.use_if(!head.throw_least, P::throw_least_mm);
  d.use_if(d.job().radius || d.job().radius_across, P::slope_limit_deg);
  d.use_if(!head.purge, P::purge_ml);
  d.use_if(!head.life && !head.life_drops, P::head_life_h);
}

void mode_defaults(Defaults& d, const Group& group, const Head& head) {
  const HeadMode* const mode = named(head.modes, group.mode);
  if (mode == nullptr || !mode->frequency || !mode->drops) return;
  const bool binary = mode->frequency->value.size() == 1 && mode->drops->value.size() > 1;
  const bool grey = std::any_of(group.dots.begin(), group.dots.end(),
                                [](const ChannelDots& c) { return c.levels_used > 2; });
  const bool amplitude = mode->grey_method ? mode->grey_method->value == GreyMethod::amplitude
                                           : mode->drops->value.size() == 2;
  d.use_if(binary && grey && amplitude, P::amplitude_factor);
}

void lamp_defaults(Defaults& d, const Catalogue& catalogue) {
  d.use(P::lamp_ageing);
  d.use_if(!catalogue.lamps.empty(), P::stray_share);
  const Substrate& s = d.job().request->substrate;
  if (!s.area_mass) return;
  d.use(P::light_absorbed);
  d.use(P::cure_heat);
  d.use_if(!s.heat_capacity, P::web_heat_capacity);
  d.use_if(std::any_of(catalogue.lamps.begin(), catalogue.lamps.end(),
                       [](const Lamp& lamp) { return lamp.mercury && lamp.mercury->value; }),
           P::arc_radiation);
}

void vapour_defaults(Defaults& d, const Channel& channel) {
  const Line& line = d.job().request->line;
  const bool enclosed = line.enclosed && line.enclosed->value;
  const bool monitored = line.vapour_monitored && line.vapour_monitored->value;
  d.use(P::mixing);
  d.use_if(channel.ink == nullptr || !channel.ink->solvent_share, P::solvent_share);
  d.use_if(channel.ink == nullptr || !channel.ink->density, P::ink_density);
  if (!enclosed) return;
  d.use(P::captured_share);
  d.use(monitored ? P::lel_share_monitored : P::lel_share);
  d.use(P::vapour_exhaust_c);
}

void channel_defaults(Defaults& d, const Catalogue& catalogue, const Channel& channel) {
  const Ink* ink = channel.ink;
  const bool tension = ink != nullptr && ink->surface_tension;
  d.use_if(tension && d.job().request->substrate.surface_energy, P::wetting_margin);
  if (channel.family == InkFamily::uv) lamp_defaults(d, catalogue);
  if (gives_vapour(channel)) vapour_defaults(d, channel);
  d.use_if(ink != nullptr && !ink->density, P::ink_density);
  d.use_if(ink != nullptr && settles_by_figures(d.job(), *ink), P::channel_depth_um);
  if (channel.family != InkFamily::aqueous) return;
  d.use_if(ink == nullptr || !ink->water_share, P::water_share);
  d.use_if(ink == nullptr, P::ink_density);
  d.use(d.job().absorbency == Absorbency::high ? P::evaporated_high : P::evaporated_none_low);
  d.use(P::dryer_efficiency);
  const Given<Temperature>& limit = d.job().request->substrate.temperature_limit;
  const Temperature usual = Temperature::celsius(d.job().parameters[P::dryer_air_c]);
  d.use_if(!limit || !(limit->low < usual), P::dryer_air_c);
  d.use(P::exhaust_humidity);
  d.use_if(!d.job().request->line.air_humidity, P::room_humidity);
  const Substrate& s = d.job().request->substrate;
  d.use_if(s.area_mass && !s.heat_capacity, P::web_heat_capacity);
}

bool dryers_state_rate(const Catalogue& catalogue) {
  return !catalogue.dryers.empty() &&
         std::all_of(catalogue.dryers.begin(), catalogue.dryers.end(),
                     [](const Dryer& dryer) { return dryer.drying_rate.has_value(); });
}

void station_defaults(Defaults& d, const Catalogue& catalogue) {
  const bool aqueous = std::any_of(d.job().channels.begin(), d.job().channels.end(),
                                   [](const Channel& c) { return c.family == InkFamily::aqueous; });
  d.use_if(aqueous && !dryers_state_rate(catalogue), P::drying_rate);
  d.use_if(encoder_step(d.job()).has_value(), P::divider_most);
  for (const P id : {P::uptime, P::purge_share, P::purges_per_day, P::alignment_h,
                     P::spare_confidence, P::service_access_mm}) {
    d.use(id);
  }
}

}  // namespace

std::vector<P> defaults_used(const Job& job, const Catalogue& catalogue,
                             const std::vector<Group>& groups) {
  Defaults d(job);
  for (const Group& group : groups) {
    dot_defaults(d, group);
    if (group.family == Family::scanning) scan_defaults(d);
    if (const Head* head = named(catalogue.heads, group.head)) {
      head_defaults(d, group, *head);
      mode_defaults(d, group, *head);
    }
  }
  placement_defaults(d, groups);
  flight_defaults(d);
  for (const Channel& channel : job.channels) channel_defaults(d, catalogue, channel);
  station_defaults(d, catalogue);
  return d.take();
}

}  // namespace calc
