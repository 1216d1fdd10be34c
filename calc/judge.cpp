#include "calc/judge.h"

#include <algorithm>
#include <stdexcept>

#include "calc/selection_parts.h"

namespace calc {
namespace {

std::size_t head_index(const Catalogue& catalogue, const std::string& name) {
  for (std::size_t i = 0; i < catalogue.heads.size(); ++i) {
    if (catalogue.heads[i].name == name) return i;
  }
  throw std::logic_error("no such head: " + name);
}

std::size_t mode_index(const Head& head, const std::string& name) {
  for (std::size_t i = 0; i < head.modes.size(); ++i) {
    if (head.modes[i].name == name) return i;
  }
  throw std::logic_error("no such mode: " + name);
}

Shape shape_of(const Catalogue& catalogue, const Group& group) {
  Shape s;
  s.head = head_index(catalogue, group.head);
  s.mode = mode_index(catalogue.heads[s.head], group.mode);
  s.scanning = group.family == Family::scanning;
  s.interleave = group.interleave;
  s.stack = group.stack;
  s.film_heads = group.film_heads;
  s.carriage_heads = group.scan ? group.scan->heads_per_colour : 0;
  s.motion_axis = s.scanning ? group.resolution_across : group.resolution_along;
  s.tilt = group.tilt;
  return s;
}

/// Whether a gate is left to the carriage, whose groups fail or pass it together.
bool of_carriage(const Arrangement& a, const Finding& f) {
  return a.scan && f.code == "frequency" && f.subject == "throughput";
}

}  // namespace

Judge::Judge(const Catalogue& catalogue, const std::string& currency,
             const std::vector<Group>& groups, Heads heads)
    : catalogue_(&catalogue), book_(catalogue, currency) {
  parts_.reserve(groups.size());
  for (const Group& g : groups) {
    parts_.push_back({&g.name, shape_of(catalogue, g), heads == Heads::built ? &g : nullptr});
  }
}

void Judge::reach(const Search& search, const Part& part, const Arrangement& a,
                  std::vector<Reason>& failing) {
  if (a.scan || a.across <= part.built->heads_across) return;
  const Length least = part.built->head_pitch * (part.built->heads_across - 1) + part.built->swath;
  failing.push_back(
      {"heads", *part.group, "width", in_mm(search.width), in_mm(least), "mm", false});
}

/// The failing gates of one group; its new figures go to `anew`.
void Judge::regate(const Search& search, const GroupNeed& need, std::size_t part,
                   std::vector<Candidate>& anew, std::vector<Finding>* conditions) {
  Shape shape = parts_[part].shape;
  const Head& head = search.catalogue->heads[shape.head];
  Findings findings;
  check_head(search, need, head, findings);
  const auto facts = facts_of(search, shape, findings);
  if (facts && parts_[part].built != nullptr) {
    const Resolution asked = motion_demand(*search.job, shape.scanning).required;
    shape.motion_axis = std::max(shape.motion_axis, lines_on(*facts, asked));
  }
  Arrangement a;
  if (facts) {
    a = arrange(search, need, *facts, shape, findings);
    a.jetting = jetting_of(search, need, head);
    a.flight = flight_of(search, need, a);
    if (a.scan || !shape.scanning) anew.push_back({a, to_group(search, need, *facts, a, false)});
  }
  if (conditions != nullptr) {
    conditions->insert(conditions->end(), findings.conditions.begin(), findings.conditions.end());
  }
  for (const Finding& f : findings.failures) {
    if (!of_carriage(a, f)) judged_.failing.push_back(to_reason(f, need.group->name));
  }
  if (parts_[part].built != nullptr) reach(search, parts_[part], a, judged_.failing);
}

/// The gates on the whole station of groups worked out anew.
void Judge::gate_station(const Search& search, const std::vector<Candidate>& anew,
                         std::vector<Finding>* conditions) {
  std::vector<const Candidate*> parts;
  parts.reserve(anew.size());
  for (const Candidate& c : anew) parts.push_back(&c);
  const Stations stations(search);
  judged_.groups = groups_of(parts, stations.arrangements(parts));
  size_again(*search.job, book_, judged_.groups, judged_.sizing);
  stand_pinning(judged_.sizing.pinning, judged_.groups);
  const Sized sized = sized_of(*search.job, judged_.groups, judged_.sizing);
  for (const Finding& f : stations.gate(judged_.groups, sized, conditions)) {
    judged_.failing.push_back(to_reason(f, {}));
  }
  if (conditions != nullptr) station_conditions(*search.job, judged_.groups, *conditions);
}

const Judged& Judge::of(const Job& job, Conditions conditions) {
  judged_.failing.clear();
  judged_.conditions.clear();
  judged_.groups.clear();
  std::vector<Finding> found;
  std::vector<Finding>* const to = conditions == Conditions::gathered ? &found : nullptr;
  Search search = prepare(job, *catalogue_, book_);
  search.flights = flights_;
  std::vector<Candidate> anew;
  for (const GroupNeed& need : search.groups) {
    const auto same = std::find_if(parts_.begin(), parts_.end(), [&](const Part& part) {
      return *part.group == need.group->name;
    });
    if (same != parts_.end()) {
      regate(search, need, static_cast<std::size_t>(same - parts_.begin()), anew, to);
    }
  }
  if (anew.size() == search.groups.size()) gate_station(search, anew, to);
  for (const Finding& f : found) judged_.conditions.push_back(to_notice(f));
  return judged_;
}

std::vector<Reason> failing_gates(const Job& job, const Catalogue& catalogue,
                                  const std::vector<Group>& groups) {
  return Judge(catalogue, job.currency, groups).of(job).failing;
}

}  // namespace calc
