#include "calc/gates.h"

#include <algorithm>

#include "calc/across.h"
#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/flight_inputs.h"
#include "calc/throw.h"

namespace calc {
namespace {

SpreadRange spread_range(const Job& job, P id) {
  const Parameter& row = parameter(id);
  const double value = job.parameters[id];
  if (value < row.value || value > row.value) return {value, value, value};
  return {row.value, row.low, row.high};
}

P spread_parameter(Absorbency absorbency) {
  if (absorbency == Absorbency::none) return P::spread_none;
  return absorbency == Absorbency::low ? P::spread_low : P::spread_high;
}

DotEvidence evidence_of(const Job& job) {
  const Substrate& s = job.request->substrate;
  DotEvidence e;
  if (s.dot_diameter) e.measured = s.dot_diameter->value;
  if (s.dot_volume) e.measured_with = s.dot_volume->value;
  if (s.spread_factor) e.factor = s.spread_factor->value;
  if (job.contact_angle) e.angle = job.contact_angle->value;
  e.absorbency = job.absorbency;
  return e;
}

GroupNeed group_need(const Job& job, const ChannelGroup& group) {
  GroupNeed need;
  need.group = &group;
  need.channels = static_cast<int>(group.channels.size());
  for (const std::size_t index : group.channels) {
    const Channel& channel = job.channels[index];
    InkNeed ink;
    ink.channel = &channel;
    if (channel.ink != nullptr && channel.ink->viscosity) {
      ink.model = fit_viscosity(channel.ink->viscosity->value);
    }
    need.inks.push_back(std::move(ink));
    if (channel.film) {
      need.film = std::max(need.film, channel.film->high);
    }
    if (channel.kind == ColourKind::process) {
      need.peak = std::max(need.peak, channel.cover_peak.high);
    }
  }
  return need;
}

void at_most_gate(Findings& out, std::string_view code, std::string_view subject, Length value,
                  Length limit) {
  if (at_most(value, limit)) return;
  out.failures.push_back({code, subject, in_mm(value), in_mm(limit), "mm", false, {}, {}, {}});
}

void check_throw(const Search& search, const Head& head, const Throw& gap, Findings& out) {
  const Length least = head.throw_least ? head.throw_least->value
                                        : millimetres(search.job->parameters[P::throw_least_mm]);
  if (!at_least(gap.least, least)) {
    out.failures.push_back(
        {"throw", "least", in_mm(gap.least), in_mm(least), "mm", true, {}, {}, {}});
  }
  if (head.throw_most) {
    at_most_gate(out, "throw", "most", gap.most, head.throw_most->value);
  } else {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "throw_most"));
  }
  const bool by_level = std::all_of(head.modes.begin(), head.modes.end(),
                                    [](const HeadMode& m) { return m.drop_speed.has_value(); });
  if (!head.drop_speed && !by_level) {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "drop_speed"));
  }
}

void check_slope(const Search& search, const Head& head, const Throw& gap, Findings& out) {
  if (!gap.curved) return;
  if (gap.field_unknown) {
    out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "field_depth"));
    return;
  }
  const double limit = search.job->parameters[P::slope_limit_deg];
  const double degrees = gap.slope ? *gap.slope * 180 / pi : 90;
  if (at_most(degrees, limit)) return;
  out.failures.push_back({"slope", {}, degrees, limit, "deg", false, {}, {}, {}});
}

bool serviceable_here(Serviceable s) { return s == Serviceable::user || s == Serviceable::parts; }

/// One wish: nothing when indifferent or merely preferred; a gate when it is a must.
bool is_must(const Given<Wish>& wish) { return wish && wish->value == Wish::must; }

void check_service(const Search& search, const Head& head, Findings& out) {
  const Service& wish = search.job->request->service;
  if (is_must(wish.serviceable)) {
    if (!head.serviceable) {
      out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "serviceable"));
    } else if (!serviceable_here(head.serviceable->value)) {
      out.failures.push_back(refused("serviceable", {}));
    }
  }
  if (is_must(wish.waveform)) {
    if (!head.waveform) {
      out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "waveform"));
    } else if (head.waveform->value == WaveformAccess::maker) {
      out.failures.push_back(refused("waveform", {}));
    } else if (head.waveform->value == WaveformAccess::limited) {
      out.conditions.push_back(unknown("waveform_limited", "head", head.name, "waveform"));
    }
  }
  if (is_must(wish.driver_sources)) {
    if (!head.driver_sources) {
      out.conditions.push_back(unknown("head_data_unknown", "head", head.name, "driver_sources"));
    } else if (head.driver_sources->value < 2) {
      out.failures.push_back({"driver_sources",
                              {},
                              static_cast<double>(head.driver_sources->value),
                              2,
                              "",
                              true,
                              {},
                              {},
                              {}});
    }
  }
}

bool is_prefer(const Given<Wish>& wish) { return wish && wish->value == Wish::prefer; }

std::string key_of(const Finding& f) {
  if (f.field.empty()) return {};
  std::string key(f.section);
  if (f.section == "ink" || f.section == "head" || f.section == "colour") {
    key.append(".").append(f.subject);
  }
  return key.append(".").append(f.field);
}

}  // namespace

Search prepare(const Job& job, const Catalogue& catalogue, const PriceBook& book) {
  Search s;
  s.job = &job;
  s.catalogue = &catalogue;
  s.book = &book;
  s.width = print_width(job.width->high, job.margin.value);
  s.slowest = served_low(*job.speed);
  s.fastest = served_high(*job.speed);
  s.evidence = evidence_of(job);
  s.spread = spread_range(job, spread_parameter(job.absorbency));
  s.reserve = job.parameters[P::reserve];
  s.process_limit = process_limit(job);
  s.flights = std::make_shared<Flights>();
  for (const ChannelGroup& group : job.groups) s.groups.push_back(group_need(job, group));
  return s;
}

bool dot_is_guess(const Search& search) {
  const DotEvidence& e = search.evidence;
  return !e.measured && !e.factor && !(e.angle && e.absorbency == Absorbency::none);
}

DotEstimate dot_of(const Search& search, Volume volume) {
  if (!dot_is_guess(search)) return dot_diameter(volume, search.evidence);
  const Length drop = drop_diameter(volume);
  const SpreadRange& s = search.spread;
  return {drop * s.value, drop * s.low, drop * s.high, DotRule::class_default};
}

std::string_view family_word(InkFamily family) {
  switch (family) {
    case InkFamily::uv:
      return "uv";
    case InkFamily::aqueous:
      return "aqueous";
    case InkFamily::solvent:
      return "solvent";
    case InkFamily::oil:
      break;
  }
  return "oil";
}

int unmet_prefers(const Service& service, const Head& head) {
  int unmet = 0;
  if (is_prefer(service.serviceable)) {
    unmet += head.serviceable && serviceable_here(head.serviceable->value) ? 0 : 1;
  }
  if (is_prefer(service.waveform)) {
    unmet += head.waveform && head.waveform->value == WaveformAccess::own ? 0 : 1;
  }
  if (is_prefer(service.driver_sources)) {
    unmet += head.driver_sources && head.driver_sources->value >= 2 ? 0 : 1;
  }
  return unmet;
}

void check_head(const Search& search, const GroupNeed& need, const Head& head, Findings& findings) {
  check_inks(search, need, head, findings);
  const Throw gap = throw_of(*search.job, head);
  check_throw(search, head, gap, findings);
  check_slope(search, head, gap, findings);
  check_service(search, head, findings);
}

Finding refused(std::string_view code, std::string_view subject) {
  return {code, subject, 0, 1, {}, true, {}, {}, {}};
}

Finding unknown(std::string_view code, std::string_view section, std::string_view subject,
                std::string_view field) {
  return {code, subject, 0, 0, {}, true, section, field, {}};
}

Reason to_reason(const Finding& f, const std::string& group) {
  return {std::string(f.code),
          f.group.empty() ? group : std::string(f.group),
          std::string(f.subject),
          f.value,
          f.limit,
          std::string(f.unit),
          f.at_least,
          f.known_to_degc,
          key_of(f),
          f.at_degc};
}

Notice to_notice(const Finding& f) {
  Notice notice;
  notice.code = f.code;
  if (!f.subject.empty()) notice.args.push_back({"subject", std::string(f.subject), ""});
  if (!f.unit.empty() || f.value != 0 || f.limit != 0) {
    notice.args.push_back({"value", f.value, std::string(f.unit)});
    notice.args.push_back({"limit", f.limit, std::string(f.unit)});
  }
  if (!f.group.empty()) notice.args.push_back({"group", std::string(f.group), ""});
  if (!f.axis.empty()) notice.args.push_back({"axis", std::string(f.axis), ""});
  notice.field = key_of(f);
  if (f.where != nullptr) notice.where.push_back(*f.where);
  return notice;
}

}  // namespace calc
