#include "calc/ink_state.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "calc/compare.h"
#include "calc/dot.h"
#include "calc/fluid.h"
#include "calc/named.h"
#include "calc/settling.h"

namespace calc {
namespace {

bool asked_for(const Job& job, const Group& group) {
  return std::any_of(group.channels.begin(), group.channels.end(), [&](const std::string& name) {
    const Channel* channel = named(job.channels, name);
    return channel != nullptr && channel->ink != nullptr && channel->ink->jetting_temperature;
  });
}

/// How a temperature came about that brings this viscosity.
std::string temperature_from(const Job& job, const Group& group, const Head& head) {
  if (!group.jetting_temperature) return "unknown";
  if (asked_for(job, group)) return "given";
  const ViscosityNeed need = viscosity_need(head);
  const auto target = viscosity_target(need);
  if (!target || !group.viscosity) return "nearest";
  const bool met = at_least(*group.viscosity, *target) && at_most(*group.viscosity, *target);
  if (!met) return "nearest";
  return need.nominal ? "nominal" : "centre";
}

std::string curve_word(ViscosityKind kind) {
  switch (kind) {
    case ViscosityKind::point:
      return "point";
    case ViscosityKind::arrhenius:
      return "arrhenius";
    case ViscosityKind::vogel:
      return "vogel";
  }
  return {};
}

void set_viscosity(const Ink& ink, InkInHead& state) {
  const auto model = ink.viscosity ? fit_viscosity(ink.viscosity->value) : std::nullopt;
  if (!model) return;
  state.known_from = model->low();
  state.known_to = model->high();
  state.viscosity_from = "outside";
  if (!state.temperature) return;
  const ViscosityCurve* curve = curve_at(*model, *state.temperature);
  if (curve == nullptr) return;
  state.viscosity_from = curve_word(curve->kind);
  state.viscosity = curve_viscosity(*curve, *state.temperature);
}

std::optional<ShearLaw> shear_law(const Ink& ink) {
  if (!ink.shear_index || !ink.shear_time) return std::nullopt;
  return ShearLaw{ink.shear_index->value, ink.shear_time->value,
                  ink.shear_share ? ink.shear_share->value : 0};
}

void set_shear(const Ink& ink, InkInHead& state) {
  if (!state.nozzle || !state.speed) return;
  const auto law = shear_law(ink);
  state.shear_rate = wall_shear(law.value_or(ShearLaw{}), *state.speed, *state.nozzle);
  if (!law) return;
  state.flow_index = flow_index(*law, nozzle_shear(*state.speed, *state.nozzle));
  if (state.viscosity) state.sheared = *state.viscosity * shear_factor(*law, *state.shear_rate);
}

void set_windows(InkInHead& state) {
  if (!state.z) return;
  for (const JettingWindow& window : jetting_windows()) {
    WindowVerdict verdict;
    verdict.name = window.name;
    verdict.low = window.low;
    if (std::isfinite(window.high)) verdict.high = window.high;
    verdict.pass = in_window(window, state.z_sheared.value_or(*state.z));
    verdict.source = window.source;
    verdict.tag = window.tag;
    verdict.note = window.note;
    state.windows.push_back(std::move(verdict));
  }
}

Length drop_of(const Group& group, const std::string& channel) {
  for (const ChannelDots& dots : group.dots) {
    if (dots.channel == channel) return dots.drop_diameter;
  }
  return {};
}

void set_sheared_numbers(const Fluid& fluid, InkInHead& state) {
  if (!state.sheared) return;
  const Fluid thinner{fluid.density, *state.sheared, fluid.tension};
  if (state.tension) state.oh_sheared = ohnesorge(thinner, *state.nozzle);
  if (state.tension) state.z_sheared = z_number(thinner, *state.nozzle);
  state.re_sheared = reynolds(thinner, *state.speed, *state.nozzle);
}

void set_numbers(Length drop, InkInHead& state) {
  if (!state.nozzle) return;
  const Fluid fluid{state.density, state.viscosity.value_or(Viscosity()),
                    state.tension.value_or(SurfaceTension())};
  if (state.tension) state.least_speed = least_ejection_speed(fluid, *state.nozzle);
  if (state.tension && state.speed) state.we = weber(fluid, *state.speed, *state.nozzle);
  if (!state.viscosity) return;
  if (state.speed) state.re = reynolds(fluid, *state.speed, *state.nozzle);
  if (state.tension) state.oh = ohnesorge(fluid, *state.nozzle);
  if (state.tension) state.z = z_number(fluid, *state.nozzle);
  set_sheared_numbers(fluid, state);
  if (state.tension && state.impact && drop > Length()) {
    state.splash = splash_number(fluid, *state.impact, drop);
  }
}

void set_particles(const Job& job, const Ink& ink, InkInHead& state) {
  if (state.nozzle) state.particle_most = largest_particle(*state.nozzle);
  if (state.nozzle) state.particle_safe = safe_particle(*state.nozzle);
  state.settles = settles(job, ink);
  state.settles_from = ink.settles ? "given" : state.settles ? "computed" : "unknown";
  if (!ink.particle_size) return;
  state.particle = ink.particle_size->high;
  if (!ink.particle_density) return;
  state.settling_height = settling_height_of(job, ink);
  if (!state.viscosity) return;
  const Fluid fluid{state.density, *state.viscosity, SurfaceTension()};
  state.settling = settling_speed(*state.particle, ink.particle_density->value, fluid) *
                   hindered_share(ink.particle_share ? ink.particle_share->value : 0);
}

/// The largest drop in use is the fastest to arrive.
void set_speeds(const Group& group, InkInHead& state) {
  if (!group.flight) return;
  const LevelFlight& largest = group.flight->levels.at(group.flight->levels_used - 1);
  state.speed = largest.start;
  if (largest.nominal) state.impact = largest.nominal->impact;
}

InkInHead state_of(const Job& job, const Group& group, const Head& head,
                   const std::string& channel) {
  InkInHead state;
  state.channel = channel;
  state.head = head.name;
  state.temperature = group.jetting_temperature;
  state.temperature_from = temperature_from(job, group, head);
  state.viscosity_from = state.settles_from = "unknown";
  if (head.recirculates) state.recirculates = head.recirculates->value;
  if (head.nozzle_diameter) state.nozzle = head.nozzle_diameter->value;
  set_speeds(group, state);
  const Channel* colour = named(job.channels, channel);
  if (colour == nullptr || colour->ink == nullptr) return state;
  const Ink& ink = *colour->ink;
  state.ink = ink.name;
  state.density = ink_density(job, ink);
  state.density_assumed = !ink.density;
  if (ink.surface_tension) state.tension = ink.surface_tension->value;
  set_viscosity(ink, state);
  set_shear(ink, state);
  set_numbers(drop_of(group, channel), state);
  set_windows(state);
  set_particles(job, ink, state);
  return state;
}

void warn_of_windows(const InkInHead& ink, std::vector<Notice>& out) {
  if (ink.windows.empty()) return;
  const auto held = std::count_if(ink.windows.begin(), ink.windows.end(),
                                  [](const WindowVerdict& w) { return w.pass; });
  if (held >= least_windows) return;
  out.push_back({"jetting_windows",
                 {{"ink", ink.ink, ""},
                  {"z", ink.z_sheared.value_or(*ink.z), ""},
                  {"held", static_cast<double>(held), ""},
                  {"count", static_cast<double>(ink.windows.size()), ""}},
                 "ink." + ink.ink + ".viscosity",
                 {}});
}

void warn_of_speed(const InkInHead& ink, std::vector<Notice>& out) {
  if (!ink.speed || !ink.least_speed || at_least(*ink.speed, *ink.least_speed)) return;
  out.push_back({"slow_ejection",
                 {{"ink", ink.ink, ""},
                  {"speed", ink.speed->si(), "m/s"},
                  {"least", ink.least_speed->si(), "m/s"}},
                 "head." + ink.head + ".drop_speed",
                 {}});
}

void warn_of_splash(const InkInHead& ink, std::vector<Notice>& out) {
  if (!ink.splash || at_most(*ink.splash, splash_limit)) return;
  out.push_back({"splash",
                 {{"ink", ink.ink, ""}, {"k", *ink.splash, ""}, {"limit", splash_limit, ""}},
                 "head." + ink.head + ".drop_speed",
                 {}});
}

void warn_of_settling(const Job& job, const InkInHead& state, std::vector<Notice>& out) {
  const Channel* channel = named(job.channels, state.channel);
  if (channel == nullptr || channel->ink == nullptr) return;
  const Ink& ink = *channel->ink;
  if (!ink.settles || ink.settles->value || !settles_by_figures(job, ink).value_or(false)) return;
  out.push_back({"settles_by_figures",
                 {{"ink", ink.name, ""},
                  {"height", in_um(*state.settling_height), "um"},
                  {"depth", job.parameters[P::channel_depth_um], "um"}},
                 "ink." + ink.name + ".settles",
                 {ink.settles->origin, ink.particle_density->origin}});
}

/// The figures of the windows follow from Z.
auto figures_of(const InkInHead& i) {
  return std::tie(i.head, i.temperature_from, i.viscosity_from, i.temperature, i.known_from,
                  i.known_to, i.viscosity, i.speed, i.impact, i.nozzle, i.density,
                  i.density_assumed, i.tension, i.shear_rate, i.sheared, i.z, i.splash, i.particle,
                  i.settling, i.settling_height, i.settles, i.settles_from, i.recirculates);
}

}  // namespace

ViscosityNeed viscosity_need(const Head& head) {
  ViscosityNeed need;
  if (head.viscosity) need.nominal = head.viscosity->value;
  if (head.viscosity_window) {
    need.least = head.viscosity_window->low;
    need.most = head.viscosity_window->high;
  }
  return need;
}

std::vector<InkInHead> inks_in_heads(const Job& job, const Catalogue& catalogue,
                                     const std::vector<Group>& groups) {
  std::vector<InkInHead> list;
  for (const Group& group : groups) {
    const Head* head = named(catalogue.heads, group.head);
    if (head == nullptr) continue;
    for (const std::string& channel : group.channels) {
      list.push_back(state_of(job, group, *head, channel));
    }
  }
  return list;
}

std::vector<Notice> ink_warnings(const Job& job, const std::vector<InkInHead>& inks) {
  std::vector<Notice> list;
  for (const InkInHead& ink : inks) {
    warn_of_windows(ink, list);
    warn_of_speed(ink, list);
    warn_of_splash(ink, list);
    warn_of_settling(job, ink, list);
  }
  return list;
}

bool same_figures(const InkInHead& a, const InkInHead& b) { return figures_of(a) == figures_of(b); }

}  // namespace calc
