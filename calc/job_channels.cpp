/// Colours with their inks, and which of them may share a head.
#include <algorithm>

#include "calc/job_parts.h"
#include "calc/named.h"
#include "calc/settling.h"

namespace calc {
namespace {

/// The ink a colour names, else the one of its own name, else the only one.
const Ink* ink_of(const Request& r, const std::string& colour, const Given<std::string>& given) {
  if (given) return named(r.inks, given->value);
  if (const Ink* same = named(r.inks, colour)) return same;
  return r.inks.size() == 1 ? &r.inks.front() : nullptr;
}

}  // namespace

P mean_parameter(ColourKind kind) {
  switch (kind) {
    case ColourKind::spot:
      return P::cover_mean_spot;
    case ColourKind::white:
      return P::cover_mean_white;
    case ColourKind::varnish:
      return P::cover_mean_varnish;
    case ColourKind::primer:
      return P::cover_mean_primer;
    case ColourKind::process:
      break;
  }
  return P::cover_mean_process;
}

namespace {

std::optional<Value<Length>> assumed_film(Job& job, ColourKind kind) {
  if (kind != ColourKind::white && kind != ColourKind::varnish) return std::nullopt;
  const P id = kind == ColourKind::white ? P::film_white_um : P::film_varnish_um;
  return assumed(micrometres(assume(job, id)));
}

Value<double> cover(Job& job, const Given<double>& given, P id) {
  return given ? *given : assumed(assume(job, id));
}

Channel to_channel(Job& job, const Colour& colour) {
  Channel c;
  c.name = colour.name;
  c.kind = colour.kind ? colour.kind->value : ColourKind::process;
  c.ink = ink_of(*job.request, colour.name, colour.ink);
  c.cover_mean = cover(job, colour.cover_mean, mean_parameter(c.kind));
  c.cover_peak = cover(job, colour.cover_peak, P::cover_peak);
  c.film = colour.film ? colour.film : assumed_film(job, c.kind);
  return c;
}

/// Colours of a request that names none: one for each ink, or black.
std::vector<Colour> colours_of(const Request& r) {
  if (!r.colours.empty()) return r.colours;
  std::vector<Colour> made;
  for (const Ink& ink : r.inks) {
    made.emplace_back();
    made.back().name = ink.name;
  }
  if (made.size() <= 1) {
    made.assign(1, {});
    made.back().name = "black";
  }
  return made;
}

/// The family all inks with a known one have in common; none when they differ.
std::optional<InkFamily> common_family(const Request& r) {
  std::optional<InkFamily> common;
  for (const Ink& ink : r.inks) {
    if (!ink.family) continue;
    if (common && *common != ink.family->value) return std::nullopt;
    common = ink.family->value;
  }
  return common;
}

bool stands_alone(ColourKind kind) {
  return kind == ColourKind::white || kind == ColourKind::varnish || kind == ColourKind::primer;
}

std::optional<Temperature> asked_temperature(const Channel& c) {
  if (c.ink == nullptr || !c.ink->jetting_temperature) return std::nullopt;
  return c.ink->jetting_temperature->value;
}
bool settles(const Job& job, const Channel& c) {
  return c.ink != nullptr && settles(job, *c.ink).value_or(false);
}

bool may_share(const Job& job, const Channel& a, const Channel& b) {
  return !stands_alone(a.kind) && !stands_alone(b.kind) && a.family == b.family &&
         asked_temperature(a) == asked_temperature(b) && settles(job, a) == settles(job, b);
}

std::string group_name(const Job& job, const ChannelGroup& group, std::size_t processes) {
  if (group.channels.size() == 1) return job.channels[group.channels.front()].name;
  return processes == 1 ? "process" : "process" + std::to_string(processes);
}

void resolve_groups(Job& job) {
  for (std::size_t i = 0; i < job.channels.size(); ++i) {
    const auto same = [&](const ChannelGroup& g) {
      return may_share(job, job.channels[g.channels.front()], job.channels[i]);
    };
    const auto found = std::find_if(job.groups.begin(), job.groups.end(), same);
    if (found != job.groups.end()) {
      found->channels.push_back(i);
    } else {
      job.groups.push_back({"", {i}, job.channels[i].family});
    }
  }
  std::size_t processes = 0;
  for (ChannelGroup& group : job.groups) {
    if (group.channels.size() > 1) ++processes;
    group.name = group_name(job, group, processes);
  }
}

/// Whether the process colours could lay more than their limit: three solids, or a film that takes
/// several heads in line.
bool may_reach_limit(const Job& job) {
  int processes = 0;
  bool film = false;
  for (const Channel& c : job.channels) {
    if (c.kind != ColourKind::process) continue;
    ++processes;
    film = film || c.film;
  }
  return processes > 2 || film;
}

}  // namespace

void resolve_channels(Job& job) {
  const std::optional<InkFamily> common = common_family(*job.request);
  for (const Colour& colour : colours_of(*job.request)) {
    Channel c = to_channel(job, colour);
    c.family = c.ink != nullptr && c.ink->family ? std::optional(c.ink->family->value) : common;
    job.channels.push_back(std::move(c));
  }
  if (may_reach_limit(job) && limiting_ink(job) == nullptr) assume(job, P::process_limit);
  resolve_groups(job);
}

const Ink* limiting_ink(const Job& job) {
  const Ink* least = nullptr;
  for (const Channel& c : job.channels) {
    if (c.kind != ColourKind::process || c.ink == nullptr || !c.ink->limit) continue;
    if (least == nullptr || c.ink->limit->value < least->limit->value) least = c.ink;
  }
  return least;
}

double process_limit(const Job& job) {
  const Ink* ink = limiting_ink(job);
  return ink != nullptr ? ink->limit->value : job.parameters[P::process_limit];
}

}  // namespace calc
