#include "calc/placement.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/placement_terms.h"

namespace calc {
namespace {

constexpr std::size_t most_terms = 8;  // of a budget, for their room
constexpr double least_uneven = 1e-6;  // of the pitch; what is less is the arithmetic's

/// The first terms of a budget, with room for the others.
std::vector<BudgetTerm> room_for(std::initializer_list<BudgetTerm> first) {
  std::vector<BudgetTerm> terms;
  terms.reserve(most_terms);
  terms = first;
  return terms;
}

/// Collects the budgets of one station.
class Writer {
 public:
  Writer(const Job& job, Assumed assumed) : job_(job), terms_(job, assumed) {}

  void dots(const Group& g) {
    std::vector<BudgetTerm> motion =
        room_for({terms_.straightness(g), terms_.drop_speed(g), terms_.count(g)});
    if (g.flight->levels_used > 1) motion.push_back(terms_.levels(g));
    add("dot", true, g.name, motion_pitch(g) / 2, std::move(motion));
    std::vector<BudgetTerm> nozzle = room_for({terms_.straightness(g)});
    if (g.flight->sag_spread > Length{}) nozzle.push_back(PlacementTerms::sag(g));
    if (!at_most(g.uneven, g.pitch * least_uneven)) nozzle.push_back(PlacementTerms::uneven(g));
    add("dot", false, g.name, nozzle_pitch(g) / 2, std::move(nozzle));
  }

  void joints(const Group& g) {
    if (!has_joints(g)) return;
    const Length apart = joint_apart(g);
    std::vector<BudgetTerm> motion =
        room_for({terms_.mount(), terms_.straightness(g), terms_.drop_speed(g), terms_.count(g)});
    std::vector<BudgetTerm> nozzle = room_for({motion[0], motion[1]});
    if (apart > Length{} || g.scan) motion.push_back(terms_.gap(g, to_and_fro(g)));
    if (g.scan) add_thickness(g, to_and_fro(g), motion);
    if (apart > Length{}) {
      motion.push_back(terms_.thermal(apart));
      if (!g.scan) motion.push_back(terms_.wheel(apart));
      if (!g.scan) nozzle.push_back(terms_.weave(apart));
    }
    if (g.heads_across > 1) nozzle.push_back(terms_.thermal(g.head_pitch));
    if (g.scan) nozzle.push_back(terms_.wheel(g.scan->advance));
    add("joint", true, g.name, joint_limit(job_, motion_pitch(g)), std::move(motion));
    add("joint", false, g.name, joint_limit(job_, nozzle_pitch(g)), std::move(nozzle));
  }

  void colours(const std::vector<Group>& groups) {
    int positions = 0;
    Length apart;
    for (const Group& g : groups) {
      positions += g.positions;
      apart += way_under(g) + pinned_length(g);
    }
    if (positions < 2) return;
    apart -= row_step(groups.back());
    const Group& g = slowest_arrival(groups);
    std::vector<BudgetTerm> motion{terms_.mount(), terms_.gap(g, to_and_fro(g)),
                                   terms_.drop_speed(g), terms_.count(g), terms_.thermal(apart)};
    std::vector<BudgetTerm> nozzle{terms_.mount()};
    if (g.scan) add_thickness(g, to_and_fro(g), motion);
    if (!g.scan) motion.push_back(terms_.wheel(apart));
    if (!g.scan) nozzle.push_back(terms_.weave(apart));
    const Length limit = registration_limit(job_, groups);
    add("colour", true, {}, limit, std::move(motion));
    add("colour", false, {}, limit, std::move(nozzle));
  }

  void image(const std::vector<Group>& groups) {
    const Given<Length>& asked = job_.request->image.placement;
    if (!asked) return;
    Length reach = terms_.sensor_distance();
    for (const Group& g : groups) reach += way_under(g) + pinned_length(g);
    const Group& g = slowest_arrival(groups);
    const Length limit = served_low(*asked);
    std::vector<BudgetTerm> motion{terms_.sensor(), terms_.gap(g, 1)};
    add_thickness(g, 1, motion);
    motion.insert(motion.end(), {terms_.drop_speed(g), terms_.count(g), terms_.wheel(reach),
                                 terms_.thermal(reach)});
    add("image", true, {}, limit, std::move(motion));
    add("image", false, {}, limit, {terms_.mount(), terms_.whole_weave()});
  }

  std::vector<Budget> take() { return std::move(budgets_); }

 private:
  void add(std::string_view name, bool motion, const std::string& group, Length limit,
           std::vector<BudgetTerm> terms) {
    Budget budget;
    budget.name = name;
    budget.motion = motion;
    budget.group = group;
    budget.limit = limit;
    budget.terms = std::move(terms);
    add_up(budget);
    budgets_.push_back(std::move(budget));
  }

  void add_thickness(const Group& g, double ways, std::vector<BudgetTerm>& terms) const {
    if (PlacementTerms::is_uneven(g)) terms.push_back(terms_.thickness(g, ways));
  }

  /// The group whose drops answer most to a changed gap.
  const Group& slowest_arrival(const std::vector<Group>& groups) const {
    return *std::max_element(groups.begin(), groups.end(), [&](const Group& a, const Group& b) {
      return terms_.gap(a, 1).shift < terms_.gap(b, 1).shift;
    });
  }

  const Job& job_;
  PlacementTerms terms_;
  std::vector<Budget> budgets_;
};

bool arrives(const Group& g) {
  return g.flight && g.flight->gap_delay + g.flight->speed_delay > Time{};
}

double over(const Budget& b) { return b.expanded / b.limit; }

/// The budgets that fail; "joint" of one group is one of them, by the axis further beyond its
/// limit.
std::vector<const Budget*> failed(const std::vector<Budget>& budgets) {
  std::vector<const Budget*> list;
  for (const Budget& b : budgets) {
    if (b.pass) continue;
    const auto known = std::find_if(list.begin(), list.end(), [&](const Budget* other) {
      return other->name == b.name && other->group == b.group;
    });
    if (known == list.end()) {
      list.push_back(&b);
    } else if (over(b) > over(**known)) {
      *known = &b;
    }
  }
  return list;
}

/// The group as the job names it, for a budget does not outlive its finding.
std::string_view name_in(const Job& job, const std::string& group) {
  for (const ChannelGroup& known : job.groups) {
    if (known.name == group) return known.name;
  }
  return {};
}

Finding finding_of(const Job& job, const Budget& b) {
  const std::string_view key = b.terms[largest_term(b)].field;
  const std::size_t point = key.rfind('.');
  return {"placement",
          b.name,
          in_um(b.expanded),
          in_um(b.limit),
          "um",
          false,
          key.substr(0, point),
          key.substr(point + 1),
          {},
          name_in(job, b.group)};
}

/// What joins on a carriage: its strokes, and of more than one head a colour these too.
std::string_view joining(const std::vector<Group>& groups, const std::string& name) {
  const auto group =
      std::find_if(groups.begin(), groups.end(), [&](const Group& g) { return g.name == name; });
  const bool one = group != groups.end() && group->scan &&
                   group->scan->heads_per_colour * std::max(1, group->film_heads) == 1;
  return one ? "stroke_alone" : "stroke";
}

/// The same as a condition: of an axis, and with the joints of a carriage, which are its strokes'.
Finding condition_of(const Job& job, const std::vector<Group>& groups, const Budget& b) {
  Finding f = finding_of(job, b);
  f.axis = b.motion ? "motion" : "nozzle";
  if (b.name == "joint" && groups.front().scan) f.subject = joining(groups, b.group);
  return f;
}

bool has(const std::vector<Finding>& failures, const Job& job, const Budget& b) {
  return std::any_of(failures.begin(), failures.end(), [&](const Finding& f) {
    return f.code == "placement" && f.subject == b.name && f.group == name_in(job, b.group);
  });
}

/// That the throw be set to every product, where strokes to and fro over the thickness stated part
/// too far at the kindest tolerances.
void throw_anew(const Job& job, const std::vector<Group>& groups, std::vector<Finding>& to) {
  if (groups.empty() || !groups.front().scan || job.thickness_variation <= Length{}) return;
  const std::vector<Budget> all = placement_budgets(job, groups, Assumed::kind_but_throw);
  const Budget* worst = nullptr;
  for (const Budget& b : all) {
    const bool by_thickness = std::any_of(
        b.terms.begin(), b.terms.end(), [](const auto& term) { return term.name == "thickness"; });
    if (b.pass || !by_thickness || b.name == "image") continue;
    if (worst == nullptr || over(b) > over(*worst)) worst = &b;
  }
  if (worst == nullptr) return;
  Finding f = finding_of(job, *worst);
  f.code = "throw_anew";
  f.subject = {};
  f.group = {};
  f.axis = "motion";  // a lag of the drops, of whichever group and budget
  f.section = "product";
  f.field = "thickness_variation";
  to.push_back(f);
}

void stopping_gate(const std::vector<Group>& groups, std::vector<Finding>& failures) {
  for (const Group& g : groups) {
    if (!g.flight || g.flight->levels.front().most) continue;
    failures.push_back({"throw",
                        "stopped",
                        in_mm(g.flight->levels.front().stop),
                        in_mm(g.flight->throw_most),
                        "mm",
                        true,
                        {},
                        {},
                        {}});
  }
}

}  // namespace

Length registration_limit(const Job& job, const std::vector<Group>& groups) {
  const Given<Length>& asked = job.request->image.registration;
  if (asked) return served_low(*asked);
  const auto coarser = [](const Group& g) { return std::max(nozzle_pitch(g), motion_pitch(g)); };
  Length least = coarser(groups.front());
  for (const Group& g : groups) least = std::min(least, coarser(g));
  return least;
}

Length joint_limit(const Job& job, Length pitch) {
  const Given<Length>& distance = job.request->image.viewing_distance;
  return distance ? std::min(pitch / 2, vernier_limit(served_low(*distance))) : pitch / 2;
}

std::vector<Budget> placement_budgets(const Job& job, const std::vector<Group>& groups,
                                      Assumed assumed) {
  if (groups.empty() || !std::all_of(groups.begin(), groups.end(), arrives)) return {};
  Writer writer(job, assumed);
  for (const Group& g : groups) {
    writer.dots(g);
    writer.joints(g);
  }
  writer.colours(groups);
  writer.image(groups);
  return writer.take();
}

void placement_gate(const Job& job, const std::vector<Group>& groups,
                    std::vector<Finding>& failures, std::vector<Finding>* conditions) {
  stopping_gate(groups, failures);
  const std::vector<Budget> kind = placement_budgets(job, groups, Assumed::kind);
  for (const Budget* b : failed(kind)) {
    if (b->name != "image") failures.push_back(finding_of(job, *b));
  }
  if (conditions == nullptr) return;
  const std::vector<Budget> likely = placement_budgets(job, groups, Assumed::likely);
  for (const Budget& b : likely) {
    if (!b.pass && !has(failures, job, b)) conditions->push_back(condition_of(job, groups, b));
  }
  throw_anew(job, groups, *conditions);
}

}  // namespace calc
