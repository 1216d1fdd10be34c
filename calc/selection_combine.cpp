/// Which candidates of several groups are looked at together, and which station comes first.
#include <algorithm>
#include <map>

#include "calc/selection_parts.h"

namespace calc {
namespace {

constexpr std::size_t most_combined = 512;  ///< stations looked at for several groups

/// The candidates of one group, each priced by itself, in order of their heads.
std::vector<Option> alone(const Stations& stations, const std::vector<HeadTry>& tries) {
  std::vector<Option> own;
  for (const Candidate* c : all_accepted(tries)) own.push_back(stations.price({c}));
  return own;
}

/// A candidate in its place, with the least the station then comes to.
struct Contender {
  FloorKey floor;
  const Candidate* candidate;
  std::vector<const Candidate*> parts;
};

std::vector<Contender> contenders_for(const Job& job, const HeadTry& tried, const Place& place) {
  std::vector<Contender> list;
  for (const Candidate& c : tried.accepted) {
    if (&c == place.parts[place.group]) continue;
    list.push_back({{}, &c, place.parts});
    list.back().parts[place.group] = &c;
    std::vector<const Floor*> floors;
    for (const Candidate* part : list.back().parts) floors.push_back(&part->floor);
    list.back().floor = floor_of(job, floors);
  }
  return list;
}

bool ranks_before(const Option& a, const Option& b) { return before(a.key, b.key); }

/// A group's best by its own rank, and the ones with the fewest heads and the least footprint,
/// which may alone fit the limits of the whole station.
std::vector<const Candidate*> shortlist(const std::vector<Option>& own) {
  std::vector<const Candidate*> kept;
  if (own.empty()) return kept;
  const auto by = [&](auto less) {
    return std::min_element(own.begin(), own.end(), less)->parts.front();
  };
  const Candidate* fewest =
      by([](const Option& a, const Option& b) { return a.key.heads < b.key.heads; });
  const Candidate* shortest = by([](const Option& a, const Option& b) {
    return a.parts.front()->arrangement.footprint < b.parts.front()->arrangement.footprint;
  });
  const Candidate* cheapest =
      by([](const Option& a, const Option& b) { return a.key.ownership < b.key.ownership; });
  std::vector<Option> best(std::min(own.size(), most_kept - 3));
  std::partial_sort_copy(own.begin(), own.end(), best.begin(), best.end(), ranks_before);
  for (const Option& o : best) keep_once(kept, o.parts.front());
  for (const Candidate* c : {fewest, shortest, cheapest}) keep_once(kept, c);
  return kept;
}

/// By head: the candidate that ranks first by itself; null for none.
std::vector<const Candidate*> first_by_head(const std::vector<Option>& own, std::size_t heads) {
  std::vector<const Option*> first(heads, nullptr);
  for (const Option& o : own) {
    const Option*& best = first[o.parts.front()->arrangement.shape.head];
    if (best == nullptr || ranks_before(o, *best)) best = &o;
  }
  std::vector<const Candidate*> list;
  list.reserve(heads);
  for (const Option* o : first) list.push_back(o == nullptr ? nullptr : o->parts.front());
  return list;
}

/// Each head by itself for every group: what shares one carriage without regard to others.
std::vector<std::vector<const Candidate*>> alike(const std::vector<std::vector<Option>>& own,
                                                 std::size_t heads) {
  std::vector<std::vector<const Candidate*>> of_heads(heads), out;
  for (const auto& options : own) {
    const std::vector<const Candidate*> first = first_by_head(options, heads);
    for (std::size_t h = 0; h < heads; ++h) {
      if (first[h] != nullptr) of_heads[h].push_back(first[h]);
    }
  }
  for (auto& parts : of_heads) {
    if (parts.size() == own.size()) out.push_back(std::move(parts));
  }
  return out;
}

}  // namespace

std::vector<const Candidate*> all_accepted(const std::vector<HeadTry>& tries) {
  std::vector<const Candidate*> all;
  for (const HeadTry& t : tries) {
    for (const Candidate& c : t.accepted) all.push_back(&c);
  }
  return all;
}

void keep_once(std::vector<const Candidate*>& kept, const Candidate* c) {
  if (std::find(kept.begin(), kept.end(), c) == kept.end()) kept.push_back(c);
}

std::vector<std::vector<const Candidate*>> product(
    const std::vector<std::vector<const Candidate*>>& lists) {
  std::vector<std::vector<const Candidate*>> out{{}};
  for (const auto& list : lists) {
    std::vector<std::vector<const Candidate*>> next;
    for (const auto& head : out) {
      for (const Candidate* c : list) {
        if (next.size() >= most_combined) break;
        next.push_back(head);
        next.back().push_back(c);
      }
    }
    out = std::move(next);
  }
  return out;
}

std::vector<Option> combine(const Search& search, const Stations& stations, const Field& field) {
  std::vector<Option> options;
  if (field.size() == 1) {
    for (const HeadTry& t : field.front())
      add_best_of(search, stations, t, {{nullptr}, 0}, options);
    return options;
  }
  std::vector<std::vector<Option>> own;
  std::vector<std::vector<const Candidate*>> lists;
  for (const auto& tries : field) {
    own.push_back(alone(stations, tries));
    lists.push_back(shortlist(own.back()));
  }
  for (auto& parts : product(lists)) options.push_back(stations.make(std::move(parts)));
  const std::size_t heads = search.catalogue->heads.size();
  for (auto& parts : alike(own, heads)) options.push_back(stations.make(std::move(parts)));
  return options;
}

void add_best_of(const Search& search, const Stations& stations, const HeadTry& tried,
                 const Place& place, std::vector<Option>& options) {
  std::vector<Contender> contenders = contenders_for(*search.job, tried, place);
  std::stable_sort(contenders.begin(), contenders.end(),
                   [](const Contender& a, const Contender& b) { return a.floor < b.floor; });
  std::map<Family, RankKey> best;  // of those that pass
  for (const Contender& next : contenders) {
    const Arrangement& a = next.candidate->arrangement;
    const Family family = family_of(search.catalogue->heads[a.shape.head], a);
    const auto known = best.find(family);
    if (known != best.end() && beyond(next.floor, known->second)) continue;
    options.push_back(stations.make(next.parts));
    const Option& made = options.back();
    if (!made.failures.empty()) continue;
    if (known == best.end()) {
      best.emplace(family, made.key);
    } else if (before(made.key, known->second)) {
      known->second = made.key;
    }
  }
}

const Option* best_of(const Stations& stations, std::vector<Option>& options) {
  const auto later = [](const Option* a, const Option* b) {
    if (before(b->key, a->key)) return true;
    return !before(a->key, b->key) && b < a;
  };
  std::vector<Option*> queue;
  queue.reserve(options.size());
  for (Option& o : options) {
    if (!o.gated || o.failures.empty()) queue.push_back(&o);
  }
  std::make_heap(queue.begin(), queue.end(), later);
  while (!queue.empty()) {
    if (stations.passes(*queue.front())) return queue.front();
    std::pop_heap(queue.begin(), queue.end(), later);
    queue.pop_back();
  }
  return nullptr;
}

}  // namespace calc
