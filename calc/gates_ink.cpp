/// Gates between inks and a head: family, substrate, temperature, viscosity, tension.
#include <algorithm>

#include "calc/compare.h"
#include "calc/gates.h"
#include "calc/ink_state.h"
#include "calc/settling.h"

namespace calc {
namespace {

void check_family(const GroupNeed& need, const Head& head, Findings& out) {
  const std::optional<InkFamily> family = need.group->family;
  if (!family) {
    out.conditions.push_back(
        unknown("family_unknown", "ink", need.inks.front().channel->name, "family"));
    return;
  }
  if (!head.families) {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "families"));
    return;
  }
  const std::vector<InkFamily>& takes = head.families->value;
  if (std::find(takes.begin(), takes.end(), *family) == takes.end()) {
    out.failures.push_back(refused("ink_family", family_word(*family)));
  }
}

void check_substrate(const Search& search, const GroupNeed& need, Findings& out) {
  const std::optional<InkFamily> family = need.group->family;
  if (search.job->absorbency != Absorbency::none || !family) return;
  if (*family == InkFamily::oil) out.failures.push_back(refused("ink_substrate", "oil"));
  if (*family == InkFamily::aqueous) {
    out.conditions.push_back(unknown("aqueous_on_none", "substrate", {}, "absorbency"));
  }
}

/// Temperatures a head may jet at. `high` is the head's greatest; where it states none, the least.
struct Span {
  Temperature low, high;
};

Span span_of(const Search& search, const Head& head) {
  const Temperature low = least_jetting_temperature(served_high(search.job->room));
  return {low, head.temperature_most ? head.temperature_most->value : low};
}

void temperature_gate(Temperature asked, Temperature most, std::string_view subject,
                      Findings& out) {
  if (at_most(asked.in_kelvin(), most.in_kelvin())) return;
  out.failures.push_back(
      {"temperature", subject, asked.in_celsius(), most.in_celsius(), "degC", false, {}, {}, {}});
}

/// Temperature for one ink: what it asks for, else what its viscosity asks for.
std::optional<Temperature> temperature_for(const InkNeed& need, const Span& span,
                                           const ViscosityNeed& window) {
  const Ink* ink = need.channel->ink;
  if (ink != nullptr && ink->jetting_temperature) return ink->jetting_temperature->value;
  if (!need.model) return std::nullopt;
  const JettingTemperature found =
      find_jetting_temperature(*need.model, span.low, span.high, window);
  if (found.choice == JettingChoice::no_overlap) return std::nullopt;
  return found.temperature;
}

bool window_fits(const InkNeed& need, Temperature t, const ViscosityNeed& window) {
  const std::optional<Viscosity> v =
      need.model ? viscosity_at(*need.model, t) : std::optional<Viscosity>();
  return !v || within_window(*v, window);
}

/// One temperature for all inks of a head: the first of their own at which every one is inside the
/// window, else the first.
std::optional<Temperature> common_temperature(const GroupNeed& need, const Span& span,
                                              const ViscosityNeed& window) {
  std::optional<Temperature> first;
  for (const InkNeed& candidate : need.inks) {
    const std::optional<Temperature> t = temperature_for(candidate, span, window);
    if (!t) continue;
    if (!first) first = t;
    const bool all = std::all_of(need.inks.begin(), need.inks.end(),
                                 [&](const InkNeed& ink) { return window_fits(ink, *t, window); });
    if (all) return t;
  }
  return first;
}

void window_gate(std::string_view ink, Viscosity v, const ViscosityNeed& window, Findings& out) {
  if (window.least && !at_least(v, *window.least)) {
    out.failures.push_back(
        {"viscosity", ink, in_mpas(v), in_mpas(*window.least), "mPa.s", true, {}, {}, {}});
  } else if (window.most && !at_most(v, *window.most)) {
    out.failures.push_back(
        {"viscosity", ink, in_mpas(v), in_mpas(*window.most), "mPa.s", false, {}, {}, {}});
  }
}

/// An ink too thick only because nothing is known of it where the head could be hotter still.
void note_span(const InkNeed& need, Temperature t, const Span& span, Findings& out) {
  if (need.channel->ink->jetting_temperature) return;
  Finding& last = out.failures.back();
  const Temperature known = need.model->high();
  if (last.code != "viscosity" || last.at_least || t < known || !(known < span.high)) return;
  last.known_to_degc = known.in_celsius();
}

void check_viscosity(const InkNeed& need, std::optional<Temperature> t, const Span& span,
                     const ViscosityNeed& window, Findings& out) {
  const std::string_view ink = need.channel->ink->name;
  if (!need.model) {
    out.conditions.push_back(unknown("viscosity_unknown", "ink", ink, "viscosity"));
    return;
  }
  const std::optional<Viscosity> v = t ? viscosity_at(*need.model, *t) : std::optional<Viscosity>();
  if (!v) {
    out.conditions.push_back(unknown("viscosity_span", "ink", ink, "viscosity"));
    return;
  }
  const std::size_t before = out.failures.size();
  window_gate(ink, *v, window, out);
  if (out.failures.size() == before) return;
  out.failures.back().at_degc = t->in_celsius();
  note_span(need, *t, span, out);
}

void check_tension(const Ink& ink, const Head& head, Findings& out) {
  if (!ink.surface_tension) {
    out.conditions.push_back(unknown("tension_unknown", "ink", ink.name, "surface_tension"));
    return;
  }
  if (!head.tension_window) {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "tension_window"));
    return;
  }
  const Value<SurfaceTension>& t = *ink.surface_tension;
  const Value<SurfaceTension>& window = *head.tension_window;
  if (!at_least(served_low(t), window.low)) {
    out.failures.push_back({"tension",
                            ink.name,
                            in_mn_per_m(served_low(t)),
                            in_mn_per_m(window.low),
                            "mN/m",
                            true,
                            {},
                            {},
                            {}});
  } else if (!at_most(served_high(t), window.high)) {
    out.failures.push_back({"tension",
                            ink.name,
                            in_mn_per_m(served_high(t)),
                            in_mn_per_m(window.high),
                            "mN/m",
                            false,
                            {},
                            {},
                            {}});
  }
}

/// Wetting: the substrate's surface energy against the ink's tension and a margin.
void check_wetting(const Search& search, const Ink& ink, Findings& out) {
  const Substrate& s = search.job->request->substrate;
  if (!s.surface_energy) {
    if (search.job->absorbency == Absorbency::none) {
      out.conditions.push_back(
          unknown("surface_energy_unknown", "substrate", ink.name, "surface_energy"));
    }
    return;
  }
  if (!ink.surface_tension) return;
  const double energy = in_mn_per_m(served_low(*s.surface_energy));
  const double needed =
      in_mn_per_m(served_high(*ink.surface_tension)) + search.job->parameters[P::wetting_margin];
  if (at_least(energy, needed)) return;
  out.conditions.push_back({"pretreatment", ink.name, energy, needed, "mN/m", true, "substrate",
                            "surface_energy", &s.surface_energy->origin});
}

void check_recirculation(const Search& search, const Ink& ink, const Head& head, Findings& out) {
  if (!settles(*search.job, ink).value_or(false)) return;
  if (head.recirculates && head.recirculates->value) return;
  const bool known = head.recirculates.has_value();
  Finding still =
      unknown(known ? "no_recirculation" : "recirculation", "head", head.name, "recirculates");
  if (known) still.where = &head.recirculates->origin;
  out.conditions.push_back(still);
}

void check_ink(const Search& search, const Ink& ink, const Head& head, Findings& out) {
  check_tension(ink, head, out);
  check_wetting(search, ink, out);
  check_recirculation(search, ink, head, out);
}

void check_temperature(const GroupNeed& need, const Head& head, const Span& span, Findings& out) {
  if (!head.temperature_most) {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "temperature_most"));
    return;
  }
  const Ink* ink = need.inks.front().channel->ink;
  const bool asked = ink != nullptr && ink->jetting_temperature;
  temperature_gate(asked ? served_high(*ink->jetting_temperature) : span.low, span.high,
                   asked ? "ink" : "room", out);
}

/// One ink alone needs no temperature to be gated: the viscosities it can reach between the lowest
/// and the highest temperature either touch the window or do not. True where that settles it.
bool gate_by_reach(const InkNeed& need, const Span& span, const ViscosityNeed& window) {
  const Ink* ink = need.channel->ink;
  if (!need.model || !window.least || !window.most || ink->jetting_temperature) return false;
  const auto thick = viscosity_at(*need.model, std::max(span.low, need.model->low()));
  const auto thin = viscosity_at(*need.model, std::min(span.high, need.model->high()));
  if (!thick || !thin || *thick < *thin) return false;
  const std::optional<Viscosity> target = viscosity_target(window);
  return within_window(*target, window) && *thick > *window.least && *thin < *window.most;
}

}  // namespace

Jetting jetting_of(const Search& search, const GroupNeed& need, const Head& head) {
  Jetting jetting;
  jetting.temperature = common_temperature(need, span_of(search, head), viscosity_need(head));
  const InkNeed& first = need.inks.front();
  if (jetting.temperature && first.model) {
    jetting.viscosity = viscosity_at(*first.model, *jetting.temperature);
  }
  return jetting;
}

void check_inks(const Search& search, const GroupNeed& need, const Head& head, Findings& findings) {
  check_family(need, head, findings);
  check_substrate(search, need, findings);
  const Span span = span_of(search, head);
  check_temperature(need, head, span, findings);
  const ViscosityNeed window = viscosity_need(head);
  const bool settled = need.inks.size() == 1 && need.inks.front().channel->ink != nullptr &&
                       gate_by_reach(need.inks.front(), span, window);
  std::optional<Temperature> t;
  if (!settled) t = common_temperature(need, span, window);
  const Ink* last = nullptr;
  for (const InkNeed& ink : need.inks) {
    if (ink.channel->ink == nullptr || ink.channel->ink == last) continue;
    last = ink.channel->ink;
    if (!settled) check_viscosity(ink, t, span, window, findings);
    check_ink(search, *last, head, findings);
  }
}

}  // namespace calc
