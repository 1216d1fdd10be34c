/// What is said beside the chosen arrangement: conditions, warnings, questions, assumptions.
#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/fluid.h"
#include "calc/ink_state.h"
#include "calc/lattice.h"
#include "calc/named.h"
#include "calc/safety_conditions.h"
#include "calc/selection_parts.h"
#include "calc/station_load.h"
#include "calc/throw.h"

namespace calc {
namespace {

bool same_finding(const Finding& a, const Finding& b) {
  return a.code == b.code && a.subject == b.subject && a.field == b.field && a.group == b.group &&
         a.axis == b.axis;
}

void add_conditions(const std::vector<Finding>& found, std::vector<Finding>& all) {
  for (const Finding& f : found) {
    const bool known = std::any_of(all.begin(), all.end(),
                                   [&](const Finding& other) { return same_finding(f, other); });
    if (!known) all.push_back(f);
  }
}

bool same_arg(const Arg& a, const Arg& b) {
  return a.name == b.name && a.value == b.value && a.unit == b.unit;
}

bool same_notice(const Notice& a, const Notice& b) {
  return a.code == b.code && a.field == b.field &&
         std::equal(a.args.begin(), a.args.end(), b.args.begin(), b.args.end(), same_arg);
}

/// Two groups on like lattices warn alike: each warning stands once.
void drop_repeated(std::vector<Notice>& notices) {
  std::vector<Notice> once;
  for (Notice& n : notices) {
    const bool known = std::any_of(once.begin(), once.end(),
                                   [&](const Notice& other) { return same_notice(n, other); });
    if (!known) once.push_back(std::move(n));
  }
  notices = std::move(once);
}

/// Conditions of the job itself: what it rests on before any head is looked at.
void job_conditions(const Search& search, std::vector<Finding>& all) {
  const Job& job = *search.job;
  if (!job.required_known) all.push_back(unknown("resolution_assumed", "image", {}, "resolution"));
  if (job.request->colours.empty()) {
    all.push_back(unknown("colours_assumed", "colour", "NAME", "kind"));
  }
  if (!job.request->substrate.absorbency && dot_is_guess(search)) {
    all.push_back(unknown("absorbency_assumed", "substrate", {}, "absorbency"));
  }
}

/// The peaks stated for the process colours are more than they may lay together.
void ink_limit_condition(const Job& job, const std::vector<Group>& groups,
                         std::vector<Finding>& all) {
  const ProcessFilm film = process_film(job, channel_loads(job, groups));
  if (at_most(film.given, film.limit)) return;
  Finding finding{"ink_limit", {},       film.given,      film.limit, "1",
                  false,       "assume", "process_limit", nullptr};
  if (const Ink* ink = limiting_ink(job)) {
    finding.subject = ink->name;
    finding.section = "ink";
    finding.field = "limit";
    finding.where = &ink->limit->origin;
  }
  all.push_back(finding);
}

bool is_colour(const Job& job, const std::string& name) {
  const Channel* const found = named(job.channels, name);
  return found != nullptr &&
         (found->kind == ColourKind::process || found->kind == ColourKind::spot);
}

/// A carriage that prints both ways lays white, primer and varnish under the colours on one stroke
/// and over them on the next, where they stand beside the colours. Where several strokes lay down a
/// point it does so whichever way it goes: what lands later lands on the strokes before.
void stroke_order_condition(const Job& job, const std::vector<Group>& groups,
                            std::vector<Finding>& all) {
  const auto has_colour = [&](const Group& g) { return is_colour(job, g.channels.front()); };
  if (std::none_of(groups.begin(), groups.end(), has_colour)) return;
  for (const Group& group : groups) {
    if (!group.scan || has_colour(group)) continue;
    Finding finding = unknown("stroke_order", "line", {}, "mode");
    finding.subject = group.name;
    all.push_back(finding);
  }
}

/// The colours of a carriage land in the other order on every other stroke.
void warn_hue(const Job& job, const Group& group, std::vector<Notice>& out) {
  const auto process = std::count_if(group.channels.begin(), group.channels.end(),
                                     [&](const auto& name) { return is_colour(job, name); });
  if (group.scan && process > 1) {
    out.push_back({"stroke_hue", {{"group", group.name, ""}}, "line.mode", {}});
  }
}

void warn_slope(const Search& s, const Head& head, std::vector<Notice>& out) {
  const std::optional<double> slope = throw_of(*s.job, head).slope;
  const double limit = s.job->parameters[P::slope_warn_deg];
  if (!slope || at_most(*slope * 180 / pi, limit)) return;
  out.push_back(
      {"slope",
       {{"head", head.name, ""}, {"slope", *slope * 180 / pi, "deg"}, {"limit", limit, "deg"}},
       "product.diameter",
       {s.job->request->product.diameter->origin}});
}

constexpr Speed web_drags_from = metres_per_second(1.5);  // common practice
constexpr Length web_drags_beyond = micrometres(2000);
constexpr Volume web_drags_below = picolitres(5);

/// What the moving product drags along of the air is not calculated: a fast line with a long way or
/// small drops is only warned of.
void warn_web_air(const Search& s, const Group& group, std::vector<Notice>& out) {
  const DropFlight& flight = *group.flight;
  const Speed over = group.scan ? group.scan->carriage_speed : s.fastest;
  const Volume smallest = flight.levels.front().drop;
  if (at_most(over, web_drags_from)) return;
  if (at_most(flight.throw_nominal, web_drags_beyond) && at_least(smallest, web_drags_below))
    return;
  out.push_back({"web_air_drag",
                 {{"group", group.name, ""},
                  {"speed", over.si(), "m/s"},
                  {"throw", in_mm(flight.throw_nominal), "mm"},
                  {"drop", in_pl(smallest), "pL"}},
                 "line.throw_distance",
                 {}});
}

void warn_flight(const Search& s, const Group& group, std::vector<Notice>& out) {
  if (!group.flight) return;
  warn_web_air(s, group, out);
  const LevelFlight& smallest = group.flight->levels.front();
  if (!smallest.most || at_least(smallest.most->impact, least_impact_speed)) return;
  out.push_back({"impact_speed",
                 {{"group", group.name, ""},
                  {"drop", in_pl(smallest.drop), "pL"},
                  {"throw", in_mm(group.flight->throw_most), "mm"},
                  {"speed", smallest.most->impact.si(), "m/s"},
                  {"limit", least_impact_speed.si(), "m/s"}},
                 "line.throw_distance",
                 {}});
}

void warn_particles(const GroupNeed& need, const Head& head, std::vector<Notice>& out) {
  if (!head.nozzle_diameter) return;
  const Length most = largest_particle(head.nozzle_diameter->value);
  for (const InkNeed& ink : need.inks) {
    if (ink.channel->ink == nullptr || !ink.channel->ink->particle_size) continue;
    const Value<Length>& size = *ink.channel->ink->particle_size;
    if (at_most(size.high, most)) continue;
    out.push_back({"particle_size",
                   {{"ink", ink.channel->ink->name, ""},
                    {"size", in_um(size.high), "um"},
                    {"limit", in_um(most), "um"}},
                   "ink." + ink.channel->ink->name + ".particle_size",
                   {size.origin}});
  }
}

void warn_line(const Search& s, Length p, Length dot, const std::string& axis,
               std::vector<Notice>& out) {
  const Given<Length>& feature = s.job->request->image.smallest_feature;
  if (!feature) return;
  const int n = std::max(1, static_cast<int>(std::lround(feature->value / p)));
  const double deviation = line_deviation(n, p, dot);
  if (!at_most(std::abs(deviation), line_deviation_limit)) {
    out.push_back({"line_deviation",
                   {{"axis", axis, ""},
                    {"dots", static_cast<double>(n), ""},
                    {"deviation", deviation, "1"},
                    {"line", in_um(line_width(n, p, dot)), "um"},
                    {"gap", in_um(gap_width(n, p, dot)), "um"}},
                   "image.smallest_feature",
                   {feature->origin}});
  }
  if (gap_width(n, p, dot) <= Length{}) {
    out.push_back({"closed_gap",
                   {{"axis", axis, ""}, {"dots", static_cast<double>(n), ""}},
                   "image.smallest_feature",
                   {feature->origin}});
  }
}

void warn_dots(const Search& s, const GroupNeed& need, const Arrangement& a,
               std::vector<Notice>& out) {
  const Length pn = pitch(a.nozzle_axis);
  const Length pm = pitch(a.shape.motion_axis);
  if (a.dot.rule == DotRule::angle_capped) {
    out.push_back({"angle_capped",
                   {{"least", least_cap_angle * 180 / pi, "deg"}},
                   "substrate.contact_angle",
                   {s.job->contact_angle->origin}});
  }
  if (finer_than_dot(a.dot.diameter, pn, pm)) {
    out.push_back({"finer_than_dot",
                   {{"group", need.group->name, ""},
                    {"dot", in_um(a.dot.diameter), "um"},
                    {"pitch", in_um(std::max(pn, pm)), "um"}},
                   governing_field(*s.job),
                   {}});
  }
  warn_line(s, pn, a.dot.diameter, a.shape.scanning ? "along" : "across", out);
  warn_line(s, pm, a.dot.diameter, a.shape.scanning ? "across" : "along", out);
}

/// Conditions of one chosen part, found by looking at its fixed shape once more.
void annotate_part(const Search& search, const GroupNeed& need, const Candidate& part,
                   std::vector<Finding>& conditions, std::vector<Notice>& warnings) {
  const Arrangement& a = part.arrangement;
  const Head& head = search.catalogue->heads[a.shape.head];
  Findings found;
  check_head(search, need, head, found);
  const auto facts = facts_of(search, a.shape, found);
  if (facts) arrange(search, need, *facts, a.shape, found);
  add_conditions(found.conditions, conditions);
  warn_slope(search, head, warnings);
  warn_particles(need, head, warnings);
  warn_dots(search, need, a, warnings);
  warn_flight(search, part.group, warnings);
  warn_hue(*search.job, part.group, warnings);
}

void add_question(const Notice& condition, Selection& selection) {
  if (condition.code != "head_data_unknown" && condition.code != "waveform_limited" &&
      condition.code != "rating_from_binary") {
    return;
  }
  Question q;
  q.code = "q_head_data";
  q.field = condition.field;
  q.effect = condition.code == "rating_from_binary" ? "frequency_allowed_hz" : "head";
  q.weight = 25;
  selection.questions.push_back(std::move(q));
}

}  // namespace

void station_conditions(const Job& job, const std::vector<Group>& groups,
                        std::vector<Finding>& conditions) {
  ink_limit_condition(job, groups, conditions);
  stroke_order_condition(job, groups, conditions);
  round_conditions(job, groups, conditions);
}

void annotate(const Search& search, const Stations& stations,
              const std::vector<const Candidate*>& chosen, Selection& selection) {
  std::vector<Finding> conditions;
  job_conditions(search, conditions);
  std::vector<Group> groups = groups_of(chosen, stations.arrangements(chosen));
  for (std::size_t g = 0; g < chosen.size(); ++g) {
    annotate_part(search, search.groups[g], *chosen[g], conditions, selection.warnings);
  }
  station_conditions(*search.job, groups, conditions);
  const std::vector<InkInHead> inks = inks_in_heads(*search.job, *search.catalogue, groups);
  for (Notice& n : ink_warnings(*search.job, inks)) selection.warnings.push_back(std::move(n));
  drop_repeated(selection.warnings);
  std::vector<Finding> of_station;
  const Sized size = stations.sized(groups);
  stations.gate(groups, size, &of_station);
  add_conditions(of_station, conditions);
  for (const Finding& f : conditions) {
    selection.conditions.push_back(to_notice(f));
    add_question(selection.conditions.back(), selection);
  }
  for (Notice& n : safety_conditions(*search.job, *search.catalogue, groups)) {
    selection.conditions.push_back(std::move(n));
  }
  for (const P id : defaults_used(*search.job, *search.catalogue, groups)) {
    selection.assumptions.push_back(to_assumption(*search.job, id));
  }
}

}  // namespace calc
