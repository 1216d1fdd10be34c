/// Which candidates of several groups are looked at together, and which station comes first.
#include <algorithm>
#include <map>

#include "calc/selection_parts.h"

namespace calc {
namespace {

constexpr std::size_t most_combined = 512;  ///< stations looked at for several groups

/// A candidate in its place, with the least the station then comes to.
struct Contender {
  FloorKey floor;
  const Candidate* candidate;
  Parts parts;
};

/// In order of their floors.
std::vector<Contender> contenders_for(const Job& job, const HeadTry& tried, const Place& place) {
  std::vector<Contender> list;
  list.reserve(tried.accepted.size());
  for (const Candidate& c : tried.accepted) {
    if (&c == place.parts[place.group]) continue;
    list.push_back({{}, &c, place.parts});
    list.back().parts[place.group] = &c;
  }
  if (list.size() < 2) return list;  // whose floor nobody asks for
  for (Contender& c : list) c.floor = floor_of(job, floors_of(c.parts));
  std::stable_sort(list.begin(), list.end(),
                   [](const Contender& a, const Contender& b) { return a.floor < b.floor; });
  return list;
}

}  // namespace

std::vector<const Floor*> floors_of(const Parts& parts) {
  std::vector<const Floor*> floors;
  floors.reserve(parts.size());
  for (const Candidate* part : parts) floors.push_back(&part->floor);
  return floors;
}

std::vector<Parts> product(const std::vector<Parts>& lists) {
  std::vector<Parts> out{{}};
  for (const Parts& list : lists) {
    std::vector<Parts> next;
    for (const Parts& head : out) {
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

std::vector<Option> combine(const Search& search, const Stations& stations, Trials& trials) {
  std::vector<Option> options;
  if (trials.groups() == 1) {
    for (const std::size_t h : trials.heads()) {
      add_best_of(search, stations, trials.of(0, h), {{nullptr}, 0}, options);
    }
    return options;
  }
  Alone alone(*search.job, stations);
  std::vector<Parts> lists;
  for (std::size_t g = 0; g < trials.groups(); ++g) lists.push_back(alone.shortlist(trials, g));
  for (Parts& parts : product(lists)) options.push_back(stations.make(std::move(parts)));
  for (const std::size_t h : trials.heads()) {
    Parts parts = alone.firsts(trials, h);
    if (!parts.empty()) options.push_back(stations.make(std::move(parts)));
  }
  return options;
}

void add_best_of(const Search& search, const Stations& stations, const HeadTry& tried,
                 const Place& place, std::vector<Option>& options) {
  std::map<Family, RankKey> best;  // of those that pass
  std::vector<Contender> contenders = contenders_for(*search.job, tried, place);
  for (Contender& next : contenders) {
    const Arrangement& a = next.candidate->arrangement;
    const Family family = family_of(search.catalogue->heads[a.shape.head], a);
    const auto known = best.find(family);
    const RankKey* const first = known == best.end() ? nullptr : &known->second;
    if (first != nullptr && beyond(next.floor, *first)) continue;
    std::optional<Option> made = stations.make_before(first, std::move(next.parts));
    if (!made) continue;
    if (made->failures.empty() && &next != &contenders.back()) best[family] = made->key;
    options.push_back(std::move(*made));
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
